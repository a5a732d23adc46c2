import type { CalendarDate } from '../units/calendar.js';
import { compare, type Fraction } from '../units/fraction.js';

/** Where a requirement was met: before its window, inside it, late inside an approved variation, or past all that. */
export type Meeting = 'early' | 'within' | 'varied' | 'beyond';

/** From where the next is counted: from what was done, or from what was due. */
export type RebaseFrom = 'from-done' | 'from-due';

/** From where the next is counted, for each way in which it was met. */
export type Rebase = Readonly<Record<Meeting, RebaseFrom>>;

/**
 * Unless a programme says otherwise: planned times do not shift inside the window, nor under an approved variation;
 * early outside it, or past everything granted, the next counts from what was done.
 *
 * Source: maintenance manual of a light turboprop, tolerances (window, early); EASA FAQ 19102 (variation).
 */
export const REBASE: Rebase = {
  early: 'from-done',
  within: 'from-due',
  varied: 'from-due',
  beyond: 'from-done',
};

/** A due with all that was granted around it, in counters or in days. */
export interface Granted<T> {
  readonly earliest: T;
  readonly due: T;
  readonly latest: T;
  /** The farthest under the variation that was approved; the latest where none was. */
  readonly varied: T;
}

/** Where a counter or a day at which it was met lies. Total. */
export function meetingOf<T>(
  done: T,
  { earliest, latest, varied }: Granted<T>,
  order: (a: T, b: T) => number,
): Meeting {
  if (order(done, earliest) < 0) return 'early';
  if (order(done, latest) <= 0) return 'within';
  return order(done, varied) <= 0 ? 'varied' : 'beyond';
}

/** The order of counters. Total. */
export const orderOfCounters = (a: Fraction, b: Fraction): number => compare(a, b);

/** The order of days. Total. */
export const orderOfDays = (a: CalendarDate, b: CalendarDate): number => (a < b ? -1 : a > b ? 1 : 0);
