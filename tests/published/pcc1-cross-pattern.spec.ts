import { describe, expect, it } from '@jest/globals';
import { crossPattern } from '@strutbook/domain/torque/sequence.js';

/**
 * Source: the cross pattern of ASME PCC-1, from memory; the table itself was not seen. What makes it one is tested
 * for every multiple of four, the lists remembered for some.
 */
describe('the order of a bolted joint (ASME PCC-1, from memory)', () => {
  it.each([4, 8, 12, 16, 20, 24, 28, 32, 48, 64])(
    'of %i: each once, pairs opposite, fours in quadrature',
    (n) => {
      const order = crossPattern(n);
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, index) => index + 1));
      for (let at = 0; at < n; at += 4) {
        const [first = 0, opposite = 0, third = 0, last = 0] = order.slice(at, at + 4);
        expect([opposite, third, last]).toEqual([first + n / 2, first + n / 4, first + (3 * n) / 4]);
      }
    },
  );

  it.each([
    [4, [1, 3, 2, 4]],
    [8, [1, 5, 3, 7, 2, 6, 4, 8]],
    [12, [1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12]],
    [16, [1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16]],
    [20, [1, 11, 6, 16, 3, 13, 8, 18, 5, 15, 10, 20, 2, 12, 7, 17, 4, 14, 9, 19]],
  ])('of %i is as remembered', (n, order) => {
    expect(crossPattern(n)).toEqual(order);
  });
});
