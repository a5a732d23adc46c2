import type { DailyUse } from '../due/requirement.js';
import { addDays, type CalendarDate } from '../units/calendar.js';
import { divide, type Fraction, floor, fraction } from '../units/fraction.js';
import type { Life } from './life.js';

/** What drives the end of a life. */
export type LifeDimension = 'cycles' | 'minutes' | 'days';

/** When nothing of a life is left: a forecast in cycles and hours, a limit on the calendar. */
export interface ProjectedEnd {
  readonly by: LifeDimension;
  /** Whole days until then, rounded down; 0 when it is past already. */
  readonly days: number;
  /** The day; null when it is past already and only a use says so, or too far off to mean anything. */
  readonly on: CalendarDate | null;
  readonly past: boolean;
}

// A date further off than this says nothing.
const FARTHEST_DAYS = 36_500;

/**
 * When a life ends at the daily use, in the dimension that ends first: days = remaining ÷ daily use, and the last good
 * day of a calendar life. Null when it is not limited, not told, or its clock does not run. Total.
 *
 * Source: from memory; a forecast is never the limit.
 */
export function projectedEnd(life: Life, use: DailyUse, today: CalendarDate): ProjectedEnd | null {
  if (life.kind !== 'limited') return null;
  const ends = [
    used('cycles', life.remainingExact, { use: use.cycles, today }),
    used('minutes', life.remainingMinutes === null ? null : fraction(life.remainingMinutes), {
      use: use.minutes,
      today,
    }),
    ...(life.goodThrough === null || life.remainingDays === null
      ? []
      : [
          {
            by: 'days' as const,
            days: Math.max(life.remainingDays, 0),
            on: life.goodThrough,
            past: life.remainingDays < 0,
          },
        ]),
  ];
  return ends.reduce<ProjectedEnd | null>(
    (first, end) => (end === null || (first !== null && !isSooner(end, first)) ? first : end),
    null,
  );
}

/** Whether one end comes before another: what is past first, then by days. Total. */
export function isSooner(a: ProjectedEnd, b: ProjectedEnd): boolean {
  return a.past === b.past ? a.days < b.days : a.past;
}

function used(
  by: 'cycles' | 'minutes',
  remaining: Fraction | null,
  { use, today }: { readonly use: Fraction | null; readonly today: CalendarDate },
): ProjectedEnd | null {
  if (remaining === null) return null;
  if (remaining.num < 0n) return { by, days: 0, on: null, past: true };
  if (use === null || use.num <= 0n) return null;
  const days = floor(divide(remaining, use));
  return { by, days, on: days > FARTHEST_DAYS ? null : addDays(today, days), past: false };
}
