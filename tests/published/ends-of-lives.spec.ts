import { describe, expect, it } from '@jest/globals';
import type { CalendarLimit } from '@strutbook/domain/life/calendar-life.js';
import type { Life, RatingLimit } from '@strutbook/domain/life/life.js';
import { statusOfLife } from '@strutbook/domain/life/life-status.js';
import { lifeOf } from '@strutbook/domain/life/limited-life.js';
import { limiterOf } from '@strutbook/domain/life/limiter.js';
import { type LifeLimit, limitsInForce } from '@strutbook/domain/life/limits-in-force.js';
import { projectedEnd } from '@strutbook/domain/life/projected-end.js';
import { objectionsToLife } from '@strutbook/domain/release/objections-to-life.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import { instant } from '@strutbook/domain/units/minutes.js';

const life = (
  limit: RatingLimit,
  used: { readonly cycles: number; readonly minutes: number },
  days?: { readonly today: string; readonly new: string },
): Life =>
  lifeOf({
    used: [{ ratingId: 'r', minutes: used.minutes, cycles: fraction(used.cycles) }],
    limits: [limit],
    method: 'pro-rata',
    ratingNow: 'r',
    traceGaps: [],
    acceptance: null,
    ...(days === undefined ? {} : { days: { ...days, 'first-installation': null, overhaul: null } }),
  });

/** Source: constructed, recomputed by hand: days = remaining ÷ daily use, the earliest governs; common practice. */
describe('the projected end of a life (constructed)', () => {
  const limit: RatingLimit = { ratingId: 'r', kind: 'limited', cycles: 12_000, minutes: 25_000 * 60 };
  const use = { minutes: fraction(95 * 60, 10), cycles: fraction(41, 10) };
  const at = (rule: RatingLimit) =>
    projectedEnd(life(rule, { cycles: 11_300, minutes: 23_500 * 60 }), use, '2026-03-01');

  it('1,500 hours at 9.5 a day are 157.9 days, 5 August 2026, and govern', () => {
    expect(at(limit)).toEqual({ by: 'minutes', days: 157, on: '2026-08-05', past: false });
  });

  it('700 cycles at 4.1 a day are 170.7 days, 18 August 2026', () => {
    expect(at({ ...limit, minutes: null })).toEqual({
      by: 'cycles',
      days: 170,
      on: '2026-08-18',
      past: false,
    });
  });

  it('limits an engine by the part that ends first, not by the one with the fewest cycles', () => {
    const parts = [
      {
        componentId: 'few cycles',
        life: life({ ...limit, minutes: null }, { cycles: 11_300, minutes: 0 }),
        days: 170,
      },
      {
        componentId: 'ends first',
        life: life({ ...limit, cycles: null }, { cycles: 0, minutes: 23_500 * 60 }),
        days: 157,
      },
    ].map((part) => ({ ...part, end: projectedEnd(part.life, use, '2026-03-01') }));
    expect(parts.map(({ end, days }) => [end?.days, days])).toEqual([
      [170, 170],
      [157, 157],
    ]);
    const { byCycles, byDate } = limiterOf(parts);
    expect([byCycles?.componentId, byDate?.componentId]).toEqual(['few cycles', 'ends first']);
  });
});

/**
 * Source: '24 calendar months, to the end of the month' and '12 calendar months': US practice (14 CFR, calendar
 * months); to the same day, clamped: XML Schema Part 2, appendix E, recomputed with four libraries.
 */
describe('calendar lives (calendar months of US practice; XML Schema Part 2, appendix E)', () => {
  const calendar = (span: number, monthRule: CalendarLimit['monthRule']): RatingLimit => ({
    ratingId: 'r',
    kind: 'limited',
    cycles: null,
    minutes: null,
    calendar: [{ span, unit: 'months', countedFrom: 'new', monthRule, limitId: 'l' }],
  });
  it.each([
    ['2023-02-10', 24, 'month-end', '2025-02-28'],
    ['2023-02-10', 12, 'month-end', '2024-02-29'],
    ['2026-03-10', 12, 'month-end', '2027-03-31'],
    ['2023-08-31', 6, 'same-day', '2024-02-29'],
    ['2024-01-31', 1, 'same-day', '2024-02-29'],
  ] as const)('from %s, %s months (%s): good through %s', (from, span, rule, through) => {
    const on = (today: string) => life(calendar(span, rule), { cycles: 0, minutes: 0 }, { today, new: from });
    expect(on(through)).toMatchObject({ goodThrough: through, remainingDays: 0 });
    expect(statusOfLife(on(through))).toBe('soon');
  });
});

/**
 * Source: Regulation (EU) 1321/2014, older text of M.A.503 (an installed life-limited part may not exceed its approved
 * limit). That a directive's lower limit governs from its day on, and may put a part over at once: from memory.
 */
describe('a limit lowered by a directive (M.A.503; the rest from memory)', () => {
  const row = (basis: LifeLimit['basis'], document: string, from: number, cycles: number): LifeLimit => ({
    ...{ id: document, partNumber: 'P', modelId: 'M', basis, document, revisionId: `${document} 1` },
    ...{ effectiveAt: instant(from), recorded: from, ratingId: 'r', kind: 'limited', cycles, minutes: null },
  });
  const rows = [row('manual', 'Manual', 0, 20_000), row('directive', 'Directive', 100, 9000)];
  const judged = (at: number): Life => {
    const [limit] = limitsInForce(rows, { partNumber: 'P', modelId: 'M', at: instant(at) });
    if (limit === undefined) throw new Error('no limit');
    return life(limit, { cycles: 9004, minutes: 0 });
  };

  it('is over at once, and held against a release', () => {
    expect(judged(99)).toMatchObject({ remaining: 10_996 });
    expect(judged(100)).toMatchObject({ remaining: -4, limit: 9000 });
    const held = objectionsToLife(
      judged(100),
      (code, severity, detail = {}) => ({
        ...{ code, severity, positionNumber: 1 },
        record: { kind: 'component', id: 'c' },
        detail,
      }),
      null,
    );
    expect(held).toMatchObject([{ code: 'OVER_LIMIT', severity: 'blocking' }]);
  });
});
