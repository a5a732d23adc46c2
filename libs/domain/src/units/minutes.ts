import { accepted, type Result, refused } from '../result.js';

declare const minutesUnit: unique symbol;
declare const instantUnit: unique symbol;

/** A duration in whole minutes. */
export type Minutes = number & { readonly [minutesUnit]: true };

/** A point in time: whole minutes since 1970-01-01T00:00Z, in UTC. */
export type Instant = number & { readonly [instantUnit]: true };

/** A whole number of minutes as a duration. Throws on a fraction: that is a bug of the caller. */
export function minutes(count: number): Minutes {
  if (!Number.isSafeInteger(count)) throw new RangeError(`not whole minutes: ${count}`);
  return (count + 0) as Minutes;
}

/** Whole minutes since the epoch as an instant. Throws on a fraction: that is a bug of the caller. */
export function instant(sinceEpoch: number): Instant {
  if (!Number.isSafeInteger(sinceEpoch)) throw new RangeError(`not a whole minute: ${sinceEpoch}`);
  return sinceEpoch as Instant;
}

/** The instant a number of minutes later (or earlier, when negative). */
export function later(at: Instant, by: number): Instant {
  return instant(at + by);
}

/**
 * Hours as the trade writes them: `h:mm`, with a minus sign when negative.
 *
 * No rounding: one minute is one minute. Total for whole minutes.
 */
export function formatHours(count: number): string {
  const size = Math.abs(count);
  const sign = count < 0 ? '-' : '';
  return `${sign}${Math.floor(size / 60)}:${String(size % 60).padStart(2, '0')}`;
}

/** A duration that could not be read. */
export type NotADuration = { readonly code: 'NOT_A_DURATION'; readonly text: string };

/**
 * Reads `h:mm` (or `hhhhh:mm`, thousands parted by commas or spaces allowed), not negative.
 *
 * Decimal hours are refused on purpose: 0.1 h is six minutes, and the minutes would be guessed.
 * Refuses: NOT_A_DURATION.
 */
export function parseHours(text: string): Result<Minutes, NotADuration> {
  const match = /^(\d{1,3}(?:[, ]\d{3})*|\d{1,7}):([0-5]\d)$/.exec(text.trim());
  const [, hours, rest] = match ?? [];
  if (hours === undefined || rest === undefined) return refused({ code: 'NOT_A_DURATION', text });
  return accepted(minutes(Number(hours.replace(/[, ]/g, '')) * 60 + Number(rest)));
}

/** How a half tenth is rounded: 3 minutes are .1 (half up) or .0 (half down). */
export type TenthsConvention = 'half-up' | 'half-down';

/**
 * Whole tenths of an hour nearest to the minutes, for display only: tenths are never added up.
 *
 * Source: two published logbook conventions, half up (3–8 min are .1) and half down (4–9 min are .1).
 * Total; a negative duration is rounded by its size.
 */
export function tenths(count: number, convention: TenthsConvention): number {
  const size = Math.abs(count);
  const rounded = Math.floor((size + (convention === 'half-up' ? 3 : 2)) / 6);
  return count < 0 && rounded !== 0 ? -rounded : rounded;
}
