import { add, compare, divide, type Fraction, ONE, subtract, ZERO } from '../units/fraction.js';
import type { TorqueRange } from './torque.js';

/**
 * What a tool may show so that the fastener is inside the range though the tool deviates: [low/(1−u), high/(1+u)].
 *
 * `deviation` is a share (4 % is 1/25), relative to what is applied. Null when there is no such value: the tool is
 * not accurate enough for the range, or the deviation is below 0 or 1 and more. Constructed from the definition of
 * a relative deviation, as ISO 6789 states it. Total.
 */
export function settingWindow(range: TorqueRange, deviation: Fraction): TorqueRange | null {
  if (compare(deviation, ZERO) < 0 || compare(deviation, ONE) >= 0) return null;
  const low = divide(range.low, subtract(ONE, deviation));
  const high = divide(range.high, add(ONE, deviation));
  return compare(low, high) <= 0 ? { low, high } : null;
}
