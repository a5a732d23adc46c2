import type { CalendarDate } from '@strutbook/domain/units/calendar.js';

/**
 * How many minutes a zone was ahead of UTC at noon of a date: counted days follow the zone of the airframe's
 * rule set. Throws on a zone nobody knows.
 */
export function offsetMinutes(zone: string, on: CalendarDate): number {
  const noon = new Date(`${on}T12:00:00Z`);
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    timeZoneName: 'longOffset',
  }).formatToParts(noon);
  const text = parts.find((part) => part.type === 'timeZoneName')?.value ?? 'GMT';
  const [, sign, hours, minutes] = /^GMT([+-])(\d{2}):(\d{2})$/.exec(text) ?? [];
  if (sign === undefined) return 0;
  return (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
}
