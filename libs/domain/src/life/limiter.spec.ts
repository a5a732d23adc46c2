import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import type { Life } from './life.js';
import { limiterOf } from './limiter.js';
import type { ProjectedEnd } from './projected-end.js';

const limited = (remaining: number | null, remainingMinutes: number | null = null): Life => ({
  kind: 'limited',
  used: fraction(0),
  cyclesUsed: fraction(0),
  minutesUsed: 0,
  limit: 1,
  remaining,
  remainingExact: null,
  minutesLimit: null,
  remainingMinutes,
  calendar: null,
  goodThrough: null,
  remainingDays: null,
  flagged: false,
});
const end = (days: number, past = false): ProjectedEnd => ({ by: 'cycles', days, on: null, past });
const part = (componentId: string, life: Life) => ({ componentId, life });

describe('the limiter of an engine', () => {
  it('is the part with the fewest cycles left, and apart from it the fewest minutes', () => {
    const found = limiterOf([
      part('a', limited(10, 900)),
      part('b', limited(-3)),
      part('c', limited(null, 60)),
      part('d', { kind: 'not-limited' }),
    ]);
    expect([found.byCycles?.componentId, found.byMinutes?.componentId]).toEqual(['b', 'c']);
  });

  it('is a part without a verified life before any number, one not authorised before that', () => {
    const untraced = part('u', { kind: 'unsubstantiated', reasons: [] });
    expect(limiterOf([part('b', limited(-3)), untraced]).byCycles?.componentId).toBe('u');
    expect(limiterOf([untraced, part('n', { kind: 'not-authorised' })]).byMinutes?.componentId).toBe('n');
  });

  it('by date is what is past, then what is projected to end first; what cannot be told before both', () => {
    const slow = { ...part('slow', limited(10)), end: end(100) };
    const quick = { ...part('quick', limited(900)), end: end(20) };
    const past = { ...part('past', limited(-1)), end: end(0, true) };
    const still = { ...part('still', limited(1)), end: null };
    const untold = part('u', { kind: 'unsubstantiated', reasons: [] });
    expect(limiterOf([slow, quick, still]).byDate?.componentId).toBe('quick');
    expect(limiterOf([slow, quick, past]).byDate?.componentId).toBe('past');
    expect(limiterOf([past, untold]).byDate?.componentId).toBe('u');
    expect(limiterOf([still]).byDate).toBeNull();
  });

  it('is nobody where nothing is limited', () => {
    expect(limiterOf([part('a', { kind: 'not-limited' })])).toEqual({
      byCycles: null,
      byMinutes: null,
      byDate: null,
    });
  });
});
