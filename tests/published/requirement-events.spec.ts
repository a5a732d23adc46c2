import { describe, expect, it } from '@jest/globals';
import { deferralExpiry } from '@strutbook/domain/due/deferral.js';
import type { Interval, RequirementRule } from '@strutbook/domain/due/requirement.js';
import { type RequirementFacts, requirementDue } from '@strutbook/domain/due/requirement-due.js';
import { fraction } from '@strutbook/domain/units/fraction.js';

const grants = (interval: Partial<Interval>): Interval => ({
  ...{ minutes: null, cycles: null, days: null, months: null },
  ...interval,
});

const open = (facts: RequirementFacts) => {
  const due = requirementDue(facts);
  if (due.kind !== 'open') throw new Error('closed');
  return due;
};

describe('3,000 cycles after the effective date or the next shop visit, not past 10 years', () => {
  // Source: the pattern of FAA AD 98-21-24.
  const rule: RequirementRule = {
    threshold: grants({ cycles: 3000 }),
    repeat: null,
    ...{ combine: 'first', monthRule: 'same-day' },
    events: { threshold: 'shop-visit', repeat: null },
    bounds: { threshold: grants({ months: 120 }), repeat: null },
  };
  const facts = (cycles: number, on: string, happenedOn: string | null): RequirementFacts => ({
    rule,
    base: { minutes: null, cycles: fraction(12_400), on: '2026-01-10' },
    done: [],
    now: { minutes: null, cycles: fraction(cycles), on },
    use: { minutes: null, cycles: fraction(4) },
    happenedOn,
  });

  it('is due at 15,400 cycles, at the next shop visit, or on 10 January 2036', () => {
    const due = open(facts(13_000, '2026-08-01', null));
    expect(due.dues[0]).toMatchObject({ dimension: 'cycles', dueAt: fraction(15_400), isBound: false });
    expect(due.dues[1]).toMatchObject({ dimension: 'months', dueOn: '2036-01-10', isBound: true });
    expect(due).toMatchObject({
      event: { kind: 'shop-visit', happenedOn: null },
      status: 'later',
      governing: { dimension: 'cycles' },
    });
  });

  it('is over after a shop visit at which it was not done, past its cycles, and past its ten years', () => {
    expect(open(facts(13_000, '2026-08-01', '2026-07-20'))).toMatchObject({
      status: 'over',
      isDueByEvent: true,
      governing: null,
    });
    expect(open(facts(15_401, '2029-08-01', null))).toMatchObject({
      status: 'over',
      governing: { dimension: 'cycles' },
    });
    expect(open(facts(13_000, '2036-01-10', null)).status).toBe('soon');
    expect(open(facts(13_000, '2036-01-11', null))).toMatchObject({
      status: 'over',
      governing: { dimension: 'months', isBound: true },
    });
  });

  it('is closed by being done once', () => {
    const done = [{ minutes: null, cycles: fraction(13_000), on: '2026-07-20' }];
    expect(requirementDue({ ...facts(13_100, '2026-09-01', null), done })).toEqual({ kind: 'closed' });
  });
});

describe('an outer bound', () => {
  it('governs as soon as it comes, of whichever comes last too', () => {
    // Source: common practice, no source.
    const rule: RequirementRule = {
      threshold: null,
      repeat: grants({ cycles: 100, days: 100 }),
      ...{ combine: 'last', monthRule: 'same-day' },
      bounds: { threshold: null, repeat: grants({ days: 200 }) },
    };
    const on = (day: string) =>
      open({
        rule,
        base: { minutes: null, cycles: fraction(0), on: '2026-01-01' },
        done: [],
        now: { minutes: null, cycles: fraction(50), on: day },
        use: { minutes: null, cycles: fraction(1, 10) },
      });
    expect(on('2026-05-01').status).not.toBe('over');
    expect(on('2026-07-21')).toMatchObject({ status: 'over', governing: { isBound: true } });
  });
});

describe('a part fitted without its usual certificate at 5,000 hours', () => {
  // Source: Reg. (EU) 1321/2014, 145.A.50(f): 30 flight hours or the first return to the main base, whichever is sooner.
  const rule: RequirementRule = {
    threshold: grants({ minutes: 30 * 60 }),
    repeat: null,
    ...{ combine: 'first', monthRule: 'same-day' },
    events: { threshold: 'main-base-return', repeat: null },
  };
  const flown = (minutes: number, happenedOn: string | null) =>
    open({
      rule,
      base: { minutes: 5000 * 60, cycles: null, on: '2026-03-01' },
      done: [],
      now: { minutes: 5000 * 60 + minutes, cycles: null, on: '2026-03-04' },
      use: { minutes: fraction(600), cycles: null },
      happenedOn,
    });

  it('is removed by 5,030 hours, or at the first return to the main base', () => {
    expect(flown(600, null).dues[0]?.dueAt).toEqual(fraction(5030 * 60));
    expect(flown(30 * 60, null).status).toBe('soon');
    expect(flown(30 * 60 + 1, null).status).toBe('over');
    expect(flown(600, '2026-03-04')).toMatchObject({ status: 'over', isDueByEvent: true });
  });
});

describe('an item deferred by the minimum equipment list', () => {
  // Source: HKAR-MMEL; Transport Canada TP 9155, chapter 3.11: 3, 10 and 120 consecutive calendar days, the day of
  // discovery excluded.
  it('found on 1 May 2026 is good through 4 May in category B and 11 May in C', () => {
    expect(deferralExpiry('2026-05-01', { category: 'B' })).toBe('2026-05-04');
    expect(deferralExpiry('2026-05-01', { category: 'C' })).toBe('2026-05-11');
  });

  it('found on 31 January 2026 is good through 31 May in category D', () => {
    expect(deferralExpiry('2026-01-31', { category: 'D' })).toBe('2026-05-31');
  });

  it('entered again on 9 May at a check keeps the day it was found on', () => {
    // Source: Reg. (EU) 1321/2014, M.A.403.
    const [foundOn, enteredAgainOn] = ['2026-05-01', '2026-05-09'];
    expect(deferralExpiry(foundOn, { category: 'C' })).toBe('2026-05-11');
    expect(enteredAgainOn < deferralExpiry(foundOn, { category: 'C' })).toBe(true);
  });

  it('of category A has the days its remarks give', () => {
    expect(deferralExpiry('2026-05-01', { category: 'A', days: 1 })).toBe('2026-05-02');
  });
});
