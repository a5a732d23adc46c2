import { describe, expect, test } from '@jest/globals';
import { counted, cycles } from './counts.js';
import { remainingCycles, remainingDays, remainingMinutes } from './remaining.js';

describe('what remains', () => {
  test('is left until the limit and past beyond it', () => {
    expect(remainingCycles(2019)).toBe('2,019 cycles left');
    expect(remainingCycles(1)).toBe('1 cycle left');
    expect(remainingCycles(0)).toBe('0 cycles left');
    expect(remainingCycles(-4)).toBe('4 cycles past');
    expect(remainingMinutes(6252)).toBe('104:12 h left');
    expect(remainingMinutes(-90)).toBe('1:30 h past');
    expect(remainingDays(12)).toBe('12 days left');
    expect(remainingDays(0)).toBe('Due today');
    expect(remainingDays(-1)).toBe('1 day past');
  });

  test('is not known when there is no record, never nought', () => {
    expect([remainingCycles(null), remainingMinutes(null), remainingDays(null)]).toEqual([
      'Not known',
      'Not known',
      'Not known',
    ]);
  });
});

describe('counts', () => {
  test('take the singular at one alone', () => {
    expect(cycles(7981)).toBe('7,981 cycles');
    expect(cycles(1)).toBe('1 cycle');
    expect(counted(0, 'finding')).toBe('0 findings');
    expect(counted(2, 'entry', 'entries')).toBe('2 entries');
  });
});
