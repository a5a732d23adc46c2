import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import { instant } from '../units/minutes.js';
import { zeroCounts } from '../usage/counts.js';
import type { LifeLimit } from './limits-in-force.js';
import { type LifeHistory, type LifePiece, lifeOverruns, overrunsIn } from './overruns.js';

const at = instant;
const RULE = {
  id: 'r',
  ...{ perFlight: 1, perLanding: 0, perTouchAndGo: 0, perStart: 0, perAbortedTakeOff: 0, denominator: 1 },
};
const limit = (cycles: number, effective = 0): LifeLimit => ({
  ...{ id: `l${cycles}`, partNumber: 'P', modelId: 'm', revisionId: `rev ${effective}`, ratingId: null },
  ...{ basis: 'manual', document: 'Manual', recorded: 1 },
  ...{ effectiveAt: at(effective), kind: 'limited', cycles, minutes: null },
});
const piece = (from: number, to: number | null, flights: number, clock = 'pos-1'): LifePiece => ({
  ...{ carrierId: clock, ratingId: 'A', cycleRuleId: 'r', modelId: 'm', from: at(from) },
  to: to === null ? null : at(to),
  counts: { ...zeroCounts, minutes: flights * 60, flights, landings: flights, starts: flights },
});
const history = (change: Partial<LifeHistory<LifeLimit>>): LifeHistory<LifeLimit> => ({
  partNumber: 'P',
  openings: [{ at: at(0), ratingId: 'A', minutes: 0, cycles: fraction(0) }],
  pieces: [],
  limits: [limit(100)],
  cycleRules: new Map([['r', RULE]]),
  methodOf: () => 'pro-rata',
  gaps: [],
  acceptance: null,
  daysAt: () => undefined,
  dayEnds: (on) => at(Date.parse(`${on}T24:00:00Z`) / 60_000),
  ...change,
});

describe('spans flown over a life limit', () => {
  it('are none while the limit is only reached', () => {
    expect(lifeOverruns(history({ pieces: [piece(0, 10, 100)] }))).toEqual([]);
  });

  it('begin after what was left, and tell by how much', () => {
    const [found, ...more] = lifeOverruns(history({ pieces: [piece(0, 10, 60), piece(10, 20, 43)] }));

    expect(more).toEqual([]);
    expect(found).toMatchObject({
      dimension: 'cycles',
      by: fraction(3),
      isOpen: false,
      row: { id: 'l100' },
      parts: [{ clock: 'pos-1', from: 10, to: 20, allowance: fraction(40) }],
    });
  });

  it('go on over a change of position, and are open while the part still runs', () => {
    const [found] = lifeOverruns(
      history({ pieces: [piece(0, 10, 101), piece(15, 20, 2, 'pos-2'), piece(30, null, 1, 'pos-3')] }),
    );

    expect(found).toMatchObject({ by: fraction(4), isOpen: true });
    expect(found?.parts.map((part) => [part.clock, part.allowance])).toEqual([
      ['pos-1', fraction(100)],
      ['pos-2', fraction(0)],
      ['pos-3', fraction(0)],
    ]);
  });

  it('follow the revision in force then: a limit lowered puts what flies after it over, one raised ends it', () => {
    const limits = [limit(100), limit(50, 10), limit(200, 20)];
    const pieces = [piece(0, 10, 60), piece(10, 20, 5), piece(20, null, 10)];

    expect(lifeOverruns(history({ limits, pieces }))).toMatchObject([
      { by: fraction(15), isOpen: false, parts: [{ from: 10, to: 20, allowance: fraction(0) }] },
    ]);
  });

  it('are not begun by what stands still over its limit', () => {
    const limits = [limit(100), limit(50, 10)];
    expect(lifeOverruns(history({ limits, pieces: [piece(0, 10, 60), piece(10, null, 0)] }))).toEqual([]);
  });

  it('are not told where the life cannot be told', () => {
    const gaps = [{ id: 'g', description: 'no log', from: at(5) }];
    expect(lifeOverruns(history({ gaps, pieces: [piece(0, 10, 200)] }))).toEqual([]);
    expect(lifeOverruns(history({ openings: [], pieces: [piece(0, 10, 200)] }))).toEqual([]);
  });

  it('begin after the last day of a calendar life, where the part flies on', () => {
    const limits: LifeLimit[] = [
      {
        ...limit(100),
        ...{ kind: 'limited', cycles: null, minutes: null },
        calendar: [{ limitId: 'c', span: 30, unit: 'days', countedFrom: 'new', monthRule: 'same-day' }],
      },
    ];
    const days = { new: '1970-01-01', 'first-installation': null, overhaul: null } as const;
    const daysAt = () => ({ ...days, today: '1970-03-01' });
    const pieces = [piece(0, 20_000, 2), piece(20_000, 60_000, 3), piece(60_000, null, 1, 'pos-2')];

    expect(lifeOverruns(history({ limits, daysAt, pieces }))).toMatchObject([
      {
        ...{ dimension: 'days', goodThrough: '1970-01-31', isOpen: true },
        parts: [
          { clock: 'pos-1', from: 31 * 1440, to: 60_000 },
          { clock: 'pos-2', from: 60_000, to: null },
        ],
      },
    ]);
  });

  it('are parted by a segment that ended within the limit', () => {
    const segment = (from: number, before: number, after: number) => ({
      ...{ clock: 'c', cycleRuleId: null, from: at(from), to: at(from + 1) },
      ...{ leftBefore: fraction(before), leftAfter: fraction(after) },
    });
    expect(overrunsIn([segment(0, 1, -1), segment(1, 9, 5), segment(2, 5, -2)])).toMatchObject([
      { by: fraction(1) },
      { by: fraction(2), parts: [{ allowance: fraction(5) }] },
    ]);
  });
});
