import type { Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import { NOWHERE, wordsOfPlaces } from '../../records/stays/place-words.js';
import { precisionOf } from '../../records/stays/precision.js';
import type { WhereAt } from '../../records/stays/structure.js';
import type { PlaceDto } from './component-view.dto.js';

/** Where these components are, in words; one that is nowhere gets the place 'none'. */
export async function placesOf(
  tx: Tx,
  operatorId: number,
  where: ReadonlyMap<string, WhereAt>,
): Promise<(componentId: string) => PlaceDto> {
  const found = [...where.values()];
  const words = await wordsOfPlaces(tx, operatorId, {
    slotIds: found.flatMap((stay) => stay.slotId ?? []),
    locationIds: found.flatMap((stay) => stay.locationId ?? []),
  });
  return (componentId) => {
    const stay = where.get(componentId);
    if (stay === undefined) return { kind: 'none', ...NOWHERE, since: null, precision: null };
    const place = words.get(stay.slotId ?? stay.locationId ?? '') ?? NOWHERE;
    const kind = stay.slotId === null ? 'location' : 'slot';
    return { kind, ...place, since: toWire(stay.fromAt), precision: precisionOf(stay.fromKind) };
  };
}
