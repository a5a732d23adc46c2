import { addDays, addMonths, type CalendarDate, type MonthRule } from '../units/calendar.js';
import { add, compare, type Fraction, fraction, subtract } from '../units/fraction.js';
import { type Granted, meetingOf, orderOfCounters, orderOfDays, REBASE, type Rebase } from './rebase.js';
import type { Dimension, Mark, RequirementRule } from './requirement.js';
import { amountOf, dayGranted, type Grants, tierFor, type Window } from './tolerance.js';

/** An approved variation of one due: how far past it may be gone. Null where nothing was approved. */
export interface Variation {
  /** The place in the accomplishments after which the due is; −1: the first due. */
  readonly after: number;
  readonly minutes: number | null;
  readonly cycles: number | null;
  /** Of days and of months alike. */
  readonly days: number | null;
}

/** What a chain of accomplishments is followed by. */
export interface ChainFacts {
  readonly rule: RequirementRule;
  readonly base: Mark | null;
  readonly done: readonly Mark[];
  readonly variations: readonly Variation[];
}

/** A point that something is counted from: a day, and the day of the month that months keep. */
export interface DayFrom {
  readonly on: CalendarDate;
  readonly anchorDay: number;
}

/** What is granted beside an interval in one dimension. */
export interface Beside {
  readonly window?: Window | undefined;
  readonly variation?: Grants | undefined;
  /** What was approved for this due. */
  readonly varied: number | null;
}

/** The counter from which the next is counted; null when it is not known. Every accomplishment counts in its order. Total. */
export function counterFrom(dimension: 'minutes' | 'cycles', facts: ChainFacts): Fraction | null {
  const { rule, base, done } = facts;
  return done.reduce(
    (from, mark, index) => {
      const at = exactOf(mark[dimension]);
      const interval = intervalAt(facts, index)?.[dimension] ?? null;
      if (at === null || from === null || interval === null) return at;
      const granted = counterGranted(dimension, { from, interval }, besideOf(facts, dimension, index - 1));
      const meeting = meetingOf(at, granted, orderOfCounters);
      return rebaseOf(rule)[meeting] === 'from-due' ? granted.due : at;
    },
    exactOf(base?.[dimension] ?? null),
  );
}

/** The day from which the next is counted, by days or by months; null when it is not known. Total for dates. */
export function dayFrom(dimension: 'days' | 'months', facts: ChainFacts): DayFrom | null {
  const { rule, base, done } = facts;
  return done.reduce<DayFrom | null>(
    (from, { on }, index) => {
      if (on === null) return null;
      const interval = intervalAt(facts, index)?.[dimension] ?? null;
      if (from === null || interval === null) return dayFromOf(on);
      const { monthRule } = rule;
      const granted = dayGrants(
        { dimension, monthRule },
        { from, interval },
        besideOf(facts, dimension, index - 1),
      );
      const isFromDue =
        on === granted.due || rebaseOf(rule)[meetingOf(on, granted, orderOfDays)] === 'from-due';
      return isFromDue ? { on: granted.due, anchorDay: from.anchorDay } : dayFromOf(on);
    },
    base?.on == null ? null : dayFromOf(base.on),
  );
}

/** What is due of a counter with all that is granted around it: from the window's beginning to its end. Total. */
export function counterGranted(
  dimension: 'minutes' | 'cycles',
  { from, interval }: { readonly from: Fraction; readonly interval: number },
  { window, varied }: Beside,
): Granted<Fraction> {
  const due = add(from, fraction(interval));
  const latest = add(due, amountOf(tierFor(window?.late, dimension, interval), interval));
  const approved = add(due, fraction(varied ?? 0));
  return {
    earliest: subtract(due, amountOf(tierFor(window?.early, dimension, interval), interval)),
    due,
    latest,
    varied: compare(approved, latest) > 0 ? approved : latest,
  };
}

/** The due day with all that is granted around it. Throws beyond the year 9999. */
export function dayGrants(
  { dimension, monthRule }: { readonly dimension: 'days' | 'months'; readonly monthRule: MonthRule },
  { from, interval }: { readonly from: DayFrom; readonly interval: number },
  { window, varied }: Beside,
): Granted<CalendarDate> {
  const due =
    dimension === 'days'
      ? addDays(from.on, interval)
      : addMonths(from.on, interval, { rule: monthRule, anchorDay: from.anchorDay });
  const day = { from: from.on, on: due, dimension, interval };
  const latest = dayGranted(tierFor(window?.late, dimension, interval), day, 'late');
  const approved = addDays(due, varied ?? 0);
  return {
    earliest: dayGranted(tierFor(window?.early, dimension, interval), day, 'early'),
    due,
    latest,
    varied: approved > latest ? approved : latest,
  };
}

/** What is granted beside the due after one accomplishment; −1: beside the first due. Total. */
export function besideOf({ rule, variations }: ChainFacts, dimension: Dimension, after: number): Beside {
  const approved = variations.filter((variation) => variation.after === after);
  const amount = (of: Variation) =>
    dimension === 'minutes' ? of.minutes : dimension === 'cycles' ? of.cycles : of.days;
  const amounts = approved.flatMap((variation) => amount(variation) ?? []);
  return {
    window: rule.window,
    variation: rule.variation,
    varied: amounts.length === 0 ? null : Math.max(...amounts),
  };
}

// The first is due after the threshold, where there is one; every other after the repeat.
function intervalAt({ rule }: ChainFacts, index: number) {
  const isThreshold = index === 0 && (rule.threshold !== null || rule.events?.threshold != null);
  return isThreshold ? rule.threshold : rule.repeat;
}

function rebaseOf(rule: RequirementRule): Rebase {
  return rule.rebase ?? REBASE;
}

function dayFromOf(on: CalendarDate): DayFrom {
  return { on, anchorDay: Number(on.slice(8, 10)) };
}

/** A counter as an exact number. Total. */
export function exactOf(counter: number | Fraction | null): Fraction | null {
  return typeof counter === 'number' ? fraction(counter) : counter;
}
