import { describe, expect, it } from '@jest/globals';
import { addDays } from '../units/calendar.js';
import type { CycleRule } from '../usage/cycle-rule.js';
import {
  type DutyDimension,
  type DutyToCome,
  dutyReadiness,
  type FlightToCome,
  lastFlightAllowed,
  unitsOf,
} from './readiness.js';

const rule: CycleRule = {
  id: 'r',
  perFlight: 2,
  perLanding: 0,
  perTouchAndGo: 1,
  perStart: 0,
  perAbortedTakeOff: 0,
  denominator: 2,
};

const flight = (minutes: number, landsOn = '2026-05-01'): FlightToCome => ({
  adds: { minutes, flights: 1, landings: 1, touchAndGoes: 0, starts: 1, abortedTakeOffs: 0 },
  landsOn,
});

const counter = (
  kind: 'minutes' | 'flights',
  left: number,
  { latestLeft = left, isBound = false } = {},
): DutyDimension => ({ kind: 'counter', unit: { kind }, left, latestLeft, isBound });

const day = (goodThrough: string, latestThrough = goodThrough): DutyDimension => ({
  ...{ kind: 'day', goodThrough, latestThrough, isBound: false },
});

const duty = (combine: 'first' | 'last', ...dimensions: readonly DutyDimension[]): DutyToCome => ({
  ...{ combine, dimensions, hasUnknown: false },
});

const of = (asked: DutyToCome, flights: readonly FlightToCome[]) => {
  const { dueOnFlight, breaksOnFlight } = dutyReadiness(asked, flights);
  return [dueOnFlight, breaksOnFlight];
};

describe('what planned flights do to a duty', () => {
  const hours = [flight(60), flight(60), flight(60)];

  it('a counter may be used up exactly, and not by a minute more', () => {
    expect(of(duty('first', counter('minutes', 180)), hours)).toEqual([null, null]);
    expect(of(duty('first', counter('minutes', 179)), hours)).toEqual([2, 2]);
    expect(of(duty('first', counter('flights', 2)), hours)).toEqual([2, 2]);
    expect(of(duty('first', counter('flights', 3)), hours)).toEqual([null, null]);
  });

  it('with nothing left, or less, the first flight must not be made', () => {
    expect(of(duty('first', counter('flights', 0)), hours)).toEqual([0, 0]);
    expect(of(duty('first', counter('flights', -3)), hours)).toEqual([0, 0]);
  });

  it('a day is good through its end: a flight that lands on the next must not be made', () => {
    const flights = [flight(60, '2026-05-01'), flight(60, '2026-05-01'), flight(60, '2026-05-02')];
    expect(of(duty('first', day('2026-05-01')), flights)).toEqual([2, 2]);
    expect(of(duty('first', day('2026-05-02')), flights)).toEqual([null, null]);
    expect(of(duty('first', day('2026-04-30')), flights)).toEqual([0, 0]);
  });

  it('inside what is granted past the due it is due, and breaks at its end', () => {
    expect(of(duty('first', counter('minutes', 60, { latestLeft: 120 })), hours)).toEqual([1, 2]);
    expect(
      of(duty('first', day('2026-05-01', '2026-05-03')), [flight(1, '2026-05-02'), flight(1, '2026-05-04')]),
    ).toEqual([0, 1]);
  });

  it('whichever comes first breaks it; whichever comes last only when all are past', () => {
    const both = [counter('minutes', 60), counter('flights', 2)] as const;
    expect(of(duty('first', ...both), hours)).toEqual([1, 1]);
    expect(of(duty('last', ...both), hours)).toEqual([2, 2]);
    expect(of(duty('last', counter('minutes', 60), counter('flights', 9)), hours)).toEqual([null, null]);
  });

  it('an outer bound breaks what comes last as soon as it comes', () => {
    const bound = counter('flights', 1, { isBound: true });
    expect(of(duty('last', counter('minutes', 600), counter('flights', 9), bound), hours)).toEqual([1, 1]);
  });

  it('says that nothing can be stated where something is unknown, and still what is known to break', () => {
    const unknown = { ...duty('first', counter('flights', 1)), hasUnknown: true };
    expect(dutyReadiness(unknown, hours)).toEqual({ dueOnFlight: 1, breaksOnFlight: 1, notVerified: true });
    expect(dutyReadiness({ ...unknown, combine: 'last' }, hours)).toEqual({
      ...{ dueOnFlight: null, breaksOnFlight: null, notVerified: true },
    });
  });

  it('counts cycles by the rule, in units of its denominator', () => {
    const cycles: DutyDimension = {
      ...{ kind: 'counter', unit: { kind: 'cycles', rule }, left: 3, latestLeft: 3, isBound: false },
    };
    // One and a half cycles are left: one flight uses one, and half a one is not enough for the next.
    expect(of(duty('first', cycles), hours)).toEqual([1, 1]);
  });

  it('is not used up by flights on a counter that they do not run', () => {
    const still: DutyDimension = {
      ...{ kind: 'counter', unit: { kind: 'still' }, left: 0, latestLeft: 0, isBound: false },
    };
    expect(of(duty('first', still), hours)).toEqual([null, null]);
  });

  it('without flights nothing breaks; what is past forbids the first', () => {
    expect(of(duty('first', { kind: 'past', isBound: false }), [])).toEqual([null, null]);
    expect(of(duty('first', { kind: 'past', isBound: false }), hours)).toEqual([0, 0]);
  });
});

