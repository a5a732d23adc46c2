import { type Instant, instant } from './minutes.js';

/** A day without a time, `YYYY-MM-DD`, in the Gregorian calendar, years 0001 to 9999. */
export type CalendarDate = string;

const MINUTES_A_DAY = 1440;

/** How months are counted: to the same day (clamped, keeping the anchor's day), or to the month's end. */
export type MonthRule = 'same-day' | 'month-end';

interface Parts {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** Whether the text is a real date. Total. */
export function isCalendarDate(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return false;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  return year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

function partsOf(date: CalendarDate): Parts {
  if (!isCalendarDate(date)) throw new RangeError(`not a date: ${date}`);
  return { year: Number(date.slice(0, 4)), month: Number(date.slice(5, 7)), day: Number(date.slice(8, 10)) };
}

function toDate({ year, month, day }: Parts): CalendarDate {
  const pad = (value: number, width: number) => String(value).padStart(width, '0');
  return `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`;
}

function daysInMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

// Days since 1970-01-01, counted in 400-year eras that begin on 1 March (so that 29 Feb is a last day).
function dayNumber({ year, month, day }: Parts): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  return (
    era * 146_097 +
    yearOfEra * 365 +
    Math.floor(yearOfEra / 4) -
    Math.floor(yearOfEra / 100) +
    dayOfYear -
    719_468
  );
}

function dateOfDayNumber(number: number): CalendarDate {
  const shifted = number + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = ((shiftedMonth + 2) % 12) + 1;
  const day = dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1;
  return toDate({ year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day });
}

/** The date a number of days later (earlier, when negative). Throws on something that is no date. */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  return dateOfDayNumber(dayNumber(partsOf(date)) + days);
}

/**
 * The date a number of calendar months later.
 *
 * 'same-day' keeps the day of `anchorDay` (the first date's, when a chain is counted) and clamps it to
 * the month's end; 'month-end' answers the last day of the month. Throws on something that is no date.
 *
 * Source: XML Schema Part 2, appendix E (clamping); '… calendar months' to the last day: US practice.
 */
export function addMonths(
  date: CalendarDate,
  months: number,
  { rule = 'same-day', anchorDay }: { readonly rule?: MonthRule; readonly anchorDay?: number } = {},
): CalendarDate {
  const { year, month, day } = partsOf(date);
  const count = year * 12 + (month - 1) + months;
  const [toYear, toMonth] = [Math.floor(count / 12), (((count % 12) + 12) % 12) + 1];
  const last = daysInMonth(toYear, toMonth);
  return toDate({
    year: toYear,
    month: toMonth,
    day: rule === 'month-end' ? last : Math.min(anchorDay ?? day, last),
  });
}

/** The calendar day on which an instant falls, at an offset from UTC in minutes (east positive). Total. */
export function dateOf(at: Instant, offsetMinutes = 0): CalendarDate {
  return dateOfDayNumber(Math.floor((at + offsetMinutes) / MINUTES_A_DAY));
}

/** The first instant of a calendar day at an offset from UTC in minutes (east positive). */
export function startOfDay(date: CalendarDate, offsetMinutes = 0): Instant {
  return instant(dayNumber(partsOf(date)) * MINUTES_A_DAY - offsetMinutes);
}

/** Whole days from one date to another (negative when the second is earlier). */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return dayNumber(partsOf(to)) - dayNumber(partsOf(from));
}

/** −1, 0 or 1 as `a` is before, on or after `b`. Total for dates. */
export function compare(a: CalendarDate, b: CalendarDate): -1 | 0 | 1 {
  return a < b ? -1 : a > b ? 1 : 0;
}
