import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { add, ceil, compare, divide, floor, fraction, multiply, ONE, subtract, ZERO } from './fraction.js';

const whole = fc.bigInt({ min: -10_000n, max: 10_000n });
const anyFraction = fc
  .tuple(whole, fc.bigInt({ min: 1n, max: 500n }))
  .map(([num, den]) => fraction(num, den));

describe('an exact fraction', () => {
  it('is kept in lowest terms over a positive denominator', () => {
    expect(fraction(6, -4)).toEqual({ num: -3n, den: 2n });
    expect(fraction(0, 7)).toEqual(ZERO);
  });

  it('has no zero denominator', () => {
    expect(() => fraction(1, 0)).toThrow(RangeError);
    expect(() => divide(ONE, ZERO)).toThrow(RangeError);
  });

  it('rounds down and up, below zero too', () => {
    expect([fraction(7, 2), fraction(-7, 2), fraction(4)].map(floor)).toEqual([3, -4, 4]);
    expect([fraction(7, 2), fraction(-7, 2), fraction(-1, 2), fraction(4)].map(ceil)).toEqual([4, -3, 0, 4]);
  });

  it('adds thirds without a remainder', () => {
    const third = fraction(1, 3);
    expect(add(add(third, third), third)).toEqual(ONE);
  });

  it('undoes what it does', () => {
    fc.assert(
      fc.property(anyFraction, anyFraction, (a, b) => {
        expect(subtract(add(a, b), b)).toEqual(a);
        if (compare(b, ZERO) !== 0) expect(divide(multiply(a, b), b)).toEqual(a);
        expect(compare(a, b)).toBe(-compare(b, a) + 0);
        expect(floor(a)).toBeLessThanOrEqual(ceil(a));
      }),
    );
  });
});