describe('the last flight that may be made', () => {
  it('is the one before the first that must not be', () => {
    expect(lastFlightAllowed([], 4)).toBe(3);
    expect(lastFlightAllowed([null, null], 4)).toBe(3);
    expect(lastFlightAllowed([3, null, 2], 4)).toBe(1);
    expect(lastFlightAllowed([0], 4)).toBe(-1);
    expect(lastFlightAllowed([], 0)).toBe(-1);
  });
});

/** A small generator whose seed is printed when it fails. */
function randoms(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/** Flies one flight after the other and looks after each whether the duty is past. */
function flown(
  { combine, dimensions, hasUnknown }: DutyToCome,
  flights: readonly FlightToCome[],
  latest: boolean,
) {
  for (const [place, { landsOn }] of flights.entries()) {
    const past = (dimension: DutyDimension): boolean => {
      if (dimension.kind === 'past') return true;
      if (dimension.kind === 'day')
        return landsOn > (latest ? dimension.latestThrough : dimension.goodThrough);
      const used = flights
        .slice(0, place + 1)
        .reduce((sum, { adds }) => sum + unitsOf(adds, dimension.unit), 0);
      return (latest ? dimension.latestLeft : dimension.left) - used < 0;
    };
    const own = dimensions.filter(({ isBound }) => !isBound);
    const byOwn = combine === 'first' ? own.some(past) : own.length > 0 && !hasUnknown && own.every(past);
    if (byOwn || dimensions.some((dimension) => dimension.isBound && past(dimension))) return place;
  }
  return null;
}

describe('readiness and a simulation flight by flight', () => {
  const seed = 20_261_125;
  it(`agree on every duty and plan (seed ${seed})`, () => {
    const next = randoms(seed);
    const dimension = (): DutyDimension => {
      const isBound = next(5) === 0;
      const left = next(12) - 2;
      const latestLeft = left + next(2) * next(4);
      switch (next(5)) {
        case 0:
          return { kind: 'counter', unit: { kind: 'flights' }, left, latestLeft, isBound };
        case 1:
          return { kind: 'counter', unit: { kind: 'cycles', rule }, left, latestLeft, isBound };
        case 2: {
          const goodThrough = addDays('2026-05-01', left);
          return {
            kind: 'day',
            goodThrough,
            latestThrough: addDays(goodThrough, latestLeft - left),
            isBound,
          };
        }
        case 3:
          return next(6) === 0
            ? { kind: 'past', isBound }
            : { kind: 'counter', unit: { kind: 'still' }, left, latestLeft, isBound };
        default:
          return {
            ...{ kind: 'counter', unit: { kind: 'minutes' }, isBound },
            ...{ left: left * 60, latestLeft: latestLeft * 60 },
          };
      }
    };
    for (let round = 0; round < 4000; round += 1) {
      const asked: DutyToCome = {
        combine: next(2) === 0 ? 'first' : 'last',
        dimensions: Array.from({ length: next(4) }, dimension),
        hasUnknown: next(6) === 0,
      };
      const flights = Array.from({ length: next(10) }, (_, index) =>
        flight(30 + next(60), addDays('2026-05-01', index + next(2))),
      ).sort((a, b) => (a.landsOn < b.landsOn ? -1 : 1));
      expect({ round, asked, is: of(asked, flights) }).toEqual({
        ...{ round, asked },
        is: [flown(asked, flights, false), flown(asked, flights, true)],
      });
    }
  });
});
