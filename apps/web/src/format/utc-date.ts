const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;
const MINUTE_MS = 60_000;

const two = (value: number): string => String(value).padStart(2, '0');

const at = (instant: number): Date => new Date(instant * MINUTE_MS);

/** The minute an ISO 8601 text falls in, counted from 1970-01-01T00:00Z; null when it is no instant. */
export function instantOf(iso: string): number | null {
  const milliseconds = Date.parse(iso);
  return Number.isNaN(milliseconds) ? null : Math.floor(milliseconds / MINUTE_MS);
}

/** Minutes since 1970-01-01T00:00Z as an ISO text for the wire: '2026-11-11T14:05:00.000Z'. */
export function isoOf(instant: number): string {
  return at(instant).toISOString();
}

/** An instant's UTC date: '11 Nov 2026'. */
export function utcDate(instant: number): string {
  const date = at(instant);
  return `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()] ?? ''} ${date.getUTCFullYear()}`;
}

/** An instant's UTC time, 24 hours: '14:05Z'. */
export function utcTime(instant: number): string {
  const date = at(instant);
  return `${two(date.getUTCHours())}:${two(date.getUTCMinutes())}Z`;
}

/** '11 Nov 2026 14:05Z'. */
export function utcMoment(instant: number): string {
  return `${utcDate(instant)} ${utcTime(instant)}`;
}

/** A calendar date 'YYYY-MM-DD' as '11 Nov 2026'; what is not such a date is shown as it came. */
export function calendarDate(date: string): string {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  const [, year, month, day] = match ?? [];
  const name = MONTHS[Number(month) - 1];
  return year === undefined || day === undefined || name === undefined
    ? date
    : `${Number(day)} ${name} ${year}`;
}
