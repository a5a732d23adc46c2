import type { Tx } from '../../platform/database/database.js';

/** The words for a slot or a location, by its id. */
export interface PlaceWords {
  readonly label: string;
  readonly airframeId: string | null;
  readonly positionNumber: number | null;
  readonly parentId: string | null;
  readonly parentSerial: string | null;
  readonly slotName: string | null;
}

interface SlotRow {
  id: string;
  kind: string;
  name: string;
  airframeId: string | null;
  registration: string | null;
  positionNumber: number | null;
  positionLabel: string | null;
  parentId: string | null;
  parentSerial: string | null;
  parentDescription: string | null;
  testCell: string | null;
}

/** The words for these slots and locations, in two statements. */
export async function wordsOfPlaces(
  tx: Tx,
  operatorId: number,
  { slotIds, locationIds }: { readonly slotIds: readonly string[]; readonly locationIds: readonly string[] },
): Promise<ReadonlyMap<string, PlaceWords>> {
  const slots = await tx.$queryRaw<SlotRow[]>`
    SELECT s.id, s.kind, s.name, a.id AS "airframeId", a.registration, p.number AS "positionNumber", p.label AS "positionLabel",
           c.id AS "parentId", c.serial_number AS "parentSerial", c.description AS "parentDescription",
           t.name AS "testCell"
      FROM slot s
      LEFT JOIN position p ON p.operator_id = s.operator_id AND p.id = s.position_id
      LEFT JOIN airframe a ON a.operator_id = p.operator_id AND a.id = p.airframe_id
      LEFT JOIN component c ON c.operator_id = s.operator_id AND c.id = s.component_id
      LEFT JOIN test_cell t ON t.operator_id = s.operator_id AND t.id = s.test_cell_id
     WHERE s.operator_id = ${operatorId}::int AND s.id = ANY (${[...slotIds]}::uuid[])`;
  const locations = await tx.location.findMany({ where: { operatorId, id: { in: [...locationIds] } } });
  return new Map([
    ...slots.map((slot) => [slot.id, wordsOfSlot(slot)] as const),
    ...locations.map(({ id, name }) => [id, { ...NOWHERE, label: name }] as const),
  ]);
}

/** The words for a component that is in no place on record. */
export const NOWHERE: PlaceWords = {
  label: 'No place on record',
  airframeId: null,
  positionNumber: null,
  parentId: null,
  parentSerial: null,
  slotName: null,
};

function wordsOfSlot(slot: SlotRow): PlaceWords {
  const { airframeId, positionNumber, parentId, parentSerial } = slot;
  if (slot.testCell !== null) return { ...NOWHERE, label: slot.testCell, slotName: slot.name };
  const label =
    parentId === null
      ? `${slot.registration ?? ''}, ${slot.positionLabel ?? ''}${slot.kind === 'pod' ? ' (pod)' : ''}`
      : `${slot.name} in ${slot.parentDescription ?? ''} ${parentSerial ?? ''}`;
  return { label, airframeId, positionNumber, parentId, parentSerial, slotName: slot.name };
}
