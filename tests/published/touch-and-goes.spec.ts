import { describe, expect, it } from '@jest/globals';
import { fraction } from '@strutbook/domain/units/fraction.js';
import { cycles } from '@strutbook/domain/usage/cycle-rule.js';
import { flightCounts } from '@strutbook/domain/usage/flight.js';
import { flight, ONE_PER_FLIGHT, utc } from './engine-in-service.js';

/** Source: from memory; an engine manual counts a touch-and-go whole or as a stated part. Values invented. */
describe('touch-and-goes (from memory)', () => {
  const counts = flightCounts(flight(utc('2026-03-01', '8:00'), utc('2026-03-01', '9:10'), 5));
  const rule = { ...ONE_PER_FLIGHT, denominator: 2, perFlight: 2 };

  it('five and a final landing are six landings', () => {
    expect(counts.landings).toBe(6);
  });

  it('are six cycles where each counts whole', () => {
    expect(cycles(counts, { ...rule, perTouchAndGo: 2 })).toEqual(fraction(6));
  });

  it('are three and a half cycles where each counts half', () => {
    expect(cycles(counts, { ...rule, perTouchAndGo: 1 })).toEqual(fraction(7, 2));
  });
});
