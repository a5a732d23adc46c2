import { divide, type Fraction, fraction, multiply } from '../units/fraction.js';
import type { TorqueUnit } from './torque.js';

const POUND = fraction(45_359_237n, 100_000_000n);
const GRAVITY = fraction(980_665n, 100_000n);
const FOOT = fraction(3048n, 10_000n);
const POUND_FORCE = multiply(POUND, GRAVITY);

const IN_NEWTON_METRES: Readonly<Record<TorqueUnit, Fraction>> = {
  N·m: fraction(1),
  lbf·ft: multiply(POUND_FORCE, FOOT),
  lbf·in: divide(multiply(POUND_FORCE, FOOT), fraction(12)),
  kgf·m: GRAVITY,
};

/**
 * A torque in newton metres, exactly.
 *
 * Source: NIST SP 811, appendix B: the pound is 0.45359237 kg, the foot 0.3048 m, standard gravity 9.80665 m/s²,
 * all by definition. Total.
 */
export function inNewtonMetres(value: Fraction, unit: TorqueUnit): Fraction {
  return multiply(value, IN_NEWTON_METRES[unit]);
}

/** A torque in another unit, exactly: there and back gives the same number. Source: as `inNewtonMetres`. Total. */
export function convertTorque(value: Fraction, from: TorqueUnit, to: TorqueUnit): Fraction {
  return from === to ? value : divide(inNewtonMetres(value, from), IN_NEWTON_METRES[to]);
}
