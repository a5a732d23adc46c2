import { describe, expect, it } from '@jest/globals';
import { addDays, addMonths } from '@strutbook/domain/units/calendar.js';

/** Source: XML Schema Part 2, appendix E, from memory; four date libraries agree with each value. */
describe('adding months and days (XML Schema Part 2, appendix E, from memory)', () => {
  it.each([
    ['2023-01-31', 1, '2023-02-28'],
    ['2024-01-31', 1, '2024-02-29'],
    ['2023-08-31', 6, '2024-02-29'],
    ['2024-03-31', -1, '2024-02-29'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2000-01-12', -3, '1999-10-12'],
  ])('%s and %i months are %s', (date, months, expected) => {
    expect(addMonths(date, months)).toBe(expected);
  });

  it('depends on the order of months and days', () => {
    expect(addMonths(addDays('2000-03-30', 1), 1)).toBe('2000-04-30');
    expect(addDays(addMonths('2000-03-30', 1), 1)).toBe('2000-05-01');
  });

  it('chained from the due date loses the day, anchored to the first date keeps it', () => {
    const chained = [1, 2, 3].reduce((date) => addMonths(date, 1), '2023-01-31');
    expect(chained).toBe('2023-04-28');
    expect(addMonths('2023-01-31', 3)).toBe('2023-04-30');
  });
});

/** Source: a small-aircraft maintenance manual, chapter 05: 'calendar months' run to the last day of the month. */
describe('calendar months to the month’s end (a small-aircraft maintenance manual, chapter 05)', () => {
  it.each([
    ['2005-09-15', 12, '2006-09-30'],
    ['2023-02-10', 24, '2025-02-28'],
    ['2023-02-10', 12, '2024-02-29'],
    ['2026-03-10', 12, '2027-03-31'],
  ])('%s and %i calendar months are %s', (date, months, expected) => {
    expect(addMonths(date, months, { rule: 'month-end' })).toBe(expected);
  });
});
