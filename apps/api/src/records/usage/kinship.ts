import type { Tx } from '../../platform/database/database.js';

/** These components and all that ever hung beneath them, voided stays included. */
export async function withAllBeneath(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<string[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    WITH RECURSIVE beneath (id) AS (
      SELECT unnest(${[...componentIds]}::uuid[])
      UNION
      SELECT st.component_id FROM beneath b
        JOIN slot s ON s.operator_id = ${operatorId}::int AND s.component_id = b.id
        JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id
    ) SELECT id FROM beneath`;
  return rows.map((row) => row.id);
}

/** These components and all they ever hung in. */
export async function withAllAbove(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<string[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    WITH RECURSIVE above (id) AS (
      SELECT unnest(${[...componentIds]}::uuid[])
      UNION
      SELECT s.component_id FROM above a
        JOIN stay st ON st.operator_id = ${operatorId}::int AND st.component_id = a.id AND st.voided_seq IS NULL
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
       WHERE s.component_id IS NOT NULL
    ) SELECT id FROM above`;
  return rows.map((row) => row.id);
}

/** Everything that ever ran on these airframes, whenever. */
export async function everOnAirframes(
  tx: Tx,
  operatorId: number,
  airframeIds: readonly string[],
): Promise<string[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    SELECT DISTINCT st.component_id AS id
      FROM position p
      JOIN slot s ON s.operator_id = p.operator_id AND s.position_id = p.id
      JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL
     WHERE p.operator_id = ${operatorId}::int AND p.airframe_id = ANY (${[...airframeIds]}::uuid[])`;
  return withAllBeneath(
    tx,
    operatorId,
    rows.map((row) => row.id),
  );
}

/** All that hung beneath a component at any time of a span, itself left out; `to` null: without an end. */
export async function beneathDuring(
  tx: Tx,
  operatorId: number,
  componentId: string,
  { from, to }: { readonly from: Date; readonly to: Date | null },
): Promise<string[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    WITH RECURSIVE beneath (id) AS (
      SELECT ${componentId}::uuid
      UNION
      SELECT st.component_id FROM beneath b
        JOIN slot s ON s.operator_id = ${operatorId}::int AND s.component_id = b.id
        JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL
         AND tstzrange(st.from_at, st.to_at) && tstzrange(${from.toISOString()}::timestamptz, ${to === null ? null : to.toISOString()}::timestamptz)
    ) SELECT id FROM beneath WHERE id <> ${componentId}::uuid`;
  return rows.map((row) => row.id);
}
