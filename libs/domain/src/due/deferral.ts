import { addDays, type CalendarDate } from '../units/calendar.js';

// Consecutive calendar days, the day of discovery excluded.
const DAYS = { B: 3, C: 10, D: 120 } as const;

/** A category of the minimum equipment list; the days of category A are the item's own. */
export type DeferralCategory =
  | { readonly category: keyof typeof DAYS }
  | { readonly category: 'A'; readonly days: number };

/**
 * The last day on which an item that was found on a day may stay deferred: that day is not counted, and the count goes
 * on from it however often the item is entered again. Throws beyond the year 9999.
 *
 * Source: minimum equipment list preambles, repair intervals B, C and D (HKAR-MMEL; Transport Canada TP 9155).
 */
export function deferralExpiry(foundOn: CalendarDate, of: DeferralCategory): CalendarDate {
  return addDays(foundOn, of.category === 'A' ? of.days : DAYS[of.category]);
}
