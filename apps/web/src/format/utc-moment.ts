export type TypedInstant =
  | { readonly ok: true; readonly instant: number }
  | { readonly ok: false; readonly reason: string };
export type TypedDate =
  | { readonly ok: true; readonly date: string }
  | { readonly ok: false; readonly reason: string };

const MOMENT = /^(\d{4})-(\d{2})-(\d{2})[ T](\d{2}):(\d{2})\s*(?:Z|UTC)?$/i;
const DATE = /^(\d{4})-(\d{2})-(\d{2})$/;

const refused = (reason: string): { readonly ok: false; readonly reason: string } => ({ ok: false, reason });

/** Milliseconds of a date that the calendar has, or null: 31 November is refused, never moved on. */
function midnight(year: number, month: number, day: number): number | null {
  const milliseconds = Date.UTC(year, month - 1, day);
  const date = new Date(milliseconds);
  const same =
    date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return same ? milliseconds : null;
}

/** Typed 'YYYY-MM-DD HH:MM', read as UTC, as minutes since 1970-01-01T00:00Z. */
export function parseMoment(typed: string): TypedInstant {
  const match = MOMENT.exec(typed.trim());
  if (match === null) return refused('Enter date and time in UTC, for example 2026-11-11 14:05');
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = match.slice(1).map(Number);
  const start = midnight(year, month, day);
  if (start === null)
    return refused('There is no such date. Enter year-month-day, for example 2026-11-11 14:05');
  if (hour > 23 || minute > 59) return refused('Enter a time from 00:00 to 23:59');
  return { ok: true, instant: start / 60_000 + hour * 60 + minute };
}

/** Typed 'YYYY-MM-DD' as a calendar date. */
export function parseDate(typed: string): TypedDate {
  const match = DATE.exec(typed.trim());
  if (match === null) return refused('Enter year, month and day, for example 2026-11-11');
  const [year = 0, month = 0, day = 0] = match.slice(1).map(Number);
  if (midnight(year, month, day) === null)
    return refused('There is no such date. Enter year-month-day, for example 2026-11-11');
  return { ok: true, date: match[0] };
}
