import { describe, expect, it } from '@jest/globals';
import { REBASE } from '@strutbook/domain/due/rebase.js';
import type { Dimension, Interval, Mark, RequirementRule } from '@strutbook/domain/due/requirement.js';
import { type RequirementFacts, requirementDue } from '@strutbook/domain/due/requirement-due.js';
import type { Grants, Tier } from '@strutbook/domain/due/tolerance.js';
import { fraction } from '@strutbook/domain/units/fraction.js';

const hours = (tenths: number) => Math.round(tenths * 60);
const tier = (more: Partial<Tier>): Tier => ({
  ...{ upTo: null, percent: null, atMost: null, atMostDays: null },
  ...more,
});
const grants = (interval: Partial<Interval>): Interval => ({
  ...{ minutes: null, cycles: null, days: null, months: null },
  ...interval,
});
const at = (minutes: number): Mark => ({ minutes: hours(minutes), cycles: null, on: null });

const every = (repeat: Interval, more: Partial<RequirementRule> = {}): RequirementRule => ({
  ...{ threshold: null, repeat, combine: 'first', monthRule: 'same-day' },
  ...more,
});

const open = (facts: Partial<RequirementFacts> & Pick<RequirementFacts, 'rule'>) => {
  const due = requirementDue({
    base: { minutes: 0, cycles: fraction(0), on: '2026-01-01' },
    done: [],
    now: { minutes: 0, cycles: fraction(0), on: '2026-01-01' },
    use: { minutes: null, cycles: null },
    ...facts,
  });
  if (due.kind !== 'open') throw new Error('closed');
  return due;
};
const dueOf = (facts: Parameters<typeof open>[0], dimension: Dimension = 'minutes') =>
  open(facts).dues.find((each) => each.dimension === dimension);

describe('1,000 hours, due at 1,000', () => {
  it('done at 1,080 under an approved variation is due next at 2,000', () => {
    // Source: EASA FAQ 19102 (late under a permitted variation, the next counts from the original due).
    const rule = every(grants({ minutes: hours(1000) }), {
      variation: { minutes: [tier({ percent: 10, atMost: hours(500) })] },
    });
    const variations = [{ after: -1, minutes: hours(100), cycles: null, days: null }];
    expect(dueOf({ rule, done: [at(1080)], variations })?.dueAt).toEqual(fraction(hours(2000)));
    // Without it, from what was done: FAQ 19102 (value at release and the interval).
    expect(dueOf({ rule, done: [at(1080)] })?.dueAt).toEqual(fraction(hours(2080)));
  });
});

describe('300 hours with a window of 10 % either side, due at 600', () => {
  // Source: PC-12/47E maintenance manual, page of tolerances: planned times do not shift inside, and do early outside.
  const window = { early: { minutes: [tier({ percent: 10 })] }, late: { minutes: [tier({ percent: 10 })] } };
  const rule = every(grants({ minutes: hours(300) }), { window });
  const next = (done: number) => dueOf({ rule, done: [at(300), at(done)] })?.dueAt;

  it('done at 580 is due next at 900, done at 560 at 860', () => {
    expect([next(580), next(560)]).toEqual([fraction(hours(900)), fraction(hours(860))]);
  });

  it('takes the ends of the window as inside', () => {
    expect([next(570), next(630)]).toEqual([fraction(hours(900)), fraction(hours(900))]);
    expect(next(631)).toEqual(fraction(hours(931)));
  });
});

describe('intervals with a window of 5 hours either side', () => {
  // Source: US Army TM 1-1500-328-23.
  const five = { minutes: [tier({ atMost: hours(5) })] };
  const window = { early: five, late: five };
  const next = (interval: number, due: number, done: number) =>
    dueOf({
      rule: every(grants({ minutes: hours(interval) }), { window }),
      base: at(due - interval),
      done: [at(done)],
    })?.dueAt;

  it('75 hours due at 1,609.4 and done at 1,612.0 is due next at 1,684.4', () => {
    expect(next(75, 1609.4, 1612)).toEqual(fraction(hours(1684.4)));
  });

  it('50 hours due at 1,306.4 and done early at 1,299.9 is due next at 1,349.9', () => {
    expect(next(50, 1306.4, 1299.9)).toEqual(fraction(hours(1349.9)));
  });
});

describe('a permitted variation of 10 %, 500 hours at most', () => {
  // Source: Dutch ILT leaflet, Permitted Variations.
  const variation: Grants = {
    minutes: [tier({ percent: 10, atMost: hours(500) })],
    // Tiers of the calendar from memory: 10 % or 1, 2 or 3 months, the lesser.
    months: [
      tier({ upTo: 12, percent: 10, atMost: 1 }),
      tier({ upTo: 36, percent: 10, atMost: 2 }),
      tier({ percent: 10, atMost: 3 }),
    ],
  };

  it('lets 8,000 hours go to 8,500 at most, and 3,000 to 3,300', () => {
    const latest = (interval: number) =>
      dueOf({ rule: every(grants({ minutes: hours(interval) }), { variation }) })?.variableAt;
    expect([latest(8000), latest(3000)]).toEqual([fraction(hours(8500)), fraction(hours(3300))]);
  });

  it('lets 6 months go 18 days, 24 months two months and 48 months three', () => {
    // Source: from memory (the tiers); a tenth of 181 days is 18 whole days.
    const latest = (months: number) =>
      dueOf({ rule: every(grants({ months }), { variation }) }, 'months')?.variableOn;
    expect([latest(6), latest(24), latest(48)]).toEqual(['2026-07-19', '2028-03-01', '2030-04-01']);
  });
});

describe('100 hours, due at 1,200', () => {
  it('done at 1,206 on the way to where it can be done is due next at 1,300', () => {
    // Source: commentary on 14 CFR 91.409(b): up to 10 hours to reach a place, deducted from the next.
    const window = { early: {}, late: { minutes: [tier({ atMost: hours(10) })] } };
    const rule = every(grants({ minutes: hours(100) }), { window });
    expect(dueOf({ rule, base: at(1100), done: [at(1206)] })?.dueAt).toEqual(fraction(hours(1300)));
  });

  it('is deducted past the ten hours too, where the programme says so', () => {
    // Source: common practice, no source.
    const rule = every(grants({ minutes: hours(100) }), { rebase: { ...REBASE, beyond: 'from-due' } });
    expect(dueOf({ rule, base: at(1100), done: [at(1230)] })?.dueAt).toEqual(fraction(hours(1300)));
  });
});
