import { dateOf } from '@strutbook/domain/units/calendar.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';

/** An instant as a report's sentence says it: 'YYYY-MM-DD HH:MM', in UTC, the form the file itself has. Total. */
export function describeInstant(at: Instant): string {
  const minuteOfDay = ((at % 1440) + 1440) % 1440;
  const [hours, minutes] = [Math.floor(minuteOfDay / 60), minuteOfDay % 60];
  return `${dateOf(at)} ${String(hours).padStart(2, '0')}:${String(minutes).padStart(2, '0')}`;
}
