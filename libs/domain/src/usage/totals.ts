import { add, type Fraction, ZERO } from '../units/fraction.js';
import type { Instant } from '../units/minutes.js';
import { type Counts, equalCounts, zeroCounts } from './counts.js';
import { type CycleRule, cycles } from './cycle-rule.js';

/** What a component had used at one rating when its record here begins. Null: not known, which is not zero. */
export interface Opening {
  readonly at: Instant;
  readonly ratingId: string | null;
  readonly minutes: number | null;
  readonly cycles: Fraction | null;
}

/** What one exposure saw of its carrier's clock: counts at its end (or at the instant asked) less counts at its start. */
export interface ExposureAmounts {
  readonly ratingId: string | null;
  readonly cycleRuleId: string | null;
  readonly counts: Counts;
}

/** The use of a component at one rating (null: at a rating nobody knows). A null amount is not known. */
export interface RatingTotal {
  readonly ratingId: string | null;
  readonly minutes: number | null;
  readonly cycles: Fraction | null;
}

/** The use of a component, exact: whole minutes, cycles as a fraction; null where something is not known. */
export interface Totals {
  readonly minutes: number | null;
  readonly cycles: Fraction | null;
  readonly byRating: readonly RatingTotal[];
}

/** What totals are made of. No opening at all means that nothing is known from before: a new part has one of zero. */
export interface TotalsFacts {
  readonly openings: readonly Opening[];
  readonly exposures: readonly ExposureAmounts[];
  readonly cycleRules: ReadonlyMap<string, CycleRule>;
}

/**
 * The use of a component: its openings and what its exposures saw, per rating and in all.
 *
 * Unknown stays unknown: one missing amount makes its sum null, never zero. Cycles of an exposure without
 * a rule are unknown unless nothing ran. Total.
 */
export function totals({ openings, exposures, cycleRules }: TotalsFacts): Totals {
  const parts: RatingTotal[] = [
    // Without an opening nothing is known from before, at a rating nobody knows.
    ...(openings.length === 0 ? [{ ratingId: null, minutes: null, cycles: null }] : []),
    ...openings.map(({ ratingId, minutes, cycles: used }) => ({ ratingId, minutes, cycles: used })),
    ...exposures.map(({ ratingId, cycleRuleId, counts }) => ({
      ratingId,
      minutes: counts.minutes,
      cycles: cyclesOf(counts, cycleRuleId === null ? undefined : cycleRules.get(cycleRuleId)),
    })),
  ];
  const byRating = new Map<string | null, RatingTotal>();
  for (const part of parts) {
    const before = byRating.get(part.ratingId);
    byRating.set(
      part.ratingId,
      before === undefined ? part : { ratingId: part.ratingId, ...sum([before, part]) },
    );
  }
  const [first, ...others] = byRating.values();
  // Most components ran at one rating only.
  const whole = first !== undefined && others.length === 0 ? first : sum(parts);
  return { minutes: whole.minutes, cycles: whole.cycles, byRating: [...byRating.values()] };
}

function cyclesOf(counts: Counts, rule: CycleRule | undefined): Fraction | null {
  if (rule !== undefined) return cycles(counts, rule);
  return equalCounts(counts, zeroCounts) ? ZERO : null;
}

function sum(
  parts: readonly Pick<RatingTotal, 'minutes' | 'cycles'>[],
): Pick<RatingTotal, 'minutes' | 'cycles'> {
  let minutes: number | null = 0;
  let used: Fraction | null = ZERO;
  for (const part of parts) {
    minutes = minutes === null || part.minutes === null ? null : minutes + part.minutes;
    used = used === null || part.cycles === null ? null : add(used, part.cycles);
  }
  return { minutes, cycles: used };
}
