import { addDays, addMonths, type CalendarDate, daysBetween } from '../units/calendar.js';
import { compare, type Fraction, floor, fraction, ZERO } from '../units/fraction.js';
import type { Dimension } from './requirement.js';

/** What is granted for intervals up to a length; of what is given the lesser applies, and of nothing given, nothing. */
export interface Tier {
  /** The longest interval it is for, that one included; null: any. */
  readonly upTo: number | null;
  /** Whole hundredths of the interval. */
  readonly percent: number | null;
  /** Minutes, cycles, days or calendar months, as the dimension counts. */
  readonly atMost: number | null;
  /** Of months: days at most. */
  readonly atMostDays: number | null;
}

/** What is granted in each dimension, the tiers of each in order of their length; none where nothing is. */
export type Grants = Readonly<Partial<Record<Dimension, readonly Tier[]>>>;

/** How far before and after its due a requirement may be met without planned times shifting. */
export interface Window {
  readonly early: Grants;
  readonly late: Grants;
}

/** The tier that an interval falls in; null when it falls in none. Total. */
export function tierFor(grants: Grants | undefined, dimension: Dimension, interval: number): Tier | null {
  return (grants?.[dimension] ?? []).find(({ upTo }) => upTo === null || interval <= upTo) ?? null;
}

/**
 * How many minutes or cycles a tier grants of an interval: the lesser of its share and its most, exact; nothing without
 * a tier. Total.
 *
 * Source: permitted variations of a maintenance programme, 10 % and 500 hours at most (Dutch ILT leaflet).
 */
export function amountOf(tier: Tier | null, interval: number): Fraction {
  if (tier === null) return ZERO;
  const share = tier.percent === null ? null : fraction(interval * tier.percent, 100);
  const most = tier.atMost === null ? null : fraction(tier.atMost);
  if (share === null || most === null) return share ?? most ?? ZERO;
  return compare(share, most) < 0 ? share : most;
}

/** A due day with what it was counted from. */
export interface DueDay {
  readonly from: CalendarDate;
  readonly on: CalendarDate;
  readonly dimension: 'days' | 'months';
  /** Days or months, as the dimension counts. */
  readonly interval: number;
}

/**
 * The last day that a tier grants past a due day (or the first before it): a share is of the days between, rounded
 * down to whole days. Total for dates.
 */
export function dayGranted(
  tier: Tier | null,
  { from, on, dimension }: DueDay,
  side: 'early' | 'late',
): CalendarDate {
  if (tier === null) return on;
  const sign = side === 'late' ? 1 : -1;
  const { percent, atMost, atMostDays } = tier;
  const days = [
    ...(percent === null ? [] : [floor(fraction(daysBetween(from, on) * percent, 100))]),
    ...(atMostDays === null ? [] : [atMostDays]),
    ...(atMost !== null && dimension === 'days' ? [atMost] : []),
  ].map((count) => addDays(on, sign * count));
  if (atMost !== null && dimension === 'months') days.push(addMonths(on, sign * atMost));
  if (days.length === 0) return on;
  return days.reduce((nearest, day) => (day < nearest === sign > 0 ? day : nearest));
}
