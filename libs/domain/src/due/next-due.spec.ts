import { describe, expect, it } from '@jest/globals';
import { daysUntil, nextDue, type ProjectedDue } from './next-due.js';

const due = (dimension: ProjectedDue['dimension'], inDays: number | null): ProjectedDue => ({
  dimension,
  dueAt: 0,
  inDays,
});

describe('the next due', () => {
  it('is projected to whole days, rounded down', () => {
    expect(daysUntil(10, 4)).toBe(2);
    expect(daysUntil(10, 0)).toBeNull();
  });

  it('is the first of the dimensions that can be told', () => {
    expect(nextDue([due('days', 30), due('cycles', 2), due('minutes', null)], 'first')?.dimension).toBe(
      'cycles',
    );
  });

  it('is the last only when all can be told', () => {
    expect(nextDue([due('days', 30), due('cycles', 2)], 'last')?.dimension).toBe('days');
    expect(nextDue([due('days', 30), due('minutes', null)], 'last')).toBeNull();
    expect(nextDue([], 'first')).toBeNull();
  });
});
