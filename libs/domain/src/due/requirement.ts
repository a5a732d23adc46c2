import type { CalendarDate, MonthRule } from '../units/calendar.js';
import type { Fraction } from '../units/fraction.js';
import type { Rebase } from './rebase.js';
import type { Grants, Window } from './tolerance.js';

/** What a requirement grants, in each dimension it names; null where it names none. */
export interface Interval {
  /** Whole minutes in service. */
  readonly minutes: number | null;
  readonly cycles: number | null;
  readonly days: number | null;
  readonly months: number | null;
}

/** A dimension in which something falls due. */
export type Dimension = keyof Interval;

/** The dimensions in the order they are told. */
export const DIMENSIONS = ['minutes', 'cycles', 'days', 'months'] as const satisfies readonly Dimension[];

/** An event at which a requirement may be due: whatever counters or days say, it is due when it happens. */
export const DUE_EVENTS = ['shop-visit', 'installation', 'removal', 'main-base-return'] as const;

/** One of them. */
export type DueEvent = (typeof DUE_EVENTS)[number];

/** What is told of one phase of a requirement beside its interval. */
export interface Phases<T> {
  readonly threshold: T | null;
  readonly repeat: T | null;
}

/** When a requirement is to be met: first by its threshold, then by its repeat from the last time on. */
export interface RequirementRule {
  /** Null: the first time is due after the repeat, too. */
  readonly threshold: Interval | null;
  /** Null: it is to be met once. */
  readonly repeat: Interval | null;
  /** Whether the dimension that comes first governs, or the one that comes last. */
  readonly combine: 'first' | 'last';
  readonly monthRule: MonthRule;
  /** The events at which it is due; none unless told. */
  readonly events?: Phases<DueEvent>;
  /** Outer bounds, counted from the same point: each governs as soon as it comes. None unless told. */
  readonly bounds?: Phases<Interval>;
  /** How far planned times hold; nothing unless told. */
  readonly window?: Window;
  /** How far one due may be varied by an approval; not at all unless told. */
  readonly variation?: Grants;
  /** What follows an accomplishment; the defaults unless told. */
  readonly rebase?: Rebase;
}

/** A point from which is counted: counters since new and the calendar day. Null: not known, which is not zero. */
export interface Mark {
  readonly minutes: number | null;
  readonly cycles: Fraction | null;
  readonly on: CalendarDate | null;
}

/** Counters since new now, and the calendar day it is where the subject is. */
export type Present = Mark & { readonly on: CalendarDate };

/** Average daily use; null: not known, or the subject hangs on nothing that runs. */
export interface DailyUse {
  readonly minutes: Fraction | null;
  readonly cycles: Fraction | null;
}
