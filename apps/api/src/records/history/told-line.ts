/** Cycles on the wire: whole units over a denominator. */
export interface ToldCycles {
  readonly units: number;
  readonly denominator: number;
}

/** The package a line belongs to, and the step in it where it is about one. */
export interface ToldWork {
  readonly packageId: string;
  readonly number: string;
  readonly stepId: string | null;
}

/**
 * A line of a history as it is told. The answer on the wire, the screen and the printed document all show these
 * members, in this order; none of them computes anything.
 *
 * Instants are written 'YYYY-MM-DDTHH:MMZ'. A null amount inside `adds` or `totals` is not known.
 */
export interface ToldLine {
  readonly at: string;
  /** How the instant is known where no minute was recorded: 'after log page 0417'; null when it is known to the minute. */
  readonly placed: string | null;
  readonly title: string;
  readonly detail: string;
  /** The fact does not count any more: when that was recorded, by whom and why. */
  readonly struck: { readonly recordedAt: string; readonly by: string; readonly reason: string } | null;
  /** What the fact adds to the counters; null where it adds nothing. */
  readonly adds: { readonly minutes: number | null; readonly cycles: ToldCycles | null } | null;
  /** The counters after it, cycles rounded up. */
  readonly totals: { readonly minutes: number | null; readonly cycles: number | null };
  /** Where it was done; null for what is in no package. A way for the reader, not printed. */
  readonly work: ToldWork | null;
  /** Its entry in the journal: number, when it was recorded, by whom, and the beginning of the entry's hash. */
  readonly entry: {
    readonly number: number | null;
    readonly recordedAt: string;
    readonly by: string;
    readonly hash: string | null;
  };
}

/** What a history is about. */
export interface ToldSubject {
  readonly kind: 'airframe' | 'component';
  readonly id: string;
  /** 'Airframe ZZ-417' or 'Engine KT-442'. */
  readonly label: string;
  /** The facts that identify it, in order. */
  readonly identity: readonly { readonly name: string; readonly value: string }[];
}

/** Where a history ends: how many lines, and the counters after the last. */
export interface ToldTotals {
  readonly lines: number;
  readonly minutes: number | null;
  readonly cycles: number | null;
}
