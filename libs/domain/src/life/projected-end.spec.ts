import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import type { Life } from './life.js';
import { projectedEnd } from './projected-end.js';

type Limited = Extract<Life, { kind: 'limited' }>;
const life = (change: Partial<Limited>): Life => ({
  kind: 'limited',
  used: fraction(0),
  cyclesUsed: null,
  minutesUsed: null,
  limit: null,
  remaining: null,
  remainingExact: null,
  minutesLimit: null,
  remainingMinutes: null,
  calendar: null,
  goodThrough: null,
  remainingDays: null,
  flagged: false,
  ...change,
});
const use = { minutes: fraction(600), cycles: fraction(4) };
const end = (change: Partial<Limited>, of = use) => projectedEnd(life(change), of, '2026-01-01');

describe('when a life is projected to end', () => {
  it('is the earliest of what limits it, with what drives it', () => {
    const both = { remainingExact: fraction(10), remainingMinutes: 600 * 9 };
    expect(end(both)).toEqual({ by: 'cycles', days: 2, on: '2026-01-03', past: false });
    expect(end({ ...both, goodThrough: '2026-01-02', remainingDays: 1 })).toMatchObject({
      by: 'days',
      on: '2026-01-02',
    });
  });

  it('is past where one is passed, and has no day unless the calendar says so', () => {
    expect(end({ remainingExact: fraction(-1, 2), goodThrough: '2026-02-01', remainingDays: 31 })).toEqual({
      by: 'cycles',
      days: 0,
      on: null,
      past: true,
    });
    expect(end({ goodThrough: '2025-12-31', remainingDays: -1 })).toMatchObject({
      on: '2025-12-31',
      past: true,
    });
  });

  it('is not told on a clock that stands still, but the calendar runs on', () => {
    const still = { minutes: fraction(0), cycles: fraction(0) };
    expect(end({ remainingExact: fraction(10) }, still)).toBeNull();
    expect(
      end({ remainingExact: fraction(10), goodThrough: '2026-02-01', remainingDays: 31 }, still),
    ).toMatchObject({
      by: 'days',
      days: 31,
    });
  });

  it('names no day that is more than a hundred years off, nor of what is not limited', () => {
    expect(end({ remainingExact: fraction(1_000_000) })).toMatchObject({ on: null, past: false });
    expect(projectedEnd({ kind: 'not-limited' }, use, '2026-01-01')).toBeNull();
  });
});
