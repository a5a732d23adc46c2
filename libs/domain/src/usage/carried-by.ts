import type { Instant } from '../units/minutes.js';
import type { SlotPlace, Stay } from './flatten-exposures.js';

/** Over `[from, to)` a component was carried by `topId`: what stood at a position or in a test cell with it inside. */
export interface CarriedSpan {
  readonly topId: string;
  readonly from: Instant;
  readonly to: Instant | null;
}

/**
 * By which component another was carried, span by span: itself where it stood at a position, else the engine or pod it
 * hung in there. Spans while nothing of that was at a position or in a cell are left out. In order of time; total.
 *
 * Two engines that follow one another at one position give a module two spans, though its clock is the same.
 */
export function carriedBy(facts: {
  readonly componentId: string;
  readonly stays: readonly Stay[];
  readonly slots: ReadonlyMap<string, SlotPlace>;
}): readonly CarriedSpan[] {
  const under = (carrying: string, within: Span): readonly CarriedSpan[] =>
    facts.stays.flatMap((stay) => {
      const place = stay.slotId === null ? undefined : facts.slots.get(stay.slotId);
      const span = stay.componentId === carrying ? overlapOf(within, stay) : null;
      if (span === null || place === undefined) return [];
      return place.kind === 'component' ? under(place.componentId, span) : [{ topId: carrying, ...span }];
    });
  const spans = under(facts.componentId, { from: Number.NEGATIVE_INFINITY as Instant, to: null });
  return [...spans].sort((a, b) => a.from - b.from);
}

interface Span {
  readonly from: Instant;
  readonly to: Instant | null;
}

/** What two spans have in common; null when that is nothing. Total. */
export function overlapOf(a: Span, b: Span): Span | null {
  const from = a.from > b.from ? a.from : b.from;
  const to = a.to === null ? b.to : b.to === null || a.to < b.to ? a.to : b.to;
  return to !== null && to <= from ? null : { from, to };
}
