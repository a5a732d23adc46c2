import type { Counts } from '@strutbook/domain/usage/counts.js';
import type { Tx } from '../../platform/database/database.js';
import { countsOf } from '../usage/clock-readings.js';

/** A span of one position; the landing at its beginning is before it, the one at its end in it, as clocks read. */
interface PositionSpan {
  readonly positionId: string;
  readonly from: Date | null;
  readonly to: Date | null;
}

interface SpanSum {
  span: bigint;
  minutes: bigint;
  flights: bigint;
  landings: bigint;
  touch_and_goes: bigint;
  starts: bigint;
  aborted_take_offs: bigint;
}

const begins = (spans: readonly PositionSpan[]) =>
  spans.map(({ from }) => from?.toISOString() ?? '-infinity');
const ends = (spans: readonly PositionSpan[]) => spans.map(({ to }) => to?.toISOString() ?? 'infinity');

const byPlace = (rows: readonly SpanSum[]): ReadonlyMap<number, Counts> =>
  new Map(rows.map((row) => [Number(row.span) - 1, countsOf(row)]));

/** What was flown in a span. */
export interface FlownInSpan {
  readonly flown: Counts;
  readonly lastFlightId: string;
}

/** What the airframe flew in each span, from the flights themselves, by the place of the span in the list. */
export async function flownInSpans(
  tx: Tx,
  operatorId: number,
  airframeId: string,
  spans: readonly PositionSpan[],
): Promise<ReadonlyMap<number, FlownInSpan>> {
  const rows = await tx.$queryRaw<(SpanSum & { last_flight_id: string })[]>`
    SELECT s.span, (array_agg(f.id ORDER BY f.landing_at DESC))[1] AS last_flight_id, sum(f.minutes) AS minutes, count(*) AS flights, sum(1 + f.touch_and_goes) AS landings,
           sum(f.touch_and_goes) AS touch_and_goes, sum(f.starts) AS starts, sum(f.aborted_take_offs) AS aborted_take_offs
      FROM unnest(${begins(spans)}::timestamptz[], ${ends(spans)}::timestamptz[]) WITH ORDINALITY AS s (from_at, to_at, span)
      JOIN flight f ON f.operator_id = ${operatorId}::int AND f.airframe_id = ${airframeId}::uuid AND f.voided_seq IS NULL
       AND f.landing_at > s.from_at AND f.landing_at <= s.to_at
     GROUP BY s.span`;
  return new Map(
    rows.map((row) => [Number(row.span) - 1, { flown: countsOf(row), lastFlightId: row.last_flight_id }]),
  );
}

/** What did not run at each span's position in it, from what was recorded with the flights. */
export async function notRunningInSpans(
  tx: Tx,
  operatorId: number,
  spans: readonly PositionSpan[],
): Promise<ReadonlyMap<number, Counts>> {
  return byPlace(
    await tx.$queryRaw<SpanSum[]>`
    SELECT s.span, sum(e.minutes) AS minutes, sum(e.flights) AS flights, sum(e.landings) AS landings,
           sum(e.touch_and_goes) AS touch_and_goes, sum(e.starts) AS starts, sum(e.aborted_take_offs) AS aborted_take_offs
      FROM unnest(${spans.map(({ positionId }) => positionId)}::uuid[], ${begins(spans)}::timestamptz[],
                  ${ends(spans)}::timestamptz[]) WITH ORDINALITY AS s (position_id, from_at, to_at, span)
      JOIN flight_exception e ON e.operator_id = ${operatorId}::int AND e.position_id = s.position_id
       AND e.voided_seq IS NULL AND e.landing_at > s.from_at AND e.landing_at <= s.to_at
     GROUP BY s.span`,
  );
}

/** What was run on the ground at each span's position in it and counts, from the runs themselves. */
export async function runsInSpans(
  tx: Tx,
  operatorId: number,
  spans: readonly PositionSpan[],
): Promise<ReadonlyMap<number, Counts>> {
  return byPlace(
    await tx.$queryRaw<SpanSum[]>`
    SELECT s.span, sum(r.counted_minutes) AS minutes, 0 AS flights, 0 AS landings, 0 AS touch_and_goes,
           sum(r.starts) AS starts, sum(r.aborted_take_offs) AS aborted_take_offs
      FROM unnest(${spans.map(({ positionId }) => positionId)}::uuid[], ${begins(spans)}::timestamptz[],
                  ${ends(spans)}::timestamptz[]) WITH ORDINALITY AS s (position_id, from_at, to_at, span)
      JOIN ground_run r ON r.operator_id = ${operatorId}::int AND r.carrier_id = s.position_id
       AND r.voided_seq IS NULL AND r.ended_at > s.from_at AND r.ended_at <= s.to_at
     GROUP BY s.span`,
  );
}
