import { describe, expect, test } from '@jest/globals';
import { markOfLife } from './life-status.js';

describe('the mark of a life', () => {
  test('is the server’s status in the screen’s words', () => {
    expect(markOfLife({ status: 'over' })).toBe('over-limit');
    expect(markOfLife({ status: 'planned' })).toBe('plan');
    expect(markOfLife({ status: 'not-applicable' })).toBe('not-applicable');
  });

  test('is never fine where no record says', () => {
    expect(markOfLife(null)).toBe('not-verified');
    expect(markOfLife({ status: 'a word of a newer server' })).toBe('not-verified');
  });
});
