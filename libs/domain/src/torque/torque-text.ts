import { compare, type Fraction } from '../units/fraction.js';
import type { TorqueCapture } from '../work/capture.js';
import { decimalText, readDecimal, shortText } from './decimal.js';
import type { TorqueRange, TorqueUnit } from './torque.js';

/** The unit a torque is told in, and how many decimals its data has. */
export interface TorqueScale {
  readonly unit: TorqueUnit;
  readonly decimals: number;
}

/** The scale of approved data: its unit, and the decimals its range is typed with. Total. */
export function scaleOf({ unit, low, high }: Pick<TorqueCapture, 'unit' | 'low' | 'high'>): TorqueScale {
  return { unit, decimals: Math.max(decimalsOf(low), decimalsOf(high)) };
}

const decimalsOf = (typed: string) => /[.,](\d+)\s*$/.exec(typed)?.[1]?.length ?? 0;

/**
 * A torque in words: with the decimals of its scale where it ends within them, and else with as many as it needs to
 * stand on its own side of each of the bounds, two at least: 115.001 is never shown as 115.00 against 115. Total.
 */
export function torqueText(
  value: Fraction,
  { unit, decimals }: TorqueScale,
  bounds: readonly Fraction[] = [],
): string {
  if (endsWithin(value, decimals)) return `${decimalText(value, decimals)} ${unit}`;
  for (let digits = Math.max(decimals, 2); ; digits += 1) {
    const text = shortText(value, digits);
    const shown = readDecimal(text);
    const isTrue = shown !== null && bounds.every((bound) => compare(shown, bound) === compare(value, bound));
    if (isTrue || digits >= 12) return `${text} ${unit}`;
  }
}

/**
 * A range in words, '108.5 to 118.5 N·m', with the decimals of its scale where they suffice; a bound that does not
 * end is rounded inwards, so that what is shown is inside the exact range. Total.
 */
export function rangeText({ low, high }: TorqueRange, { unit, decimals }: TorqueScale): string {
  const bound = (value: Fraction, inwards: 'up' | 'down') =>
    endsWithin(value, decimals)
      ? decimalText(value, decimals)
      : shortText(value, Math.max(decimals, 3), inwards);
  return `${bound(low, 'up')} to ${bound(high, 'down')} ${unit}`;
}

const endsWithin = ({ num, den }: Fraction, decimals: number) => (10n ** BigInt(decimals) * num) % den === 0n;
