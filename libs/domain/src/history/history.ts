import type { Precision } from '../stays/boundary.js';
import type { Instant } from '../units/minutes.js';

/** Counters printed beside a line: whole minutes, whole cycles used, rounded up; null where not known. */
export interface LineTotals {
  readonly minutes: number | null;
  readonly cycles: number | null;
}

/** What every fact of a history has: when it happened and how exactly that is known, and who recorded it when. */
interface FactBase {
  readonly id: string;
  readonly at: Instant;
  readonly precision: Precision;
  /** Its number in the journal; null for what the journal did not see. */
  readonly journalNumber: number | null;
  readonly recordedAt: Instant;
  readonly by: string;
  /** When it does not count any more: who struck it and why. The line stays, struck. */
  readonly voided: { readonly recordedAt: Instant; readonly by: string; readonly reason: string } | null;
}

/** What happened, by kind. */
export type HistoryEvent =
  | { readonly kind: 'registered'; readonly serial: string; readonly partNumber: string | null }
  | {
      readonly kind: 'opening';
      readonly source: string;
      readonly minutes: number | null;
      /** Whole cycles, or units over `cycleDenominator` where that is told. */
      readonly cycles: number | null;
      readonly cycleDenominator?: number;
    }
  | { readonly kind: 'installed'; readonly place: string; readonly counters: LineTotals | null }
  | {
      readonly kind: 'removed';
      readonly place: string;
      readonly reason: string | null;
      readonly counters: LineTotals | null;
    }
  | {
      readonly kind: 'flight';
      readonly page: string | null;
      readonly from: string | null;
      readonly to: string | null;
      readonly takeOffAt: Instant;
      /** What the flight adds to the subject: minutes, and cycle units over the denominator. */
      readonly minutes: number;
      readonly cycleUnits: number | null;
      readonly cycleDenominator: number;
    }
  | { readonly kind: 'correction'; readonly reason: string; readonly replacesId: string | null }
  | {
      readonly kind: 'engine-change';
      readonly position: string;
      readonly offSerial: string | null;
      readonly onSerial: string | null;
    }
  | {
      /** Something of a package that is worked by steps. */
      readonly kind: 'work';
      readonly what:
        | 'opened'
        | 'ordered'
        | 'attempt'
        | 'signed'
        | 'inspected'
        | 'requirement-met'
        | 'withdrawn';
      readonly package: string;
    }
  | { readonly kind: 'rating-change'; readonly from: string | null; readonly to: string | null }
  | {
      readonly kind: 'trace-gap';
      readonly description: string;
      /** The most that may have been used in it, under a recorded acceptance; without one, or where it doesn't say, the totals are not known. */
      readonly worstCase: { readonly minutes: number | null; readonly cycles: number | null } | null;
    }
  | { readonly kind: 'trace-acceptance'; readonly reference: string }
  | { readonly kind: 'reset'; readonly what: 'overhaul' | 'shop-visit' | 'repair'; readonly evidence: string }
  | { readonly kind: 'reset'; readonly what: 'overhaul' | 'shop-visit'; readonly evidence: string }
  | {
      /** Something of a shop, a tag or a preservation. */
      readonly kind: 'shop';
      readonly what: 'sent' | 'returned' | 'changed' | 'tagged' | 'preserved';
    }
  | { readonly kind: 'release'; readonly statement: string; readonly signer: string };

/** A fact of a history. */
export type HistoryFact = FactBase & { readonly event: HistoryEvent };

/** One line of a history: the fact, and the totals after it. A struck line changes no total. */
export interface HistoryLine {
  readonly fact: HistoryFact;
  readonly struck: boolean;
  readonly totals: LineTotals;
}
