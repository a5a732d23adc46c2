import type { Tx } from '../../platform/database/database.js';
import type { Limiting } from './tightest.js';

/**
 * What limits these engines now, by one statement: of each clock the first due point, by its index, and all that is
 * not verified; and the places for limited parts that are empty.
 */
export function limitingNow(tx: Tx, operatorId: number, engineIds: readonly string[]): Promise<Limiting[]> {
  return tx.$queryRaw<Limiting[]>`
    WITH RECURSIVE engine AS (
      SELECT k.id, k.engine_model_id, s.position_id
        FROM component k
        JOIN stay st ON st.operator_id = k.operator_id AND st.component_id = k.id AND st.voided_seq IS NULL AND st.to_at IS NULL
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
       WHERE k.operator_id = ${operatorId}::int AND k.id = ANY (${[...engineIds]}::uuid[])
    ), clock AS (
      SELECT e.id AS engine_id, n.carrier_id, 'minutes' AS dimension, NULL::uuid AS rule_id, n.minutes AS reading, 1 AS denominator
        FROM engine e JOIN clock_now n ON n.operator_id = ${operatorId}::int AND n.carrier_id = e.position_id
      UNION ALL
      SELECT e.id, n.carrier_id, 'cycles', r.id,
             r.per_flight * n.flights + r.per_landing * n.landings + r.per_touch_and_go * n.touch_and_goes
               + r.per_start * n.starts + r.per_aborted_take_off * n.aborted_take_offs, r.denominator
        FROM engine e
        JOIN clock_now n ON n.operator_id = ${operatorId}::int AND n.carrier_id = e.position_id
        JOIN cycle_rule r ON r.operator_id = ${operatorId}::int AND r.engine_model_id = e.engine_model_id
    ), first_due AS (
      SELECT c.engine_id, d.component_id, d.verdict, d.dimension, d.reason, d.flagged, c.rule_id, NULL::date AS due_on,
             floor((d.due_at - c.reading)::numeric / c.denominator)::float8 AS remaining
        FROM clock c
        CROSS JOIN LATERAL (
          SELECT * FROM (
            SELECT * FROM due_point p WHERE p.operator_id = ${operatorId}::int AND p.carrier_id = c.carrier_id
               AND p.dimension = c.dimension AND c.rule_id IS NOT NULL AND p.cycle_rule_id = c.rule_id
               AND p.engine_id = c.engine_id AND p.requirement_id IS NULL ORDER BY p.due_at LIMIT 1
          ) AS by_rule
          UNION ALL
          SELECT * FROM (
            SELECT * FROM due_point p WHERE p.operator_id = ${operatorId}::int AND p.carrier_id = c.carrier_id
               AND p.dimension = c.dimension AND c.rule_id IS NULL AND p.cycle_rule_id IS NULL
               AND p.engine_id = c.engine_id AND p.requirement_id IS NULL ORDER BY p.due_at LIMIT 1
          ) AS by_time
        ) AS d
      UNION ALL
      SELECT e.id, d.component_id, d.verdict, d.dimension, d.reason, d.flagged, NULL, d.due_on,
             d.due_on - (now() AT TIME ZONE coalesce(a.day_zone, 'UTC'))::date
        FROM engine e
        LEFT JOIN position o ON o.operator_id = ${operatorId}::int AND o.id = e.position_id
        LEFT JOIN airframe a ON a.operator_id = o.operator_id AND a.id = o.airframe_id
        CROSS JOIN LATERAL (
          SELECT * FROM due_point p WHERE p.operator_id = ${operatorId}::int AND p.engine_id = e.id
             AND p.due_on IS NOT NULL AND p.requirement_id IS NULL ORDER BY p.due_on, p.id LIMIT 1) AS d
    ), place AS (
      SELECT s.id, s.name, s.life_limited, e.id AS engine_id, st.component_id AS filled_by, 1 AS depth
        FROM engine e
        JOIN slot s ON s.operator_id = ${operatorId}::int AND s.component_id = e.id
        LEFT JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL AND st.to_at IS NULL
      UNION ALL
      SELECT s.id, s.name, s.life_limited, p.engine_id, st.component_id, p.depth + 1
        FROM place p
        JOIN slot s ON s.operator_id = ${operatorId}::int AND s.component_id = p.filled_by
        LEFT JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL AND st.to_at IS NULL
       WHERE p.depth < 8
    )
    SELECT f.engine_id AS "engineId", f.component_id AS "componentId", k.description, k.serial_number AS "serialNumber",
           f.verdict, f.dimension, f.remaining, f.reason, f.flagged, f.rule_id AS "ruleId", to_char(f.due_on, 'YYYY-MM-DD') AS "dueOn"
      FROM first_due f JOIN component k ON k.operator_id = ${operatorId}::int AND k.id = f.component_id
    UNION ALL
    SELECT d.engine_id, d.component_id, k.description, k.serial_number, d.verdict, d.dimension, NULL, d.reason, false, NULL, NULL
      FROM due_point d JOIN component k ON k.operator_id = d.operator_id AND k.id = d.component_id
     WHERE d.operator_id = ${operatorId}::int AND d.requirement_id IS NULL AND d.verdict IN ('not-verified', 'not-authorised')
       AND d.engine_id = ANY (${[...engineIds]}::uuid[])
    UNION ALL
    SELECT p.engine_id, p.engine_id, p.name, '', 'not-verified', 'none', NULL, 'LIMITED_PART_MISSING', false, NULL, NULL
      FROM place p WHERE p.life_limited AND p.filled_by IS NULL`;
}
