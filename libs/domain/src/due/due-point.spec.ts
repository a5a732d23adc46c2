import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { floor, fraction, subtract } from '../units/fraction.js';
import { duePoint } from './due-point.js';

describe('a due point', () => {
  it('is the reading and what remains, in units of the clock', () => {
    expect(duePoint({ remainingExact: fraction(7, 3), reading: 100, denominator: 2 })).toBe(104);
    expect(duePoint({ remainingExact: fraction(-7, 3), reading: 100, denominator: 2 })).toBe(95);
    expect(duePoint({ remainingExact: fraction(90), reading: 1000, denominator: 1 })).toBe(1090);
  });

  it('loses nothing as whole units are flown', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -999, max: 9999 }),
        fc.integer({ min: 1, max: 97 }),
        fc.integer({ min: 1, max: 8 }),
        fc.nat(500),
        (num, den, denominator, units) => {
          const remaining = fraction(num, den);
          const dueAt = duePoint({ remainingExact: remaining, reading: 40, denominator });
          const left = subtract(remaining, fraction(units, denominator));
          expect(Math.floor((dueAt - 40 - units) / denominator)).toBe(floor(left));
        },
      ),
    );
  });
});
