import { describe, expect, it } from '@jest/globals';
import { crossPattern } from './sequence.js';

describe('the order of a group of fasteners', () => {
  it('names each once, beginning with the first', () => {
    for (let n = 0; n <= 64; n += 1) {
      const order = crossPattern(n);
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, index) => index + 1));
      if (n > 0) expect(order[0]).toBe(1);
    }
  });

  it('goes across each time where the number is not a multiple of four', () => {
    expect(crossPattern(2)).toEqual([1, 2]);
    expect(crossPattern(5)).toEqual([1, 3, 5, 2, 4]);
    expect(crossPattern(6)).toEqual([1, 4, 2, 5, 3, 6]);
  });

  it('is of a count', () => {
    for (const n of [-1, 1.5, Number.NaN]) expect(() => crossPattern(n)).toThrow(RangeError);
  });
});
