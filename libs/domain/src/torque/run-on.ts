import { add, compare, type Fraction, fraction, multiply, ZERO } from '../units/fraction.js';
import type { RunOnRule, TorqueRange } from './torque.js';

/**
 * The range the fastener must end in, with its run-on torque; all in one unit.
 *
 * 'add' moves both bounds up by it. 'one-third' leaves the range alone while it is less than a third of the
 * recommended torque; read here as a third of the range's lower bound, where it is counted soonest. Throws on a
 * negative torque.
 *
 * Source: FAA AC 43.13-1B, 7-40 (add); US Army TB 43-0218, 3-7 (one third).
 */
export function rangeWithRunOn(range: TorqueRange, runOn: Fraction, rule: RunOnRule): TorqueRange {
  if (compare(runOn, ZERO) < 0) throw new RangeError('a run-on torque below zero');
  const counts =
    rule === 'add' || (rule === 'one-third' && compare(multiply(runOn, fraction(3)), range.low) >= 0);
  return counts ? { low: add(range.low, runOn), high: add(range.high, runOn) } : range;
}
