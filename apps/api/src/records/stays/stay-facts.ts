import { type Instant, instant } from '@strutbook/domain/units/minutes.js';
import type { Stay } from '@strutbook/domain/usage/flatten-exposures.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { withAllBeneath } from '../usage/kinship.js';
import { lockRunning } from '../usage/lock-running.js';

/** What is recorded of one component that a stay of it must respect. */
export interface ComponentFacts {
  readonly id: string;
  readonly serial: string;
  readonly kind: string;
  readonly modelId: string | null;
  readonly opening: { readonly at: Instant; readonly source: string } | null;
  readonly manufacturedAt: Instant | null;
  readonly scrappedAt: Instant | null;
  readonly inQuarantine: boolean;
  readonly stays: readonly Stay[];
}

/** Loads these components with their stays, openings and ends. */
export async function loadComponentFacts(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<ReadonlyMap<string, ComponentFacts>> {
  const where = { operatorId, componentId: { in: [...componentIds] }, voidedSeq: null };
  const components = await tx.component.findMany({ where: { operatorId, id: { in: [...componentIds] } } });
  const stays = await tx.stay.findMany({
    where,
    orderBy: { fromAt: 'asc' },
    include: { location: { select: { kind: true } } },
  });
  const openings = await tx.opening.findMany({ where: { ...where, basis: 'new' }, orderBy: { at: 'desc' } });
  return new Map(
    components.map((component) => {
      const own = stays.filter((stay) => stay.componentId === component.id);
      const opening = openings.find((row) => row.componentId === component.id);
      const scrapped = own.find((stay) => stay.location?.kind === 'scrapped');
      return [
        component.id,
        {
          id: component.id,
          serial: component.serialNumber,
          kind: component.kind,
          modelId: component.engineModelId,
          opening: opening === undefined ? null : { at: toInstant(opening.at), source: opening.source },
          manufacturedAt:
            component.manufacturedOn === null ? null : instant(component.manufacturedOn.getTime() / 60_000),
          scrappedAt: scrapped === undefined ? null : toInstant(scrapped.fromAt),
          inQuarantine: own.some((stay) => stay.toAt === null && stay.location?.kind === 'quarantine'),
          stays: own.map(asStay),
        },
      ];
    }),
  );
}

/** The stays in a slot that are not voided. */
export async function loadSlotStays(tx: Tx, operatorId: number, slotId: string): Promise<Stay[]> {
  const rows = await tx.stay.findMany({
    where: { operatorId, slotId, voidedSeq: null },
    orderBy: { fromAt: 'asc' },
  });
  return rows.map(asStay);
}

/** A row as the core reads it. */
export function asStay(row: {
  id: string;
  componentId: string;
  slotId: string | null;
  locationId: string | null;
  fromAt: Date;
  toAt: Date | null;
}): Stay {
  return {
    id: row.id,
    componentId: row.componentId,
    slotId: row.slotId,
    locationId: row.locationId,
    from: toInstant(row.fromAt),
    to: row.toAt === null ? null : toInstant(row.toAt),
  };
}

/** The airframes these slots hang on, walking up as things are now, or were at an instant. */
export async function airframesOfSlots(
  tx: Tx,
  operatorId: number,
  slotIds: readonly string[],
  at: Date,
): Promise<string[]> {
  const rows = await tx.$queryRaw<{ airframeId: string | null }[]>`
    SELECT DISTINCT airframe_id AS "airframeId" FROM unnest(${[...slotIds]}::uuid[]) AS slot_id,
      LATERAL (VALUES (airframe_of_slot(${operatorId}::int, slot_id, ${at.toISOString()}::timestamptz, false)),
                      (airframe_of_slot(${operatorId}::int, slot_id, ${at.toISOString()}::timestamptz, true))) AS a (airframe_id)
     WHERE airframe_id IS NOT NULL ORDER BY 1`;
  return rows.flatMap((row) => row.airframeId ?? []);
}

/**
 * Locks airframes' heads, then components, each in order of their ids: the one global order of locks. With components
 * comes at once all that writing their projections will lock, for a head that is asked for after a component may be
 * held by an act that waits for that component.
 */
export async function lockForStays(
  tx: Tx,
  operatorId: number,
  { airframeIds, componentIds }: { airframeIds: readonly string[]; componentIds: readonly string[] },
): Promise<void> {
  const family = componentIds.length === 0 ? [] : await withAllBeneath(tx, operatorId, componentIds);
  await lockRunning(tx, operatorId, family, airframeIds);
}
