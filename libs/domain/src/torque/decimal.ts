import { type Fraction, fraction } from '../units/fraction.js';

const LONGEST = 40;

/**
 * The number typed, exactly; null when it is none.
 *
 * Digits with at most one decimal mark, a point or a comma, and digits on both sides of it; spaces around it are
 * dropped. No sign, no exponent, no thousands marks: '1,250' is one and a quarter, not a thousand. Total.
 */
export function readDecimal(typed: string): Fraction | null {
  const match = /^(\d+)(?:[.,](\d+))?$/.exec(typed.trim());
  if (match === null || typed.length > LONGEST) return null;
  const [, whole = '', decimals = ''] = match;
  return fraction(BigInt(whole + decimals), 10n ** BigInt(decimals.length));
}

/** As `readDecimal`, with a minus sign before it allowed: a temperature may be below zero. Total. */
export function readSignedDecimal(typed: string): Fraction | null {
  const match = /^[-−](.*)$/s.exec(typed.trim());
  if (match === null) return readDecimal(typed);
  const size = readDecimal(match[1] ?? '');
  return size === null || /^\s/.test(match[1] ?? '') ? null : { num: -size.num, den: size.den };
}

/**
 * The number with exactly so many decimals, a half rounded away from zero; 'up' and 'down' round to that side
 * instead, so that what is shown as a limit is never outside the exact one. Total for zero or more digits.
 */
export function decimalText(
  { num, den }: Fraction,
  digits: number,
  rounding: 'nearest' | 'up' | 'down' = 'nearest',
): string {
  const scaled = num * 10n ** BigInt(digits);
  const whole = roundTo(scaled, den, rounding);
  const size = (whole < 0n ? -whole : whole).toString().padStart(digits + 1, '0');
  const text = digits === 0 ? size : `${size.slice(0, -digits)}.${size.slice(-digits)}`;
  return whole < 0n ? `-${text}` : text;
}

function roundTo(num: bigint, den: bigint, rounding: 'nearest' | 'up' | 'down'): bigint {
  if (rounding === 'down') return floorOf(num, den);
  if (rounding === 'up') return -floorOf(-num, den);
  const size = floorOf(2n * (num < 0n ? -num : num) + den, 2n * den);
  return num < 0n ? -size : size;
}

function floorOf(num: bigint, den: bigint): bigint {
  return num / den - (num < 0n && num % den !== 0n ? 1n : 0n);
}

/**
 * The number as short as it can be said: exactly, when it ends within so many decimals, without trailing zeros;
 * else with exactly so many. Total for zero or more digits.
 */
export function shortText(
  value: Fraction,
  digits: number,
  rounding: 'nearest' | 'up' | 'down' = 'nearest',
): string {
  const text = decimalText(value, digits, rounding);
  const ends = (10n ** BigInt(digits) * value.num) % value.den === 0n;
  return ends && digits > 0 ? text.replace(/\.?0+$/, '') : text;
}
