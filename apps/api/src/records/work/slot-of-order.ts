import type { Tx } from '../../platform/database/database.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import type { PackageKind } from './package-head.js';
import type { NewOrderDto } from './wire/order.dto.js';

/** The place an order changes. */
export interface OrderedSlot {
  readonly id: string;
  readonly kind: string;
  readonly positionId: string | null;
  readonly positionNumber: number | null;
}

interface OrderedPlace {
  readonly kind: PackageKind;
  readonly airframeId: string | null;
  readonly componentId: string | null;
}

/** The kinds of slot each kind of package may change; one that is not here may change any. */
const SLOTS_OF: Readonly<Partial<Record<PackageKind, readonly string[]>>> = {
  'engine-change': ['engine', 'apu'],
  'pod-swap': ['pod'],
};

/** The place an order names, which hangs on the airframe or in the component of its package. Refuses: NOT_FOUND, INVALID_FIELDS, REFUSED_BY_FACTS. */
export async function slotOfOrder(
  tx: Tx,
  operatorId: number,
  order: NewOrderDto,
  place: OrderedPlace,
): Promise<OrderedSlot> {
  const slot =
    order.slotId === undefined
      ? await slotOfPosition(tx, operatorId, order, place)
      : await slotById(tx, operatorId, order.slotId, place);
  const takes = SLOTS_OF[place.kind];
  if (takes !== undefined && (slot.positionId === null || !takes.includes(slot.kind)))
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: order.slotId === undefined ? 'order.slot' : 'order.slotId',
      reason: `A package of this kind changes a place for ${takes.join(' or ')} at a position, not one for a ${slot.kind}.`,
      fix: 'Choose the kind of package that fits, or another place.',
    });
  return slot;
}

async function slotOfPosition(
  tx: Tx,
  operatorId: number,
  { positionNumber, slot: kind }: NewOrderDto,
  { airframeId }: OrderedPlace,
): Promise<OrderedSlot> {
  if (airframeId === null || positionNumber === undefined || kind === undefined)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field:
            airframeId === null
              ? 'order.slotId'
              : positionNumber === undefined
                ? 'order.positionNumber'
                : 'order.slot',
          reason: 'It is not told where something is changed.',
          fix:
            airframeId === null
              ? 'Name the place in the component.'
              : 'Name the position and what is changed there, or a place inside a component.',
        },
      ],
    });
  const position = await tx.position.findFirst({ where: { operatorId, airframeId, number: positionNumber } });
  const found =
    position === null
      ? null
      : await tx.slot.findFirst({ where: { operatorId, positionId: position.id, kind } });
  if (position === null)
    refuse({ code: 'NOT_FOUND', what: `position ${positionNumber}`, field: 'order.positionNumber' });
  const { id } = orNotFound(found, `${kind} slot at position ${positionNumber}`, 'order.slot');
  return { id, kind, positionId: position.id, positionNumber };
}

async function slotById(
  tx: Tx,
  operatorId: number,
  slotId: string,
  { airframeId, componentId }: OrderedPlace,
): Promise<OrderedSlot> {
  const row = await tx.slot.findUnique({
    where: { operatorId_id: { operatorId, id: slotId } },
    include: { position: true },
  });
  const slot = orNotFound(row, 'place', 'order.slotId');
  const [hangs] = await tx.$queryRaw<{ airframeId: string | null; inComponent: boolean }[]>`
    WITH RECURSIVE up AS (
      SELECT s.component_id FROM slot s WHERE s.operator_id = ${operatorId}::int AND s.id = ${slotId}::uuid
      UNION
      SELECT s.component_id FROM up
        JOIN stay st ON st.operator_id = ${operatorId}::int AND st.component_id = up.component_id
         AND st.voided_seq IS NULL AND st.to_at IS NULL
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
    )
    SELECT airframe_of_slot(${operatorId}::int, ${slotId}::uuid, now(), false) AS "airframeId",
           EXISTS (SELECT FROM up WHERE component_id = ${componentId}::uuid) AS "inComponent"`;
  const fits = componentId === null ? hangs?.airframeId === airframeId : hangs?.inComponent === true;
  if (!fits)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'order.slotId',
      reason: `This place is not ${componentId === null ? 'on the airframe' : 'in the component'} of the package now.`,
      fix: 'Choose a place of what the package is on.',
    });
  return {
    id: slot.id,
    kind: slot.kind,
    positionId: slot.position?.id ?? null,
    positionNumber: slot.position?.number ?? null,
  };
}
