import { describe, expect, it } from '@jest/globals';
import { rangeWithRunOn } from '@strutbook/domain/torque/run-on.js';
import { fraction } from '@strutbook/domain/units/fraction.js';

/**
 * Source: US Army TB 43-0218, 3-7 c: run-on torque below a third of the recommended torque is ignored, otherwise
 * added; its worked example is 50 to 70 with 30. The other values are constructed. A third of the recommended
 * torque is read as a third of the lower bound.
 */
describe('run-on torque (US Army TB 43-0218, 3-7)', () => {
  const of = (drag: ReturnType<typeof fraction>) => {
    const { low, high } = rangeWithRunOn({ low: fraction(50), high: fraction(70) }, drag, 'one-third');
    return [low, high];
  };

  it('of 30 makes 50 to 70 into 80 to 100', () => {
    expect(of(fraction(30))).toEqual([fraction(80), fraction(100)]);
  });

  it('of 15 leaves 50 to 70 (constructed)', () => {
    expect(of(fraction(15))).toEqual([fraction(50), fraction(70)]);
  });

  it('is added from the third on (constructed)', () => {
    expect(of(fraction(49_999, 3000))).toEqual([fraction(50), fraction(70)]);
    expect(of(fraction(50, 3))).toEqual([fraction(200, 3), fraction(260, 3)]);
  });
});
