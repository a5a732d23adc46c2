import type { Tx } from '../../platform/database/database.js';
import type { Verdict } from './difference.js';

interface ClockRow {
  what: string;
  id: string;
  kept: string;
  fromFacts: string;
}

/** Every month and head of every carrier against the flights, exceptions, runs and readings themselves, by one statement. */
export async function verifyClocks(tx: Tx, operatorId: number): Promise<Verdict> {
  const rows = await tx.$queryRaw<ClockRow[]>`
    WITH posted AS (
      SELECT airframe_id AS carrier_id, month_of(landing_at) AS month, minutes, 1 AS flights, 1 + touch_and_goes AS landings,
             touch_and_goes, starts, aborted_take_offs
        FROM flight WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL
      UNION ALL
      SELECT position_id, month_of(landing_at), -minutes, -flights, -landings, -touch_and_goes, -starts, -aborted_take_offs
        FROM flight_exception WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL
      UNION ALL
      SELECT carrier_id, month_of(ended_at), counted_minutes, 0, 0, 0, starts, aborted_take_offs
        FROM ground_run WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL
      UNION ALL
      SELECT carrier_id, month_of(at), minutes, 0, 0, 0, starts, 0
        FROM counter_posting WHERE operator_id = ${operatorId}::int
    ), month AS (
      SELECT carrier_id, month, ROW(sum(minutes), sum(flights), sum(landings), sum(touch_and_goes), sum(starts),
             sum(aborted_take_offs))::text AS counts FROM posted GROUP BY carrier_id, month
    ), kept_month AS (
      SELECT carrier_id, month, ROW(minutes, flights, landings, touch_and_goes, starts, aborted_take_offs)::text AS counts
        FROM bucket WHERE operator_id = ${operatorId}::int
    ), head AS (
      SELECT carrier_id, ROW(sum(minutes), sum(flights), sum(landings), sum(touch_and_goes), sum(starts),
             sum(aborted_take_offs))::text AS counts FROM posted GROUP BY carrier_id
    )
    SELECT 'month ' || coalesce(m.month, k.month) AS what, coalesce(m.carrier_id, k.carrier_id)::text AS id,
           coalesce(k.counts, '(0,0,0,0,0,0)') AS kept, coalesce(m.counts, '(0,0,0,0,0,0)') AS "fromFacts"
      FROM month m FULL JOIN kept_month k ON k.carrier_id = m.carrier_id AND k.month = m.month
    UNION ALL
    SELECT 'head', c.id::text, ROW(c.minutes, c.flights, c.landings, c.touch_and_goes, c.starts, c.aborted_take_offs)::text,
           coalesce(h.counts, '(0,0,0,0,0,0)')
      FROM carrier c LEFT JOIN head h ON h.carrier_id = c.id
     WHERE c.operator_id = ${operatorId}::int`;
  return {
    name: 'months and heads of the clocks',
    looked: rows.length,
    differences: rows.filter((row) => row.kept !== row.fromFacts),
  };
}
