import { describe, expect, it } from '@jest/globals';
import { lifeOf } from '@strutbook/domain/life/limited-life.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import { countersSince } from '@strutbook/domain/usage/since.js';
import { hours } from './engine-in-service.js';

/**
 * Source: 14 CFR 91.421 (only an engine rebuilt by its maker may start a new record): an overhaul resets the
 * counters since overhaul, never those since new. That a life-limited part keeps its cycles: from memory.
 */
describe('an overhaul (14 CFR 91.421)', () => {
  const sinceNew = { minutes: hours('21450:30'), cycles: fraction(12_310) };

  it('sets the counters since overhaul to zero and leaves those since new', () => {
    expect(countersSince(sinceNew, sinceNew)).toEqual({ minutes: 0, cycles: fraction(0) });
    const flown = { minutes: sinceNew.minutes + 130, cycles: fraction(12_311) };
    expect(countersSince(sinceNew, flown)).toEqual({ minutes: 130, cycles: fraction(1) });
    expect(flown.minutes).toBe(hours('21452:40'));
  });

  it('leaves the cycles of a life-limited part as they were', () => {
    // Nothing about an overhaul is among the facts of a life: its cycles since new decide.
    const life = lifeOf({
      used: [{ ratingId: 'r', ...sinceNew }],
      limits: [{ ratingId: 'r', kind: 'limited', cycles: 20_000, minutes: null }],
      method: 'pro-rata',
      ratingNow: 'r',
      traceGaps: [],
      acceptance: null,
    });
    expect(life).toMatchObject({ cyclesUsed: fraction(12_310), remaining: 7690 });
  });
});
