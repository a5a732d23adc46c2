import type { Fraction } from '@strutbook/domain/units/fraction.js';
import type { Counts } from '@strutbook/domain/usage/counts.js';
import type { Counters as Pair } from '@strutbook/domain/usage/since.js';

/** What a counter is counted from. */
export type CounterBasis = 'new' | 'overhaul' | 'shop-visit' | 'repair' | 'installation';

/** How a moment was told: by an instant, a log page or a day, with what was typed. */
export interface ToldAt {
  readonly at: Date;
  readonly kind: string;
  readonly text: string | null;
}

/** What set a counter to nothing. */
export interface ResetBehind extends ToldAt {
  readonly kindOfReset: 'overhaul' | 'shop-visit' | 'repair' | 'installation' | 'opening';
  readonly id: string;
  /** The document that shows it, or the place of an installation. */
  readonly evidence: string;
}

/** A rule by which events were turned into cycles. */
export interface RuleBehind {
  readonly id: string;
  readonly perFlight: number;
  readonly perLanding: number;
  readonly perTouchAndGo: number;
  readonly perStart: number;
  readonly perAbortedTakeOff: number;
  readonly denominator: number;
  readonly source: string | null;
  readonly revision: string | null;
}

/** The clock a component ran by. */
export interface CarrierBehind {
  readonly id: string;
  readonly kind: string;
  /** In words: 'ZZ-101 position 1'. */
  readonly label: string;
  readonly airframeId: string | null;
  readonly positionId: string | null;
  readonly positionNumber: number | null;
}

/** A flight of which a position did not count all. */
export interface ExceptionWithin {
  readonly flightId: string;
  readonly logPage: string;
  readonly landingAt: Date;
  readonly kind: string;
  readonly missed: Counts;
}

interface Amount {
  readonly minutes: number | null;
  readonly cycles: Fraction | null;
  /** The sum so far. */
  readonly running: Pair;
}

/** One line of the sum. */
export type Addend = Amount &
  (
    | {
        readonly kind: 'opening';
        readonly id: string;
        readonly told: ToldAt;
        readonly ratingCode: string | null;
        readonly source: string;
        readonly trace: string;
        readonly traceNote: string | null;
      }
    | {
        readonly kind: 'exposure';
        readonly from: Date;
        readonly to: Date | null;
        readonly carrier: CarrierBehind;
        /** What carried it then; null where the stays don't say. */
        readonly engine: { readonly id: string; readonly serialNumber: string } | null;
        readonly ratingCode: string | null;
        readonly rule: RuleBehind | null;
        readonly counts: Counts;
        readonly exceptions: readonly ExceptionWithin[];
      }
    | {
        readonly kind: 'gap';
        readonly id: string;
        readonly from: Date;
        readonly to: Date;
        readonly note: string;
        /** By whom and under which reference the worst case was accepted; null while it is not. */
        readonly accepted: { readonly by: string; readonly reference: string } | null;
      }
    | { readonly kind: 'unknown'; readonly reason: string }
  );

/** One counter with the sum it comes from. */
export interface ExplainedCounter {
  readonly basis: CounterBasis;
  readonly total: Pair;
  /** What set it to nothing; null for counters since new. */
  readonly reset: ResetBehind | null;
  readonly addends: readonly Addend[];
}
