import { counted } from '../../format/counts.js';
import { remainingDays } from '../../format/remaining.js';
import { calendarDate } from '../../format/utc-date.js';

/** A calendar life in what a limit says of it. */
export interface CalendarLife {
  readonly span: number;
  readonly unit: 'days' | 'months';
  readonly countedFrom: 'new' | 'first-installation' | 'overhaul';
  readonly monthRule?: 'same-day' | 'month-end' | null;
}

export const COUNTED_FROM = [
  { value: 'new', label: 'New' },
  { value: 'first-installation', label: 'First installation' },
  { value: 'overhaul', label: 'Overhaul' },
] as const;

/** '120 months from new', '400 days from overhaul', '12 months to the month’s end from new'. Total. */
export function calendarText({ span, unit, countedFrom, monthRule }: CalendarLife): string {
  const from = COUNTED_FROM.find(({ value }) => value === countedFrom)?.label.toLowerCase() ?? countedFrom;
  const end = unit === 'months' && monthRule === 'month-end' ? ' to the month’s end' : '';
  return `${counted(span, unit === 'days' ? 'day' : 'month')}${end} from ${from}`;
}

/** 'good through 15 Jul 2026, 12 days left'. Total. */
export function goodThroughText(day: string, left: number | null): string {
  if (left === 0) return `good through today, ${calendarDate(day)}`;
  return `good through ${calendarDate(day)}, ${remainingDays(left)}`;
}
