import { add, divide, type Fraction, fraction, multiply, ONE, subtract, ZERO } from '../units/fraction.js';
import type { RatingTotal } from '../usage/totals.js';
import type { LifeFacts, RatingLimit, TraceAcceptance } from './life.js';
import { limitAt, wasUsed } from './substantiation.js';

/** How much of a life is used in one dimension, and what remains of it at the rating now; exact. */
export interface LifeShare {
  readonly used: Fraction;
  readonly remaining: Fraction;
  /** The limit the remaining counts against. */
  readonly limit: number;
  /** Whether something unknown was counted at its worst. */
  readonly worstCase: boolean;
}

type Dimension = 'cycles' | 'minutes';

/**
 * The share of a life used in cycles or in minutes. Everything needed is known by now: amounts that are
 * null count as nothing here, and the caller has told why they are missing. Throws on a limit of zero.
 */
export function shareOfLife(dimension: Dimension, facts: LifeFacts, limitNow: number): LifeShare {
  const unknown = amountAtUnknownRating(dimension, facts);
  const worst =
    unknown === null ? worstOfGaps(dimension, facts) : add(unknown, worstOfGaps(dimension, facts));
  const worstCase = unknown !== null || facts.traceGaps.length > 0;
  return facts.method === 'pro-rata'
    ? proRata(dimension, facts, { limitNow, worst, worstCase })
    : lowestLimit(dimension, facts, { limitNow, worst, worstCase });
}

interface WorstCase {
  readonly limitNow: number;
  readonly worst: Fraction;
  readonly worstCase: boolean;
}

function proRata(
  dimension: Dimension,
  facts: LifeFacts,
  { limitNow, worst, worstCase }: WorstCase,
): LifeShare {
  let used = worstCase ? divide(worst, fraction(lowest(dimension, facts.limits, limitNow))) : ZERO;
  for (const total of atKnownRating(facts)) {
    const limit = limitIn(dimension, limitAt(facts.limits, total.ratingId));
    if (limit !== null) used = add(used, divide(amountOf(dimension, total), fraction(limit)));
  }
  return { used, remaining: multiply(subtract(ONE, used), fraction(limitNow)), limit: limitNow, worstCase };
}

function lowestLimit(
  dimension: Dimension,
  facts: LifeFacts,
  { limitNow, worst, worstCase }: WorstCase,
): LifeShare {
  const ran = atKnownRating(facts).filter(wasUsed);
  const limits = worstCase
    ? facts.limits
    : ran.flatMap((total) => limitAt(facts.limits, total.ratingId) ?? []);
  const limit = lowest(dimension, limits, limitNow);
  const used = ran.reduce((sum, total) => add(sum, amountOf(dimension, total)), worst);
  return {
    used: divide(used, fraction(limit)),
    remaining: subtract(fraction(limit), used),
    limit,
    worstCase,
  };
}

/** Use at a rating nobody knows, where the rating matters; null when there is none. */
function amountAtUnknownRating(dimension: Dimension, facts: LifeFacts): Fraction | null {
  if (limitAt(facts.limits, null) !== null) return null;
  const unknown = facts.used.filter((total) => total.ratingId === null && wasUsed(total));
  return unknown.length === 0
    ? null
    : unknown.reduce((sum, total) => add(sum, amountOf(dimension, total)), ZERO);
}

function atKnownRating(facts: LifeFacts): readonly RatingTotal[] {
  const ratingsMatter = limitAt(facts.limits, null) === null;
  return facts.used.filter((total) => !ratingsMatter || total.ratingId !== null);
}

function worstOfGaps(dimension: Dimension, { traceGaps, acceptance }: LifeFacts): Fraction {
  const accepted = new Set(traceGaps.map((gap) => gap.acceptance ?? acceptance));
  return [...accepted].reduce((sum, found) => add(sum, fraction(worstOf(dimension, found) ?? 0)), ZERO);
}

function worstOf(dimension: Dimension, acceptance: TraceAcceptance | null): number | null {
  if (acceptance === null) return null;
  return dimension === 'cycles' ? acceptance.worstCaseCycles : acceptance.worstCaseMinutes;
}

function amountOf(dimension: Dimension, total: RatingTotal): Fraction {
  if (dimension === 'cycles') return total.cycles ?? ZERO;
  return fraction(total.minutes ?? 0);
}

function limitIn(dimension: Dimension, limit: RatingLimit | null): number | null {
  return limit?.kind === 'limited' ? limit[dimension] : null;
}

function lowest(dimension: Dimension, limits: readonly RatingLimit[], limitNow: number): number {
  return limits.reduce((least, limit) => Math.min(least, limitIn(dimension, limit) ?? least), limitNow);
}
