import { type Fraction, subtract } from '../units/fraction.js';

/** A pair of counters: whole minutes, and cycles as an exact fraction; null where not known. */
export interface Counters {
  readonly minutes: number | null;
  readonly cycles: Fraction | null;
}

/**
 * Counters since a reset (overhaul, shop visit, installation): the counters now less those at the reset.
 *
 * Nothing is ever set to zero: counters since new run on, and a reset is a point on them. Unknown on
 * either side stays unknown. Total.
 */
export function countersSince(reset: Counters, now: Counters): Counters {
  return {
    minutes: now.minutes === null || reset.minutes === null ? null : now.minutes - reset.minutes,
    cycles: now.cycles === null || reset.cycles === null ? null : subtract(now.cycles, reset.cycles),
  };
}
