import type { Counts } from '@strutbook/domain/usage/counts.js';
import { zeroCounts } from '@strutbook/domain/usage/counts.js';
import type { Tx } from '../../platform/database/database.js';
import { Prisma } from '../../platform/database/generated/client.js';

/** A carrier's clock asked for at an instant; null asks for its present reading. */
export interface ClockAsk {
  readonly carrierId: string;
  readonly at: Date | null;
}

interface ReadingRow {
  carrier_id: string;
  at: Date | null;
  minutes: bigint;
  flights: bigint;
  landings: bigint;
  touch_and_goes: bigint;
  starts: bigint;
  aborted_take_offs: bigint;
}

/** Readings found, by carrier and instant. */
export type ClockReadings = (ask: ClockAsk) => Counts;

/**
 * The readings of clocks at instants, each asked once, in one statement a kind. An unknown carrier reads zero.
 */
export async function readClocks(
  tx: Tx,
  operatorId: number,
  asks: readonly ClockAsk[],
): Promise<ClockReadings> {
  const wanted = new Map(asks.map((ask) => [keyOf(ask), ask]));
  const past = [...wanted.values()].flatMap(({ carrierId, at }) => (at === null ? [] : [{ carrierId, at }]));
  const present = [...wanted.values()].filter((ask) => ask.at === null).map((ask) => ask.carrierId);
  const found = new Map<string, Counts>();
  if (past.length > 0) {
    const carriers = past.map((ask) => ask.carrierId);
    const instants = past.map((ask) => ask.at.toISOString());
    const rows = await tx.$queryRaw<ReadingRow[]>`
      SELECT ask.carrier_id, ask.at, r.minutes, r.flights, r.landings, r.touch_and_goes, r.starts, r.aborted_take_offs
        FROM unnest(${carriers}::uuid[], ${instants}::timestamptz[]) AS ask (carrier_id, at)
        CROSS JOIN LATERAL clock_at(${operatorId}::int, ask.carrier_id, ask.at) AS r`;
    for (const row of rows) found.set(keyOf({ carrierId: row.carrier_id, at: row.at }), countsOf(row));
  }
  if (present.length > 0) {
    const rows = await tx.$queryRaw<ReadingRow[]>`
      SELECT carrier_id, NULL::timestamptz AS at, minutes, flights, landings, touch_and_goes, starts, aborted_take_offs
        FROM clock_now WHERE operator_id = ${operatorId}::int AND carrier_id = ANY (${present}::uuid[])`;
    for (const row of rows) found.set(keyOf({ carrierId: row.carrier_id, at: null }), countsOf(row));
  }
  return (ask) => found.get(keyOf(ask)) ?? zeroCounts;
}

/**
 * The readings that the use of components at an instant (null: now) rests on, as JSON, from `seen`: each clock they ran by
 * then, and, of exposures that have ended since, at their beginning too.
 */
export function clocksOfSeen(operatorId: number, at: Date | null): Prisma.Sql {
  const readings =
    at === null
      ? Prisma.sql`SELECT *, NULL::timestamptz AS at FROM clock_now WHERE operator_id = ${operatorId}::int
          AND carrier_id = ANY (ARRAY(SELECT DISTINCT carrier_id FROM seen WHERE to_at IS NULL))`
      : Prisma.sql`SELECT * FROM (
            SELECT carrier_id, ${at}::timestamptz AS at FROM seen
             WHERE from_at < ${at}::timestamptz AND (to_at IS NULL OR to_at > ${at}::timestamptz)
            UNION
            SELECT carrier_id, from_at FROM seen WHERE from_at < ${at}::timestamptz AND to_at > ${at}::timestamptz) wanted
          CROSS JOIN LATERAL clock_at(${operatorId}::int, carrier_id, at)`;
  return Prisma.sql`(SELECT coalesce(json_agg(json_build_object('carrierId', carrier_id,
      'at', (extract(epoch FROM at) * 1000)::bigint, 'minutes', minutes, 'flights', flights, 'landings', landings,
      'touchAndGoes', touch_and_goes, 'starts', starts, 'abortedTakeOffs', aborted_take_offs)), '[]')
    FROM (${readings}) readings)`;
}

/** The JSON of `clocksOfSeen`. */
export type ReadingsJson = readonly (Counts & { readonly carrierId: string; readonly at: number | null })[];

/** The readings of such JSON; a clock that is not in it reads zero. Total. */
export function readingsOf(rows: ReadingsJson): ClockReadings {
  const found = new Map(
    rows.map(({ carrierId, at, ...counts }) => [
      keyOf({ carrierId, at: at === null ? null : new Date(at) }),
      counts,
    ]),
  );
  return (ask) => found.get(keyOf(ask)) ?? zeroCounts;
}

function keyOf({ carrierId, at }: ClockAsk): string {
  return `${carrierId} ${at === null ? 'now' : at.getTime()}`;
}

/** Database counts as the core's. */
export function countsOf(row: Omit<ReadingRow, 'carrier_id' | 'at'>): Counts {
  return {
    minutes: Number(row.minutes),
    flights: Number(row.flights),
    landings: Number(row.landings),
    touchAndGoes: Number(row.touch_and_goes),
    starts: Number(row.starts),
    abortedTakeOffs: Number(row.aborted_take_offs),
  };
}
