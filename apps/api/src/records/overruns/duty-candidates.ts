import type { Mark } from '@strutbook/domain/due/requirement.js';
import { daysBetween } from '@strutbook/domain/units/calendar.js';
import { compare, type Fraction, fraction, subtract, ZERO } from '@strutbook/domain/units/fraction.js';
import type { Requirement } from '../../platform/database/generated/client.js';

/** A time a duty was done: whose, of which code, and the counters and day of it. */
export interface DoneDuty {
  readonly subjectId: string;
  readonly code: string;
  readonly at: Date;
  readonly mark: Mark;
}

/**
 * Whether a duty may have been done too late, seen from the time before (null: the first time): more was used between the
 * two than the least its revisions ever granted, or that cannot be told by these alone. Total.
 *
 * What is certainly in time is not looked at further: of years of work most was.
 */
export function mayBeLate(
  before: DoneDuty | null,
  done: DoneDuty,
  revisions: readonly Requirement[],
): boolean {
  const from = before?.mark ?? NOTHING_USED;
  return revisions.some((row) => {
    if (before === null && row.countedFrom !== 'new') return true;
    const granted = before === null ? firstGrant(row) : repeatOf(row);
    return (
      isMore(exact(done.mark.minutes), exact(from.minutes), granted.minutes) ||
      isMore(done.mark.cycles, from.cycles, granted.cycles) ||
      isLater(done.mark.on, from.on, granted.days)
    );
  });
}

const NOTHING_USED: Mark = { minutes: 0, cycles: ZERO, on: null };

function exact(minutes: number | null): Fraction | null {
  return minutes === null ? null : fraction(minutes);
}

function isMore(now: Fraction | null, then: Fraction | null, granted: number | null): boolean {
  if (granted === null || now === null || then === null) return false;
  return compare(subtract(now, then), fraction(granted)) > 0;
}

/** Without a day to count from it cannot be told by these alone. */
function isLater(now: string | null, then: string | null, granted: number | null): boolean {
  if (granted === null) return false;
  return now === null || then === null || daysBetween(then, now) > granted;
}

interface Grant {
  readonly minutes: number | null;
  readonly cycles: number | null;
  /** The fewest days that the days and months granted can be. */
  readonly days: number | null;
}

function repeatOf(row: Requirement): Grant {
  return grantOf(row.repeatMinutes, row.repeatCycles, row.repeatDays, row.repeatMonths);
}

function firstGrant(row: Requirement): Grant {
  const own = grantOf(row.thresholdMinutes, row.thresholdCycles, row.thresholdDays, row.thresholdMonths);
  return own.minutes === null && own.cycles === null && own.days === null ? repeatOf(row) : own;
}

function grantOf(
  minutes: bigint | null,
  cycles: number | null,
  days: number | null,
  months: number | null,
): Grant {
  const fewest = [days, months === null ? null : months * 28].filter((each) => each !== null);
  return {
    minutes: minutes === null ? null : Number(minutes),
    cycles,
    days: fewest.length === 0 ? null : Math.min(...fewest),
  };
}
