import { describe, expect, it } from '@jest/globals';
import { oneDecimal } from '@strutbook/domain/due/dimension-due.js';
import type { Interval } from '@strutbook/domain/due/requirement.js';
import { type RequirementFacts, requirementDue } from '@strutbook/domain/due/requirement-due.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import { countersSince } from '@strutbook/domain/usage/since.js';

const grants = (interval: Partial<Interval>): Interval => ({
  minutes: null,
  cycles: null,
  days: null,
  months: null,
  ...interval,
});
const hours = (value: number) => value * 60;

const open = (facts: RequirementFacts) => {
  const due = requirementDue(facts);
  if (due.kind !== 'open') throw new Error('closed');
  return due;
};

const byMonths = (months: number, doneOn: string, monthRule: 'same-day' | 'month-end') =>
  open({
    rule: { threshold: null, repeat: grants({ months }), combine: 'first', monthRule },
    base: null,
    done: [{ minutes: null, cycles: null, on: doneOn }],
    now: { minutes: null, cycles: null, on: doneOn },
    use: { minutes: null, cycles: null },
  }).dues[0]?.dueOn;

describe('requirements by the calendar', () => {
  it('due after 12 calendar months, done on 10 March 2026, is good through 31 March 2027', () => {
    // Source: a small-aircraft maintenance manual, chapter 05 (FAA calendar months: 15 Sep 2005 to 30 Sep 2006).
    expect(byMonths(12, '2026-03-10', 'month-end')).toBe('2027-03-31');
    expect(byMonths(12, '2005-09-15', 'month-end')).toBe('2006-09-30');
  });

  it('due after 6 months date to date, done on 31 August 2026, is good through 28 February 2027', () => {
    // Source: from memory.
    expect(byMonths(6, '2026-08-31', 'same-day')).toBe('2027-02-28');
  });
});

describe('500 hours, 300 cycles or 6 months, whichever comes first', () => {
  // Source: common practice, no source (projection: remaining by daily use, the earliest drives it).
  const facts: RequirementFacts = {
    rule: {
      threshold: null,
      repeat: grants({ minutes: hours(500), cycles: 300, months: 6 }),
      combine: 'first',
      monthRule: 'same-day',
    },
    base: null,
    done: [{ minutes: hours(10_000), cycles: fraction(6000), on: '2026-01-15' }],
    now: { minutes: hours(10_350), cycles: fraction(6290), on: '2026-04-01' },
    use: { minutes: fraction(hours(8)), cycles: fraction(4) },
  };

  it('is due at 10,500 hours, 6,300 cycles or on 15 July 2026', () => {
    const [minutes, cycles, months] = open(facts).dues;
    expect([minutes?.dueAt, cycles?.dueAt, months?.dueOn]).toEqual([
      fraction(hours(10_500)),
      fraction(6300),
      '2026-07-15',
    ]);
    expect([minutes?.remaining, cycles?.remaining, months?.remaining]).toEqual([hours(150), 10, 105]);
  });

  it('is forecast in 2.5 days, driven by cycles', () => {
    const { governing, status } = open(facts);
    expect(governing?.dimension).toBe('cycles');
    expect(oneDecimal(governing?.daysExact ?? fraction(0))).toBe('2.5');
    expect(status).toBe('soon');
  });
});

describe('5,000 hours or 48 months, whichever comes later', () => {
  // Source: from memory.
  it('is not due at 4,600 hours and 50 months: it is due at 5,000 hours', () => {
    const due = open({
      rule: {
        threshold: null,
        repeat: grants({ minutes: hours(5000), months: 48 }),
        combine: 'last',
        monthRule: 'same-day',
      },
      base: { minutes: 0, cycles: null, on: '2022-01-10' },
      done: [],
      now: { minutes: hours(4600), cycles: null, on: '2026-03-10' },
      use: { minutes: fraction(hours(8)), cycles: null },
    });
    expect(due.dues.map(({ remaining }) => remaining < 0)).toEqual([false, true]);
    expect(due.governing).toMatchObject({ dimension: 'minutes', dueAt: fraction(hours(5000)) });
    expect(due.status).not.toBe('over');
  });
});

describe('a repeat of 500 cycles', () => {
  it('done at 2,950 is over by 10 at 3,460', () => {
    // Source: FAA Order 8900.1, volume 6, chapter 6, section 5: the status of a recurring directive shows its next due.
    const due = open({
      rule: { threshold: null, repeat: grants({ cycles: 500 }), combine: 'first', monthRule: 'same-day' },
      base: null,
      done: [{ minutes: null, cycles: fraction(2950), on: null }],
      now: { minutes: null, cycles: fraction(3460), on: '2026-04-01' },
      use: { minutes: null, cycles: null },
    });
    expect(due).toMatchObject({ status: 'over', governing: { remaining: -10 } });
  });
});

describe('an overhaul', () => {
  it('sets the time since overhaul to nothing and leaves the time since new as it is', () => {
    // Source: 14 CFR 91.421 and 91.417: time since overhaul beside total time in service.
    const atOverhaul = { minutes: hours(9000), cycles: fraction(5000) };
    expect(countersSince(atOverhaul, atOverhaul)).toEqual({ minutes: 0, cycles: fraction(0) });
    const due = open({
      rule: {
        threshold: grants({ minutes: hours(3000) }),
        repeat: null,
        combine: 'first',
        monthRule: 'same-day',
      },
      base: { ...atOverhaul, on: '2026-01-10' },
      done: [],
      now: { ...atOverhaul, on: '2026-01-10' },
      use: { minutes: null, cycles: null },
    });
    expect(due.dues[0]).toMatchObject({ dueAt: fraction(hours(12_000)), remaining: hours(3000) });
  });
});
