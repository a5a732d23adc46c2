import { isSooner, type ProjectedEnd } from '@strutbook/domain/life/projected-end.js';
import { addDays, type CalendarDate } from '@strutbook/domain/units/calendar.js';
import { divide, floor, fraction } from '@strutbook/domain/units/fraction.js';
import type { CycleRule } from '@strutbook/domain/usage/cycle-rule.js';
import { dailyUse, type RunningClock } from '../../records/usage/running-clocks.js';
import type { Limiting } from './tightest.js';

/** What limits an engine first by date, with the day and what it rests on. */
export interface Soonest {
  readonly part: Limiting;
  readonly projectedOn: string | null;
  readonly basis: string;
}

/** What the days of an engine's limits are projected from. */
export interface EngineClock {
  readonly clock: RunningClock | undefined;
  readonly ruleOf: (ruleId: string) => CycleRule | undefined;
  readonly today: CalendarDate;
}

// A date further off than this says nothing.
const FARTHEST_DAYS = 36_500;

/**
 * What limits an engine first by date: what can't be told before any day, then what is past, then the first to end at
 * the average use of the last 90 days, or on the calendar. Null where nothing can be projected. Total.
 */
export function soonestOf(limiting: readonly Limiting[], engine: EngineClock): Soonest | null {
  const untold =
    limiting.find(({ verdict }) => verdict === 'not-authorised') ??
    limiting.find(({ verdict }) => verdict !== 'limited');
  if (untold !== undefined)
    return { part: untold, projectedOn: null, basis: 'Nothing can be projected from what is not known' };
  let found: { readonly part: Limiting; readonly end: ProjectedEnd } | null = null;
  for (const part of limiting) {
    const end = endOf(part, engine);
    if (end !== null && (found === null || isSooner(end, found.end))) found = { part, end };
  }
  if (found === null) return null;
  const { part, end } = found;
  return { part, projectedOn: end.on, basis: basisOf(end) };
}

function basisOf({ by, past }: ProjectedEnd): string {
  if (past) return by === 'days' ? 'Past its day' : 'Past its limit';
  return by === 'days' ? 'By the calendar' : 'Average use of the last 90 days';
}

/** Remaining is whole here, and the days are rounded down: a part of a cycle may take one day off. */
function endOf({ dimension, remaining, ruleId, dueOn }: Limiting, engine: EngineClock): ProjectedEnd | null {
  if (remaining === null) return null;
  if (dueOn !== null) return { by: 'days', days: Math.max(remaining, 0), on: dueOn, past: remaining < 0 };
  const by = dimension === 'minutes' ? 'minutes' : 'cycles';
  if (remaining < 0) return { by, days: 0, on: null, past: true };
  const use = dailyUse(engine.clock, ruleId === null ? undefined : engine.ruleOf(ruleId))[by];
  if (use === null || use.num <= 0n) return null;
  const days = floor(divide(fraction(remaining), use));
  return { by, days, on: days > FARTHEST_DAYS ? null : addDays(engine.today, days), past: false };
}
