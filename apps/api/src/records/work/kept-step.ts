import type { Judgement, StepEntry, Typed } from '@strutbook/domain/work/entry.js';
import type { StepDefinition } from '@strutbook/domain/work/step.js';
import type { StepFacts, StepSignatureFacts } from '@strutbook/domain/work/step-standing.js';

/** An entry with what the record keeps besides: when, the tool's and the picture's id, and whether it was voided. */
export interface KeptEntry extends StepEntry {
  /** ISO 8601 in UTC with milliseconds. */
  readonly enteredAt: string;
  readonly toolId: string | null;
  readonly componentId: string | null;
  readonly photoId: string | null;
  readonly voided: boolean;
  readonly voidReason: string | null;
}

/** A signature with how it was given and, when it was undone, why. */
export interface KeptSignature extends StepSignatureFacts {
  readonly method: string;
  readonly undoneReason: string | null;
  readonly reinspectionReason: string | null;
}

/** A step as it is kept: voided entries and undone signatures too. */
export interface KeptStep {
  readonly id: string;
  readonly packageId: string;
  readonly version: number;
  readonly contentHash: string;
  readonly definition: StepDefinition;
  readonly entries: readonly KeptEntry[];
  readonly signatures: readonly KeptSignature[];
}

/** A step's row as the statement gives it: texts of canonical JSON not yet read. */
export interface StepRow {
  readonly id: string;
  readonly packageId: string;
  readonly version: number;
  readonly contentHash: string;
  readonly definition: string;
  readonly entries: readonly EntryRow[];
  readonly signatures: readonly KeptSignature[];
}

type EntryRow = Omit<KeptEntry, 'typed' | 'judgement'> & { readonly typed: string; readonly judged: string };

/** A row as the features read it. Total for rows this server wrote. */
export function keptStep({ definition, entries, ...row }: StepRow): KeptStep {
  return {
    ...row,
    definition: JSON.parse(definition) as StepDefinition,
    entries: entries.map(({ typed, judged, ...entry }) => ({
      ...entry,
      typed: JSON.parse(typed) as Typed,
      judgement: JSON.parse(judged) as Judgement,
    })),
  };
}

/** A step as the core judges it: without the entries that were voided. Total. */
export function stepFacts({ id, definition, contentHash, entries, signatures }: KeptStep): StepFacts {
  return { id, definition, contentHash, entries: entries.filter((entry) => !entry.voided), signatures };
}
