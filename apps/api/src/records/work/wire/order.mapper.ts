import type { Tx } from '../../../platform/database/database.js';
import { NOWHERE, wordsOfPlaces } from '../../stays/place-words.js';
import type { Order, OrderedComponent } from '../orders.js';
import type { OrderDto, OrderedComponentDto } from './order.dto.js';

/** Orders with where the register has each component now. */
export async function ordersToWire(
  tx: Tx,
  operatorId: number,
  orders: readonly Order[],
): Promise<OrderDto[]> {
  const placeOf = await placesNow(
    tx,
    operatorId,
    orders.flatMap(({ outgoing, incoming }) => [outgoing, incoming]).flatMap((each) => each?.id ?? []),
  );
  const told = (component: OrderedComponent | null): OrderedComponentDto | null => {
    if (component === null) return null;
    const { id, kind, serialNumber, partNumber, description } = component;
    return { id, kind, serialNumber, partNumber, description, place: placeOf(id) };
  };
  return orders.map(({ id, slot, position, outgoing, incoming, rating, removedTo, reason, confirmedBy }) => ({
    id,
    slotId: slot.id,
    slot: slot.kind,
    slotName: slot.name,
    positionId: position?.id ?? null,
    positionNumber: position?.number ?? null,
    outgoing: told(outgoing),
    incoming: told(incoming),
    ratingCode: rating?.code ?? null,
    removedToLocation: removedTo?.name ?? null,
    reason,
    confirmedBy,
  }));
}

async function placesNow(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<(componentId: string) => string> {
  const stays = await tx.stay.findMany({
    where: { operatorId, componentId: { in: [...componentIds] }, voidedSeq: null, toAt: null },
    select: { componentId: true, slotId: true, locationId: true },
  });
  const words = await wordsOfPlaces(tx, operatorId, {
    slotIds: stays.flatMap((stay) => stay.slotId ?? []),
    locationIds: stays.flatMap((stay) => stay.locationId ?? []),
  });
  return (componentId) => {
    const stay = stays.find((each) => each.componentId === componentId);
    return (words.get(stay?.slotId ?? stay?.locationId ?? '') ?? NOWHERE).label;
  };
}
