import type { Status, StatusWindows } from '../life/status.js';
import { statusOf } from '../life/status.js';
import { type CalendarDate, daysBetween, type MonthRule } from '../units/calendar.js';
import { add, divide, type Fraction, floor, fraction, multiply, subtract } from '../units/fraction.js';
import { type Beside, counterGranted, type DayFrom, dayGrants, exactOf } from './chain.js';
import type { DailyUse, Dimension, Present } from './requirement.js';
import { amountOf, dayGranted, tierFor } from './tolerance.js';

/** When one dimension of a requirement falls due, and what is left of it. */
export interface DimensionDue {
  readonly dimension: Dimension;
  /** What is granted: minutes, cycles, days or months. */
  readonly interval: number;
  /** The counter since new at which it is due; null for days and months. */
  readonly dueAt: Fraction | null;
  /** The last day it is good through; null for minutes and cycles. */
  readonly dueOn: CalendarDate | null;
  /** What is left before rounding, in minutes, cycles or days; below zero it is past. */
  readonly remainingExact: Fraction;
  /** The same in whole units, rounded down. */
  readonly remaining: number;
  /** Days until nothing is left at the daily use: exact; null when nothing is used. A forecast, never a limit. */
  readonly daysExact: Fraction | null;
  readonly status: Status;
  /** Whether it is of the outer bound. */
  readonly isBound: boolean;
  /** What is left until the end of what is granted past it: its window, or an approved variation. As `remainingExact`. */
  readonly latestExact: Fraction;
  /** The last counter, or the last day, inside that; as `dueAt` and `dueOn`. */
  readonly latestAt: Fraction | null;
  readonly latestOn: CalendarDate | null;
  /** The first counter, or day, at which it may be met without planned times shifting. */
  readonly earliestAt: Fraction | null;
  readonly earliestOn: CalendarDate | null;
  /** The farthest that a variation may be approved for; the due itself where none may. */
  readonly variableAt: Fraction | null;
  readonly variableOn: CalendarDate | null;
}

const TEN = fraction(10);

/** Whole days of a projection, rounded down; null when there is none. */
export function wholeDays(exact: Fraction | null): number | null {
  return exact === null ? null : floor(exact);
}

/** A number with one decimal, rounded down: 2.59 is '2.5', −0.25 is '−0.3' written '-0.3'. Throws beyond 2^53. */
export function oneDecimal(value: Fraction): string {
  const tenths = floor(multiply(value, TEN));
  const whole = Math.floor(Math.abs(tenths) / 10);
  return `${tenths < 0 ? '-' : ''}${whole}.${Math.abs(tenths) % 10}`;
}

/**
 * How far ahead of a requirement its status warns and asks for a plan: a share of its interval, and never more than the
 * widest, so that a long interval does not warn for years.
 */
export const REQUIREMENT_WINDOWS = {
  share: { alert: 10, planning: 4 },
  widest: {
    minutes: { alert: 250 * 60, planning: 1000 * 60 },
    cycles: { alert: 150, planning: 600 },
    days: { alert: 30, planning: 120 },
  },
} as const;

/**
 * How far ahead of a requirement its status warns and asks for a plan: a tenth and a quarter of the interval, and never
 * more than 250 and 1,000 hours, 150 and 600 cycles, or 30 and 120 days. It grants no tolerance.
 *
 * Source: common practice, no source.
 */
export function windowsOf(dimension: Dimension, interval: number): StatusWindows {
  const inUnits = dimension === 'months' ? interval * 30 : interval;
  const { share } = REQUIREMENT_WINDOWS;
  const widest = REQUIREMENT_WINDOWS.widest[dimension === 'months' ? 'days' : dimension];
  return {
    alert: Math.min(Math.ceil(inUnits / share.alert), widest.alert),
    planning: Math.min(Math.ceil(inUnits / share.planning), widest.planning),
    tolerance: 0,
  };
}

/** What a dimension's due is computed from. */
export interface DimensionFacts {
  readonly interval: number;
  readonly now: Present;
  readonly use: DailyUse;
  readonly monthRule: MonthRule;
  /** The window, the permitted variation and what was approved. */
  readonly beside: Beside;
  readonly isBound: boolean;
}

/** When a counter falls due; null when it is not known now, or where it is counted from. Total. */
export function counterDue(
  dimension: 'minutes' | 'cycles',
  from: Fraction | null,
  { interval, now, use, beside, isBound }: DimensionFacts,
): DimensionDue | null {
  const reading = exactOf(now[dimension]);
  if (from === null || reading === null) return null;
  const { earliest, due, varied } = counterGranted(dimension, { from, interval }, beside);
  const left = { remainingExact: subtract(due, reading), latestExact: subtract(varied, reading) };
  const perDay = use[dimension];
  return {
    ...told({ dimension, interval, isBound }, left),
    ...NO_DAYS,
    dueAt: due,
    latestAt: varied,
    earliestAt: earliest,
    variableAt: add(due, amountOf(tierFor(beside.variation, dimension, interval), interval)),
    daysExact: perDay !== null && perDay.num > 0n ? divide(left.remainingExact, perDay) : null,
  };
}

/** When a day falls due; null when the day it is counted from is not known. Throws beyond the year 9999. */
export function calendarDue(
  dimension: 'days' | 'months',
  from: DayFrom | null,
  { interval, now, monthRule, beside, isBound }: DimensionFacts,
): DimensionDue | null {
  if (from === null) return null;
  const { earliest, due, varied } = dayGrants({ dimension, monthRule }, { from, interval }, beside);
  const left = {
    remainingExact: fraction(daysBetween(now.on, due)),
    latestExact: fraction(daysBetween(now.on, varied)),
  };
  const tier = tierFor(beside.variation, dimension, interval);
  return {
    ...told({ dimension, interval, isBound }, left),
    ...NO_COUNTERS,
    dueOn: due,
    latestOn: varied,
    earliestOn: earliest,
    variableOn: dayGranted(tier, { from: from.on, on: due, dimension, interval }, 'late'),
    daysExact: left.remainingExact,
  };
}

const NO_DAYS = { dueOn: null, latestOn: null, earliestOn: null, variableOn: null } as const;
const NO_COUNTERS = { dueAt: null, latestAt: null, earliestAt: null, variableAt: null } as const;

function told(
  of: { readonly dimension: Dimension; readonly interval: number; readonly isBound: boolean },
  { remainingExact, latestExact }: { readonly remainingExact: Fraction; readonly latestExact: Fraction },
) {
  const remaining = floor(remainingExact);
  const status = statusOfDimension(of, { remaining, latest: floor(latestExact) });
  return { ...of, remainingExact, latestExact, remaining, status };
}

/** The status of what is left of a dimension, and of what is granted past it. Total. */
export function statusOfDimension(
  { dimension, interval }: { readonly dimension: Dimension; readonly interval: number },
  { remaining, latest }: { readonly remaining: number; readonly latest: number },
): Status {
  if (remaining < 0 && latest >= 0) return 'in-tolerance';
  return statusOf(remaining, windowsOf(dimension, interval));
}
