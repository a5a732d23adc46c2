import { type Instant, instant } from '@strutbook/domain/units/minutes.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant, toInstant } from '../../platform/http/instants.js';
import type { AirframeOnRecord, RecordedFlight, StayBoundary } from './flights-file/check-rows.js';
import type { FileFlight } from './flights-file/file-flight.js';

interface FlightRow {
  airframe_id: string;
  log_page: string;
  from_station: string;
  to_station: string;
  take_off_at: Date;
  landing_at: Date;
  touch_and_goes: number;
  starts: number;
  aborted_take_offs: number;
}

interface BoundaryRow {
  airframe_id: string;
  at: Date;
  serial_number: string;
  which: 'installed' | 'removed';
}

/** What is on record about the airframes a file names, by registration, in a constant number of statements. */
export async function recordsOfFile(
  tx: Tx,
  operatorId: number,
  flights: readonly FileFlight[],
): Promise<ReadonlyMap<string, AirframeOnRecord>> {
  const registrations = [...new Set(flights.map((flight) => flight.registration))];
  const airframes = await tx.airframe.findMany({
    where: { operatorId, registration: { in: registrations } },
    orderBy: { id: 'asc' },
  });
  if (airframes.length === 0) return new Map();
  const ids = airframes.map((airframe) => airframe.id);
  const span = spanOf(flights);
  const openings = await tx.opening.findMany({
    where: { operatorId, airframeId: { in: ids }, voidedSeq: null },
    orderBy: { at: 'desc' },
  });
  const near = await flightsNear(tx, operatorId, ids, span);
  const idOf = new Map(airframes.map((airframe) => [airframe.registration, airframe.id]));
  const onPages = await flightsOnPages(tx, operatorId, flights, idOf);
  const boundaries = await boundariesNear(tx, operatorId, span);
  return new Map(
    airframes.map(({ id, registration, manufacturedOn }): [string, AirframeOnRecord] => {
      const opening = openings.find((row) => row.airframeId === id);
      return [
        registration,
        {
          airframeId: id,
          registration,
          openingAt: opening === undefined ? null : toInstant(opening.at),
          manufacturedAt: manufacturedOn === null ? null : toInstant(manufacturedOn),
          flights: near.get(id) ?? [],
          pages: new Map((onPages.get(id) ?? []).map((flight) => [flight.logPage, flight])),
          boundaries: boundaries.get(id) ?? [],
        },
      ];
    }),
  );
}

interface Span {
  readonly from: Instant;
  readonly to: Instant;
}

function spanOf(flights: readonly FileFlight[]): Span {
  const from = flights.reduce((least, flight) => Math.min(least, flight.takeOffAt), Number.MAX_SAFE_INTEGER);
  const to = flights.reduce((most, flight) => Math.max(most, flight.landingAt), 0);
  return { from: instant(from), to: instant(to) };
}

async function flightsNear(tx: Tx, operatorId: number, airframeIds: readonly string[], { from, to }: Span) {
  const rows = await tx.$queryRaw<FlightRow[]>`
    SELECT airframe_id, log_page, from_station, to_station, take_off_at, landing_at, touch_and_goes, starts, aborted_take_offs
      FROM flight
     WHERE operator_id = ${operatorId}::int AND airframe_id = ANY (${[...airframeIds]}::uuid[]) AND voided_seq IS NULL
       AND landing_at > ${fromInstant(from).toISOString()}::timestamptz AND take_off_at < ${fromInstant(to).toISOString()}::timestamptz
     ORDER BY airframe_id, take_off_at`;
  return grouped(rows, recordedFlight);
}

async function flightsOnPages(
  tx: Tx,
  operatorId: number,
  flights: readonly FileFlight[],
  idOf: ReadonlyMap<string, string>,
) {
  const asked = flights.flatMap(({ registration, logPage }) => {
    const id = idOf.get(registration);
    return id === undefined ? [] : [{ id, logPage }];
  });
  const rows = await tx.$queryRaw<FlightRow[]>`
    SELECT f.airframe_id, f.log_page, f.from_station, f.to_station, f.take_off_at, f.landing_at, f.touch_and_goes, f.starts,
           f.aborted_take_offs
      FROM unnest(${asked.map(({ id }) => id)}::uuid[], ${asked.map(({ logPage }) => logPage)}::text[]) AS asked (airframe_id, log_page)
      JOIN flight f ON f.operator_id = ${operatorId}::int AND f.airframe_id = asked.airframe_id AND f.log_page = asked.log_page
       AND f.voided_seq IS NULL`;
  return grouped(rows, recordedFlight);
}

async function boundariesNear(tx: Tx, operatorId: number, { from, to }: Span) {
  const [after, before] = [fromInstant(from).toISOString(), fromInstant(to).toISOString()];
  const rows = await tx.$queryRaw<(Omit<BoundaryRow, 'airframe_id'> & { airframe_id: string | null })[]>`
    SELECT b.airframe_id, b.at, b.which, c.serial_number
      FROM (
        SELECT component_id, from_at AS at, 'installed' AS which, airframe_of_slot(operator_id, slot_id, from_at, false) AS airframe_id
          FROM stay WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL AND slot_id IS NOT NULL
           AND from_at > ${after}::timestamptz AND from_at < ${before}::timestamptz
        UNION ALL
        SELECT component_id, to_at, 'removed', airframe_of_slot(operator_id, slot_id, to_at, true)
          FROM stay WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL AND slot_id IS NOT NULL
           AND to_at > ${after}::timestamptz AND to_at < ${before}::timestamptz
      ) AS b
      JOIN component c ON c.operator_id = ${operatorId}::int AND c.id = b.component_id
     ORDER BY b.at`;
  const onAirframes = rows.flatMap((row) =>
    row.airframe_id === null ? [] : [{ ...row, airframe_id: row.airframe_id }],
  );
  return grouped(
    onAirframes,
    ({ at, serial_number: serialNumber, which }): StayBoundary => ({
      at: toInstant(at),
      serialNumber,
      which,
    }),
  );
}

function recordedFlight(row: FlightRow): RecordedFlight {
  return {
    logPage: row.log_page,
    fromStation: row.from_station,
    toStation: row.to_station,
    takeOffAt: toInstant(row.take_off_at),
    landingAt: toInstant(row.landing_at),
    touchAndGoes: row.touch_and_goes,
    starts: row.starts,
    abortedTakeOffs: row.aborted_take_offs,
  };
}

function grouped<Row extends { airframe_id: string }, T>(
  rows: readonly Row[],
  map: (row: Row) => T,
): ReadonlyMap<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const group = groups.get(row.airframe_id);
    if (group === undefined) groups.set(row.airframe_id, [map(row)]);
    else group.push(map(row));
  }
  return groups;
}
