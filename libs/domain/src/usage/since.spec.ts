import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import { countersSince } from './since.js';

describe('counters since a reset', () => {
  it('are the difference to the counters at the reset', () => {
    const since = countersSince(
      { minutes: 600, cycles: fraction(10) },
      { minutes: 730, cycles: fraction(23, 2) },
    );
    expect(since).toEqual({ minutes: 130, cycles: fraction(3, 2) });
  });

  it('are unknown when either side is', () => {
    expect(countersSince({ minutes: null, cycles: fraction(1) }, { minutes: 5, cycles: null })).toEqual({
      minutes: null,
      cycles: null,
    });
  });
});
