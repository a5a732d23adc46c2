import type { Refusal } from '../refusals.js';
import { accepted, type Result, refused } from '../result.js';
import type { Instant } from '../units/minutes.js';
import type { Posting } from '../usage/clock.js';
import { zeroCounts } from '../usage/counts.js';

/** What an auxiliary power unit's counter shows: whole minutes of running, and starts. */
export interface CounterFigures {
  readonly minutes: number;
  readonly starts: number;
}

/** A reading of the counter; with `fresh`, the reading at which it was replaced and where the new one begins. */
export interface CounterReading extends CounterFigures {
  readonly id: string;
  readonly at: Instant;
  readonly fresh: CounterFigures | null;
}

/**
 * What the counter counted: each reading's figures less those before it, at the moment it was read. What ran
 * before the first reading is not told by it.
 *
 * Readings that count, in order of time. Total.
 */
export function counterPostings(readings: readonly CounterReading[], carrierId: string): readonly Posting[] {
  return readings.slice(1).map((reading, index) => {
    const { minutes, starts } = figuresAfter(readings[index] ?? reading);
    return {
      carrierId,
      at: reading.at,
      counts: { ...zeroCounts, minutes: reading.minutes - minutes, starts: reading.starts - starts },
    };
  });
}

/** What the counter showed from a reading on. Total. */
export function figuresAfter({ minutes, starts, fresh }: CounterReading): CounterFigures {
  return fresh ?? { minutes, starts };
}

/**
 * Checks a reading against those before and after it; `readings` are those that count, in order of time, and the
 * new one stands after all of its own instant.
 *
 * A counter never runs back, and never faster than time: between two readings it shows at most the minutes that
 * passed. Only a replacement lets it begin lower.
 * Refuses: NOT_A_COUNT, COUNTER_RUNS_BACK, COUNTER_BEYOND_TIME.
 */
export function checkReading(
  reading: CounterReading,
  readings: readonly CounterReading[],
): Result<CounterReading, Refusal> {
  for (const [field, value] of [
    ['minutes', reading.minutes],
    ['starts', reading.starts],
    ['fresh.minutes', reading.fresh?.minutes ?? 0],
    ['fresh.starts', reading.fresh?.starts ?? 0],
  ] as const)
    if (!Number.isSafeInteger(value) || value < 0) return refused({ code: 'NOT_A_COUNT', field, value });
  const before = readings.findLast((other) => other.at <= reading.at);
  const after = readings.find((other) => other.at > reading.at);
  const refusal =
    (before === undefined ? null : between(before, reading, reading)) ??
    (after === undefined ? null : between(reading, after, reading));
  return refusal === null ? accepted(reading) : refused(refusal);
}

/** What is impossible from one reading to the next; `told` is the one of the two that is new. */
function between(earlier: CounterReading, later: CounterReading, told: CounterReading): Refusal | null {
  const from = figuresAfter(earlier);
  const other = told === later ? { at: earlier.at, ...from } : later;
  for (const field of ['minutes', 'starts'] as const) {
    if (later[field] >= from[field]) continue;
    const [value, beside] = [told === later ? later[field] : from[field], other[field]];
    return { code: 'COUNTER_RUNS_BACK', field, value, beside, at: told.at, besideAt: other.at };
  }
  const [ran, passed] = [later.minutes - from.minutes, later.at - earlier.at];
  return ran > passed
    ? { code: 'COUNTER_BEYOND_TIME', minutes: ran, passed, from: earlier.at, to: later.at }
    : null;
}
