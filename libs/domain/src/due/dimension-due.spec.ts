import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import { exactOf } from './chain.js';
import {
  calendarDue,
  counterDue,
  type DimensionFacts,
  oneDecimal,
  statusOfDimension,
  wholeDays,
  windowsOf,
} from './dimension-due.js';
import type { Dimension, Mark } from './requirement.js';

interface Asked extends Partial<DimensionFacts> {
  readonly interval: number;
  readonly from?: Mark;
  readonly anchorDay?: number;
}

const due = (dimension: Dimension, { from, anchorDay, ...asked }: Asked) => {
  const mark = from ?? { minutes: 600, cycles: fraction(10), on: '2026-01-31' };
  const facts: DimensionFacts = {
    now: { minutes: 1000, cycles: fraction(25, 2), on: '2026-03-01' },
    use: { minutes: fraction(100), cycles: null },
    monthRule: 'same-day',
    beside: { varied: null },
    isBound: false,
    ...asked,
  };
  if (dimension === 'minutes' || dimension === 'cycles')
    return counterDue(dimension, exactOf(mark[dimension]), facts);
  const { on } = mark;
  return calendarDue(
    dimension,
    on === null ? null : { on, anchorDay: anchorDay ?? Number(on.slice(8)) },
    facts,
  );
};

describe('what falls due in one dimension', () => {
  it('is the counter counted from and the interval; what remains may be nothing, or less', () => {
    expect(due('minutes', { interval: 401 })).toMatchObject({ remaining: 1, status: 'soon' });
    expect(due('minutes', { interval: 400 })).toMatchObject({ remaining: 0, status: 'soon' });
    expect(due('minutes', { interval: 399 })).toMatchObject({ remaining: -1, status: 'over' });
  });

  it('keeps cycles exact and rounds what remains down', () => {
    expect(due('cycles', { interval: 5 })).toMatchObject({
      dueAt: fraction(15),
      remainingExact: fraction(5, 2),
      remaining: 2,
    });
    expect(due('cycles', { interval: 2 })).toMatchObject({ remaining: -1, status: 'over' });
  });

  it('is good through the day it falls due', () => {
    expect(due('days', { interval: 29 })).toMatchObject({
      dueOn: '2026-03-01',
      remaining: 0,
      status: 'soon',
    });
    expect(due('days', { interval: 28 })).toMatchObject({
      dueOn: '2026-02-28',
      remaining: -1,
      status: 'over',
    });
    expect(due('months', { interval: 1 })).toMatchObject({ dueOn: '2026-02-28', remaining: -1 });
    expect(due('months', { interval: 2, monthRule: 'month-end' })).toMatchObject({ dueOn: '2026-03-31' });
    expect(due('months', { interval: 2, anchorDay: 30 })).toMatchObject({ dueOn: '2026-03-30' });
  });

  it('is not known without a counter now or then, or without a day', () => {
    const nothing = { minutes: null, cycles: null, on: null };
    for (const dimension of ['minutes', 'cycles', 'days', 'months'] as const)
      expect(due(dimension, { interval: 5, from: nothing })).toBeNull();
    expect(due('minutes', { interval: 5, now: { ...nothing, on: '2026-03-01' } })).toBeNull();
  });

  it('is projected by the daily use: exact, rounded down to whole days; nothing is projected of what is not used', () => {
    const found = due('minutes', { interval: 650 });
    expect(found?.daysExact).toEqual(fraction(5, 2));
    expect(wholeDays(found?.daysExact ?? null)).toBe(2);
    expect(
      due('minutes', { interval: 650, use: { minutes: fraction(0), cycles: null } })?.daysExact,
    ).toBeNull();
    expect(due('cycles', { interval: 650 })?.daysExact).toBeNull();
    expect(due('days', { interval: 30 })?.daysExact).toEqual(fraction(1));
  });
});

describe('what is granted past a due', () => {
  const window = {
    early: {},
    late: { minutes: [{ upTo: null, percent: 10, atMost: null, atMostDays: null }] },
  };

  it('keeps it in tolerance to its last minute, and shows where that is', () => {
    // 600 and 380 are due at 980, granted 38 more: 1,018.
    const at = (minutes: number) =>
      due('minutes', {
        interval: 380,
        beside: { window, varied: null },
        now: { minutes, cycles: null, on: '2026-03-01' },
      });
    expect([980, 981, 1018, 1019].map((minutes) => at(minutes)?.status)).toEqual([
      'soon',
      'in-tolerance',
      'in-tolerance',
      'over',
    ]);
    expect(at(980)).toMatchObject({ latestAt: fraction(1018), earliestAt: fraction(980) });
  });

  it('is the farther of the window and what was approved', () => {
    const latest = (varied: number) =>
      due('minutes', { interval: 380, beside: { window, varied } })?.latestAt;
    expect([latest(10), latest(50)]).toEqual([fraction(1018), fraction(1030)]);
  });

  it('is in days for days and months, and keeps the last of them', () => {
    expect(due('months', { interval: 1, beside: { varied: 1 } })).toMatchObject({
      dueOn: '2026-02-28',
      latestOn: '2026-03-01',
      status: 'in-tolerance',
    });
    expect(statusOfDimension({ dimension: 'days', interval: 30 }, { remaining: -1, latest: -1 })).toBe(
      'over',
    );
  });
});

describe('a number of days with one decimal', () => {
  it('is rounded down, below zero too', () => {
    expect(
      [fraction(5, 2), fraction(259, 100), fraction(-1, 4), fraction(-1), fraction(0)].map(oneDecimal),
    ).toEqual(['2.5', '2.5', '-0.3', '-1.0', '0.0']);
  });
});

describe('the windows of a requirement', () => {
  it('are a tenth and a quarter of it, up to a widest', () => {
    expect(windowsOf('cycles', 301)).toEqual({ alert: 31, planning: 76, tolerance: 0 });
    expect(windowsOf('cycles', 1500)).toMatchObject({ alert: 150, planning: 375 });
    expect(windowsOf('cycles', 1501)).toMatchObject({ alert: 150 });
    expect(windowsOf('minutes', 500 * 60)).toMatchObject({ alert: 50 * 60, planning: 125 * 60 });
    expect(windowsOf('months', 6)).toMatchObject({ alert: 18, planning: 45 });
    expect(windowsOf('months', 48)).toMatchObject({ alert: 30, planning: 120 });
  });

  it('include their ends', () => {
    const at = (interval: number) =>
      due('days', { interval, from: { minutes: null, cycles: null, on: '2026-02-01' } });
    // 28 days have passed: 3 of 31 left are a tenth rounded up, 4 of 32 are too.
    expect(at(32)?.status).toBe('soon');
    expect(at(33)?.status).toBe('planned');
    expect(at(37)?.status).toBe('planned');
    expect(at(38)?.status).toBe('planned');
    expect(at(39)?.status).toBe('later');
  });
});
