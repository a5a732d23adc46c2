import { counted, cycles } from './counts.js';
import { hoursMinutes } from './hours.js';

const NOT_KNOWN = 'Not known';

const leftOrPast = (amount: string, remaining: number): string =>
  `${amount} ${remaining < 0 ? 'past' : 'left'}`;

/** 229 -> '229 cycles left', -4 -> '4 cycles past', null -> 'Not known': unknown is never nought. */
export function remainingCycles(remaining: number | null): string {
  return remaining === null ? NOT_KNOWN : leftOrPast(cycles(Math.abs(remaining)), remaining);
}

/** Whole minutes: 6252 -> '104:12 h left', -90 -> '1:30 h past'. */
export function remainingMinutes(remaining: number | null): string {
  return remaining === null ? NOT_KNOWN : leftOrPast(`${hoursMinutes(Math.abs(remaining))} h`, remaining);
}

/** Whole days: 12 -> '12 days left', 0 -> 'Due today', -3 -> '3 days past'. */
export function remainingDays(remaining: number | null): string {
  if (remaining === null) return NOT_KNOWN;
  return remaining === 0 ? 'Due today' : leftOrPast(counted(Math.abs(remaining), 'day'), remaining);
}
