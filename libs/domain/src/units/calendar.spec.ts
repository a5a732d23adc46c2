import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { addDays, addMonths, compare, dateOf, daysBetween, isCalendarDate, startOfDay } from './calendar.js';
import { instant } from './minutes.js';

describe('a calendar date', () => {
  it.each(['2024-02-29', '2000-02-29', '2026-12-31'])('%s is one', (text) =>
    expect(isCalendarDate(text)).toBe(true),
  );
  it.each(['2023-02-29', '1900-02-29', '2026-13-01', '2026-04-31', '26-01-01', ''])('%j is none', (text) => {
    expect(isCalendarDate(text)).toBe(false);
    expect(() => addDays(text, 1)).toThrow(RangeError);
  });

  it('counts days over month, leap day and year', () => {
    expect(addDays('2024-02-28', 1)).toBe('2024-02-29');
    expect(addDays('2026-12-31', 1)).toBe('2027-01-01');
    expect(addDays('1970-01-01', -1)).toBe('1969-12-31');
    expect(daysBetween('2024-02-01', '2024-03-01')).toBe(29);
  });

  it('clamps months to the month’s end and keeps the anchor’s day', () => {
    expect(addMonths('2026-08-31', 6)).toBe('2027-02-28');
    expect(addMonths('2027-02-28', 6, { anchorDay: 31 })).toBe('2027-08-31');
    expect(addMonths('2024-03-31', -1)).toBe('2024-02-29');
    expect(addMonths('2026-01-15', -13)).toBe('2024-12-15');
  });

  it('runs calendar months to the last day where the requirement says so', () => {
    expect(addMonths('2026-03-10', 12, { rule: 'month-end' })).toBe('2027-03-31');
  });

  it('falls on the day of its zone', () => {
    const lateEvening = instant(startOfDay('2026-06-30') + 23 * 60 + 40);
    expect(dateOf(lateEvening)).toBe('2026-06-30');
    expect(dateOf(lateEvening, 120)).toBe('2026-07-01');
    expect(startOfDay('2026-07-01', 120)).toBe(startOfDay('2026-07-01') - 120);
  });

  it('agrees with the day count of the platform', () => {
    fc.assert(
      fc.property(fc.integer({ min: -700_000, max: 2_900_000 }), (day) => {
        const expected = new Date(day * 86_400_000).toISOString().slice(0, 10);
        expect(addDays('1970-01-01', day)).toBe(expected);
        expect(startOfDay(expected)).toBe(day * 1440);
      }),
    );
  });

  it('is in order', () => {
    expect([
      compare('2026-01-01', '2026-01-02'),
      compare('2026-01-01', '2026-01-01'),
      compare('2027-01-01', '2026-12-31'),
    ]).toEqual([-1, 0, 1]);
  });
});
