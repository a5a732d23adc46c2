import { describe, expect, it } from '@jest/globals';
import { formatHours, tenths } from '@strutbook/domain/units/minutes.js';

/** The minutes of an hour at which one more tenth is shown. */
function thresholds(convention: 'half-up' | 'half-down'): readonly number[] {
  const minutes = Array.from({ length: 60 }, (_, index) => index + 1);
  return minutes.filter((minute) => tenths(minute, convention) > tenths(minute - 1, convention));
}

/** Source: the hours-and-tenths table of a national air navigation service's logbook, and a carrier's chart. */
describe('tenths of an hour (two published logbook conventions)', () => {
  it('rise at 3, 9, 15 … 57 minutes, half up (a national air navigation service’s table)', () => {
    expect(thresholds('half-up')).toEqual([3, 9, 15, 21, 27, 33, 39, 45, 51, 57]);
    expect(tenths(45, 'half-up')).toBe(8);
  });

  it('rise at 4, 10, 16 … 58 minutes, half down (a carrier’s chart)', () => {
    expect(thresholds('half-down')).toEqual([4, 10, 16, 22, 28, 34, 40, 46, 52, 58]);
    expect(tenths(45, 'half-down')).toBe(7);
  });

  // Made up for this test: rounding and then adding drifts, adding and then rounding does not.
  it('five flights of 1:52 are 9:20 or 9.3, not the 9.5 of added tenths', () => {
    expect(formatHours(5 * 112)).toBe('9:20');
    expect(tenths(5 * 112, 'half-up')).toBe(93);
    expect(5 * tenths(112, 'half-up')).toBe(95);
  });
});
