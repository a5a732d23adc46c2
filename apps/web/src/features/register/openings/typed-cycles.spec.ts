import { describe, expect, it } from '@jest/globals';
import { readCycles } from './typed-cycles.js';

describe('cycles as typed', () => {
  it('are whole, decimal or a fraction, in lowest terms', () => {
    expect(readCycles('8,226')).toEqual({ units: 8226, denominator: 1 });
    expect(readCycles('8226.5')).toEqual({ units: 16_453, denominator: 2 });
    expect(readCycles('8226 2/6')).toEqual({ units: 24_679, denominator: 3 });
    expect(readCycles('0')).toEqual({ units: 0, denominator: 1 });
  });

  it('are nothing else', () => {
    for (const typed of ['', '-1', '1e3', '1/2', '8 1/0', '8.1234']) expect(readCycles(typed)).toBeNull();
  });
});
