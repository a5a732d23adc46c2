import type { Status, StatusWindows } from '../life/status.js';
import { statusOf } from '../life/status.js';
import { addDays, addMonths, type CalendarDate, daysBetween, type MonthRule } from '../units/calendar.js';
import { add, divide, type Fraction, floor, fraction, multiply, subtract } from '../units/fraction.js';
import type { DailyUse, Dimension, Mark, Present } from './requirement.js';

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

// Widest windows, so that a long interval does not warn for years.
const WIDEST = {
  minutes: { alert: 250 * 60, planning: 1000 * 60 },
  cycles: { alert: 150, planning: 600 },
  days: { alert: 30, planning: 120 },
} as const;

/**
 * How far ahead of a requirement its status warns and asks for a plan: a tenth and a quarter of the interval, and never
 * more than 250 and 1,000 hours, 150 and 600 cycles, or 30 and 120 days. It grants no tolerance.
 *
 * Source: common practice, no source.
 */
export function windowsOf(dimension: Dimension, interval: number): StatusWindows {
  const inUnits = dimension === 'months' ? interval * 30 : interval;
  const widest = WIDEST[dimension === 'months' ? 'days' : dimension];
  return {
    alert: Math.min(Math.ceil(inUnits / 10), widest.alert),
    planning: Math.min(Math.ceil(inUnits / 4), widest.planning),
    tolerance: 0,
  };
}

/** What a dimension's due is computed from. */
export interface DimensionFacts {
  readonly interval: number;
  readonly from: Mark;
  readonly now: Present;
  readonly use: DailyUse;
  readonly monthRule: MonthRule;
  /** The day of the month that months keep; null: the day counted from. */
  readonly anchorDay: number | null;
}

/** When a dimension falls due; null when something needed is not known. Throws beyond the year 9999. */
export function dimensionDue(dimension: Dimension, facts: DimensionFacts): DimensionDue | null {
  return dimension === 'minutes' || dimension === 'cycles'
    ? counterDue(dimension, facts)
    : calendarDue(dimension, facts);
}

function counterDue(dimension: 'minutes' | 'cycles', facts: DimensionFacts): DimensionDue | null {
  const { interval, from, now, use } = facts;
  const [start, reading] = [exactOf(from[dimension]), exactOf(now[dimension])];
  if (start === null || reading === null) return null;
  const dueAt = add(start, fraction(interval));
  const remainingExact = subtract(dueAt, reading);
  const perDay = use[dimension];
  return {
    ...told(dimension, interval, remainingExact),
    dueAt,
    dueOn: null,
    daysExact: perDay !== null && perDay.num > 0n ? divide(remainingExact, perDay) : null,
  };
}

function calendarDue(
  dimension: 'days' | 'months',
  { interval, from, now, monthRule, anchorDay }: DimensionFacts,
): DimensionDue | null {
  if (from.on === null) return null;
  const dueOn =
    dimension === 'days'
      ? addDays(from.on, interval)
      : addMonths(from.on, interval, {
          rule: monthRule,
          ...(anchorDay === null ? {} : { anchorDay }),
        });
  const remainingExact = fraction(daysBetween(now.on, dueOn));
  return { ...told(dimension, interval, remainingExact), dueAt: null, dueOn, daysExact: remainingExact };
}

function told(dimension: Dimension, interval: number, remainingExact: Fraction) {
  const remaining = floor(remainingExact);
  return {
    dimension,
    interval,
    remainingExact,
    remaining,
    status: statusOf(remaining, windowsOf(dimension, interval)),
  };
}

function exactOf(counter: number | Fraction | null): Fraction | null {
  return typeof counter === 'number' ? fraction(counter) : counter;
}
