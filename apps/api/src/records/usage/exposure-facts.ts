import type {
  CycleRuleInForce,
  OwnCounter,
  RatingChange,
  SlotPlace,
  Stay,
} from '@strutbook/domain/usage/flatten-exposures.js';
import { rulesInForce } from '@strutbook/domain/usage/rules-in-force.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { loadCycleRules } from '../counting/cycle-rules.js';

/** What flattening needs, for a set of components and all they ever hung in. */
export interface ExposureFacts {
  readonly stays: readonly Stay[];
  readonly slotsFor: (componentId: string) => ReadonlyMap<string, SlotPlace>;
  readonly ratingChanges: readonly RatingChange[];
  readonly cycleRules: readonly CycleRuleInForce[];
  readonly modelOf: ReadonlyMap<string, string>;
  readonly countersOf: ReadonlyMap<string, OwnCounter>;
}

interface SlotRow {
  id: string;
  kind: string;
  component_id: string | null;
  position_id: string | null;
  airframe_id: string | null;
  airframe_type_id: string | null;
  test_cell_id: string | null;
}

/** Loads the facts for these components in a constant number of statements. */
export async function loadExposureFacts(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<ExposureFacts> {
  const ids = [...componentIds];
  const stays = await tx.stay.findMany({
    where: { operatorId, componentId: { in: ids }, voidedSeq: null },
    select: { id: true, componentId: true, slotId: true, locationId: true, fromAt: true, toAt: true },
    orderBy: { fromAt: 'asc' },
  });
  const components = await tx.component.findMany({
    where: { operatorId, id: { in: ids } },
    select: { id: true, kind: true, engineModelId: true, podClock: true },
  });
  const slots = await tx.$queryRaw<SlotRow[]>`
    SELECT s.id, s.kind, s.component_id, s.position_id, p.airframe_id, a.airframe_type_id, s.test_cell_id
      FROM slot s
      LEFT JOIN position p ON p.operator_id = s.operator_id AND p.id = s.position_id
      LEFT JOIN airframe a ON a.operator_id = p.operator_id AND a.id = p.airframe_id
     WHERE s.operator_id = ${operatorId}::int AND s.id = ANY (${stays.flatMap((stay) => stay.slotId ?? [])}::uuid[])`;
  const changes = await tx.ratingChange.findMany({
    where: { operatorId, componentId: { in: ids }, voidedSeq: null },
    orderBy: [{ at: 'asc' }, { recordedSeq: 'asc' }],
  });
  const engines = components.filter(({ kind }) => kind === 'engine' || kind === 'apu');
  const modelOf = new Map(
    engines.flatMap(({ id, engineModelId }) =>
      engineModelId === null ? [] : [[id, engineModelId] as const],
    ),
  );
  const airframePods = new Set(
    components.filter((component) => component.podClock === 'airframe').map(({ id }) => id),
  );
  const typeIds = [...new Set(slots.flatMap((slot) => slot.airframe_type_id ?? []))];
  const modelIds = [...new Set(modelOf.values())];
  const revisions = await loadCycleRules(tx, operatorId, modelIds);
  const units = components.filter((component) => component.kind === 'apu').map(({ id }) => id);
  return {
    stays: stays.map((stay) => ({
      id: stay.id,
      componentId: stay.componentId,
      slotId: stay.slotId,
      locationId: stay.locationId,
      from: toInstant(stay.fromAt),
      to: stay.toAt === null ? null : toInstant(stay.toAt),
    })),
    slotsFor: (componentId) => placesOf(slots, airframePods.has(componentId)),
    ratingChanges: changes.map(({ componentId, at, ratingId }) => ({
      componentId,
      at: toInstant(at),
      ratingId,
    })),
    cycleRules: modelIds.flatMap((modelId) =>
      [null, ...typeIds].flatMap((typeId) => rulesInForce(revisions, modelId, typeId)),
    ),
    modelOf,
    countersOf: await loadOwnCounters(tx, operatorId, units),
  };
}

/** Where each slot is. An auxiliary power unit counts by its own counter, so its slot runs on nothing here. */
function placesOf(slots: readonly SlotRow[], onAirframeClock: boolean): ReadonlyMap<string, SlotPlace> {
  const places = new Map<string, SlotPlace>();
  for (const slot of slots) {
    if (slot.component_id !== null)
      places.set(slot.id, { kind: 'component', componentId: slot.component_id });
    else if (slot.test_cell_id !== null)
      places.set(slot.id, { kind: 'test-cell', carrierId: slot.test_cell_id });
    else if (
      slot.kind !== 'apu' &&
      slot.position_id !== null &&
      slot.airframe_id !== null &&
      slot.airframe_type_id !== null
    )
      places.set(slot.id, {
        kind: 'position',
        positionCarrierId: onAirframeClock ? slot.airframe_id : slot.position_id,
        airframeId: slot.airframe_id,
        airframeTypeId: slot.airframe_type_id,
      });
  }
  return places;
}

/** From when on these auxiliary power units run by their own counters: the first reading, and not before what an opening holds. */
async function loadOwnCounters(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<ReadonlyMap<string, OwnCounter>> {
  if (componentIds.length === 0) return new Map();
  const rows = await tx.$queryRaw<{ id: string; from: Date }[]>`
    SELECT r.component_id AS id, greatest(min(r.at), (SELECT max(o.at) FROM opening o WHERE o.operator_id = r.operator_id
             AND o.component_id = r.component_id AND o.basis = 'new' AND o.voided_seq IS NULL)) AS from
      FROM counter_reading r
     WHERE r.operator_id = ${operatorId}::int AND r.component_id = ANY (${[...componentIds]}::uuid[])
       AND r.voided_seq IS NULL GROUP BY r.operator_id, r.component_id`;
  return new Map(rows.map(({ id, from }) => [id, { carrierId: id, from: toInstant(from) }]));
}
