import { isCalendarDate, startOfDay } from '@strutbook/domain/units/calendar.js';
import { type Instant, later } from '@strutbook/domain/units/minutes.js';
import { LONGEST_FLIGHT_MINUTES } from '@strutbook/domain/usage/flight.js';
import { type FileFlight, FLIGHT_COLUMNS, type FlightColumn, type TypedRow } from './file-flight.js';
import type { RowErrors } from './row-error.js';

interface Fault {
  readonly reason: string;
  readonly fix: string;
}
type Reading<T> = { readonly value: T } | Fault;

/** Before this no turbine flew with a log page that anyone would bring in: an older year is a slip of the hand. */
const FIRST_YEAR = '1940';
const MOST_COUNTED = 9999;

/**
 * Reads one line: strict, so that nothing is guessed. Every column that can't be read is told.
 *
 * Answers null, with the reasons in `errors`, when the line is no flight.
 */
export function readRow(values: readonly string[], line: number, errors: RowErrors): FileFlight | null {
  if (values.length !== FLIGHT_COLUMNS.length) {
    errors.add({
      line,
      column: null,
      value: values.join(','),
      reason: `This line has ${values.length} columns; a flight has ${FLIGHT_COLUMNS.length}.`,
      fix: 'Give each column one value, and put a value that has a comma in it between quotes.',
    });
    return null;
  }
  const typed = Object.fromEntries(
    FLIGHT_COLUMNS.map((column, index) => [column, values[index] ?? '']),
  ) as TypedRow;
  const read = <T>(column: FlightColumn, reader: (text: string) => Reading<T>): T | null => {
    const reading = reader(typed[column]);
    if ('value' in reading) return reading.value;
    errors.add({ line, column, value: typed[column], ...reading });
    return null;
  };
  const registration = read('registration', textUpTo(12));
  const logPage = read('log_page', textUpTo(20));
  const fromStation = read('from', station);
  const toStation = read('to', station);
  const takeOffAt = read('take_off_utc', instantOf);
  const landingAt = read('landing_utc', instantOf);
  const touchAndGoes = read('touch_and_goes', countOf);
  const starts = read('starts', countOf);
  const abortedTakeOffs = read('aborted_take_offs', countOf);
  if (registration === null || logPage === null || fromStation === null || toStation === null) return null;
  if (takeOffAt === null || landingAt === null) return null;
  if (touchAndGoes === null || starts === null || abortedTakeOffs === null) return null;
  const wrongTimes = faultOfTimes(takeOffAt, landingAt);
  if (wrongTimes !== null) {
    errors.add({ line, column: 'landing_utc', value: typed.landing_utc, ...wrongTimes });
    return null;
  }
  return {
    line,
    registration,
    logPage,
    fromStation,
    toStation,
    takeOffAt,
    landingAt,
    touchAndGoes,
    starts,
    abortedTakeOffs,
    typed,
  };
}

function textUpTo(longest: number): (text: string) => Reading<string> {
  return (text) => {
    if (text === '') return { reason: 'Nothing is entered here.', fix: 'Enter a value.' };
    if (text !== text.trim())
      return { reason: 'There is a space before or after the value.', fix: 'Take the space away.' };
    if (/[\p{Cc}\p{Cf}\p{Co}\p{Cs}\ufffd]/u.test(text))
      return { reason: 'There is a character in it that does not print.', fix: 'Type the value again.' };
    if (text.length > longest)
      return {
        reason: `It is longer than ${longest} characters.`,
        fix: `Enter at most ${longest} characters.`,
      };
    return { value: text };
  };
}

function station(text: string): Reading<string> {
  if (/^[A-Z0-9]{2,8}$/.test(text)) return { value: text };
  return { reason: 'This is no station code.', fix: 'Enter 2 to 8 capital letters or digits.' };
}

function countOf(text: string): Reading<number> {
  if (/^\d{1,4}$/.test(text)) return { value: Number(text) };
  return { reason: 'This is not a whole number.', fix: `Enter a whole number from 0 to ${MOST_COUNTED}.` };
}

function instantOf(text: string): Reading<Instant> {
  const fix = 'Write it in UTC as YYYY-MM-DD HH:MM, for example 2026-03-04 09:05.';
  const [, date, hours, minutes] = /^(\d{4}-\d{2}-\d{2}) (\d{2}):(\d{2})$/.exec(text) ?? [];
  if (date === undefined || hours === undefined || minutes === undefined)
    return { reason: whyNoInstant(text), fix };
  if (!isCalendarDate(date)) return { reason: `There is no day ${date}.`, fix };
  if (date < FIRST_YEAR) return { reason: `The year ${date.slice(0, 4)} is too early for a flight.`, fix };
  if (Number(hours) > 23 || Number(minutes) > 59)
    return {
      reason: `There is no time ${hours}:${minutes}.`,
      fix: 'Enter hours from 00 to 23 and minutes from 00 to 59.',
    };
  return { value: later(startOfDay(date), Number(hours) * 60 + Number(minutes)) };
}

function whyNoInstant(text: string): string {
  if (text === '') return 'Nothing is entered here.';
  if (/^\d{1,2}[./-]\d{1,2}[./-]\d{2,4}\b/.test(text))
    return 'Day and month can be mistaken for each other here.';
  if (/^\d{4}-\d{2}-\d{2}[ T]\d{2}:\d{2}:\d{2}/.test(text))
    return 'Flights are kept in whole minutes; this has seconds.';
  if (/[zZ]$|[+-]\d{2}:?\d{2}$/.test(text)) return 'The column is in UTC already; a zone can be mistaken.';
  return 'This is not a date and time as the file needs them.';
}

function faultOfTimes(takeOffAt: Instant, landingAt: Instant): Fault | null {
  if (landingAt <= takeOffAt)
    return {
      reason: 'The landing is not after the take-off.',
      fix: 'Correct the date or the time of one of the two.',
    };
  if (landingAt - takeOffAt > LONGEST_FLIGHT_MINUTES)
    return {
      reason: 'The flight would be longer than 24 hours.',
      fix: 'Correct the date of the take-off or of the landing.',
    };
  return null;
}
