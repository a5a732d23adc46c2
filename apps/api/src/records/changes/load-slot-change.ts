import type { ChangeFacts, ChangeRequest, ChangingComponent } from '@strutbook/domain/changes/plan-change.js';
import type { CounterFigures } from '@strutbook/domain/runs/apu-counter.js';
import type { Boundary } from '@strutbook/domain/stays/boundary.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { preservedUntil, unfitAmong } from '../serviceability/serviceability.js';
import { loadBoundaryFacts } from '../stays/boundary-facts.js';
import { airframesOfSlots, loadComponentFacts, loadSlotStays, lockForStays } from '../stays/stay-facts.js';
import { beneathDuring, withAllAbove } from '../usage/kinship.js';
import { modelsOfPosition } from './models-of-position.js';

/** A change at one slot, of a position or of a component: something comes off, something goes on, or both. */
export interface SlotChange {
  readonly slotId: string;
  /** The serial that must be there and comes off, and where it goes. */
  readonly outgoing: { readonly serial: string; readonly toLocationId: string } | null;
  readonly incomingId: string | null;
  readonly boundary: Boundary;
  /** The rating an incoming engine runs at from then on; null keeps the one recorded. */
  readonly ratingCode: string | null;
  readonly reason: string;
  /** What the counters of an auxiliary power unit showed then; null for what has none of its own. */
  readonly readings: { readonly outgoing: ToldReading | null; readonly incoming: ToldReading | null };
  /** The fields of the request that tell them. */
  readonly readingFields: { readonly outgoing: string; readonly incoming: string };
}

/** What a counter showed, as it is told. */
export type ToldReading = CounterFigures;

/** The slot of a change, and what it hangs in. */
export interface ChangedSlot {
  readonly id: string;
  readonly kind: string;
  readonly name: string;
  readonly position: { readonly id: string; readonly number: number } | null;
  /** The component whose slot it is; null for a slot of a position. */
  readonly parentId: string | null;
  /** The airframe it hangs on at that time; null when its component is off every airframe. */
  readonly airframe: { readonly id: string; readonly registration: string } | null;
}

/** What a change is planned from. */
export interface LoadedSlotChange {
  readonly change: SlotChange;
  readonly slot: ChangedSlot;
  readonly request: ChangeRequest;
  readonly facts: ChangeFacts;
  /** The engine model of what goes on; null where it has none. */
  readonly modelId: string | null;
}

type Place = Pick<SlotChange, 'slotId' | 'incomingId' | 'boundary'>;

/**
 * Locks what a change touches: the airframes' heads, then what is there, what goes on, and all these ever hung in or
 * carry. Call it before anything of the change is read. Refuses: NOT_FOUND.
 */
export async function lockSlotChange(tx: Tx, operatorId: number, place: Place): Promise<void> {
  const { slotId, incomingId } = place;
  const slot = await findSlot(tx, operatorId, slotId);
  const there = await tx.stay.findMany({
    where: { operatorId, slotId, voidedSeq: null, toAt: null },
    select: { componentId: true },
  });
  const moved = [...there.map((stay) => stay.componentId), ...(incomingId === null ? [] : [incomingId])];
  const airframeIds = await airframesOf(tx, operatorId, slot, place.boundary);
  const componentIds =
    slot.componentId === null ? moved : await withAllAbove(tx, operatorId, [...moved, slot.componentId]);
  await lockForStays(tx, operatorId, { airframeIds, componentIds });
}

