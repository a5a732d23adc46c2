import { add, ceil, type Fraction, fraction, ZERO } from '../units/fraction.js';
import type { HistoryEvent, HistoryFact, HistoryLine, LineTotals } from './history.js';

export type { HistoryEvent, HistoryFact, HistoryLine, LineTotals } from './history.js';

/** Totals while a history is told: exact, and null where something is not known. */
export interface RunningTotals {
  readonly minutes: number | null;
  readonly cycles: Fraction | null;
  readonly opened: boolean;
}

/** Before the first fact: nothing is known. */
export const NOTHING_KNOWN: RunningTotals = { minutes: null, cycles: null, opened: false };

// Of facts at one instant: a landing counts before a removal at its minute, a removal before an installation.
const RANK = {
  registered: 0,
  opening: 1,
  flight: 2,
  removed: 3,
  'engine-change': 4,
  installed: 5,
  'rating-change': 6,
  reset: 7,
  'trace-gap': 8,
  'trace-acceptance': 9,
  correction: 10,
  shop: 11,
  work: 12,
  release: 13,
} as const satisfies Record<HistoryEvent['kind'], number>;

/** The order of a history: by when it happened, then by kind, then by when it was recorded. */
export function compareFacts(a: HistoryFact, b: HistoryFact): number {
  return (
    a.at - b.at ||
    RANK[a.event.kind] - RANK[b.event.kind] ||
    a.recordedAt - b.recordedAt ||
    (a.journalNumber ?? 0) - (b.journalNumber ?? 0) ||
    (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
  );
}

/** The line of the next fact in order, and the totals after it: a history can be told row by row. Total. */
export function nextLine(
  before: RunningTotals,
  fact: HistoryFact,
): { readonly line: HistoryLine; readonly after: RunningTotals } {
  const struck = fact.voided !== null;
  const after = struck ? before : totalsAfter(before, fact.event);
  return { line: { fact, struck, totals: printed(after) }, after };
}

/**
 * Everything that happened to one airframe, engine or part, in order, with the totals after each fact.
 *
 * A struck fact keeps its line and changes no total. Before an opening nothing is known, an unknown counter
 * stays unknown, and after a gap nothing is known unless its worst case was accepted. Screen, document and data are renderings of these lines. Total.
 */
export function assembleHistory(facts: readonly HistoryFact[]): readonly HistoryLine[] {
  let totals = NOTHING_KNOWN;
  return [...facts].sort(compareFacts).map((fact) => {
    const { line, after } = nextLine(totals, fact);
    totals = after;
    return line;
  });
}

function totalsAfter(before: RunningTotals, event: HistoryEvent): RunningTotals {
  if (event.kind === 'opening') {
    const { minutes, cycles } = before.opened ? before : { minutes: 0, cycles: ZERO };
    return {
      minutes: plus(minutes, event.minutes),
      cycles: plusCycles(
        cycles,
        event.cycles === null ? null : fraction(event.cycles, event.cycleDenominator ?? 1),
      ),
      opened: true,
    };
  }
  if (event.kind === 'trace-gap') {
    const { worstCase } = event;
    return {
      ...before,
      minutes: plus(before.minutes, worstCase?.minutes ?? null),
      cycles: plusCycles(before.cycles, worstCase?.cycles == null ? null : fraction(worstCase.cycles)),
    };
  }
  if (event.kind !== 'flight') return before;
  const flown = event.cycleUnits === null ? null : fraction(event.cycleUnits, event.cycleDenominator);
  return {
    ...before,
    minutes: plus(before.minutes, event.minutes),
    cycles: plusCycles(before.cycles, flown),
  };
}

function plus(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : a + b;
}

function plusCycles(a: Fraction | null, b: Fraction | null): Fraction | null {
  return a === null || b === null ? null : add(a, b);
}

function printed({ minutes, cycles }: RunningTotals): LineTotals {
  return { minutes, cycles: cycles === null ? null : ceil(cycles) };
}
