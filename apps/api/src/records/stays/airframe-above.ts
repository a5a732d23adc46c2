import type { Tx } from '../../platform/database/database.js';

/** An airframe as far as work on what hangs on it asks. */
export interface AirframeAbove {
  readonly id: string;
  readonly typeId: string;
  readonly ruleSet: string;
}

/** The airframe a component hangs on now, however deep inside another one; null when it hangs on none. */
export async function airframeAbove(
  tx: Tx,
  operatorId: number,
  componentId: string,
): Promise<AirframeAbove | null> {
  const [row] = await tx.$queryRaw<AirframeAbove[]>`
    SELECT a.id, a.airframe_type_id AS "typeId", a.rule_set AS "ruleSet" FROM stay st
      JOIN airframe a ON a.operator_id = st.operator_id
       AND a.id = airframe_of_slot(st.operator_id, st.slot_id, now(), false)
     WHERE st.operator_id = ${operatorId}::int AND st.component_id = ${componentId}::uuid
       AND st.voided_seq IS NULL AND st.to_at IS NULL AND st.slot_id IS NOT NULL`;
  return row ?? null;
}
