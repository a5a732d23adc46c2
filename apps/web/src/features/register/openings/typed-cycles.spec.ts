import { describe, expect, it } from '@jest/globals';
import { readCycles } from './typed-cycles.js';

describe('cycles as typed', () => {
  it.each([
    ['8226', 8226, 1],
    [' 8,226 ', 8226, 1],
    ['1,008,226', 1_008_226, 1],
    ['8226.5', 16_453, 2],
    ['8226.25', 32_905, 4],
    ['8,226.5', 16_453, 2],
    ['8226 1/3', 24_679, 3],
    ['0', 0, 1],
  ])('%p are %i over %i', (typed, units, denominator) => {
    expect(readCycles(typed)).toEqual({ units, denominator });
  });

  it.each(['', '8226,5', '1,5', '82,26', '20.000', '8226.', '8226 1/0', '-1', '1e3', '8226 h', '1.234.567'])(
    '%p are refused, not read as something else',
    (typed) => {
      expect(readCycles(typed)).toBeNull();
    },
  );
});
