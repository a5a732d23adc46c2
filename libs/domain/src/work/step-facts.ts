import type { Instant } from '../units/minutes.js';
import type { StepEntry } from './entry.js';
import type { StepDefinition } from './step.js';

/** A signature on a step, undone ones too. */
export interface StepSignatureFacts {
  readonly id: string;
  readonly meaning: 'done' | 'inspection';
  /** For an inspection: the signature of the work it looked at. */
  readonly coversId: string | null;
  /** Hash of the content signed, lower-case hexadecimal. */
  readonly contentHash: string;
  readonly personId: string;
  readonly personName: string;
  readonly licence: string | null;
  /** When the work was done or looked at, and when it was signed. */
  readonly performedAt: Instant;
  readonly signedAt: Instant;
  readonly undone: boolean;
  /** Whether it is a recorded re-inspection by the person who did the work. */
  readonly reinspection: boolean;
}

/** A step of a package with all that decides whether it is done. */
export interface StepFacts {
  readonly id: string;
  readonly definition: StepDefinition;
  /** Hash of its present content, lower-case hexadecimal. */
  readonly contentHash: string;
  /** Its entries that are not voided, in the order recorded. */
  readonly entries: readonly StepEntry[];
  readonly signatures: readonly StepSignatureFacts[];
}
