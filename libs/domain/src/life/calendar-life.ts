import { addDays, addMonths, type CalendarDate, daysBetween, type MonthRule } from '../units/calendar.js';

/** From when a calendar life counts. */
export type CountedFrom = 'new' | 'first-installation' | 'overhaul';

/** A life in days or months, whether flown or in store. */
export interface CalendarLimit {
  readonly span: number;
  readonly unit: 'days' | 'months';
  readonly countedFrom: CountedFrom;
  /** How months are counted. */
  readonly monthRule: MonthRule;
  /** The row that states it. */
  readonly limitId: string;
}

/** A day counted from; null when it is not known, 'not-yet' of what has not happened: such a life has not begun. */
export type CountedDay = CalendarDate | 'not-yet' | null;

/** The days calendar lives count from, and the day it is where the part is. */
export type LifeDays = Readonly<Record<CountedFrom, CountedDay>> & { readonly today: CalendarDate };

/** Where a calendar life ends. */
export interface CalendarEnd {
  readonly limit: CalendarLimit;
  /** The day it counts from. */
  readonly from: CalendarDate;
  /** The last day it is good through. */
  readonly goodThrough: CalendarDate;
  /** Days until then: 0 on the last day, below 0 past it. */
  readonly remaining: number;
}

/**
 * The calendar life that ends first; of equals the one named first. Null when none has begun, or when the day one of
 * them counts from is not known: the unknown one might be the first to end. Throws beyond the year 9999.
 */
export function firstToEnd(limits: readonly CalendarLimit[], days: LifeDays | undefined): CalendarEnd | null {
  let first: CalendarEnd | null = null;
  for (const limit of limits) {
    if (days?.[limit.countedFrom] === 'not-yet') continue;
    const end = endOf(limit, days);
    if (end === null) return null;
    if (first === null || end.goodThrough < first.goodThrough) first = end;
  }
  return first;
}

/** The events whose day is not known and is counted from, each once. Total. */
export function unknownDays(
  limits: readonly CalendarLimit[],
  days: LifeDays | undefined,
): readonly CountedFrom[] {
  const asked = new Set(limits.map((limit) => limit.countedFrom));
  return [...asked].filter((from) => days === undefined || days[from] === null);
}

function endOf(limit: CalendarLimit, days: LifeDays | undefined): CalendarEnd | null {
  const from = days?.[limit.countedFrom] ?? null;
  if (days === undefined || from === null || from === 'not-yet') return null;
  const goodThrough =
    limit.unit === 'days'
      ? addDays(from, limit.span)
      : addMonths(from, limit.span, { rule: limit.monthRule });
  return { limit, from, goodThrough, remaining: daysBetween(days.today, goodThrough) };
}