/** Loads what a change is planned from. Refuses: NOT_FOUND, INSIDE_ITSELF. */
export async function loadSlotChange(
  tx: Tx,
  operatorId: number,
  change: SlotChange,
): Promise<LoadedSlotChange> {
  const { slotId, outgoing, incomingId, boundary } = change;
  const row = await findSlot(tx, operatorId, slotId);
  const airframeIds = await airframesOf(tx, operatorId, row, boundary);
  const airframe =
    airframeIds[0] === undefined
      ? null
      : await tx.airframe.findUniqueOrThrow({
          where: { operatorId_id: { operatorId, id: airframeIds[0] } },
          select: { id: true, registration: true },
        });
  const incoming =
    incomingId === null
      ? null
      : orNotFound(
          await tx.component.findUnique({ where: { operatorId_id: { operatorId, id: incomingId } } }),
          'component',
        );
  if (incomingId !== null && row.componentId !== null)
    await refuseInsideItself(tx, operatorId, { incomingId, parentId: row.componentId, change });
  const stays = await loadSlotStays(tx, operatorId, slotId);
  const ids = new Set([
    ...stays.map((stay) => stay.componentId),
    ...(incoming === null ? [] : [incoming.id]),
  ]);
  const components = await changing(tx, operatorId, { ids: [...ids], goesOnId: incomingId, boundary });
  return {
    change,
    slot: {
      id: row.id,
      kind: row.kind,
      name: row.name,
      position: row.position === null ? null : { id: row.position.id, number: row.position.number },
      parentId: row.componentId,
      airframe,
    },
    modelId: incoming?.engineModelId ?? null,
    request: {
      slotId,
      off:
        outgoing === null
          ? null
          : { expectedSerial: outgoing.serial, boundary, toLocationId: outgoing.toLocationId },
      on: incoming === null ? null : { componentId: incoming.id, boundary },
    },
    facts: {
      ...(await loadBoundaryFacts(tx, operatorId, airframeIds, boundary)),
      slot: {
        id: row.id,
        kind: row.kind,
        positionNumber: row.position?.number ?? null,
        authorisedModelIds:
          row.position === null || row.kind === 'pod'
            ? null
            : await modelsOfPosition(tx, operatorId, row.position.id),
        stays,
      },
      components,
      lifeObjections: [],
    },
  };
}

/** The components of a change, with what tags, shops and preservations say of the one that goes on. */
async function changing(
  tx: Tx,
  operatorId: number,
  {
    ids,
    goesOnId,
    boundary,
  }: { readonly ids: readonly string[]; readonly goesOnId: string | null; readonly boundary: Boundary },
): Promise<ReadonlyMap<string, ChangingComponent>> {
  const components = await loadComponentFacts(tx, operatorId, ids);
  // A page or a day is told by its flights: then the newest tag counts, for nobody tags by a page.
  const at = boundary.kind === 'instant' ? fromInstant(boundary.at) : null;
  const goesOn = goesOnId === null ? [] : [goesOnId];
  const held = await unfitAmong(tx, operatorId, goesOn, at);
  const preserved = await preservedUntil(tx, operatorId, goesOn, at);
  return new Map(
    [...components].map(([id, facts]): [string, ChangingComponent] => [
      id,
      {
        ...facts,
        serviceable: !facts.inQuarantine,
        unfit: held.get(id) ?? null,
        preservedUntil: preserved.get(id) ?? null,
      },
    ]),
  );
}

async function findSlot(tx: Tx, operatorId: number, id: string) {
  const where = { operatorId_id: { operatorId, id } };
  return orNotFound(await tx.slot.findUnique({ where, include: { position: true } }), 'slot', 'slotId');
}

/** The airframes whose flights a change there may not fall into: the position's own, or where its component hangs then. */
async function airframesOf(
  tx: Tx,
  operatorId: number,
  slot: { readonly id: string; readonly position: { readonly airframeId: string } | null },
  boundary: Boundary,
): Promise<string[]> {
  if (slot.position !== null) return [slot.position.airframeId];
  const at = boundary.kind === 'instant' ? fromInstant(boundary.at) : new Date();
  return airframesOfSlots(tx, operatorId, [slot.id], at);
}

async function refuseInsideItself(
  tx: Tx,
  operatorId: number,
  {
    incomingId,
    parentId,
    change,
  }: { readonly incomingId: string; readonly parentId: string; readonly change: SlotChange },
): Promise<void> {
  const from = change.boundary.kind === 'instant' ? fromInstant(change.boundary.at) : new Date(0);
  const within = await beneathDuring(tx, operatorId, incomingId, { from, to: null });
  if (incomingId === parentId || within.includes(parentId))
    refuse({ code: 'INSIDE_ITSELF', componentId: incomingId, slotId: change.slotId });
}
