import type { Instant } from '../units/minutes.js';
import type { SlotPlace, Stay } from './flatten-exposures.js';

/**
 * The components that hung beneath a component at any time during a span, at any depth; itself left out.
 *
 * When a stay or a rating is changed in the past, these are flattened again: not those that hang there now,
 * for what left since was carried then. Total; in no order.
 */
export function hangingBeneath({
  componentId,
  span,
  stays,
  slots,
}: {
  readonly componentId: string;
  /** `[from, to)`; without an end where null. */
  readonly span: { readonly from: Instant; readonly to: Instant | null };
  readonly stays: readonly Stay[];
  readonly slots: ReadonlyMap<string, SlotPlace>;
}): ReadonlySet<string> {
  const found = new Set<string>();
  const parents = [componentId];
  for (const parent of parents) {
    for (const stay of stays) {
      if (found.has(stay.componentId) || !isIn(stay, parent, slots) || !overlaps(stay, span)) continue;
      found.add(stay.componentId);
      parents.push(stay.componentId);
    }
  }
  return found;
}

function isIn(stay: Stay, parent: string, slots: ReadonlyMap<string, SlotPlace>): boolean {
  const place = stay.slotId === null ? undefined : slots.get(stay.slotId);
  return place?.kind === 'component' && place.componentId === parent;
}

function overlaps(stay: Stay, span: { readonly from: Instant; readonly to: Instant | null }): boolean {
  return (span.to === null || stay.from < span.to) && (stay.to === null || stay.to > span.from);
}
