import { instant } from '@strutbook/domain/units/minutes.js';
import { canonical } from '@strutbook/journal/canonical.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant } from '../../platform/http/instants.js';
import type { RecordedRow } from './flights-file/canonical-row.js';

/** Writes a chunk of a batch's flights in one statement; each says its line of the file. PostgreSQL has the last word. */
export async function insertFlights(
  tx: Tx,
  operatorId: number,
  number: bigint,
  rows: readonly RecordedRow[],
): Promise<void> {
  const column = <T>(value: (row: RecordedRow) => T): T[] => rows.map(value);
  await tx.$executeRaw`
    INSERT INTO flight (operator_id, id, airframe_id, log_page, from_station, to_station, take_off_at, landing_at, minutes,
      touch_and_goes, starts, aborted_take_offs, typed, source, entry_row, recorded_seq)
    SELECT ${operatorId}::int, r.id, r.airframe_id, r.log_page, r.from_station, r.to_station, to_timestamp(r.take_off * 60),
           to_timestamp(r.landing * 60), r.landing - r.take_off, r.touch_and_goes, r.starts, r.aborted_take_offs, r.typed, 'import', r.line,
           ${number}::bigint
      FROM unnest(
        ${column((row) => row.id)}::uuid[], ${column((row) => row.airframeId)}::uuid[], ${column(({ flight }) => flight.logPage)}::text[],
        ${column(({ flight }) => flight.fromStation)}::text[], ${column(({ flight }) => flight.toStation)}::text[],
        ${column(({ flight }) => Number(flight.takeOffAt))}::int[], ${column(({ flight }) => Number(flight.landingAt))}::int[],
        ${column(({ flight }) => flight.touchAndGoes)}::int[], ${column(({ flight }) => flight.starts)}::int[],
        ${column(({ flight }) => flight.abortedTakeOffs)}::int[], ${column(({ flight }) => canonical(flight.typed))}::text[],
        ${column(({ flight }) => flight.line)}::int[]
      ) AS r (id, airframe_id, log_page, from_station, to_station, take_off, landing, touch_and_goes, starts, aborted_take_offs, typed, line)`;
}

/** Posts a batch to its airframes' clocks: months by one sum, heads by another. */
export async function postBatch(
  tx: Tx,
  operatorId: number,
  number: bigint,
  rows: readonly RecordedRow[],
): Promise<void> {
  const airframeIds = [...new Set(rows.map((row) => row.airframeId))];
  const landings = rows.map(({ flight }) => flight.landingAt);
  const textOf = (at: number): string => fromInstant(instant(at)).toISOString();
  // By airframe and landing, so that the log's own index finds the batch among the years.
  const from = textOf(landings.reduce((least, at) => Math.min(least, at), Number.MAX_SAFE_INTEGER));
  const to = textOf(landings.reduce((most, at) => Math.max(most, at), 0));
  await tx.$executeRaw`
    INSERT INTO bucket AS b (operator_id, carrier_id, month, minutes, flights, landings, touch_and_goes, starts, aborted_take_offs)
    SELECT ${operatorId}::int, airframe_id, month_of(landing_at), sum(minutes), count(*), sum(1 + touch_and_goes), sum(touch_and_goes),
           sum(starts), sum(aborted_take_offs)
      FROM flight
     WHERE operator_id = ${operatorId}::int AND airframe_id = ANY (${airframeIds}::uuid[]) AND recorded_seq = ${number}::bigint
       AND landing_at BETWEEN ${from}::timestamptz AND ${to}::timestamptz
     GROUP BY airframe_id, month_of(landing_at)
    ON CONFLICT (operator_id, carrier_id, month) DO UPDATE SET
      minutes = b.minutes + excluded.minutes, flights = b.flights + excluded.flights, landings = b.landings + excluded.landings,
      touch_and_goes = b.touch_and_goes + excluded.touch_and_goes, starts = b.starts + excluded.starts,
      aborted_take_offs = b.aborted_take_offs + excluded.aborted_take_offs`;
  await tx.$executeRaw`
    UPDATE carrier c SET minutes = c.minutes + s.minutes, flights = c.flights + s.flights, landings = c.landings + s.landings,
           touch_and_goes = c.touch_and_goes + s.touch_and_goes, starts = c.starts + s.starts,
           aborted_take_offs = c.aborted_take_offs + s.aborted_take_offs,
           last_landing_at = greatest(c.last_landing_at, s.last_landing_at), version = c.version + 1
      FROM (
        SELECT airframe_id, sum(minutes) AS minutes, count(*) AS flights, sum(1 + touch_and_goes) AS landings,
               sum(touch_and_goes) AS touch_and_goes, sum(starts) AS starts, sum(aborted_take_offs) AS aborted_take_offs,
               max(landing_at) AS last_landing_at
          FROM flight
         WHERE operator_id = ${operatorId}::int AND airframe_id = ANY (${airframeIds}::uuid[]) AND recorded_seq = ${number}::bigint
           AND landing_at BETWEEN ${from}::timestamptz AND ${to}::timestamptz
         GROUP BY airframe_id
      ) AS s
     WHERE c.operator_id = ${operatorId}::int AND c.id = s.airframe_id`;
}

/** The airframes on which some flight of the batch lies before a change recorded already. */
export async function lateAirframes(
  tx: Tx,
  operatorId: number,
  rows: readonly Pick<RecordedRow, 'airframeId' | 'flight'>[],
): Promise<string[]> {
  const first = new Map<string, number>();
  for (const { airframeId, flight } of rows)
    first.set(airframeId, Math.min(first.get(airframeId) ?? flight.landingAt, flight.landingAt));
  const found = await tx.$queryRaw<{ airframe_id: string }[]>`
    SELECT a.airframe_id FROM unnest(${[...first.keys()]}::uuid[], ${[...first.values()]}::int[]) AS a (airframe_id, landing)
      JOIN carrier c ON c.operator_id = ${operatorId}::int AND c.id = a.airframe_id
     WHERE c.last_boundary_at >= to_timestamp(a.landing * 60)`;
  return found.map((row) => row.airframe_id);
}
