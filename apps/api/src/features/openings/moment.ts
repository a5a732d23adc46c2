import type { Tx } from '../../platform/database/database.js';
import { dayToWire, toInstant } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { airframesOfSlots, lockForStays } from '../../records/stays/stay-facts.js';

/** A component as these facts need it; its row, and the heads of the airframes it is on, are locked. */
export interface LockedComponent {
  readonly id: string;
  readonly kind: string;
  readonly engineModelId: string | null;
  readonly airframeIds: readonly string[];
}

/** Locks the component, after the airframes it is on at that instant. Refuses: NOT_FOUND. */
export async function lockComponent(
  tx: Tx,
  operatorId: number,
  id: string,
  at: Date,
): Promise<LockedComponent> {
  const stays = await tx.stay.findMany({
    where: {
      operatorId,
      componentId: id,
      voidedSeq: null,
      slotId: { not: null },
      fromAt: { lte: at },
      OR: [{ toAt: null }, { toAt: { gt: at } }],
    },
    select: { slotId: true },
  });
  const slotIds = stays.flatMap((stay) => stay.slotId ?? []);
  const airframeIds = slotIds.length === 0 ? [] : await airframesOfSlots(tx, operatorId, slotIds, at);
  await lockForStays(tx, operatorId, { airframeIds, componentIds: [id] });
  const row = await tx.component.findUnique({
    where: { operatorId_id: { operatorId, id } },
    select: { id: true, kind: true, engineModelId: true },
  });
  return { ...orNotFound(row, 'component', 'componentId'), airframeIds };
}

/**
 * Refuses an event of a component at an instant at which it can't have been: before it was made, before its opening
 * balance, or inside a flight of the airframe it is on.
 */
export async function refuseMoment(
  tx: Tx,
  operatorId: number,
  component: LockedComponent,
  at: Date,
): Promise<void> {
  const { id: componentId, airframeIds } = component;
  await refuseBeforeManufacture(tx, operatorId, componentId, at);
  const opening = await tx.opening.findFirst({
    where: { operatorId, componentId, basis: 'new', voidedSeq: null },
  });
  if (opening !== null && at < opening.at)
    refuse(
      {
        code: 'BEFORE_OPENING',
        componentId,
        at: toInstant(at),
        openingAt: toInstant(opening.at),
        source: opening.source,
      },
      'at',
    );
  const flight = await tx.flight.findFirst({
    where: {
      operatorId,
      airframeId: { in: [...airframeIds] },
      voidedSeq: null,
      takeOffAt: { lt: at },
      landingAt: { gt: at },
    },
  });
  if (flight === null) return;
  const { id: flightId, logPage: page, takeOffAt, landingAt } = flight;
  refuse(
    {
      code: 'INSIDE_A_FLIGHT',
      at: toInstant(at),
      flightId,
      page,
      takeOffAt: toInstant(takeOffAt),
      landingAt: toInstant(landingAt),
    },
    'at',
  );
}

/** Refuses what would have happened to a component before it was made. */
export async function refuseBeforeManufacture(
  tx: Tx,
  operatorId: number,
  componentId: string,
  at: Date,
): Promise<void> {
  const row = await tx.component.findUnique({
    where: { operatorId_id: { operatorId, id: componentId } },
    select: { manufacturedOn: true },
  });
  if (row?.manufacturedOn == null || dayToWire(row.manufacturedOn) <= dayToWire(at)) return;
  refuse(
    {
      code: 'BEFORE_MANUFACTURE',
      componentId,
      at: toInstant(at),
      manufacturedAt: toInstant(row.manufacturedOn),
    },
    'at',
  );
}
