import type { Tx } from '../../platform/database/database.js';
import { Prisma } from '../../platform/database/generated/client.js';

/** What one flight adds to a count: `ofMinutes` for each minute flown, the others for each of what is counted. */
export interface Weights {
  readonly ofMinutes: number;
  readonly perFlight: number;
  readonly perLanding: number;
  readonly perTouchAndGo: number;
  readonly perStart: number;
  readonly perAbortedTakeOff: number;
}

/** Flights of a clock that landed after `since` up to `until` (null: now). */
export interface Line extends Weights {
  readonly clock: string;
  readonly since: Date;
  readonly until: Date | null;
  /** Whether the flight that was in the air at `since` is not of them. */
  readonly fromTakeOff: boolean;
}

/** Flights of a line are beyond once more than `allowance` was flown in it. */
export interface BeyondAsk {
  readonly line: Line;
  readonly allowance: number;
}

/** The ends of what was flown beyond, and how many flights. */
export interface Beyond {
  readonly firstId: string;
  readonly lastId: string;
  readonly flights: number;
}

/**
 * What was flown beyond for each of `asks`, undefined where nothing was, in one statement. The months tell in which of
 * them it went beyond, and how often was flown after it: flights are read of that month, of the first and of the last. The
 * parts of an engine have most of their lines in common, and each line is looked at once.
 */
export async function flightsBeyond(
  tx: Tx,
  operatorId: number,
  asks: readonly BeyondAsk[],
): Promise<readonly (Beyond | undefined)[]> {
  if (asks.length === 0) return [];
  const lines = [...new Set(asks.map(({ line }) => JSON.stringify(line)))];
  const numbers = new Map(lines.map((line, number) => [line, number]));
  const numbered = asks.map(({ line }) => numbers.get(JSON.stringify(line)) ?? -1);
  const rows = await tx.$queryRaw<{ n: number; firstId: string; lastId: string; flights: bigint }[]>`
    WITH ${linesOf(operatorId, lines)}, ${TAKEN_OFF}, ${MONTHS}
    SELECT ask.n::int, first.id AS "firstId", last.id AS "lastId", (first.flights + k.later)::bigint AS flights
      FROM unnest(${numbered}::int[], ${asks.map(({ allowance }) => String(allowance))}::bigint[])
        WITH ORDINALITY AS ask (line, allowance, n)
      JOIN line p ON p.line = ask.line
      CROSS JOIN LATERAL (
        SELECT month, run - amount AS before, later FROM months
         WHERE line = ask.line AND run > ask.allowance ORDER BY month LIMIT 1) AS k
      CROSS JOIN LATERAL (
        SELECT id, landing_at, count(*) OVER () AS flights FROM (
          SELECT id, landing_at, k.before + sum(amount) OVER (ORDER BY landing_at, id) AS run
            FROM (${FLOWN} AND ${landedIn(Prisma.sql`k.month`)}) flown WHERE amount > 0) counted
         WHERE run > ask.allowance ORDER BY landing_at, id LIMIT 1) AS first
      CROSS JOIN LATERAL (
        SELECT id FROM (${FLOWN} AND f.landing_at >= first.landing_at) flown
         WHERE amount > 0 ORDER BY landing_at DESC, id DESC LIMIT 1) AS last`;
  const found = new Map(rows.map(({ n, flights, ...ends }) => [n, { ...ends, flights: Number(flights) }]));
  return asks.map((_, index) => found.get(index + 1));
}

/** The lines as rows, each with the airframe and position of its clock and the months it begins and ends in. */
function linesOf(operatorId: number, lines: readonly string[]): Prisma.Sql {
  return Prisma.sql`told AS MATERIALIZED (
      SELECT (l.line - 1)::int AS line, p.*, c.operator_id, c.airframe_id, c.position_id,
             CASE WHEN p."fromTakeOff" THEN (
               SELECT CASE WHEN f.take_off_at < p.since THEN f.landing_at END FROM flight f
                WHERE f.operator_id = c.operator_id AND f.airframe_id = c.airframe_id AND f.voided_seq IS NULL
                  AND f.landing_at > p.since ORDER BY f.landing_at LIMIT 1) END AS landed
        FROM unnest(${lines}::text[]) WITH ORDINALITY AS l (told, line)
        CROSS JOIN LATERAL jsonb_to_record(l.told::jsonb) AS p (clock uuid, since timestamptz, until timestamptz,
          "fromTakeOff" boolean, "ofMinutes" bigint, "perFlight" bigint, "perLanding" bigint,
          "perTouchAndGo" bigint, "perStart" bigint, "perAbortedTakeOff" bigint)
        JOIN carrier c ON c.operator_id = ${operatorId}::int AND c.id = p.clock
    ), line AS MATERIALIZED (
      SELECT line, operator_id, airframe_id, position_id, "ofMinutes", "perFlight", "perLanding",
             "perTouchAndGo", "perStart", "perAbortedTakeOff", coalesce(landed, since) AS since,
             coalesce(until, 'infinity') AS until, month_of(coalesce(landed, since)) AS first_month,
             month_of(coalesce(until, 'infinity')) AS last_month
        FROM told)`;
}

