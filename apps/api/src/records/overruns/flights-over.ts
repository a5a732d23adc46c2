import { daysBetween } from '@strutbook/domain/units/calendar.js';
import { floor, fraction, multiply } from '@strutbook/domain/units/fraction.js';
import type { Tx } from '../../platform/database/database.js';
import { dayToWire, fromInstant } from '../../platform/http/instants.js';
import { POD_RULE } from '../usage/use-facts.js';
import type { FlightAtEnd, FoundOverrun, PastOverrun } from './past-overrun.js';

interface Row extends FlightAtEnd {
  readonly flights: bigint;
  readonly isFirst: boolean;
}

interface Rule {
  readonly perFlight: number;
  readonly perLanding: number;
  readonly perTouchAndGo: number;
  readonly perStart: number;
  readonly perAbortedTakeOff: number;
  readonly denominator: number;
}

/** The overruns with their first and last flights; one in which no flight was beyond the limit is none. */
export async function withFlights(
  tx: Tx,
  operatorId: number,
  found: readonly FoundOverrun[],
): Promise<PastOverrun[]> {
  if (found.length === 0) return [];
  const rules = new Map<string, Rule>(
    [POD_RULE, ...(await tx.cycleRule.findMany({ where: { operatorId } }))].map((rule) => [rule.id, rule]),
  );
  const told: (PastOverrun & { readonly lastOf?: string })[] = [];
  for (const overrun of found) {
    const rows: Row[] = [];
    for (const part of overrun.parts)
      rows.push(...(await flightsOfPart(tx, operatorId, overrun.dimension, part, rules)));
    const first = rows.find((row) => row.isFirst);
    const last = rows.findLast((row) => !row.isFirst);
    if (first === undefined || last === undefined) continue;
    const { parts: _, by, ...rest } = overrun;
    told.push({
      ...rest,
      by: by ?? daysBeyond(overrun.limit.dueOn, last),
      ...{ first: atEnd(first), last: atEnd(last) },
      flights: rows.reduce((sum, row) => sum + (row.isFirst ? Number(row.flights) : 0), 0),
    });
  }
  return told.flatMap(({ lastOf, ...overrun }) => {
    const together = found.filter((each) => lastOf !== undefined && each.lastOf === lastOf).length;
    const others = told.filter((each) => lastOf !== undefined && each.lastOf === lastOf);
    const isLast = others.every((each) => each.first.landingAt <= overrun.first.landingAt);
    return lastOf === undefined || (others.length === together && isLast) ? [overrun] : [];
  });
}

function atEnd({ id, airframeId, registration, logPage, takeOffAt, landingAt }: Row): FlightAtEnd {
  return { id, airframeId, registration, logPage, takeOffAt, landingAt };
}

function daysBeyond(dueOn: string | null, last: FlightAtEnd): number {
  return dueOn === null ? 0 : daysBetween(dueOn, dayToWire(last.landingAt));
}

/** The first and the last flight of one part beyond its limit, each with how many there were; none where there were none. */
async function flightsOfPart(
  tx: Tx,
  operatorId: number,
  dimension: FoundOverrun['dimension'],
  part: FoundOverrun['parts'][number],
  rules: ReadonlyMap<string, Rule>,
): Promise<Row[]> {
  const rule = (part.cycleRuleId === null ? undefined : rules.get(part.cycleRuleId)) ?? POD_RULE;
  const isInCycles = dimension === 'cycles';
  const w = dimension === 'minutes' ? 1 : 0;
  const weights = isInCycles
    ? [rule.perFlight, rule.perLanding, rule.perTouchAndGo, rule.perStart, rule.perAbortedTakeOff]
    : [dimension === 'days' ? 1 : 0, 0, 0, 0, 0];
  const [f = 0, l = 0, t = 0, s = 0, a = 0] = weights;
  const allowance = floor(multiply(part.allowance, fraction(isInCycles ? rule.denominator : 1)));
  const from = fromInstant(part.from);
  const to = part.to === null ? null : fromInstant(part.to);
  return tx.$queryRaw<Row[]>`
    WITH flown AS (
      SELECT f.id, f.airframe_id, f.log_page, f.take_off_at, f.landing_at,
             ${w}::bigint * (f.minutes - coalesce(e.minutes, 0)) + ${f}::bigint * (1 - coalesce(e.flights, 0))
               + ${l}::bigint * (1 + f.touch_and_goes - coalesce(e.landings, 0))
               + ${t}::bigint * (f.touch_and_goes - coalesce(e.touch_and_goes, 0))
               + ${s}::bigint * (f.starts - coalesce(e.starts, 0))
               + ${a}::bigint * (f.aborted_take_offs - coalesce(e.aborted_take_offs, 0)) AS amount
        FROM carrier c
        JOIN flight f ON f.operator_id = c.operator_id AND f.airframe_id = c.airframe_id AND f.voided_seq IS NULL
         AND f.landing_at > ${from}::timestamptz AND (${to}::timestamptz IS NULL OR f.landing_at <= ${to}::timestamptz)
        LEFT JOIN flight_exception e ON e.operator_id = f.operator_id AND e.flight_id = f.id
         AND e.position_id = c.position_id AND e.voided_seq IS NULL
       WHERE c.operator_id = ${operatorId}::int AND c.id = ${part.clock}::uuid
         AND (${dimension !== 'days'}::boolean OR f.take_off_at >= ${from}::timestamptz)
    ), beyond AS (
      SELECT *, count(*) OVER () AS flights FROM (
        SELECT *, sum(amount) OVER (ORDER BY landing_at, id) AS run FROM flown WHERE amount > 0) counted
       WHERE run > ${allowance}::bigint
    )
    SELECT b.id, b.airframe_id AS "airframeId", r.registration, b.log_page AS "logPage", b.take_off_at AS "takeOffAt",
           b.landing_at AS "landingAt", b.flights, b.is_first AS "isFirst"
      FROM ((SELECT *, true AS is_first FROM beyond ORDER BY landing_at, id LIMIT 1)
            UNION ALL (SELECT *, false FROM beyond ORDER BY landing_at DESC, id DESC LIMIT 1)) b
      JOIN airframe r ON r.operator_id = ${operatorId}::int AND r.id = b.airframe_id
     ORDER BY b.landing_at, b.is_first DESC`;
}
