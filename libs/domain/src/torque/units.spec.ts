import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { fraction } from '../units/fraction.js';
import { isTorqueUnit, TORQUE_UNITS } from './torque.js';
import { convertTorque, inNewtonMetres } from './units.js';

const unit = fc.constantFrom(...TORQUE_UNITS);

describe('a torque in another unit', () => {
  it('is exact: a foot is twelve inches', () => {
    expect(convertTorque(fraction(42), 'lbf·ft', 'lbf·in')).toEqual(fraction(504));
    expect(convertTorque(fraction(31), 'lbf·in', 'lbf·ft')).toEqual(fraction(31, 12));
    expect(convertTorque(fraction(1), 'kgf·m', 'N·m')).toEqual(fraction(980_665, 100_000));
    expect(inNewtonMetres(fraction(3), 'N·m')).toEqual(fraction(3));
  });

  it('comes back as the same number, by any way', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 9n }), unit, unit, unit, (num, a, b, c) => {
        const value = fraction(num, 1000n);
        expect(convertTorque(convertTorque(value, a, b), b, a)).toEqual(value);
        expect(convertTorque(convertTorque(value, a, b), b, c)).toEqual(convertTorque(value, a, c));
      }),
    );
  });

  it('has a unit that is one of four', () => {
    expect(isTorqueUnit('lbf·in')).toBe(true);
    expect(['ft-lb', 'Nm', 'mm', ''].map(isTorqueUnit)).toEqual([false, false, false, false]);
  });
});
