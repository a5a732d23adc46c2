import { describe, expect, it } from '@jest/globals';
import { lifeOf } from '@strutbook/domain/life/limited-life.js';
import { type HoldAgainst, objectionsToLife } from '@strutbook/domain/release/objections-to-life.js';
import { floor } from '@strutbook/domain/units/fraction.js';
import { formatHours, later } from '@strutbook/domain/units/minutes.js';
import type { Flight } from '@strutbook/domain/usage/flight.js';
import { countersSince } from '@strutbook/domain/usage/since.js';
import { atPositionOne, engineTotals, flight, hours, utc } from './engine-in-service.js';

const held: HoldAgainst = (code, severity, detail = {}) => ({
  code,
  severity,
  positionNumber: 1,
  record: { kind: 'component', id: 'A' },
  detail,
});

/** Source: common practice, no source (hours and cycles since new, since this installation). Values invented. */
describe('counters over an engine change (common practice, no source)', () => {
  const change = utc('2026-03-02', '12:00');
  const after = [0, 4, 8].map((hour) =>
    flight(later(change, hour * 60), later(change, hour * 60 + hours('2:10'))),
  );
  const now = utc('2026-03-05', '0:00');
  const long = utc('2020-01-01', '0:00');
  const removed = {
    componentId: 'A',
    tsn: '21,450:30',
    csn: 12_310,
    stays: [atPositionOne('A', long, change)],
  };
  const fitted = { componentId: 'B', tsn: '9,000:00', csn: 4000, stays: [atPositionOne('B', change, null)] };
  const shown = (of: {
    readonly minutes: number | null;
    readonly cycles: Parameters<typeof floor>[0] | null;
  }) => [of.minutes === null ? null : formatHours(of.minutes), of.cycles === null ? null : floor(of.cycles)];

  it('the engine removed keeps its counters', () => {
    expect(shown(engineTotals({ ...removed, flights: after, at: now }))).toEqual(['21450:30', 12_310]);
  });

  it('the engine fitted gains three flights of 2:10', () => {
    expect(shown(engineTotals({ ...fitted, flights: after, at: now }))).toEqual(['9006:30', 4003]);
  });

  it('since this installation it has 6:30 and three cycles', () => {
    const [atFitting, today] = [change, now].map((at) => engineTotals({ ...fitted, flights: after, at }));
    if (atFitting === undefined || today === undefined) throw new Error('no totals');
    expect(shown(countersSince(atFitting, today))).toEqual(['6:30', 3]);
  });

  /** Source: from memory; late entries count by when they flew. */
  it('a flight entered late, made before the change, is the engine’s that flew it', () => {
    const late = flight(utc('2026-03-02', '8:00'), utc('2026-03-02', '9:30'));
    const flights = [...after, late];
    expect(shown(engineTotals({ ...removed, flights, at: now }))).toEqual(['21452:00', 12_311]);
    expect(shown(engineTotals({ ...fitted, flights, at: now }))).toEqual(['9006:30', 4003]);
  });

  it('a flight that landed at the minute of the removal is the removed engine’s', () => {
    const last = flight(utc('2026-03-02', '10:00'), change);
    expect(shown(engineTotals({ ...removed, flights: [last, ...after], at: now }))).toEqual([
      '21452:30',
      12_311,
    ]);
    expect(shown(engineTotals({ ...fitted, flights: [last, ...after], at: now }))).toEqual(['9006:30', 4003]);
  });

  it('a flight entered late that a used-up life did not have is told as an overrun', () => {
    const late = flight(utc('2026-03-02', '8:00'), utc('2026-03-02', '9:30'));
    const told = (flights: readonly Flight[]) => {
      const { byRating } = engineTotals({ ...removed, flights, at: now });
      const limits = [{ ratingId: null, kind: 'limited', cycles: 12_310, minutes: null }] as const;
      const facts = { used: byRating, limits, ratingNow: null, traceGaps: [], acceptance: null } as const;
      return objectionsToLife(lifeOf({ ...facts, method: 'pro-rata' }), held, null).map((each) => each.code);
    };
    expect(told(after)).toEqual(['AT_LIMIT']);
    expect(told([...after, late])).toEqual(['OVER_LIMIT']);
  });
});
