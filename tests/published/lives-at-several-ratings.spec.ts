import { describe, expect, it } from '@jest/globals';
import type { LifeFacts } from '@strutbook/domain/life/life.js';
import { lifeOf } from '@strutbook/domain/life/limited-life.js';
import { fraction } from '@strutbook/domain/units/fraction.js';

/**
 * Source: linear damage accumulation, from memory: the share of life used is the sum of cycles at each rating
 * over the limit at that rating. Values invented, recomputed by hand.
 */
function facts(rows: Readonly<Record<string, readonly [number, number]>>, ratingNow: string): LifeFacts {
  return {
    used: Object.entries(rows).map(([ratingId, [cycles]]) => ({
      ratingId,
      minutes: 0,
      cycles: fraction(cycles),
    })),
    limits: Object.entries(rows).map(([ratingId, [, limit]]) => ({
      ratingId,
      kind: 'limited',
      cycles: limit,
      minutes: null,
    })),
    method: 'pro-rata',
    ratingNow,
    traceGaps: [],
    acceptance: null,
  };
}

describe('a life at several ratings (linear damage accumulation, from memory)', () => {
  const twoRatings = { low: [9000, 30_000], high: [4000, 20_000] } as const;

  it('9,000 of 30,000 and 4,000 of 20,000 are half the life: 15,000 low or 10,000 high remain', () => {
    expect(lifeOf(facts(twoRatings, 'low'))).toMatchObject({ used: fraction(1, 2), remaining: 15_000 });
    expect(lifeOf(facts(twoRatings, 'high'))).toMatchObject({ used: fraction(1, 2), remaining: 10_000 });
  });

  it('counted against the lowest limit, 7,000 remain', () => {
    expect(lifeOf({ ...facts(twoRatings, 'low'), method: 'lowest-limit' })).toMatchObject({
      remaining: 7000,
    });
  });

  it('6,000 of 20,000 and 3,000 of 15,000 leave 10,000 and 7,500', () => {
    const rows = { A: [6000, 20_000], B: [3000, 15_000] } as const;
    expect(lifeOf(facts(rows, 'A'))).toMatchObject({ used: fraction(1, 2), remaining: 10_000 });
    expect(lifeOf(facts(rows, 'B'))).toMatchObject({ remaining: 7500 });
  });

  it('three ratings leave 10,458, 8,366 and 6,275 whole cycles', () => {
    const rows = { A: [4000, 25_000], B: [5500, 20_000], C: [2200, 15_000] } as const;
    const remaining = ['A', 'B', 'C'].map((rating) => lifeOf(facts(rows, rating)));
    expect(remaining).toMatchObject([{ remaining: 10_458 }, { remaining: 8366 }, { remaining: 6275 }]);
  });

  it('cycles at an unknown rating leave nothing verified; accepted at the worst, 18,000 of 30,000 remain', () => {
    const low = facts({ low: [9000, 30_000], high: [0, 20_000] }, 'low');
    const untold = { ...low, used: [...low.used, { ratingId: null, minutes: 0, cycles: fraction(2000) }] };
    expect(lifeOf(untold)).toMatchObject({ kind: 'unsubstantiated' });
    const acceptance = { by: 'A. Person', reference: 'L-1', worstCaseCycles: null, worstCaseMinutes: null };
    expect(lifeOf({ ...untold, acceptance })).toMatchObject({
      used: fraction(2, 5),
      remaining: 18_000,
      flagged: true,
    });
  });

  it('a limit of zero is no limit to count with', () => {
    expect(() => lifeOf(facts({ A: [1, 0] }, 'A'))).toThrow(RangeError);
  });
});
