import { describe, expect, it } from '@jest/globals';
import { instant } from '../units/minutes.js';
import { emptySpans } from './empty-spans.js';

const stay = (from: number, to: number | null) => ({
  from: instant(from),
  to: to === null ? null : instant(to),
});

describe('a slot', () => {
  it('is always empty when nothing was ever in it', () => {
    expect(emptySpans([])).toEqual([{ from: null, to: null }]);
  });

  it('is empty before, between and after its stays', () => {
    expect(emptySpans([stay(50, 70), stay(10, 20)])).toEqual([
      { from: null, to: 10 },
      { from: 20, to: 50 },
      { from: 70, to: null },
    ]);
  });

  it('is not empty between touching stays, nor under an open one', () => {
    expect(emptySpans([stay(10, 20), stay(20, null)])).toEqual([{ from: null, to: 10 }]);
  });
});
