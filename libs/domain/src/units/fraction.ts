/** An exact fraction in lowest terms; the denominator is positive. */
export interface Fraction {
  readonly num: bigint;
  readonly den: bigint;
}

const SAFE = BigInt(Number.MAX_SAFE_INTEGER);

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y !== 0n) {
    // Hundreds of lives are judged at once: among numbers that fit it is many times faster.
    if (x <= SAFE && y <= SAFE) return BigInt(divisorOfSafe(Number(x), Number(y)));
    [x, y] = [y, x % y];
  }
  return x;
}

function divisorOfSafe(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/** `num / den` in lowest terms; whole numbers may be given as numbers. Throws on a zero denominator. */
export function fraction(num: bigint | number, den: bigint | number = 1n): Fraction {
  const [n, d] = [BigInt(num), BigInt(den)];
  if (d === 1n) return { num: n, den: d };
  if (d === 0n) throw new RangeError('a fraction over zero');
  const divisor = greatestCommonDivisor(n, d) * (d < 0n ? -1n : 1n);
  return { num: n / divisor, den: d / divisor };
}

/** The fraction 0. */
export const ZERO: Fraction = { num: 0n, den: 1n };

/** The fraction 1. */
export const ONE: Fraction = { num: 1n, den: 1n };

/** Exact sum. Total. */
export function add(a: Fraction, b: Fraction): Fraction {
  if (a.num === 0n) return b;
  if (a.den === b.den) return fraction(a.num + b.num, a.den);
  return fraction(a.num * b.den + b.num * a.den, a.den * b.den);
}

/** Exact difference `a − b`. Total. */
export function subtract(a: Fraction, b: Fraction): Fraction {
  if (a.den === b.den) return fraction(a.num - b.num, a.den);
  return fraction(a.num * b.den - b.num * a.den, a.den * b.den);
}

/** The same amount below zero instead of above it. Total. */
export function negate({ num, den }: Fraction): Fraction {
  return { num: -num, den };
}

/** Exact product. Total. */
export function multiply(a: Fraction, b: Fraction): Fraction {
  return fraction(a.num * b.num, a.den * b.den);
}

/** Exact quotient. Throws when `b` is zero. */
export function divide(a: Fraction, b: Fraction): Fraction {
  return fraction(a.num * b.den, a.den * b.num);
}

/** −1, 0 or 1 as `a` is less than, equal to or more than `b`. Total. */
export function compare(a: Fraction, b: Fraction): -1 | 0 | 1 {
  const difference = a.num * b.den - b.num * a.den;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** The largest whole number not above it: what remains is rounded this way. Throws beyond 2^53. */
export function floor({ num, den }: Fraction): number {
  const towardsZero = num / den;
  return toSafeNumber(num % den < 0n ? towardsZero - 1n : towardsZero);
}

/** The smallest whole number not below it: what is used up is rounded this way. Throws beyond 2^53. */
export function ceil(value: Fraction): number {
  const down = floor({ num: -value.num, den: value.den });
  return down === 0 ? 0 : -down;
}

function toSafeNumber(whole: bigint): number {
  const result = Number(whole);
  if (!Number.isSafeInteger(result)) throw new RangeError('a whole number beyond 2^53');
  return result;
}
