import { counted, cycles } from './counts.js';
import { hoursMinutes, thousands } from './hours.js';
import { remainingCycles, remainingDays, remainingMinutes } from './remaining.js';
import { calendarDate } from './utc-date.js';

/** What something is counted in, as the server says it. */
export type Dimension = 'minutes' | 'cycles' | 'days' | 'months';

/** 30000 minutes -> '500:00 h', 300 cycles -> '300 cycles', 6 months -> '6 months'. */
export function amountIn(dimension: Dimension, amount: number): string {
  switch (dimension) {
    case 'minutes':
      return `${hoursMinutes(amount)} h`;
    case 'cycles':
      return cycles(amount);
    case 'days':
      return counted(amount, 'day');
    case 'months':
      return counted(amount, 'month');
  }
}

/** '150:00 h left', '10 cycles left', '105 days left', '3 days past'. */
export function leftIn(dimension: Dimension, remaining: number): string {
  switch (dimension) {
    case 'minutes':
      return remainingMinutes(remaining);
    case 'cycles':
      return remainingCycles(remaining);
    default:
      return remainingDays(remaining);
  }
}

/** 'at 10,500:00 h', 'at 6,300 cycles', '15 Jul 2026'. */
export function dueIn({
  dimension,
  dueAt,
  dueOn,
}: {
  readonly dimension: Dimension;
  readonly dueAt: number | null;
  readonly dueOn: string | null;
}): string {
  if (dueOn !== null) return calendarDate(dueOn);
  if (dueAt === null) return 'Not known';
  return dimension === 'minutes' ? `At ${hoursMinutes(dueAt)} h` : `At ${thousands(dueAt)} cycles`;
}
