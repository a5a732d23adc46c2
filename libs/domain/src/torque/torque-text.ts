import { compare, type Fraction } from '../units/fraction.js';
import { decimalText, readDecimal, shortText } from './decimal.js';
import type { TorqueRange, TorqueUnit } from './torque.js';

/**
 * A torque in words, with as many decimals as it needs to stand on its own side of each of those bounds: 115.001
 * is never shown as 115.00 against a limit of 115. At least two where it does not end before. Total.
 */
export function torqueText(value: Fraction, unit: TorqueUnit, bounds: readonly Fraction[] = []): string {
  for (let digits = 2; ; digits += 1) {
    const text = shortText(value, digits);
    const shown = readDecimal(text);
    const isTrue = shown !== null && bounds.every((bound) => compare(shown, bound) === compare(value, bound));
    if (isTrue || digits >= 12) return `${text} ${unit}`;
  }
}

/**
 * A range in words, '108.5 to 118.5 N·m', bounds with the decimals given where they end within them; what does not
 * end is rounded inwards, so that what is shown is inside the exact range. Total.
 */
export function rangeText({ low, high }: TorqueRange, unit: TorqueUnit, decimals = 0): string {
  return `${boundText(low, decimals, 'up')} to ${boundText(high, decimals, 'down')} ${unit}`;
}

function boundText(value: Fraction, decimals: number, inwards: 'up' | 'down'): string {
  const exact = (10n ** BigInt(decimals) * value.num) % value.den === 0n;
  return exact ? decimalText(value, decimals) : shortText(value, Math.max(decimals, 3), inwards);
}

/** How many decimals a number was typed with. Total. */
export function decimalsOf(typed: string): number {
  return /[.,](\d+)\s*$/.exec(typed)?.[1]?.length ?? 0;
}
