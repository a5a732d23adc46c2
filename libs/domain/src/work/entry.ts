import type { TorqueUnit } from '../torque/torque.js';
import type { CaptureKind } from './capture.js';

/** An extension or adapter on a wrench. */
export interface ExtensionTyped {
  /** Grip centre to drive centre, and drive centre to fastener centre, in one unit. */
  readonly wrenchLength: string;
  readonly length: string;
  /** Degrees between wrench and adapter: 0 straight out, 90 no effect, 180 pointing back. */
  readonly angle: string;
}

/** What was typed for a capture, kept exactly as typed. */
export type Typed =
  | {
      readonly kind: 'torque';
      readonly point: string;
      /** What the wrench showed or was set to. */
      readonly indication: string;
      readonly unit: TorqueUnit;
      readonly method: 'set-value' | 'reading';
      readonly runOn: string | null;
      readonly extension: ExtensionTyped | null;
    }
  | { readonly kind: 'count'; readonly number: string }
  | {
      readonly kind: 'component-off' | 'component-on';
      readonly serialNumber: string;
      readonly partNumber: string | null;
      /** The position the person stands at; null for a place inside a component. */
      readonly positionNumber: string | null;
    }
  | {
      readonly kind: 'papers';
      readonly plateSerial: string;
      readonly documentSerial: string;
      readonly documentNumber: string;
      readonly tag: 'serviceable' | 'unserviceable';
    }
  | {
      readonly kind: 'leak-check';
      readonly minutes: string;
      readonly power: string;
      readonly found: 'none' | 'leak';
    }
  | { readonly kind: 'readings'; readonly values: Readonly<Record<string, string>> }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'check'; readonly seen: boolean }
  | {
      readonly kind: 'photo';
      readonly fileName: string;
      readonly sha256: string;
    };

/** Why an entry is not accepted: a code, and the values its sentence needs. */
export interface EntryReason {
  readonly code: EntryReasonCode;
  readonly detail: Readonly<Record<string, string | number | null>>;
}

export type EntryReasonCode =
  | 'NOT_A_NUMBER'
  | 'BELOW_RANGE'
  | 'ABOVE_RANGE'
  | 'OUTSIDE_WINDOW'
  | 'NO_EFFECTIVE_LENGTH'
  | 'RUN_ON_MISSING'
  | 'RUN_ON_BELOW'
  | 'RUN_ON_ABOVE'
  | 'TOOL_MISSING'
  | 'TOOL_NOT_CALIBRATED'
  | 'TOOL_OUT_OF_DATE'
  | 'TOOL_RANGE_UNKNOWN'
  | 'TOOL_OUT_OF_RANGE'
  | 'OUT_OF_ORDER'
  | 'NO_SUCH_POINT'
  | 'SERIAL_DIFFERS'
  | 'PART_NUMBER_DIFFERS'
  | 'POSITION_DIFFERS'
  | 'NOT_IN_REGISTER'
  | 'PAPERS_DIFFER'
  | 'PAPERS_MISSING'
  | 'TAGGED_UNSERVICEABLE'
  | 'DURATION_MISSING'
  | 'DURATION_SHORT'
  | 'POWER_MISSING'
  | 'POWER_DIFFERS'
  | 'LEAK_FOUND'
  | 'READING_MISSING'
  | 'NOT_SEEN'
  | 'EMPTY';

/** What was made of an entry: accepted or not, why not, and the figures computed, as text with units. */
export interface Judgement {
  readonly verdict: 'accepted' | 'rejected';
  readonly reasons: readonly EntryReason[];
  /** For a torque: at the fastener, the range it must lie in with the run-on torque, the window of the tool. */
  readonly computed: Readonly<Record<string, string | null>>;
}

/** An entry of a step that is not voided, in the order recorded. */
export interface StepEntry {
  readonly id: string;
  readonly capture: string;
  readonly point: string | null;
  readonly kind: CaptureKind;
  readonly typed: Typed;
  readonly judgement: Judgement;
  /** Serial number of the tool; null where none was used. */
  readonly tool: string | null;
  readonly personId: string;
  readonly personName: string;
}
