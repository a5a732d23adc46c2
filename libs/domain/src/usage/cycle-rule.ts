import { type Fraction, fraction } from '../units/fraction.js';
import type { Counts } from './counts.js';

/**
 * Whole weights over a denominator that turn counted events into cycles, for one engine model on one
 * airframe type.
 *
 * A touch-and-go is counted in `landings` too: a rule weighs flights, or landings, seldom both.
 */
export interface CycleRule {
  readonly id: string;
  readonly perFlight: number;
  readonly perLanding: number;
  readonly perTouchAndGo: number;
  readonly perStart: number;
  readonly perAbortedTakeOff: number;
  /** Whole, at least 1: what the weights are counted in. */
  readonly denominator: number;
}

/** Cycles in units of 1 / denominator: a whole number, exact. Total. */
export function cycleUnits(counts: Counts, rule: CycleRule): number {
  return (
    counts.flights * rule.perFlight +
    counts.landings * rule.perLanding +
    counts.touchAndGoes * rule.perTouchAndGo +
    counts.starts * rule.perStart +
    counts.abortedTakeOffs * rule.perAbortedTakeOff
  );
}

/** Cycles as an exact fraction. Throws when the denominator is zero. */
export function cycles(counts: Counts, rule: CycleRule): Fraction {
  return fraction(cycleUnits(counts, rule), rule.denominator);
}
