import type { Interval, Mark, RequirementRule } from '@strutbook/domain/due/requirement.js';
import { amountOf, tierFor } from '@strutbook/domain/due/tolerance.js';
import { daysBetween } from '@strutbook/domain/units/calendar.js';
import { compare, type Fraction, fraction, subtract, ZERO } from '@strutbook/domain/units/fraction.js';
import type { Requirement } from '../../platform/database/generated/client.js';
import { ruleOf } from '../requirements/rule/requirement-rule.js';

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
    // Counted from elsewhere, or from what an earlier code was credited with.
    if (before === null && (row.countedFrom !== 'new' || row.supersedesId !== null)) return true;
    const rule = ruleOf(row);
    // Late ones that do not shift what is planned leave less until the next, the more of them the less.
    if (before !== null && rule.rebase?.beyond === 'from-due') return true;
    const granted = leastGranted(
      rule,
      before === null ? 'first' : row.countedFrom === 'new' ? 'next' : 'any',
    );
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

function isMore(now: Fraction | null, then: Fraction | null, granted: Fraction | null): boolean {
  if (granted === null || now === null || then === null) return false;
  return compare(subtract(now, then), granted) > 0;
}

/** Without a day to count from it cannot be told by these alone. */
function isLater(now: string | null, then: string | null, granted: number | null): boolean {
  if (granted === null) return false;
  return now === null || then === null || daysBetween(then, now) > granted;
}

/** The least that is granted from one time to the next, in each dimension; null where nothing is limited. */
interface Grant {
  readonly minutes: Fraction | null;
  readonly cycles: Fraction | null;
  /** The fewest days that the days and months granted can be. */
  readonly days: number | null;
}

/** The least of the intervals and outer bounds that may count: of the first time, of those after it, or of any. */
function leastGranted(rule: RequirementRule, which: 'first' | 'next' | 'any'): Grant {
  const { threshold, repeat, bounds } = rule;
  const first = [threshold ?? repeat, bounds?.threshold];
  const next = [repeat, bounds?.repeat];
  const counting = which === 'first' ? first : which === 'next' ? next : [...first, ...next];
  const intervals = counting.filter((each) => each != null);
  const before = which === 'first' ? [] : [threshold, repeat].filter((each) => each !== null);
  const counters = (dimension: 'minutes' | 'cycles') => {
    const granted = intervals.flatMap((each) => each[dimension] ?? []);
    if (granted.length === 0) return null;
    return subtract(
      fraction(Math.min(...granted)),
      mostOf(before.map((each) => shiftOf(rule, dimension, each))),
    );
  };
  const days = intervals.flatMap(({ days: own, months }) =>
    [own ?? [], months === null ? [] : months * 28].flat(),
  );
  const shifts = before.flatMap((each) => [
    daysShifted(rule, 'days', each),
    daysShifted(rule, 'months', each),
  ]);
  return {
    minutes: counters('minutes'),
    cycles: counters('cycles'),
    days: days.length === 0 ? null : Math.min(...days) - Math.max(0, ...shifts),
  };
}

/** By how much at most one that was met late, inside its window or a permitted variation, leaves less until the next. */
function shiftOf(
  { window, variation }: RequirementRule,
  dimension: 'minutes' | 'cycles',
  of: Interval,
): Fraction {
  const interval = of[dimension];
  if (interval === null) return ZERO;
  return mostOf(
    [window?.late, variation].map((grants) => amountOf(tierFor(grants, dimension, interval), interval)),
  );
}

/** The same in whole days, no fewer than they can be. */
function daysShifted(
  { window, variation }: RequirementRule,
  dimension: 'days' | 'months',
  of: Interval,
): number {
  const interval = of[dimension];
  if (interval === null) return 0;
  const unit = dimension === 'days' ? 1 : 31;
  const shifts = [window?.late, variation].map((grants) => {
    const tier = tierFor(grants, dimension, interval);
    if (tier === null) return 0;
    const { percent, atMost, atMostDays } = tier;
    const most = [
      percent === null ? [] : Math.ceil((interval * unit * percent) / 100),
      atMostDays ?? [],
    ].flat();
    return Math.min(...most, ...(atMost === null ? [] : [atMost * unit]));
  });
  return Math.max(...shifts.map((each) => (Number.isFinite(each) ? each : 0)));
}

function mostOf(amounts: readonly Fraction[]): Fraction {
  return amounts.reduce((most, each) => (compare(each, most) > 0 ? each : most), ZERO);
}
