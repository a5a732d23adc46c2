import { describe, expect, test } from '@jest/globals';
import { cyclesOrUnknown, exactCycles, sharePercent } from './cycles.js';

describe('cycles', () => {
  test('are told exactly, in decimals where these end', () => {
    expect(exactCycles({ units: 15_962, denominator: 2 })).toBe('7,981');
    expect(exactCycles({ units: 15_963, denominator: 2 })).toBe('7,981.5');
    expect(exactCycles({ units: 5, denominator: 4 })).toBe('1.25');
    expect(exactCycles({ units: 1, denominator: 8 })).toBe('0.125');
  });

  test('are told as a fraction where the decimals do not end', () => {
    expect(exactCycles({ units: 4, denominator: 3 })).toBe('1 1/3');
    expect(exactCycles({ units: 4, denominator: 6 })).toBe('0 2/3');
  });

  test('keep their sign below one', () => {
    expect(exactCycles({ units: -1, denominator: 2 })).toBe('\u22120.5');
    expect(exactCycles({ units: -9, denominator: 2 })).toBe('\u22124.5');
  });

  test('that are not known are never nought', () => {
    expect(cyclesOrUnknown(null)).toBe('Not known');
    expect(cyclesOrUnknown({ units: 0, denominator: 2 })).toBe('0');
  });
});

describe('a share of a life', () => {
  test('says 100 % only when all is used', () => {
    expect(sharePercent({ units: 8981, denominator: 11_000 })).toBe('81.6 %');
    expect(sharePercent({ units: 99_999, denominator: 100_000 })).toBe('99.9 %');
    expect(sharePercent({ units: 1, denominator: 1 })).toBe('100.0 %');
    expect(sharePercent({ units: 9004, denominator: 9000 })).toBe('100.0 %');
    expect(sharePercent({ units: 3, denominator: 2 })).toBe('150.0 %');
  });
});
