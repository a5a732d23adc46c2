import { type Fraction, floor, fraction, multiply } from '../units/fraction.js';

/** What a due point is made of. */
export interface DuePointFacts {
  /** What remains before rounding, in cycles (or minutes); negative when over. */
  readonly remainingExact: Fraction;
  /** The clock's reading now, in units of 1 / denominator. */
  readonly reading: number;
  /** The rule's denominator: 1 for minutes. */
  readonly denominator: number;
}

/**
 * The reading of a clock at which something falls due: the reading now and what exactly remains, rounded
 * down to whole units of the clock. As later flights are whole units, nothing is lost by rounding once.
 *
 * Units: those of the clock, 1 / denominator. Throws beyond 2^53.
 */
export function duePoint({ remainingExact, reading, denominator }: DuePointFacts): number {
  return reading + floor(multiply(remainingExact, fraction(denominator)));
}
