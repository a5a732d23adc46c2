import { COUNTED, type CountCapture } from './capture.js';
import type { AccountableItem } from './step.js';
import { countingSignatures, lastEntry, type StepFacts, wasSigned } from './step-standing.js';

/** A thing that is open, and the step that opened it. */
export interface OpenItem {
  readonly item: AccountableItem;
  readonly openedBy: StepFacts;
}

/**
 * Connections, cowls, panels and safety measures that are opened, parted or set and not closed again.
 *
 * Opened by a step somebody signed and did not undo, though its content changed since: what was opened is open.
 * Closed only by a later step whose signature counts; one opened twice is open since the last step that opened it.
 * `all` in the order of their numbers. In the order of `items`. Total.
 *
 * Source: EASA SIB 2015-15; AAIB AAR 1/2015 (cowls opened and not recorded as open).
 */
export function openItems(items: readonly AccountableItem[], all: readonly StepFacts[]): OpenItem[] {
  return items.flatMap((item) => {
    const openedBy = all.findLast((step) => step.definition.opens.includes(item.key) && wasSigned(step));
    if (openedBy === undefined) return [];
    const closed = all.some(
      (step) =>
        step.definition.closes.includes(item.key) &&
        step.definition.number > openedBy.definition.number &&
        countingSignatures(step).done !== null,
    );
    return closed ? [] : [{ item, openedBy }];
  });
}

/** How many of a thing went out and came back; null while a count that is asked for is not there. */
export interface CountAccount {
  readonly what: CountCapture['what'];
  readonly out: number | null;
  readonly in: number | null;
}

/**
 * Tags, blanks and tools over all steps, for each that a step asks for: the sums of what was last entered.
 *
 * A direction with a count still missing or rejected, or that no step asks for, is unknown (null), not zero. Total.
 *
 * Source: AAIB AAR 3/96 (a blank left inside an oil line).
 */
export function countsOf(all: readonly StepFacts[]): CountAccount[] {
  const counts = all.flatMap((step) =>
    step.definition.captures
      .filter((capture) => capture.kind === 'count')
      .map((capture) => ({ capture, number: numberIn(step, capture) })),
  );
  const sum = (what: CountCapture['what'], direction: CountCapture['direction']) => {
    const asked = counts.filter(({ capture }) => capture.what === what && capture.direction === direction);
    return asked.length === 0
      ? null
      : asked.reduce<number | null>(
          (total, { number }) => (total === null || number === null ? null : total + number),
          0,
        );
  };
  return COUNTED.filter((what) => counts.some(({ capture }) => capture.what === what)).map((what) => ({
    what,
    out: sum(what, 'out'),
    in: sum(what, 'in'),
  }));
}

function numberIn(step: StepFacts, capture: CountCapture): number | null {
  const last = lastEntry(step.entries, capture.key, null);
  if (last?.typed.kind !== 'count' || last.judgement.verdict !== 'accepted') return null;
  return Number(last.typed.number);
}
