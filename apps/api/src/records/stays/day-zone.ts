import type { CalendarDate } from '@strutbook/domain/units/calendar.js';

/**
 * How many minutes a zone is ahead of UTC where a date begins there: counted days follow the zone of the airframe's
 * rule set, and the day on which its clocks change begins before they do. Throws on a zone nobody knows.
 */
export function offsetAtStartOf(zone: string, on: CalendarDate): number {
  const midnight = Date.parse(`${on}T00:00:00Z`);
  const near = offsetAt(zone, midnight);
  return offsetAt(zone, midnight - near * 60_000);
}

function offsetAt(zone: string, at: number): number {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    timeZoneName: 'longOffset',
  }).formatToParts(at);
  const text = parts.find((part) => part.type === 'timeZoneName')?.value ?? 'GMT';
  const [, sign, hours, minutes] = /^GMT([+-])(\d{2}):(\d{2})$/.exec(text) ?? [];
  if (sign === undefined) return 0;
  return (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
}

/** The calendar day it is in a zone at an instant. Throws on a zone nobody knows. */
export function dayIn(zone: string, at: Date): CalendarDate {
  const shifted = new Date(at.getTime() + offsetAt(zone, at.getTime()) * 60_000);
  return shifted.toISOString().slice(0, 10);
}
