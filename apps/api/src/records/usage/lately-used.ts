import { zeroCounts } from '@strutbook/domain/usage/counts.js';
import type { Tx } from '../../platform/database/database.js';
import { countsOf } from './clock-readings.js';
import type { RunningClock } from './running-clocks.js';

interface Row {
  positionId: string;
  airframeId: string;
  dayZone: string;
  minutes: bigint;
  flights: bigint;
  landings: bigint;
  touch_and_goes: bigint;
  starts: bigint;
  aborted_take_offs: bigint;
}

/**
 * What was used at positions in the 90 days before an instant (null: now), in one statement over whole months and the
 * flights of those that are cut: the fleet's board has thousands of positions. Readings themselves are not read here.
 */
export async function latelyUsed(
  tx: Tx,
  operatorId: number,
  positionIds: readonly string[],
  { at, now }: { readonly at: Date | null; readonly now: Date },
): Promise<ReadonlyMap<string, RunningClock>> {
  const until = at ?? now;
  const from = new Date(until.getTime() - 90 * 86_400_000);
  const rows = await tx.$queryRaw<Row[]>`/* planned once */
    WITH asked AS (
      SELECT p.id, p.airframe_id, a.day_zone FROM position p JOIN airframe a ON a.operator_id = p.operator_id AND a.id = p.airframe_id
       WHERE p.operator_id = ${operatorId}::int AND p.id = ANY (${[...new Set(positionIds)]}::uuid[])
    ), span AS (
      SELECT ${from}::timestamptz AS from_at, ${until}::timestamptz AS to_at,
             month_of(${from}::timestamptz) AS from_month, month_of(${until}::timestamptz) AS to_month
    ), posted AS (
      SELECT b.carrier_id, b.minutes, b.flights, b.landings, b.touch_and_goes, b.starts, b.aborted_take_offs
        FROM bucket b, span
       WHERE b.operator_id = ${operatorId}::int AND b.month > span.from_month AND (b.month < span.to_month OR ${at === null}::boolean)
         AND b.carrier_id = ANY (ARRAY(SELECT id FROM asked UNION SELECT airframe_id FROM asked))
      UNION ALL
      SELECT f.airframe_id, f.minutes, 1, 1 + f.touch_and_goes, f.touch_and_goes, f.starts, f.aborted_take_offs
        FROM flight f, span
       WHERE f.operator_id = ${operatorId}::int AND f.airframe_id = ANY (ARRAY(SELECT DISTINCT airframe_id FROM asked))
         AND f.voided_seq IS NULL AND f.landing_at > span.from_at AND f.landing_at <= span.to_at
         AND (f.landing_at < (span.from_month + interval '1 month') AT TIME ZONE 'UTC'
           OR NOT ${at === null}::boolean AND f.landing_at >= span.to_month AT TIME ZONE 'UTC')
      UNION ALL
      SELECT e.position_id, -e.minutes, -e.flights, -e.landings, -e.touch_and_goes, -e.starts, -e.aborted_take_offs
        FROM flight_exception e, span
       WHERE e.operator_id = ${operatorId}::int AND e.position_id = ANY (ARRAY(SELECT id FROM asked))
         AND e.voided_seq IS NULL AND e.landing_at > span.from_at AND e.landing_at <= span.to_at
         AND (e.landing_at < (span.from_month + interval '1 month') AT TIME ZONE 'UTC'
           OR NOT ${at === null}::boolean AND e.landing_at >= span.to_month AT TIME ZONE 'UTC')
    ), used AS (
      SELECT carrier_id, sum(minutes) AS minutes, sum(flights) AS flights, sum(landings) AS landings,
             sum(touch_and_goes) AS touch_and_goes, sum(starts) AS starts, sum(aborted_take_offs) AS aborted_take_offs
        FROM posted GROUP BY carrier_id
    )
    SELECT k.id AS "positionId", k.airframe_id AS "airframeId", k.day_zone AS "dayZone",
           coalesce(sum(u.minutes), 0)::bigint AS minutes, coalesce(sum(u.flights), 0)::bigint AS flights,
           coalesce(sum(u.landings), 0)::bigint AS landings, coalesce(sum(u.touch_and_goes), 0)::bigint AS touch_and_goes,
           coalesce(sum(u.starts), 0)::bigint AS starts, coalesce(sum(u.aborted_take_offs), 0)::bigint AS aborted_take_offs
      FROM asked k LEFT JOIN used u ON u.carrier_id IN (k.id, k.airframe_id)
     GROUP BY k.id, k.airframe_id, k.day_zone`;
  return new Map(
    rows.map((row) => [
      row.positionId,
      {
        carrierId: row.positionId,
        airframeId: row.airframeId,
        dayZone: row.dayZone,
        reading: zeroCounts,
        usedIn90Days: countsOf(row),
      },
    ]),
  );
}
