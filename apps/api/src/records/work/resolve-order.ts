import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { Tx } from '../../platform/database/database.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { modelsOfPosition } from '../changes/models-of-position.js';
import { componentOfSerial, locationOfRemoved } from '../changes/named-rows.js';
import type { PackageKind } from './package-head.js';
import { slotOfOrder } from './slot-of-order.js';
import type { NewOrderDto } from './wire/order.dto.js';

/** The rows an order names. */
export interface ResolvedOrder {
  readonly slotId: string;
  readonly slotKind: string;
  readonly positionId: string | null;
  readonly positionNumber: number | null;
  readonly outgoing: { readonly id: string; readonly serialNumber: string } | null;
  readonly incoming: { readonly id: string; readonly serialNumber: string } | null;
  readonly ratingId: string | null;
  readonly removedToId: string | null;
  readonly reason: string;
}

/** What an order is for: a package of this kind, on an airframe or of a component, as things are now. */
export interface OrderedWork {
  readonly kind: PackageKind;
  readonly airframeId: string | null;
  readonly componentId: string | null;
  readonly now: Instant;
}

interface There {
  readonly id: string;
  readonly serialNumber: string;
}

interface Incoming {
  readonly id: string;
  readonly kind: string;
  readonly serialNumber: string;
  readonly engineModelId: string | null;
}

/**
 * Finds what an order names and refuses what cannot be done: what comes off must be what is installed there now, what
 * goes on must be in the register and not be installed anywhere.
 * Refuses: NOT_FOUND, INVALID_FIELDS, REFUSED_BY_FACTS, NOTHING_TO_CHANGE, NOT_INSTALLED_THERE, SLOT_OCCUPIED,
 * WRONG_KIND, ALREADY_INSTALLED; fields begin with 'order.'.
 */
export async function resolveOrder(
  tx: Tx,
  operatorId: number,
  order: NewOrderDto,
  work: OrderedWork,
): Promise<ResolvedOrder> {
  const slot = await slotOfOrder(tx, operatorId, order, work);
  const [outgoingSerial, incomingSerial] = [order.outgoingSerial ?? null, order.incomingSerial ?? null];
  if ((outgoingSerial === null && incomingSerial === null) || outgoingSerial === incomingSerial)
    refuse({ code: 'NOTHING_TO_CHANGE', slotId: slot.id }, 'order.incomingSerial');
  const there = await whatIsThere(tx, operatorId, slot.id);
  refuseOtherThanThere(there, outgoingSerial, { slotId: slot.id, at: work.now });
  const incoming =
    incomingSerial === null
      ? null
      : await findIncoming(tx, operatorId, { incomingSerial, slot, at: work.now });
  if (incoming !== null && slot.positionId !== null && slot.kind !== 'pod')
    await refuseOtherModel(tx, operatorId, incoming, slot.positionId);
  return {
    slotId: slot.id,
    slotKind: slot.kind,
    positionId: slot.positionId,
    positionNumber: slot.positionNumber,
    outgoing: there,
    incoming: incoming === null ? null : { id: incoming.id, serialNumber: incoming.serialNumber },
    ratingId: await findRating(tx, operatorId, order.ratingCode ?? null, incoming),
    removedToId:
      there === null
        ? null
        : await locationOfRemoved(tx, operatorId, order.removedToLocation ?? null, 'order.removedToLocation'),
    reason: order.reason,
  };
}

async function whatIsThere(tx: Tx, operatorId: number, slotId: string): Promise<There | null> {
  const stay = await tx.stay.findFirst({
    where: { operatorId, slotId, voidedSeq: null, toAt: null },
    select: { component: { select: { id: true, serialNumber: true } } },
  });
  return stay?.component ?? null;
}

function refuseOtherThanThere(
  there: There | null,
  expectedSerial: string | null,
  { slotId, at }: { readonly slotId: string; readonly at: Instant },
): void {
  if (expectedSerial === null && there !== null)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'order.outgoingSerial',
      reason: `${there.serialNumber} is installed there.`,
      fix: 'Name it as what comes off, or choose an empty place.',
    });
  if (expectedSerial !== null && expectedSerial !== there?.serialNumber)
    refuse(
      {
        code: 'NOT_INSTALLED_THERE',
        slotId,
        expectedSerial,
        foundSerial: there?.serialNumber ?? null,
        at,
      },
      'order.outgoingSerial',
    );
}

async function findIncoming(
  tx: Tx,
  operatorId: number,
  {
    incomingSerial,
    slot,
    at,
  }: {
    readonly incomingSerial: string;
    readonly slot: { readonly id: string; readonly kind: string };
    readonly at: Instant;
  },
): Promise<Incoming> {
  const field = 'order.incomingSerial';
  const named = { serialNumber: incomingSerial, kind: slot.kind };
  const incoming = await componentOfSerial(tx, operatorId, named, field);
  const { id: componentId, kind } = incoming;
  if (kind !== slot.kind)
    refuse({ code: 'WRONG_KIND', componentId, kind, slotId: slot.id, slotKind: slot.kind }, field);
  const stay = await tx.stay.findFirst({
    where: { operatorId, componentId, voidedSeq: null, toAt: null },
    include: { location: true },
  });
  if (stay?.slotId != null)
    refuse({ code: 'ALREADY_INSTALLED', componentId, stayId: stay.id, slotId: stay.slotId, at }, field);
  if (stay?.location?.kind === 'scrapped')
    refuse({
      code: 'REFUSED_BY_FACTS',
      field,
      reason: `${incomingSerial} was scrapped.`,
      fix: 'Check the serial number; a scrapped component is never placed again.',
    });
  return incoming;
}

async function refuseOtherModel(
  tx: Tx,
  operatorId: number,
  { engineModelId, serialNumber }: Incoming,
  positionId: string,
): Promise<void> {
  const models = await modelsOfPosition(tx, operatorId, positionId);
  if (engineModelId !== null && models.includes(engineModelId)) return;
  refuse({
    code: 'REFUSED_BY_FACTS',
    field: 'order.incomingSerial',
    reason: `No rule counts the cycles of the model of ${serialNumber} on this type of airframe: it is not recorded as one that fits.`,
    fix: 'Order an engine of a model of this airframe, or record its cycle rule for this type from the approved data.',
  });
}

async function findRating(
  tx: Tx,
  operatorId: number,
  code: string | null,
  incoming: Incoming | null,
): Promise<string | null> {
  if (code === null || incoming === null) return null;
  const { engineModelId } = incoming;
  const rating =
    engineModelId === null
      ? null
      : await tx.rating.findFirst({ where: { operatorId, engineModelId, code }, select: { id: true } });
  if (rating === null)
    refuse({
      code: 'NOT_FOUND',
      what: `rating ${code} of the model of ${incoming.serialNumber}`,
      field: 'order.ratingCode',
    });
  return rating.id;
}
