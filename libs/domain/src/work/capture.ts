import type { RunOnRule, TorqueUnit } from '../torque/torque.js';

/** A torque to be reached at each point of a group, in the order of the points. */
export interface TorqueCapture {
  readonly kind: 'torque';
  readonly key: string;
  readonly label: string;
  /** The fasteners in the order they are torqued: ['1', '3', '2', '4']. */
  readonly points: readonly string[];
  /** The approved range at the fastener, bounds included, as decimal text. */
  readonly low: string;
  readonly high: string;
  readonly unit: TorqueUnit;
  /** The condition of the thread the range is for. */
  readonly thread: 'dry' | 'lubricated';
  readonly runOn: {
    readonly rule: RunOnRule;
    /** What the run-on torque itself must lie in; null where the data sets no bound. */
    readonly low: string | null;
    readonly high: string | null;
  };
  /** What acceptance is judged on: the range alone, or the window that allows for the tool's deviation. */
  readonly binds: 'range' | 'window';
}

/** What is counted out and in again. */
export const COUNTED = ['tags', 'blanks', 'tools'] as const;

/** A number of tags, blanks or tools that went out or came back. */
export interface CountCapture {
  readonly kind: 'count';
  readonly key: string;
  readonly label: string;
  readonly what: (typeof COUNTED)[number];
  readonly direction: 'out' | 'in';
}

/** The serial that comes off or goes on, read from its plate; judged against the order and the register. */
export interface ComponentCapture {
  readonly kind: 'component-off' | 'component-on';
  readonly key: string;
  readonly label: string;
}

/** The plate of what is to be fitted against its release document. */
export interface PapersCapture {
  readonly kind: 'papers';
  readonly key: string;
  readonly label: string;
}

/** A look for leaks: how long, at which power, and what was found. */
export interface LeakCheckCapture {
  readonly kind: 'leak-check';
  readonly key: string;
  readonly label: string;
  /** The shortest time, in whole minutes, and the power the data asks for. */
  readonly minMinutes: number;
  readonly power: string;
}

/** One instrument of a run; bounds included, null where the data sets none. */
export interface ReadingRow {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly low: string | null;
  readonly high: string | null;
}

/** The readings of a run, all at one time. */
export interface ReadingsCapture {
  readonly kind: 'readings';
  readonly key: string;
  readonly label: string;
  readonly rows: readonly ReadingRow[];
}

/** A text: a part number of software, a remark. */
export interface TextCapture {
  readonly kind: 'text';
  readonly key: string;
  readonly label: string;
  readonly required: boolean;
}

/** A condition seen and confirmed. */
export interface CheckCapture {
  readonly kind: 'check';
  readonly key: string;
  readonly label: string;
}

/** A picture. */
export interface PhotoCapture {
  readonly kind: 'photo';
  readonly key: string;
  readonly label: string;
  readonly required: boolean;
}

/** What a step asks to be captured before it can be signed. */
export type Capture =
  | TorqueCapture
  | CountCapture
  | ComponentCapture
  | PapersCapture
  | LeakCheckCapture
  | ReadingsCapture
  | TextCapture
  | CheckCapture
  | PhotoCapture;

export type CaptureKind = Capture['kind'];
