import { calendarDate, instantOf, isoOf, utcDate, utcMoment } from './utc-date.js';

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

/** Since when, said no more exactly than it is known: '2 Mar 2025 09:40Z', '3 Nov 2026, known to the day'. */
export function sinceText(wire: string, precision: Precision | null): string {
  if (precision === 'day') return `${momentText(wire)}, known to the day only`;
  if (precision === 'page') return `${momentText(wire)}, known from a log page`;
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

/** Minutes since 1970-01-01T00:00Z as the wire has them: '2026-11-11T14:05Z'. */
export const wireMinute = (instant: number): string => `${isoOf(instant).slice(0, 16)}Z`;

/** An instant of the wire as a person types it: '2026-11-11 14:05'; nothing for what is no instant. */
export function typedMoment(wire: string | undefined): string {
  const instant = wire === undefined ? null : instantOf(wire);
  return instant === null ? '' : isoOf(instant).slice(0, 16).replace('T', ' ');
}
