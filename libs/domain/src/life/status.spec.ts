import { describe, expect, it } from '@jest/globals';
import { STATUS_WORDS, statusOf } from './status.js';

const windows = { alert: 50, planning: 200, tolerance: 10 };

describe('the status of what remains', () => {
  it.each([
    [null, 'not-verified'],
    [-11, 'over'],
    [-10, 'in-tolerance'],
    [-1, 'in-tolerance'],
    [0, 'soon'],
    [50, 'soon'],
    [51, 'planned'],
    [200, 'planned'],
    [201, 'later'],
  ])('%s is %s', (remaining, status) => {
    expect(statusOf(remaining, windows)).toBe(status);
  });

  it('knows no tolerance where none is granted', () => {
    expect(statusOf(-1, { ...windows, tolerance: 0 })).toBe('over');
  });

  it('has its words', () => {
    expect(STATUS_WORDS[statusOf(null, windows)]).toBe('Not verified');
  });
});
