import type { Tx } from '../../platform/database/database.js';

/**
 * Keeps on the heads of airframes up to when what is recorded counts from their clocks: the latest moment at which a duty
 * was met there, something hanging there was overhauled, visited a shop or was repaired, or a day passed from which a duty
 * counts. A flight before it moves what is due after it, so it is late, as one before an engine change is.
 */
export async function keepLateFrom(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
  airframeIds: readonly string[],
): Promise<void> {
  const [ids, onThem] = [[...componentIds], [...airframeIds]];
  await tx.$executeRaw`
    UPDATE carrier a SET last_boundary_at = greatest(a.last_boundary_at, m.latest)
      FROM (
        SELECT airframe_id, max(at) AS latest FROM (
          SELECT c.airframe_id, x.at FROM accomplishment x
            JOIN exposure e ON e.operator_id = x.operator_id AND e.component_id = x.component_id AND e.from_at < x.at
             AND (e.to_at IS NULL OR e.to_at > x.at)
            JOIN carrier c ON c.operator_id = e.operator_id AND c.id = e.carrier_id
           WHERE x.operator_id = ${operatorId}::int AND x.component_id = ANY (${ids}::uuid[]) AND x.voided_seq IS NULL
          UNION ALL
          SELECT c.airframe_id, x.at FROM reset x
            JOIN exposure e ON e.operator_id = x.operator_id AND e.component_id = x.component_id AND e.from_at < x.at
             AND (e.to_at IS NULL OR e.to_at > x.at)
            JOIN carrier c ON c.operator_id = e.operator_id AND c.id = e.carrier_id
           WHERE x.operator_id = ${operatorId}::int AND x.component_id = ANY (${ids}::uuid[]) AND x.voided_seq IS NULL
          UNION ALL
          SELECT x.airframe_id, x.at FROM accomplishment x
           WHERE x.operator_id = ${operatorId}::int AND x.airframe_id = ANY (${onThem}::uuid[]) AND x.voided_seq IS NULL
          UNION ALL
          SELECT p.airframe_id, x.at FROM position p
            JOIN accomplishment x ON x.operator_id = p.operator_id AND x.position_id = p.id AND x.voided_seq IS NULL
           WHERE p.operator_id = ${operatorId}::int AND p.airframe_id = ANY (${onThem}::uuid[])
          UNION ALL
          SELECT coalesce(c.airframe_id, c.id), r.day + 1 FROM due_point d
            JOIN (SELECT operator_id, id, CASE WHEN counted_from = 'effective' THEN effective_on ELSE from_on END AS day
                    FROM requirement WHERE operator_id = ${operatorId}::int) r
              ON r.operator_id = d.operator_id AND r.id = d.requirement_id AND r.day < current_date
            JOIN carrier c ON c.operator_id = d.operator_id AND c.id = d.carrier_id
           WHERE d.operator_id = ${operatorId}::int
             AND (d.component_id = ANY (${ids}::uuid[]) OR d.airframe_id = ANY (${onThem}::uuid[])
               OR d.position_id IN (SELECT p.id FROM position p
                                     WHERE p.operator_id = ${operatorId}::int AND p.airframe_id = ANY (${onThem}::uuid[])))
        ) marks WHERE airframe_id IS NOT NULL GROUP BY airframe_id) AS m
     WHERE a.operator_id = ${operatorId}::int AND a.id = m.airframe_id
       AND (a.last_boundary_at IS NULL OR a.last_boundary_at < m.latest)`;
}
