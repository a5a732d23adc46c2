import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { fraction } from '../units/fraction.js';
import type { LifeFacts, RatingLimit } from './life.js';
import { lifeOf } from './limited-life.js';

const limit = (
  ratingId: string | null,
  cycles: number | null,
  minutes: number | null = null,
): RatingLimit => ({ ratingId, kind: 'limited', cycles, minutes });
const used = (ratingId: string | null, cycles: number | null, minutes: number | null = 0) => ({
  ratingId,
  minutes,
  cycles: cycles === null ? null : fraction(cycles),
});
const facts = (change: Partial<LifeFacts>): LifeFacts => ({
  used: [used('low', 9000), used('high', 4000)],
  limits: [limit('low', 30_000), limit('high', 20_000)],
  method: 'pro-rata',
  ratingNow: 'low',
  traceGaps: [],
  acceptance: null,
  ...change,
});
const gap = { id: 'g', description: '1 Mar to 1 Jun' };
const acceptance = { by: 'A. Person', reference: 'L-1', worstCaseCycles: 2000, worstCaseMinutes: null };

describe('the life of a limited part', () => {
  it('remains in whole cycles, rounded down', () => {
    const life = lifeOf(
      facts({ used: [used('low', 1)], limits: [limit('low', 3), limit('high', 2)], ratingNow: 'high' }),
    );
    expect(life).toMatchObject({ kind: 'limited', remaining: 1, remainingExact: fraction(4, 3) });
  });

  it('is used up at 0 and over below', () => {
    const remaining = (cycles: number) => lifeOf(facts({ used: [used('low', cycles)] }));
    expect(remaining(29_999)).toMatchObject({ remaining: 1 });
    expect(remaining(30_000)).toMatchObject({ remaining: 0 });
    expect(remaining(30_001)).toMatchObject({ remaining: -1 });
  });

  it('is over as soon as part of a cycle is', () => {
    const life = lifeOf(facts({ used: [{ ratingId: 'low', minutes: 0, cycles: fraction(60_001, 2) }] }));
    expect(life).toMatchObject({ remaining: -1 });
  });

  it('counts minutes too, and minutes alone', () => {
    const both = lifeOf(facts({ used: [used('low', 100, 6000)], limits: [limit('low', 400, 60_000)] }));
    expect(both).toMatchObject({
      remaining: 300,
      remainingMinutes: 54_000,
      limit: 400,
      minutesLimit: 60_000,
    });
    const minutesOnly = lifeOf(
      facts({ used: [used('low', null, 6000)], limits: [limit('low', null, 60_000)] }),
    );
    expect(minutesOnly).toMatchObject({
      kind: 'limited',
      remaining: null,
      limit: null,
      remainingMinutes: 54_000,
      cyclesUsed: null,
    });
  });

  it('at the lowest limit counts ratings used and the one now, not others', () => {
    const lowest = (ratingNow: string) =>
      lifeOf(
        facts({
          method: 'lowest-limit',
          used: [used('low', 9000)],
          limits: [limit('low', 30_000), limit('mid', 25_000), limit('high', 20_000)],
          ratingNow,
        }),
      );
    expect(lowest('low')).toMatchObject({ remaining: 21_000, limit: 30_000 });
    expect(lowest('high')).toMatchObject({ remaining: 11_000, limit: 20_000 });
  });

  it.each<[string, RatingLimit]>([
    ['not-authorised', { ratingId: 'low', kind: 'not-authorised' }],
    ['not-limited', { ratingId: 'low', kind: 'not-limited' }],
  ])('is %s where the table says so', (kind, row) => {
    expect(lifeOf(facts({ limits: [row, limit('high', 20_000)] }))).toEqual({ kind });
  });

  it('takes a limit for any rating', () => {
    expect(
      lifeOf(
        facts({ limits: [limit(null, 20_000)], ratingNow: null, used: [used(null, 10), used('low', 5)] }),
      ),
    ).toMatchObject({ remaining: 19_985 });
  });

  it.each<[string, Partial<LifeFacts>, unknown[]]>([
    ['a gap', { traceGaps: [gap] }, [{ code: 'TRACE_GAP', gap }]],
    ['use at an unknown rating', { used: [used(null, 1)] }, [{ code: 'RATING_UNKNOWN' }]],
    ['no rating now', { ratingNow: null }, [{ code: 'RATING_UNKNOWN' }]],
    ['no cycles', { used: [used('low', null)] }, [{ code: 'CYCLES_UNKNOWN' }]],
    ['no record of use at all', { used: [] }, [{ code: 'CYCLES_UNKNOWN' }]],
    [
      'no minutes where they are limited',
      { used: [used('low', 1, null)], limits: [limit('low', 10, 10)] },
      [{ code: 'MINUTES_UNKNOWN' }],
    ],
    ['no limit at all', { limits: [] }, [{ code: 'NO_LIMIT_RECORDED', ratingId: 'low' }]],
    [
      'no limit at a rating flown',
      { limits: [limit('low', 10)] },
      [{ code: 'NO_LIMIT_RECORDED', ratingId: 'high' }],
    ],
    ['no limit at the rating now', { ratingNow: 'mid' }, [{ code: 'NO_LIMIT_RECORDED', ratingId: 'mid' }]],
  ])('is not substantiated with %s', (_, change, reasons) => {
    expect(lifeOf(facts(change))).toEqual({ kind: 'unsubstantiated', reasons });
  });

  it('does not miss a rating where nothing was used', () => {
    expect(lifeOf(facts({ used: [used('low', 5), used(null, 0)] }))).toMatchObject({
      kind: 'limited',
      flagged: false,
    });
  });

  it('lets the worst case stand under an acceptance, flagged', () => {
    const life = lifeOf(facts({ used: [used('low', 9000)], traceGaps: [gap], acceptance }));
    expect(life).toMatchObject({ kind: 'limited', used: fraction(2, 5), remaining: 18_000, flagged: true });
  });

  it('counts an acceptance for several gaps once, and one of its own beside it', () => {
    const own = { ...acceptance, worstCaseCycles: 4000 };
    const traceGaps = [gap, { ...gap, id: 'h' }, { ...gap, id: 'i', acceptance: own }];
    expect(lifeOf(facts({ used: [used('low', 0)], traceGaps, acceptance }))).toMatchObject({
      used: fraction(6000, 20_000),
    });
  });

  it('needs a figure in an acceptance of a gap', () => {
    const life = lifeOf(facts({ traceGaps: [gap], acceptance: { ...acceptance, worstCaseCycles: null } }));
    expect(life).toMatchObject({ kind: 'unsubstantiated' });
  });

  it('takes the lowest limit of all in the worst case of the other method too', () => {
    const life = lifeOf(
      facts({ method: 'lowest-limit', used: [used('low', 9000), used(null, 1000)], acceptance }),
    );
    expect(life).toMatchObject({ remaining: 10_000, limit: 20_000, flagged: true });
  });

  it('does not depend on the order of ratings', () => {
    const share = fc.record({ cycles: fc.nat(30_000), limit: fc.integer({ min: 1, max: 40_000 }) });
    fc.assert(
      fc.property(fc.array(share, { minLength: 1, maxLength: 5 }), (shares) => {
        const rows = shares.map((each, index) => ({
          limit: limit(`r${index}`, each.limit),
          used: used(`r${index}`, each.cycles),
        }));
        const life = (order: typeof rows) =>
          lifeOf(
            facts({
              used: order.map((row) => row.used),
              limits: order.map((row) => row.limit),
              ratingNow: 'r0',
            }),
          );
        expect(life([...rows].reverse())).toEqual(life(rows));
      }),
    );
  });
});
