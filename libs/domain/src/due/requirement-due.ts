import type { CalendarDate } from '../units/calendar.js';
import { type Beside, besideOf, counterFrom, dayFrom, type Variation } from './chain.js';
import { combine, type Governed } from './combine.js';
import { calendarDue, counterDue, type DimensionDue, type DimensionFacts } from './dimension-due.js';
import {
  type DailyUse,
  DIMENSIONS,
  type Dimension,
  type DueEvent,
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
  /** The variations that were approved; none unless told. */
  readonly variations?: readonly Variation[];
  /** The day on which the event it is due at happened and it was not met; null (unless told): it did not happen. */
  readonly happenedOn?: CalendarDate | null;
}

/** An event at which it is due, and the day it happened without it being met; null: until then nothing is due by it. */
export interface EventDue {
  readonly kind: DueEvent;
  readonly happenedOn: CalendarDate | null;
}

/** What is next due of one requirement for one subject. */
export type RequirementDue =
  | { readonly kind: 'closed' }
  | ({
      readonly kind: 'open';
      readonly counting: 'threshold' | 'repeat';
      /** The dimensions that can be told, and after them those of the outer bound. */
      readonly dues: readonly DimensionDue[];
      /** The dimensions that cannot: a counter, a day or the point to count from is not known. */
      readonly unknown: readonly Dimension[];
      readonly event: EventDue | null;
      readonly combined: RequirementRule['combine'];
    } & Governed);

/** Which phase of a requirement counts: the threshold until it was met once, then the repeat; null: it is closed. Total. */
export function phaseOf(rule: RequirementRule, times: number): 'threshold' | 'repeat' | null {
  const hasThreshold = rule.threshold !== null || rule.events?.threshold != null;
  if (times > 0) return rule.repeat === null && rule.events?.repeat == null ? null : 'repeat';
  return hasThreshold ? 'threshold' : 'repeat';
}

/**
 * What is next due: the threshold from its base until it was met once, then the repeat, counted through every time it
 * was met: from what was done or from what was due, as the requirement says.
 *
 * 'First': the dimension that comes first by projection governs, and the nearest status is the requirement's. 'Last':
 * the one that comes last, and the farthest status. An outer bound governs as soon as it comes. What is not known leaves
 * the whole not verified, unless something that governs by itself is already past. What was to be met once and was is
 * closed. Throws beyond the year 9999.
 */
export function requirementDue(facts: RequirementFacts): RequirementDue {
  const { rule, done, happenedOn = null } = facts;
  const counting = phaseOf(rule, done.length);
  if (counting === null) return { kind: 'closed' };
  const interval = rule[counting] ?? NOTHING;
  const kind = rule.events?.[counting] ?? null;
  const event = kind === null ? null : { kind, happenedOn };
  const own = duesOf(facts, interval, false);
  const outer = duesOf(facts, rule.bounds?.[counting] ?? NOTHING, true);
  const unknown = [...new Set([...own.unknown, ...outer.unknown])];
  const governed = combine(own.dues, { bounds: outer.dues, event, unknown, combined: rule.combine });
  return {
    kind: 'open',
    counting,
    dues: [...own.dues, ...outer.dues],
    unknown,
    event,
    combined: rule.combine,
    ...governed,
  };
}

function duesOf(
  { rule, base, done, now, use, variations = [] }: RequirementFacts,
  interval: Interval,
  isBound: boolean,
): { readonly dues: readonly DimensionDue[]; readonly unknown: readonly Dimension[] } {
  const chain = { rule, base, done, variations };
  const dues: DimensionDue[] = [];
  const unknown: Dimension[] = [];
  for (const dimension of DIMENSIONS) {
    const granted = interval[dimension];
    if (granted === null) continue;
    // An outer bound is the end of everything that is granted.
    const beside: Beside = isBound ? NOTHING_BESIDE : besideOf(chain, dimension, done.length - 1);
    const facts: DimensionFacts = {
      ...{ interval: granted, now, use, beside, isBound },
      monthRule: rule.monthRule,
    };
    const due =
      dimension === 'minutes' || dimension === 'cycles'
        ? counterDue(dimension, counterFrom(dimension, chain), facts)
        : calendarDue(dimension, dayFrom(dimension, chain), facts);
    if (due === null) unknown.push(dimension);
    else dues.push(due);
  }
  return { dues, unknown };
}

const NOTHING: Interval = { minutes: null, cycles: null, days: null, months: null };
const NOTHING_BESIDE: Beside = { varied: null };
