import { describe, expect, test } from '@jest/globals';
import { markOfLife, worse } from './life-status.js';

const limited = (remainingCycles: number | null, remainingMinutes: number | null = null) =>
  ({ kind: 'limited', remainingCycles, remainingMinutes }) as const;

describe('the mark of a life', () => {
  test('follows what remains; none left is not past the limit', () => {
    expect(markOfLife(limited(1001))).toBe('in-limits');
    expect(markOfLife(limited(1000))).toBe('plan');
    expect(markOfLife(limited(250))).toBe('soon');
    expect(markOfLife(limited(0))).toBe('soon');
    expect(markOfLife(limited(-1))).toBe('over-limit');
  });

  test('is the worse of cycles and hours', () => {
    expect(markOfLife(limited(5000, 60))).toBe('soon');
    expect(markOfLife(limited(-1, 6_000_000))).toBe('over-limit');
    expect(worse('not-verified', 'soon')).toBe('not-verified');
  });

  test('is never fine where no record says', () => {
    expect(markOfLife(null)).toBe('not-verified');
    expect(markOfLife(limited(null))).toBe('not-verified');
    expect(markOfLife({ kind: 'unsubstantiated', remainingCycles: null, remainingMinutes: null })).toBe(
      'not-verified',
    );
    expect(markOfLife({ kind: 'not-authorised', remainingCycles: 5, remainingMinutes: null })).toBe(
      'over-limit',
    );
  });
});
