import { formatHours } from '@strutbook/domain/units/minutes.js';
import { addCounts, type Counts, negateCounts } from '@strutbook/domain/usage/counts.js';
import { type CycleRule, cycleUnits } from '@strutbook/domain/usage/cycle-rule.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant, toWire } from '../../platform/http/instants.js';
import type { Tellable } from './tellable.js';

interface FlightRow {
  id: string;
  page: string;
  fromStation: string;
  toStation: string;
  takeOffAt: Date;
  landingAt: Date;
  minutes: number;
  touchAndGoes: number;
  starts: number;
  abortedTakeOffs: number;
  corrects: boolean;
  recordedSeq: bigint;
  recordedAt: Date;
  by: string | null;
  hash: string;
  voidReason: string | null;
  voidedAt: Date | null;
  voidedBy: string | null;
  cycleRuleId: string | null;
  pod: boolean;
  notRun: string | null;
  offMinutes: number;
  offFlights: number;
  offLandings: number;
  offTouchAndGoes: number;
  offStarts: number;
  offAbortedTakeOffs: number;
}

const ROWS_AT_ONCE = 1000;

const FLIGHT = `f.id, f.log_page AS page, f.from_station AS "fromStation", f.to_station AS "toStation",
  f.take_off_at AS "takeOffAt", f.landing_at AS "landingAt", f.minutes, f.touch_and_goes AS "touchAndGoes", f.starts,
  f.aborted_take_offs AS "abortedTakeOffs", f.replaces_id IS NOT NULL AS corrects, f.recorded_seq AS "recordedSeq",
  j.recorded_at AS "recordedAt", jp.full_name AS by, left(encode(j.hash, 'hex'), 8) AS hash,
  f.void_reason AS "voidReason", v.recorded_at AS "voidedAt", vp.full_name AS "voidedBy"`;

const ENTRIES = `
  JOIN journal_entry j ON j.operator_id = f.operator_id AND j.number = f.recorded_seq
  LEFT JOIN person jp ON jp.operator_id = j.operator_id AND jp.id = j.person_id
  LEFT JOIN journal_entry v ON v.operator_id = f.operator_id AND v.number = f.voided_seq
  LEFT JOIN person vp ON vp.operator_id = v.operator_id AND vp.id = v.person_id`;

/** Flights of an airframe, with the positions that did not run for all of each. */
const AIRFRAME_FLIGHTS = `SELECT ${FLIGHT}, NULL::uuid AS "cycleRuleId", true AS pod,
    (SELECT string_agg('position ' || p.number || ' ' || e.kind || ' ' || e.minutes || ' min', ', ' ORDER BY p.number)
       FROM flight_exception e JOIN position p ON p.operator_id = e.operator_id AND p.id = e.position_id
      WHERE e.operator_id = f.operator_id AND e.flight_id = f.id
        AND e.voided_seq IS NOT DISTINCT FROM f.voided_seq) AS "notRun",
    0 AS "offMinutes", 0 AS "offFlights", 0 AS "offLandings", 0 AS "offTouchAndGoes", 0 AS "offStarts", 0 AS "offAbortedTakeOffs"
  FROM flight f ${ENTRIES}
 WHERE f.operator_id = $1::int AND f.airframe_id = $2::uuid
 ORDER BY f.landing_at, f.recorded_seq, f.id`;

/** Flights a component was on, by its exposures, less what its position did not run. */
const COMPONENT_FLIGHTS = `SELECT ${FLIGHT}, x.cycle_rule_id AS "cycleRuleId", k.kind = 'pod' AS pod,
    CASE WHEN e.id IS NULL THEN NULL ELSE e.kind || ' ' || e.minutes || ' min' END AS "notRun",
    coalesce(e.minutes, 0) AS "offMinutes", coalesce(e.flights, 0) AS "offFlights", coalesce(e.landings, 0) AS "offLandings",
    coalesce(e.touch_and_goes, 0) AS "offTouchAndGoes", coalesce(e.starts, 0) AS "offStarts",
    coalesce(e.aborted_take_offs, 0) AS "offAbortedTakeOffs"
  FROM exposure x
  JOIN component k ON k.operator_id = x.operator_id AND k.id = x.component_id
  JOIN carrier c ON c.operator_id = x.operator_id AND c.id = x.carrier_id
  JOIN flight f ON f.operator_id = c.operator_id AND f.airframe_id = c.airframe_id AND f.landing_at > x.from_at
   AND (x.to_at IS NULL OR f.landing_at <= x.to_at) ${ENTRIES}
  LEFT JOIN flight_exception e ON e.operator_id = f.operator_id AND e.flight_id = f.id AND e.position_id = c.position_id
   AND e.voided_seq IS NOT DISTINCT FROM f.voided_seq
 WHERE x.operator_id = $1::int AND x.component_id = $2::uuid
 ORDER BY f.landing_at, f.recorded_seq, f.id`;

