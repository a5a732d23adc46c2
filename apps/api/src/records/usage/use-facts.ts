import { type Counts, subtractCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import type { CycleRule } from '@strutbook/domain/usage/cycle-rule.js';
import type { Opening } from '@strutbook/domain/usage/totals.js';

/** An exposure as stored: a closed one with its amounts, an open one with the clock's reading at its start. */
export interface StoredExposure {
  readonly componentId: string;
  readonly carrierId: string;
  readonly ratingId: string | null;
  readonly cycleRuleId: string | null;
  readonly fromAt: Date;
  readonly toAt: Date | null;
  readonly counts: Counts;
}

/**
 * A span the records of a component do not cover, and whether somebody accepted the worst case for it. An opening balance
 * whose trace is not shown is one, too: nobody can tell what was before it.
 */
export interface RecordedGap {
  readonly id: string;
  readonly componentId: string;
  readonly fromAt: Date;
  readonly toAt: Date;
  readonly note: string;
  readonly accepted: boolean;
}

/** A recorded acceptance of the worst case. */
export interface RecordedAcceptance {
  readonly componentId: string;
  readonly by: string;
  readonly reference: string;
  /** The gap or the opening balance it is for; null for an unknown rating and all gaps without their own. */
  readonly traceGapId: string | null;
  /** The most that may have been used; null when it doesn't say. */
  readonly cycles: number | null;
  readonly minutes: number | null;
}

/** Everything recorded that the use of some components is made of. */
export interface UseFacts {
  readonly exposures: readonly StoredExposure[];
  readonly openings: readonly (Opening & { readonly componentId: string; readonly basis: string })[];
  /** Gaps, and openings since new whose trace is not shown. */
  readonly gaps: readonly RecordedGap[];
  /** Openings since an overhaul, a shop visit or a repair whose trace is not shown. */
  readonly unshownSince: readonly (RecordedGap & { readonly basis: string })[];
  readonly acceptances: readonly RecordedAcceptance[];
  readonly cycleRules: ReadonlyMap<string, CycleRule>;
}

/** Stands for the rule of a pod, whose cycles are the flights it was on. */
export const POD_RULE: CycleRule = {
  id: 'one-per-flight',
  perFlight: 1,
  perLanding: 0,
  perTouchAndGo: 0,
  perStart: 0,
  perAbortedTakeOff: 0,
  denominator: 1,
};

/** What an exposure had seen of its clock by an instant (null: by now); nothing before it began. */
export function seenBy(
  exposure: StoredExposure,
  at: Date | null,
  reading: (ask: { carrierId: string; at: Date | null }) => Counts,
): Counts {
  const { carrierId, fromAt, toAt, counts } = exposure;
  if (at !== null && at <= fromAt) return zeroCounts;
  if (toAt !== null && (at === null || toAt <= at)) return counts;
  const start = toAt === null ? counts : reading({ carrierId, at: fromAt });
  return subtractCounts(reading({ carrierId, at }), start);
}
