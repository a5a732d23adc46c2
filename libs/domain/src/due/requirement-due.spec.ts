import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import type { Interval, Mark } from './requirement.js';
import { type RequirementFacts, requirementDue } from './requirement-due.js';

const grants = (interval: Partial<Interval>): Interval => ({
  minutes: null,
  cycles: null,
  days: null,
  months: null,
  ...interval,
});
const mark = (minutes: number | null, cycles: number | null, on: string | null): Mark => ({
  minutes,
  cycles: cycles === null ? null : fraction(cycles),
  on,
});

const BASE: RequirementFacts = {
  rule: { threshold: null, repeat: grants({ cycles: 100 }), combine: 'first', monthRule: 'same-day' },
  base: mark(0, 0, '2026-01-01'),
  done: [],
  now: { minutes: 6000, cycles: fraction(50), on: '2026-02-01' },
  use: { minutes: fraction(60), cycles: fraction(1) },
};
const ask = (facts: Partial<RequirementFacts>, rule: Partial<RequirementFacts['rule']> = {}) =>
  requirementDue({ ...BASE, ...facts, rule: { ...BASE.rule, ...rule } });
const open = (...given: Parameters<typeof ask>) => {
  const found = ask(...given);
  if (found.kind !== 'open') throw new Error('closed');
  return found;
};

describe('what is next due of a requirement', () => {
  it('counts the threshold until it was met once, then the repeat from the last time', () => {
    const rule = { threshold: grants({ cycles: 80 }), repeat: grants({ cycles: 30 }) };
    expect(open({}, rule)).toMatchObject({ counting: 'threshold', dues: [{ remaining: 30 }] });
    const done = [mark(null, 40, null), mark(null, 45, null)];
    expect(open({ done }, rule)).toMatchObject({ counting: 'repeat', dues: [{ remaining: 25 }] });
  });

  it('counts the first time by the repeat where there is no threshold', () => {
    expect(open({})).toMatchObject({ counting: 'repeat', dues: [{ remaining: 50 }] });
  });

  it('closes what was to be met once and was', () => {
    const rule = { threshold: grants({ cycles: 80 }), repeat: null };
    expect(ask({ done: [mark(null, 40, null)] }, rule)).toEqual({ kind: 'closed' });
    expect(open({}, rule).status).toBe('later');
  });

  it('is governed by what comes first by projection, or last', () => {
    const repeat = grants({ minutes: 6060, cycles: 52, days: 40 });
    expect(open({}, { repeat }).governing?.dimension).toBe('minutes');
    expect(open({}, { repeat, combine: 'last' }).governing?.dimension).toBe('days');
  });

  it('takes the nearest status of whichever comes first, and the farthest of whichever comes last', () => {
    const repeat = grants({ minutes: 5999, days: 400 });
    expect(open({}, { repeat })).toMatchObject({ status: 'over', governing: { dimension: 'minutes' } });
    expect(open({}, { repeat, combine: 'last' })).toMatchObject({
      status: 'later',
      governing: { dimension: 'days' },
    });
  });

  it('never comes to what is not used: another governs first, and it governs last', () => {
    const repeat = grants({ minutes: 6001, days: 400 });
    const use = { minutes: null, cycles: null };
    expect(open({ use }, { repeat }).governing?.dimension).toBe('days');
    expect(open({ use }, { repeat, combine: 'last' }).governing?.dimension).toBe('minutes');
  });

  it('is not verified without a point to count from, or with a counter that is not known', () => {
    expect(open({ base: null })).toMatchObject({
      status: 'not-verified',
      unknown: ['cycles'],
      governing: null,
    });
    const repeat = grants({ cycles: 100, days: 400 });
    expect(open({ base: mark(null, null, '2026-01-01') }, { repeat })).toMatchObject({
      status: 'not-verified',
      unknown: ['cycles'],
      dues: [{ dimension: 'days' }],
    });
  });

  it('is over when whichever comes first is past already, whatever is not known', () => {
    const repeat = grants({ cycles: 100, days: 30 });
    const base = mark(null, null, '2026-01-01');
    expect(open({ base }, { repeat })).toMatchObject({ status: 'over', governing: { dimension: 'days' } });
    expect(open({ base }, { repeat, combine: 'last' }).status).toBe('not-verified');
    expect(open({ base }, { repeat: grants({ cycles: 100, days: 31 }) }).status).toBe('not-verified');
  });
});

describe('the day of the month that a chain keeps', () => {
  const on = (...days: string[]) => days.map((day) => mark(null, null, day));
  const next = (...days: string[]) =>
    open({ base: null, done: on(...days) }, { repeat: grants({ months: 6 }) }).dues[0]?.dueOn;

  it('is that of the first while each is met on the day it was due', () => {
    expect(next('2026-08-31')).toBe('2027-02-28');
    expect(next('2026-08-31', '2027-02-28')).toBe('2027-08-31');
  });

  it('is a new one when it was met on another day', () => {
    expect(next('2026-08-31', '2027-02-27')).toBe('2027-08-27');
    expect(next('2026-08-31', '2027-03-01')).toBe('2027-09-01');
  });

  it('begins with the day the threshold counts from, where it counts months', () => {
    const base = mark(0, 0, '2026-08-31');
    const due = (rule: Partial<RequirementFacts['rule']>, done: readonly Mark[]) =>
      open({ base, done }, { threshold: null, repeat: grants({ months: 6 }), ...rule }).dues[0]?.dueOn;
    expect(due({}, [])).toBe('2027-02-28');
    expect(due({}, on('2027-02-28'))).toBe('2027-08-31');
    expect(due({}, on('2027-02-27'))).toBe('2027-08-27');
    expect(due({ threshold: grants({ months: 3 }) }, on('2026-11-30'))).toBe('2027-05-31');
    expect(due({ threshold: grants({ months: 3 }) }, on('2027-02-28'))).toBe('2027-08-28');
    expect(due({ threshold: grants({ cycles: 80 }) }, on('2027-02-28'))).toBe('2027-08-28');
  });
});
