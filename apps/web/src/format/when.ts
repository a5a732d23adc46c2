import { calendarDate, instantOf, utcDate, utcMoment } from './utc-date.js';

export type Precision = 'minute' | 'page' | 'day';

/** An instant of the wire in words: '11 Nov 2026 14:05Z'; what is no instant is shown as it came. */
export function momentText(wire: string): string {
  const instant = instantOf(wire);
  return instant === null ? wire : utcMoment(instant);
}

/** The UTC date of an instant of the wire: '11 Nov 2026'. */
export function dayText(wire: string): string {
  const instant = instantOf(wire);
  return instant === null ? wire : utcDate(instant);
}

/** An instant, said no more exactly than it is known: 'after the flight that landed …' for a log page, the day alone for a date. */
export function sinceText(wire: string, precision: Precision | null): string {
  if (precision === 'day') return `about ${dayText(wire)}, known to the day`;
  if (precision === 'page') return `${momentText(wire)}, from a log page`;
  return momentText(wire);
}

/** What was typed for a boundary: a page '0417', a date '2026-11-03', or neither. */
export function boundaryText(
  wire: string,
  precision: Precision | null,
  typed: string | null,
): { readonly main: string; readonly exactly: string | null } {
  if (typed === null || precision === 'minute' || precision === null)
    return { main: momentText(wire), exactly: null };
  if (precision === 'page') return { main: `After log page ${typed}`, exactly: momentText(wire) };
  return { main: calendarDate(typed), exactly: `taken as ${momentText(wire)}` };
}
