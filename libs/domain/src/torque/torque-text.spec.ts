import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import { rangeText, scaleOf, torqueText } from './torque-text.js';

const scale = scaleOf({ unit: 'N·m', low: '105.0', high: '115' });

describe('a torque in words', () => {
  it('has the decimals of its data', () => {
    expect(scale).toEqual({ unit: 'N·m', decimals: 1 });
    expect(torqueText(fraction(115), scale)).toBe('115.0 N·m');
    expect(torqueText(fraction(11_501, 100), scale)).toBe('115.01 N·m');
    expect(torqueText(fraction(1000, 3), scale)).toBe('333.33 N·m');
  });

  it('is never shown on the other side of a bound, nor on it', () => {
    const bounds = [fraction(105), fraction(115)];
    expect(torqueText(fraction(115_001, 1000), scale, bounds)).toBe('115.001 N·m');
    expect(torqueText(fraction(1_049_999, 10_000), scale, bounds)).toBe('104.9999 N·m');
    expect(torqueText(fraction(345_001, 3000), scale, bounds)).toBe('115.0003 N·m');
  });
});

describe('a range in words', () => {
  it('has the decimals of its data where they suffice', () => {
    expect(rangeText({ low: fraction(105), high: fraction(115) }, scale)).toBe('105.0 to 115.0 N·m');
    expect(rangeText({ low: fraction(10_825, 100), high: fraction(11_825, 100) }, scale)).toBe(
      '108.25 to 118.25 N·m',
    );
  });

  it('is rounded inwards where it does not end', () => {
    expect(rangeText({ low: fraction(100, 3), high: fraction(200, 3) }, scale)).toBe('33.334 to 66.666 N·m');
  });
});