/** What `of` counts, weighed as `p` asks; an exception counts the flights and landings it takes. */
function weighed(minutes: Prisma.Sql, flights: Prisma.Sql, landings: Prisma.Sql, of: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`(p."ofMinutes" * ${minutes} + p."perFlight" * ${flights} + p."perLanding" * ${landings}
    + p."perTouchAndGo" * ${of}.touch_and_goes + p."perStart" * ${of}.starts
    + p."perAbortedTakeOff" * ${of}.aborted_take_offs)`;
}

const OF_FLIGHT = weighed(
  Prisma.sql`f.minutes`,
  Prisma.sql`1`,
  Prisma.sql`(1 + f.touch_and_goes)`,
  Prisma.sql`f`,
);
const OF_EXCEPTION = weighed(
  Prisma.sql`e.minutes`,
  Prisma.sql`e.flights`,
  Prisma.sql`e.landings`,
  Prisma.sql`e`,
);
const OF_MONTH = weighed(Prisma.sql`b.minutes`, Prisma.sql`b.flights`, Prisma.sql`b.landings`, Prisma.sql`b`);

/** The flights that `p` asks for, with what each adds to it. */
const FLOWN = Prisma.sql`
  SELECT f.id, f.landing_at, ${OF_FLIGHT} - coalesce(${OF_EXCEPTION}, 0) AS amount
    FROM flight f
    LEFT JOIN flight_exception e ON e.operator_id = f.operator_id AND e.flight_id = f.id
     AND e.position_id = p.position_id AND e.voided_seq IS NULL
   WHERE f.operator_id = p.operator_id AND f.airframe_id = p.airframe_id AND f.voided_seq IS NULL
     AND f.landing_at > p.since AND f.landing_at <= p.until`;

function landedIn(month: Prisma.Sql): Prisma.Sql {
  return Prisma.sql`f.landing_at >= ${month}::timestamp AT TIME ZONE 'UTC'
    AND f.landing_at < (${month} + interval '1 month') AT TIME ZONE 'UTC'`;
}

/** What exceptions of the position take from each month: of the counts, and flights of which nothing is left. */
const TAKEN_OFF = Prisma.sql`taken_off AS MATERIALIZED (
  SELECT p.line, month_of(e.landing_at) AS month, sum(least(${OF_FLIGHT}, ${OF_EXCEPTION})) AS amount,
         count(*) FILTER (WHERE ${OF_FLIGHT} <= ${OF_EXCEPTION}) AS flights
    FROM line p
    JOIN flight_exception e ON e.operator_id = p.operator_id AND e.position_id = p.position_id
     AND e.voided_seq IS NULL AND e.landing_at > p.since AND e.landing_at <= p.until
    JOIN flight f ON f.operator_id = e.operator_id AND f.id = e.flight_id
   GROUP BY p.line, month_of(e.landing_at))`;

/**
 * What was flown in each month, from the beginning to its end, and how often after it. An airframe's months hold its flights alone, so what a
 * position ran on the ground is in none of them. Flights are read where a month is not whole, and by a rule that may count
 * nothing of a flight: only they tell how many counted.
 */
const MONTHS = Prisma.sql`months AS MATERIALIZED (
  SELECT p.line, b.month, x.amount, sum(x.amount) OVER past AS run,
         sum(x.flights) OVER (PARTITION BY p.line) - sum(x.flights) OVER past AS later
    FROM line p
    JOIN bucket b ON b.operator_id = p.operator_id AND b.carrier_id = p.airframe_id
     AND b.month BETWEEN p.first_month AND p.last_month
    LEFT JOIN taken_off o ON o.line = p.line AND o.month = b.month
    CROSS JOIN LATERAL (SELECT b.month IN (p.first_month, p.last_month)
      OR p."ofMinutes" + p."perFlight" + p."perLanding" = 0 AS by_flights) how
    CROSS JOIN LATERAL (
      SELECT ${OF_MONTH} - coalesce(o.amount, 0) AS amount, b.flights - coalesce(o.flights, 0) AS flights
       WHERE NOT how.by_flights
      UNION ALL
      SELECT coalesce(sum(amount), 0), count(*) FROM (${FLOWN} AND ${landedIn(Prisma.sql`b.month`)}) flown
       WHERE how.by_flights AND amount > 0 HAVING how.by_flights) x
  WINDOW past AS (PARTITION BY p.line ORDER BY b.month))`;
