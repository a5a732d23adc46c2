import type { OrderedFacts } from '@strutbook/domain/work/judge-entry.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ResolvedOrder } from './resolve-order.js';

/** A component as an order names it. */
export interface OrderedComponent {
  readonly id: string;
  readonly kind: string;
  readonly partNumber: string;
  readonly serialNumber: string;
  readonly description: string;
  readonly engineModelId: string | null;
}

/** What a package is ordered to change at a slot. */
export interface Order {
  readonly id: string;
  readonly slot: { readonly id: string; readonly kind: string; readonly name: string };
  /** The position of the slot; null for a place inside a component. */
  readonly position: { readonly id: string; readonly number: number; readonly label: string } | null;
  readonly outgoing: OrderedComponent | null;
  readonly incoming: OrderedComponent | null;
  readonly rating: { readonly id: string; readonly code: string } | null;
  readonly removedTo: { readonly id: string; readonly name: string } | null;
  readonly reason: string;
  readonly confirmedBy: string | null;
}

/** What a package is ordered to change, as the order stands: one for each slot, none where nothing moves. */
export async function ordersOf(tx: Tx, operatorId: number, packageId: string): Promise<Order[]> {
  const rows = await tx.orderedChange.findMany({
    where: { operatorId, packageId, voidedSeq: null },
    include: {
      slot: { include: { position: true } },
      outgoing: true,
      incoming: true,
      rating: true,
      removedTo: true,
      confirmedBy: { select: { fullName: true } },
    },
    orderBy: { recordedSeq: 'asc' },
  });
  return rows.map(({ id, slot, outgoing, incoming, rating, removedTo, reason, confirmedBy }) => ({
    id,
    slot: { id: slot.id, kind: slot.kind, name: slot.name },
    position:
      slot.position === null
        ? null
        : { id: slot.position.id, number: slot.position.number, label: slot.position.label },
    outgoing: component(outgoing),
    incoming: component(incoming),
    rating: rating === null ? null : { id: rating.id, code: rating.code },
    removedTo: removedTo === null ? null : { id: removedTo.id, name: removedTo.name },
    reason,
    confirmedBy: confirmedBy?.fullName ?? null,
  }));
}

/** What entries are judged against. Total. */
export function orderedFacts({ position, outgoing, incoming }: Order): OrderedFacts {
  return {
    outgoingSerial: outgoing?.serialNumber ?? null,
    outgoingPartNumber: outgoing?.partNumber ?? null,
    incomingSerial: incoming?.serialNumber ?? null,
    incomingPartNumber: incoming?.partNumber ?? null,
    positionNumber: position?.number ?? null,
  };
}

function component(row: OrderedComponent | null): OrderedComponent | null {
  if (row === null) return null;
  const { id, kind, partNumber, serialNumber, description, engineModelId } = row;
  return { id, kind, partNumber, serialNumber, description, engineModelId };
}

/** Records an order for a slot of a package, and answers its id; the one before it, if any, is voided first. */
export async function recordOrder(
  tx: Tx,
  operatorId: number,
  {
    packageId,
    order,
    number,
    confirmedById = null,
  }: {
    readonly packageId: string;
    readonly order: ResolvedOrder;
    readonly number: bigint;
    /** The second person, who confirmed an amendment. */
    readonly confirmedById?: string | null;
  },
): Promise<string> {
  const id = newId();
  await tx.orderedChange.create({
    data: {
      operatorId,
      id,
      packageId,
      slotId: order.slotId,
      outgoingId: order.outgoing?.id ?? null,
      incomingId: order.incoming?.id ?? null,
      ratingId: order.ratingId,
      removedToId: order.removedToId,
      reason: order.reason,
      confirmedById,
      recordedSeq: number,
    },
  });
  return id;
}
