import { divide, type Fraction, fraction } from '../units/fraction.js';

// Whole numbers of 10^-30: the error of forty terms stays far below the twelfth decimal that is kept.
const SCALE = 10n ** 30n;
const PI = 3_141592653589793238462643383279n;
const KEPT = 10n ** 12n;

/**
 * The cosine of an angle of 0 to 180 degrees, to twelve decimals as a fraction; exact at 0, 60, 90, 120 and 180.
 *
 * The power series in whole numbers: the same on every machine, which `Math.cos` does not promise. Throws on an
 * angle outside.
 */
export function cosineOfDegrees(degrees: Fraction): Fraction {
  const { num, den } = degrees;
  if (num < 0n || num > 180n * den) throw new RangeError('an angle outside 0 to 180 degrees');
  const pointsBack = num > 90n * den;
  const sharp = pointsBack ? 180n * den - num : num;
  const x = (sharp * PI) / (180n * den);
  const square = (x * x) / SCALE;
  let [term, sum] = [SCALE, SCALE];
  for (let n = 1n; term !== 0n; n += 1n) {
    term = -(term * square) / (SCALE * (2n * n - 1n) * (2n * n));
    sum += term;
  }
  const kept = (sum * KEPT + SCALE / 2n) / SCALE;
  return divide(fraction(pointsBack ? -kept : kept), fraction(KEPT));
}
