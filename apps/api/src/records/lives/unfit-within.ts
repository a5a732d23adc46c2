import type { UnfitPart } from '@strutbook/domain/release/snapshot.js';
import type { HangingFacts } from './hanging-facts.js';

/** What is not fit among these components and all beneath each. Total. */
export function unfitWithin(
  { slots, heads, unfit }: Pick<HangingFacts, 'slots' | 'heads' | 'unfit'>,
  topIds: readonly string[],
): ReadonlyMap<string, readonly UnfitPart[]> {
  if (unfit.size === 0) return new Map();
  const found = new Map<string, UnfitPart[]>();
  const hold = (
    topId: string,
    componentId: string,
    of: { serialNumber: string; partNumber: string } | null,
  ) => {
    const why = unfit.get(componentId);
    if (why === undefined) return;
    const part = {
      componentId,
      serial: of?.serialNumber ?? '',
      partNumber: of?.partNumber ?? '',
      ...why,
    };
    found.set(topId, [...(found.get(topId) ?? []), part]);
  };
  for (const id of topIds) hold(id, id, heads.get(id) ?? null);
  const topOf = new Map(topIds.map((id) => [id, id]));
  for (const { parentId, componentId, part } of slots) {
    const top = topOf.get(parentId);
    if (top === undefined || componentId === null) continue;
    topOf.set(componentId, top);
    hold(top, componentId, part);
  }
  return found;
}
