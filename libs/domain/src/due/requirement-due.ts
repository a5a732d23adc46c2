import type { Status } from '../life/status.js';
import { addMonths, type CalendarDate } from '../units/calendar.js';
import { compare } from '../units/fraction.js';
import { type DimensionDue, dimensionDue } from './dimension-due.js';
import {
  type DailyUse,
  DIMENSIONS,
  type Dimension,
  type Interval,
  type Mark,
  type Present,
  type RequirementRule,
} from './requirement.js';

/** What is known of one requirement for one subject. */
export interface RequirementFacts {
  readonly rule: RequirementRule;
  /** The point the threshold counts from (new, overhaul, installation, a date); null: not known. */
  readonly base: Mark | null;
  /** Accomplishments that count, in order; those before the base's event are left out by the caller. */
  readonly done: readonly Mark[];
  readonly now: Present;
  readonly use: DailyUse;
}

/** What is next due of one requirement for one subject. */
export type RequirementDue =
  | { readonly kind: 'closed' }
  | {
      readonly kind: 'open';
      readonly counting: 'threshold' | 'repeat';
      /** The dimensions that can be told. */
      readonly dues: readonly DimensionDue[];
      /** The dimensions that cannot: a counter, a day or the point to count from is not known. */
      readonly unknown: readonly Dimension[];
      /** The one that governs; null when something that could is not known. */
      readonly governing: DimensionDue | null;
      readonly status: Status;
    };

/**
 * What is next due: the threshold from its base until it was met once, then the repeat from the last time it was met.
 *
 * 'First': the dimension that comes first by projection governs, and the nearest status is the requirement's. 'Last':
 * the one that comes last, and the farthest status. A dimension that is not known leaves the whole not verified, unless
 * whichever comes first is already past. What was to be met once and was is closed. Throws beyond the year 9999.
 */
export function requirementDue(facts: RequirementFacts): RequirementDue {
  const { rule, done } = facts;
  const isFirst = done.length === 0;
  if (!isFirst && rule.repeat === null) return { kind: 'closed' };
  const counting = isFirst && rule.threshold !== null ? 'threshold' : 'repeat';
  const interval = (counting === 'threshold' ? rule.threshold : rule.repeat) ?? NOTHING;
  const { dues, unknown } = dimensionsOf(facts, interval);
  return { kind: 'open', counting, dues, unknown, ...combined(dues, unknown, rule.combine) };
}

function dimensionsOf(
  { rule, base, done, now, use }: RequirementFacts,
  interval: Interval,
): { readonly dues: readonly DimensionDue[]; readonly unknown: readonly Dimension[] } {
  const { monthRule } = rule;
  const from = done.at(-1) ?? base;
  const keepsDay = interval.months !== null && monthRule === 'same-day';
  const months = (rule.threshold ?? rule.repeat)?.months ?? null;
  const first = base === null || base.on === null || months === null ? null : { on: base.on, months };
  const anchorDay = keepsDay ? anchorDayOf(done, interval.months, first) : null;
  const dues: DimensionDue[] = [];
  const unknown: Dimension[] = [];
  for (const dimension of DIMENSIONS) {
    const granted = interval[dimension];
    if (granted === null) continue;
    const due =
      from === null
        ? null
        : dimensionDue(dimension, { interval: granted, from, now, use, monthRule, anchorDay });
    if (due === null) unknown.push(dimension);
    else dues.push(due);
  }
  return { dues, unknown };
}

const NOTHING: Interval = { minutes: null, cycles: null, days: null, months: null };

/**
 * The day of the month that a chain of repeats keeps: that of the first, as long as each was met on the very day it was
 * due (31 Aug, 28 Feb, 31 Aug). The chain begins at `first`, the day the threshold counts from and its months, where
 * it counts months. Null when there is neither. Total for dates.
 */
export function anchorDayOf(
  done: readonly Mark[],
  months: number,
  first: { readonly on: CalendarDate; readonly months: number } | null = null,
): number | null {
  let kept = first === null ? null : { ...first, day: dayOfMonth(first.on) };
  for (const { on } of done) {
    if (on === null) continue;
    const due = kept === null ? null : addMonths(kept.on, kept.months, { anchorDay: kept.day });
    kept = { on, months, day: kept !== null && due === on ? kept.day : dayOfMonth(on) };
  }
  return kept?.day ?? null;
}

const dayOfMonth = (on: CalendarDate) => Number(on.slice(8, 10));

/** From the most pressing to the least. */
const PRESSING: readonly Status[] = ['over', 'soon', 'planned', 'later'];

function combined(
  dues: readonly DimensionDue[],
  unknown: readonly Dimension[],
  combine: 'first' | 'last',
): { readonly governing: DimensionDue | null; readonly status: Status } {
  const ordered = [...dues].sort(byTime);
  const governing = (combine === 'first' ? ordered[0] : ordered.at(-1)) ?? null;
  const isPast = combine === 'first' && governing?.status === 'over';
  if (governing === null || (unknown.length > 0 && !isPast))
    return { governing: null, status: 'not-verified' };
  return {
    governing,
    status: combinedStatus(
      dues.map((due) => due.status),
      combine,
    ),
  };
}

/**
 * The status of a requirement whose dimensions are all known: the nearest where whichever comes first governs, the
 * farthest where whichever comes last does; not verified of none. Total.
 */
export function combinedStatus(statuses: readonly Status[], combine: 'first' | 'last'): Status {
  const ranks = statuses.map((status) => PRESSING.indexOf(status));
  const rank = combine === 'first' ? Math.min(...ranks) : Math.max(...ranks);
  return PRESSING[rank] ?? 'not-verified';
}

// What is past comes before all else, and what is not used comes never.
function byTime(a: DimensionDue, b: DimensionDue): number {
  const order = (due: DimensionDue) => (due.remaining < 0 ? 0 : due.daysExact === null ? 2 : 1);
  if (order(a) !== order(b)) return order(a) - order(b);
  return compare(a.daysExact ?? a.remainingExact, b.daysExact ?? b.remainingExact);
}
