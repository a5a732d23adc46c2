import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { add, compare, fraction, multiply, ONE, subtract } from '../units/fraction.js';
import { settingWindow } from './window.js';

const range = (low: number, high: number) => ({ low: fraction(low), high: fraction(high) });

describe('the window of a tool', () => {
  it('is the range itself for a tool that does not deviate', () => {
    expect(settingWindow(range(100, 140), fraction(0))).toEqual(range(100, 140));
  });

  it('is one value where the deviation just allows it, and none beyond', () => {
    // 96/(1 − 1/25) = 100 = 104/(1 + 1/25)
    expect(settingWindow(range(96, 104), fraction(1, 25))).toEqual(range(100, 100));
    expect(settingWindow(range(96, 104), fraction(41, 1000))).toBeNull();
  });

  it('is none for a deviation that is no share', () => {
    expect(settingWindow(range(1, 2), fraction(-1, 100))).toBeNull();
    expect(settingWindow(range(0, 2), ONE)).toBeNull();
  });

  it('keeps the fastener inside the range whichever way the tool deviates', () => {
    const whole = fc.bigInt({ min: 1n, max: 100_000n });
    fc.assert(
      fc.property(whole, whole, fc.bigInt({ min: 0n, max: 200n }), (a, b, thousandths) => {
        const [low, high] = a < b ? [fraction(a), fraction(b)] : [fraction(b), fraction(a)];
        const deviation = fraction(thousandths, 1000n);
        const window = settingWindow({ low, high }, deviation);
        fc.pre(window !== null);
        if (window === null) return;
        expect(compare(window.low, low)).toBeGreaterThanOrEqual(0);
        expect(compare(window.high, high)).toBeLessThanOrEqual(0);
        expect(multiply(window.low, subtract(ONE, deviation))).toEqual(low);
        expect(multiply(window.high, add(ONE, deviation))).toEqual(high);
      }),
    );
  });
});