/**
 * The flights of a subject in the order of their landings, read through a cursor: one snapshot of the records, and
 * never more than some hundred rows at hand.
 */
export async function* flightFacts(
  tx: Tx,
  operatorId: number,
  subject: { readonly kind: 'airframe' | 'component'; readonly id: string },
): AsyncGenerator<Tellable> {
  const rules = new Map(
    (await tx.cycleRule.findMany({ where: { operatorId } })).map((rule): [string, CycleRule] => [
      rule.id,
      rule,
    ]),
  );
  const sql = subject.kind === 'airframe' ? AIRFRAME_FLIGHTS : COMPONENT_FLIGHTS;
  await tx.$executeRawUnsafe(`DECLARE told_flights NO SCROLL CURSOR FOR ${sql}`, operatorId, subject.id);
  for (;;) {
    const rows = await tx.$queryRawUnsafe<FlightRow[]>(`FETCH ${ROWS_AT_ONCE} FROM told_flights`);
    for (const row of rows) yield told(row, rules);
    if (rows.length < ROWS_AT_ONCE) break;
  }
  await tx.$executeRawUnsafe('CLOSE told_flights');
}

function told(row: FlightRow, rules: ReadonlyMap<string, CycleRule>): Tellable {
  const ran = ranOf(row);
  // An airframe, and a pod on its clock, counts one cycle a flight.
  const rule = row.cycleRuleId === null ? undefined : rules.get(row.cycleRuleId);
  const units = row.pod ? ran.flights : rule === undefined ? null : cycleUnits(ran, rule);
  return {
    title: 'Flight',
    detail: detailOf(row),
    placed: null,
    work: null,
    hash: row.hash,
    fact: {
      id: row.id,
      at: toInstant(row.landingAt),
      precision: 'minute',
      journalNumber: Number(row.recordedSeq),
      recordedAt: toInstant(row.recordedAt),
      by: row.by ?? 'the system',
      voided:
        row.voidedAt === null
          ? null
          : {
              recordedAt: toInstant(row.voidedAt),
              by: row.voidedBy ?? 'the system',
              reason: row.voidReason ?? 'no reason recorded',
            },
      event: {
        kind: 'flight',
        page: row.page,
        from: row.fromStation,
        to: row.toStation,
        takeOffAt: toInstant(row.takeOffAt),
        minutes: ran.minutes,
        cycleUnits: units,
        cycleDenominator: row.pod ? 1 : (rule?.denominator ?? 1),
      },
    },
  };
}

function ranOf(row: FlightRow): Counts {
  const flown: Counts = {
    minutes: row.minutes,
    flights: 1,
    landings: 1 + row.touchAndGoes,
    touchAndGoes: row.touchAndGoes,
    starts: row.starts,
    abortedTakeOffs: row.abortedTakeOffs,
  };
  const notRun: Counts = {
    minutes: row.offMinutes,
    flights: row.offFlights,
    landings: row.offLandings,
    touchAndGoes: row.offTouchAndGoes,
    starts: row.offStarts,
    abortedTakeOffs: row.offAbortedTakeOffs,
  };
  return addCounts(flown, negateCounts(notRun));
}

function detailOf(row: FlightRow): string {
  const [takeOff, landing] = [toWire(row.takeOffAt), toWire(row.landingAt)];
  const sameDay = takeOff.slice(0, 10) === landing.slice(0, 10);
  return [
    `Log page ${row.page}, ${row.fromStation} to ${row.toStation}`,
    `take-off ${sameDay ? takeOff.slice(11) : takeOff.replace('T', ' ')}`,
    ...(row.touchAndGoes > 0 ? [`touch-and-goes ${row.touchAndGoes}`] : []),
    ...(row.abortedTakeOffs > 0 ? [`aborted take-offs ${row.abortedTakeOffs}`] : []),
    ...(row.notRun === null ? [] : [`${row.notRun.replaceAll('-', ' ')} of ${formatHours(row.minutes)} h`]),
    ...(row.corrects ? ['corrects an entry struck before'] : []),
  ].join(', ');
}
