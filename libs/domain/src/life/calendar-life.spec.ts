import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import type { CalendarLimit, LifeDays } from './calendar-life.js';
import type { LifeFacts } from './life.js';
import { statusOfLife } from './life-status.js';
import { lifeOf } from './limited-life.js';

const calendar = (span: number, change: Partial<CalendarLimit> = {}): CalendarLimit => ({
  span,
  unit: 'months',
  countedFrom: 'new',
  monthRule: 'same-day',
  limitId: 'l',
  ...change,
});
const days = (today: string, change: Partial<LifeDays> = {}): LifeDays => ({
  today,
  new: '2020-08-31',
  'first-installation': null,
  overhaul: null,
  ...change,
});
const life = (limits: readonly CalendarLimit[], at: LifeDays, cycles: number | null = null) => {
  const facts: LifeFacts = {
    used: [{ ratingId: 'r', minutes: 0, cycles: fraction(0) }],
    limits: [{ ratingId: 'r', kind: 'limited', cycles, minutes: null, calendar: limits }],
    method: 'pro-rata',
    ratingNow: 'r',
    traceGaps: [],
    acceptance: null,
    days: at,
  };
  return lifeOf(facts);
};

describe('a calendar life', () => {
  it.each([
    ['2021-02-26', 2, 'soon'],
    ['2021-02-28', 0, 'soon'],
    ['2021-03-01', -1, 'over'],
  ])('is good through its last day: on %s %s days are left', (today, remaining, status) => {
    const found = life([calendar(6)], days(today));
    expect(found).toMatchObject({ goodThrough: '2021-02-28', remainingDays: remaining });
    expect(statusOfLife(found)).toBe(status);
  });

  it('of months to the month’s end goes to its last day', () => {
    expect(
      life([calendar(12, { monthRule: 'month-end' })], days('2020-09-01', { new: '2020-03-10' })),
    ).toMatchObject({
      goodThrough: '2021-03-31',
    });
  });

  it('alone is used by the days that have passed', () => {
    const found = life([calendar(100, { unit: 'days' })], days('2020-09-25'));
    expect(found).toMatchObject({ used: fraction(25, 100), limit: null, remaining: null, remainingDays: 75 });
  });

  it('stands beside cycles, and the one that ends first governs its status', () => {
    expect(statusOfLife(life([calendar(120)], days('2021-01-01'), 100))).toBe('soon');
    expect(statusOfLife(life([calendar(6)], days('2021-03-01'), 9000))).toBe('over');
  });

  it('of several is the first to end', () => {
    const overhaul = calendar(10, { unit: 'days', countedFrom: 'overhaul', limitId: 'o' });
    const found = life([calendar(60), overhaul], days('2021-01-05', { overhaul: '2021-01-01' }));
    expect(found).toMatchObject({ goodThrough: '2021-01-11', calendar: { limitId: 'o' } });
  });

  it('that counts from what has not happened has not begun, and limits nothing yet', () => {
    const first = calendar(60, { countedFrom: 'first-installation' });
    const stored = days('2021-01-01', { 'first-installation': 'not-yet' });
    const alone = life([first], stored);
    expect(alone).toMatchObject({
      kind: 'limited',
      used: fraction(0),
      goodThrough: null,
      remainingDays: null,
    });
    expect(statusOfLife(alone)).toBe('later');
    expect(life([first, calendar(6)], stored)).toMatchObject({ goodThrough: '2021-02-28' });
  });

  it.each(['first-installation', 'overhaul'] as const)(
    'is not told while the day of %s is not known',
    (countedFrom) => {
      expect(life([calendar(60), calendar(6, { countedFrom })], days('2021-01-01'))).toEqual({
        kind: 'unsubstantiated',
        reasons: [{ code: 'DAY_UNKNOWN', from: countedFrom }],
      });
    },
  );
});
