import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { zeroCounts } from './counts.js';
import {
  type FlightDraft,
  flightCounts,
  flightPostings,
  LONGEST_FLIGHT_MINUTES,
  planFlight,
} from './flight.js';

const draft: FlightDraft = {
  id: 'f1',
  takeOffAt: instant(1000),
  landingAt: instant(1130),
  touchAndGoes: 2,
  starts: 1,
  abortedTakeOffs: 1,
  exceptions: [],
};
const whole = { minutes: 130, flights: 1, landings: 3, touchAndGoes: 2, starts: 1, abortedTakeOffs: 1 };

describe('a flight', () => {
  it('counts its minutes, one flight, and a landing more than its touch-and-goes', () => {
    expect(flightCounts(draft)).toEqual(whole);
  });

  it('is planned with its exceptions: minutes for a shut-down, everything for an engine that did not run', () => {
    const planned = planFlight({
      ...draft,
      exceptions: [
        { positionCarrierId: 'p1', kind: 'shut-down', minutes: 40 },
        { positionCarrierId: 'p2', kind: 'not-running' },
      ],
    });
    expect(planned).toMatchObject({
      ok: true,
      value: {
        exceptions: [
          { positionCarrierId: 'p1', missed: { ...zeroCounts, minutes: 40 } },
          { positionCarrierId: 'p2', missed: whole },
        ],
      },
    });
    if (planned.ok)
      expect(flightPostings(planned.value, 'airframe')).toEqual([
        { carrierId: 'airframe', at: 1130, counts: whole },
        { carrierId: 'p1', at: 1130, counts: { ...zeroCounts, minutes: -40 } },
        expect.objectContaining({
          carrierId: 'p2',
          at: 1130,
          counts: expect.objectContaining({ flights: -1, minutes: -130 }),
        }),
      ]);
  });

  it.each<[string, Partial<FlightDraft>, string]>([
    ['a landing at the take-off', { landingAt: instant(1000) }, 'LANDING_NOT_AFTER_TAKE_OFF'],
    ['a landing before the take-off', { landingAt: instant(900) }, 'LANDING_NOT_AFTER_TAKE_OFF'],
    ['more than a day', { landingAt: instant(1000 + LONGEST_FLIGHT_MINUTES + 1) }, 'FLIGHT_TOO_LONG'],
    ['a negative count', { starts: -1 }, 'NOT_A_COUNT'],
    ['half a touch-and-go', { touchAndGoes: 0.5 }, 'NOT_A_COUNT'],
    [
      'a shut-down without minutes',
      { exceptions: [{ positionCarrierId: 'p', kind: 'shut-down' }] },
      'NOT_A_COUNT',
    ],
    [
      'a shut-down longer than the flight',
      { exceptions: [{ positionCarrierId: 'p', kind: 'shut-down', minutes: 131 }] },
      'EXCEPTION_BEYOND_FLIGHT',
    ],
    [
      'two exceptions of one position',
      {
        exceptions: [
          { positionCarrierId: 'p', kind: 'not-running' },
          { positionCarrierId: 'p', kind: 'not-running' },
        ],
      },
      'EXCEPTION_TWICE',
    ],
  ])('is refused with %s', (_, change, code) => {
    expect(planFlight({ ...draft, ...change })).toMatchObject({ ok: false, refusal: { code } });
  });

  it('may last a whole day, and be flown with an engine shut down all the way', () => {
    expect(planFlight({ ...draft, landingAt: instant(1000 + LONGEST_FLIGHT_MINUTES) }).ok).toBe(true);
    expect(
      planFlight({ ...draft, exceptions: [{ positionCarrierId: 'p', kind: 'shut-down', minutes: 130 }] }).ok,
    ).toBe(true);
  });
});
