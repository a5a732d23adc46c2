import { describe, expect, it } from '@jest/globals';
import { counterPostings } from '@strutbook/domain/runs/apu-counter.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import { instant } from '@strutbook/domain/units/minutes.js';
import { addCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { cycles } from '@strutbook/domain/usage/cycle-rule.js';
import { flightCounts } from '@strutbook/domain/usage/flight.js';
import { flight, ONE_PER_FLIGHT, utc } from './engine-in-service.js';

/** Source: from memory; an auxiliary power unit's hours and cycles are running hours and starts of its own counter. */
describe('the counter of an auxiliary power unit (from memory)', () => {
  it('adds its running hours and starts to the balance, unrelated to what was flown', () => {
    const postings = counterPostings(
      [
        { id: 'on', at: instant(0), minutes: 449_466, starts: 12_928, fresh: null },
        { id: 'off', at: instant(60_000), minutes: 452_106, starts: 12_969, fresh: null },
      ],
      'unit',
    );
    const ran = postings.reduce((sum, { counts }) => addCounts(sum, counts), zeroCounts);
    expect(ran.minutes).toBe(44 * 60);
    expect(cycles(ran, { ...ONE_PER_FLIGHT, perFlight: 0, perStart: 1 })).toEqual(fraction(41));
    expect(ran.flights).toBe(0);
  });
});

/** Source: from memory; a go-around without touching down is one cycle unless the engine's rule says otherwise. */
describe('a go-around without touching down (from memory)', () => {
  it('is part of its flight: one cycle, one landing', () => {
    const counts = flightCounts(flight(utc('2026-03-01', '8:00'), utc('2026-03-01', '9:10'), 0));
    expect([counts.landings, counts.touchAndGoes]).toEqual([1, 0]);
    expect(cycles(counts, ONE_PER_FLIGHT)).toEqual(fraction(1));
  });
});
