import { describe, expect, it } from '@jest/globals';
import { startOfDay } from '../units/calendar.js';
import { type Instant, instant, later } from '../units/minutes.js';
import { type Boundary, flightAround, type LoggedFlight, resolveBoundary } from './boundary.js';

const day = startOfDay('2026-06-30');
const at = (hours: number, minutes = 0): Instant => later(day, hours * 60 + minutes);
const flight = (id: string, page: string | null, takeOffAt: Instant, landingAt: Instant): LoggedFlight => ({
  id,
  page,
  takeOffAt,
  landingAt,
});
const flights = [
  flight('before midnight', '41', at(-1), at(1, 25)),
  flight('morning', '42', at(8), at(9)),
  flight('second leg', '42', at(10), at(11, 5)),
  flight('over midnight', '43', at(23, 40), at(25, 25)),
];
const resolve = (boundary: Boundary, offsetMinutes = 0, around = flights) =>
  resolveBoundary(boundary, { flights: around, offsetMinutes });

describe('a boundary', () => {
  it('told as an instant is itself', () => {
    expect(resolve({ kind: 'instant', at: at(12) })).toEqual({
      ok: true,
      value: { at: at(12), precision: 'minute' },
    });
  });

  it('after a page is that page’s last landing', () => {
    expect(resolve({ kind: 'after-page', page: '42' })).toEqual({
      ok: true,
      value: { at: at(11, 5), precision: 'page' },
    });
  });

  it('after an unknown page is refused', () => {
    expect(resolve({ kind: 'after-page', page: '99' })).toEqual({
      ok: false,
      refusal: { code: 'NO_SUCH_LOG_PAGE', page: '99' },
    });
  });

  it('before the first flight is the start of the day, or the landing of a flight that spans it', () => {
    const boundary: Boundary = { kind: 'before-first', on: '2026-06-30' };
    expect(resolve(boundary)).toEqual({ ok: true, value: { at: at(1, 25), precision: 'day' } });
    expect(resolve(boundary, 0, flights.slice(1))).toEqual({
      ok: true,
      value: { at: at(0), precision: 'day' },
    });
    expect(resolve(boundary, 0, [flight('lands at midnight', null, at(-2), at(0))])).toMatchObject({
      value: { at: at(0) },
    });
  });

  it('after the last flight is the start of the next day, or the landing of a flight over midnight', () => {
    const boundary: Boundary = { kind: 'after-last', on: '2026-06-30' };
    expect(resolve(boundary)).toEqual({ ok: true, value: { at: at(25, 25), precision: 'day' } });
    expect(resolve(boundary, 0, flights.slice(0, 3))).toMatchObject({ value: { at: at(24) } });
  });

  it('counts days in the zone of the rule set', () => {
    expect(resolve({ kind: 'before-first', on: '2026-06-30' }, 120)).toMatchObject({ value: { at: at(-2) } });
    expect(resolve({ kind: 'after-last', on: '2026-06-30' }, 120)).toMatchObject({ value: { at: at(22) } });
    // The take-off at 23:40 UTC is on 1 July there: the day is over before it.
    expect(resolve({ kind: 'after-last', on: '2026-07-01' }, 120)).toMatchObject({ value: { at: at(46) } });
  });
});

describe('a flight around an instant', () => {
  it('holds neither its take-off nor its landing', () => {
    expect(flightAround(at(8), flights)).toBeNull();
    expect(flightAround(at(9), flights)).toBeNull();
    expect(flightAround(at(8, 1), flights)?.id).toBe('morning');
  });

  it('is found at its last minute', () => {
    expect(flightAround(instant(at(9) - 1), flights)?.id).toBe('morning');
  });
});
