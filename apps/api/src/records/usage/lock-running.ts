import type { Tx } from '../../platform/database/database.js';

/**
 * Locks what the projections of these components are computed from and written to: the heads of all airframes,
 * test cells and counters they ever ran on or hang on now and of the airframes named, then the components themselves, each in order of their ids.
 *
 * Without it two acts at once would each delete what they see and add their own, and a flight landing between two
 * of our questions would be counted by one of them alone. Read in later statements: what was committed while this
 * one waited is seen there.
 */
export async function lockRunning(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
  airframeIds: readonly string[] = [],
): Promise<void> {
  const ids = [...componentIds];
  await tx.$queryRaw`
    SELECT 1 FROM carrier WHERE operator_id = ${operatorId}::int AND id IN (
      SELECT unnest(${[...airframeIds]}::uuid[])
      UNION
      SELECT coalesce(c.airframe_id, c.id) FROM exposure e JOIN carrier c ON c.operator_id = e.operator_id AND c.id = e.carrier_id
       WHERE e.operator_id = ${operatorId}::int AND e.component_id = ANY (${ids}::uuid[])
      UNION
      SELECT coalesce(airframe_of_slot(st.operator_id, st.slot_id, st.from_at, false),
                      carrier_of_slot(st.operator_id, st.slot_id, st.from_at, false)) FROM stay st
       WHERE st.operator_id = ${operatorId}::int AND st.component_id = ANY (${ids}::uuid[])
         AND st.slot_id IS NOT NULL AND st.voided_seq IS NULL)
     ORDER BY id FOR NO KEY UPDATE`;
  await tx.$queryRaw`
    SELECT 1 FROM component WHERE operator_id = ${operatorId}::int AND id = ANY (${ids}::uuid[])
     ORDER BY id FOR NO KEY UPDATE`;
}
