import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { type CounterReading, checkReading, counterPostings } from './apu-counter.js';

const reading = (
  at: number,
  minutes: number,
  starts: number,
  fresh: CounterReading['fresh'] = null,
): CounterReading => ({ id: `r${at}`, at: instant(at), minutes, starts, fresh });

const codeOf = (told: CounterReading, readings: readonly CounterReading[]) => {
  const checked = checkReading(told, readings);
  return checked.ok ? null : checked.refusal.code;
};

describe('the counter of an auxiliary power unit', () => {
  it('counts from reading to reading, and over its replacement', () => {
    const readings = [
      reading(0, 5_000, 100),
      reading(1_000, 5_300, 103),
      reading(2_000, 5_400, 104, { minutes: 10, starts: 1 }),
      reading(3_000, 70, 3),
    ];
    expect(
      counterPostings(readings, 'u').map(({ at, counts }) => [at, counts.minutes, counts.starts]),
    ).toEqual([
      [1_000, 300, 3],
      [2_000, 100, 1],
      [3_000, 60, 2],
    ]);
    expect(counterPostings([], 'u')).toEqual([]);
    expect(counterPostings(readings.slice(0, 1), 'u')).toEqual([]);
  });

  it('never runs back, whichever of two readings is entered later', () => {
    const known = [reading(1_000, 500, 10)];
    expect(codeOf(reading(2_000, 499, 10), known)).toBe('COUNTER_RUNS_BACK');
    expect(codeOf(reading(2_000, 500, 9), known)).toBe('COUNTER_RUNS_BACK');
    expect(codeOf(reading(500, 501, 10), known)).toBe('COUNTER_RUNS_BACK');
    expect(codeOf(reading(500, 500, 11), known)).toBe('COUNTER_RUNS_BACK');
    expect(codeOf(reading(2_000, 500, 10), known)).toBeNull();
    expect(codeOf(reading(500, 500, 10), known)).toBeNull();
  });

  it('never runs faster than time, before or after', () => {
    const known = [reading(1_000, 500, 10)];
    expect(codeOf(reading(1_100, 600, 11), known)).toBeNull();
    expect(codeOf(reading(1_100, 601, 11), known)).toBe('COUNTER_BEYOND_TIME');
    expect(codeOf(reading(900, 400, 10), known)).toBeNull();
    expect(codeOf(reading(900, 399, 10), known)).toBe('COUNTER_BEYOND_TIME');
  });

  it('may begin anywhere when it is replaced', () => {
    const known = [reading(1_000, 500, 10)];
    expect(codeOf(reading(2_000, 600, 11, { minutes: 0, starts: 0 }), known)).toBeNull();
    const replaced = [...known, reading(2_000, 600, 11, { minutes: 0, starts: 0 })];
    expect(codeOf(reading(3_000, 40, 1), replaced)).toBeNull();
  });

  it('shows whole counts alone', () => {
    expect(codeOf(reading(0, -1, 0), [])).toBe('NOT_A_COUNT');
    expect(codeOf(reading(0, 0, 0.5), [])).toBe('NOT_A_COUNT');
    expect(codeOf(reading(0, 1, 1, { minutes: -1, starts: 0 }), [])).toBe('NOT_A_COUNT');
  });
});
