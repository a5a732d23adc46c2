import { formatHours, instant } from '@strutbook/domain/units/minutes.js';
import { addCounts, type Counts, negateCounts } from '@strutbook/domain/usage/counts.js';
import { type CycleRule, cycleUnits } from '@strutbook/domain/usage/cycle-rule.js';
import type { Tx } from '../../platform/database/database.js';
import { instantToWire } from '../../platform/http/instants.js';
import type { Tellable } from './tellable.js';

/** A flight as the statement gives it, in the order of FLIGHT and what follows it; instants are minutes since 1970. */
type FlightRow = readonly [
  id: string,
  page: string,
  fromStation: string,
  toStation: string,
  takeOffAt: number,
  landingAt: number,
  minutes: number,
  touchAndGoes: number,
  starts: number,
  abortedTakeOffs: number,
  corrects: boolean,
  recordedSeq: number,
  recordedAt: number,
  by: string | null,
  hash: string,
  voided: { readonly reason: string | null; readonly at: number; readonly by: string | null } | null,
  cycleRuleId: string | null,
  pod: boolean,
  notRun: NotRun | null,
];

/** What a flight did not count: how it is told, and how much where the subject is a component. */
interface NotRun {
  readonly told: string;
  readonly counts: Counts | null;
}

const ROWS_AT_ONCE = 1000;

const minuteOf = (column: string): string => `floor(extract(epoch FROM ${column}) / 60)::bigint`;

// One text for each flight: a column of its own for each value would take longer to take in than to find.
const FLIGHT = `f.id, f.log_page, f.from_station, f.to_station, ${minuteOf('f.take_off_at')}, ${minuteOf('f.landing_at')}, f.minutes,
  f.touch_and_goes, f.starts, f.aborted_take_offs, f.replaces_id IS NOT NULL, f.recorded_seq, ${minuteOf('j.recorded_at')}, jp.full_name,
  left(encode(j.hash, 'hex'), 8), CASE WHEN v.number IS NOT NULL THEN
    json_build_object('reason', f.void_reason, 'at', ${minuteOf('v.recorded_at')}, 'by', vp.full_name) END`;

const ENTRIES = `
  JOIN journal_entry j ON j.operator_id = f.operator_id AND j.number = f.recorded_seq
  LEFT JOIN person jp ON jp.operator_id = j.operator_id AND jp.id = j.person_id
  LEFT JOIN journal_entry v ON v.operator_id = f.operator_id AND v.number = f.voided_seq
  LEFT JOIN person vp ON vp.operator_id = v.operator_id AND vp.id = v.person_id`;

/** Flights of an airframe, with the positions that did not run for all of each. */
const AIRFRAME_FLIGHTS = `SELECT json_build_array(${FLIGHT}, NULL, true,
    (SELECT json_build_object('told', string_agg('position ' || p.number || ' ' || e.kind || ' ' || e.minutes || ' min', ', ' ORDER BY p.number))
       FROM flight_exception e JOIN position p ON p.operator_id = e.operator_id AND p.id = e.position_id
      WHERE e.operator_id = f.operator_id AND e.flight_id = f.id
        AND e.voided_seq IS NOT DISTINCT FROM f.voided_seq HAVING count(*) > 0))::text AS flight
  FROM flight f ${ENTRIES}
 WHERE f.operator_id = $1::int AND f.airframe_id = $2::uuid
 ORDER BY f.landing_at, f.recorded_seq, f.id`;

/** Flights a component was on, by its exposures, less what its position did not run. */
const COMPONENT_FLIGHTS = `SELECT json_build_array(${FLIGHT}, x.cycle_rule_id, k.kind = 'pod',
    CASE WHEN e.id IS NOT NULL THEN json_build_object('told', e.kind || ' ' || e.minutes || ' min', 'counts', json_build_object(
      'minutes', e.minutes, 'flights', e.flights, 'landings', e.landings, 'touchAndGoes', e.touch_and_goes, 'starts', e.starts,
      'abortedTakeOffs', e.aborted_take_offs)) END)::text AS flight
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
 * The flights of a subject in the order of their landings, a thousand at a time, read through a cursor: one snapshot of
 * the records, and never more rows at hand.
 */
export async function* flightFacts(
  tx: Tx,
  operatorId: number,
  subject: { readonly kind: 'airframe' | 'component'; readonly id: string },
): AsyncGenerator<Tellable[]> {
  const rules = new Map(
    (await tx.cycleRule.findMany({ where: { operatorId } })).map((rule): [string, CycleRule] => [
      rule.id,
      rule,
    ]),
  );
  const sql = subject.kind === 'airframe' ? AIRFRAME_FLIGHTS : COMPONENT_FLIGHTS;
  await tx.$executeRawUnsafe(`DECLARE told_flights NO SCROLL CURSOR FOR ${sql}`, operatorId, subject.id);
  for (;;) {
    const rows = await tx.$queryRawUnsafe<{ flight: string }[]>(`FETCH ${ROWS_AT_ONCE} FROM told_flights`);
    yield rows.map(({ flight }) => told(JSON.parse(flight) as FlightRow, rules));
    if (rows.length < ROWS_AT_ONCE) break;
  }
  await tx.$executeRawUnsafe('CLOSE told_flights');
}

function told(row: FlightRow, rules: ReadonlyMap<string, CycleRule>): Tellable {
  const [
    id,
    page,
    from,
    to,
    takeOffAt,
    landingAt,
    minutes,
    touchAndGoes,
    starts,
    abortedTakeOffs,
    corrects,
    ...more
  ] = row;
  const [recordedSeq, recordedAt, by, hash, voided, cycleRuleId, pod, notRun] = more;
  const flown: Counts = {
    minutes,
    flights: 1,
    landings: 1 + touchAndGoes,
    touchAndGoes,
    starts,
    abortedTakeOffs,
  };
  const ran = notRun?.counts == null ? flown : addCounts(flown, negateCounts(notRun.counts));
  // An airframe, and a pod on its clock, counts one cycle a flight.
  const rule = cycleRuleId === null ? undefined : rules.get(cycleRuleId);
  const units = pod ? ran.flights : rule === undefined ? null : cycleUnits(ran, rule);
  return {
    title: 'Flight',
    detail: detailOf(row, { corrects, notRun }),
    placed: null,
    work: null,
    hash,
    fact: {
      id,
      at: instant(landingAt),
      precision: 'minute',
      journalNumber: recordedSeq,
      recordedAt: instant(recordedAt),
      by: by ?? 'the system',
      voided:
        voided === null
          ? null
          : {
              recordedAt: instant(voided.at),
              by: voided.by ?? 'the system',
              reason: voided.reason ?? 'no reason recorded',
            },
      event: {
        kind: 'flight',
        page,
        from,
        to,
        takeOffAt: instant(takeOffAt),
        minutes: ran.minutes,
        cycleUnits: units,
        cycleDenominator: pod ? 1 : (rule?.denominator ?? 1),
      },
    },
  };
}

function detailOf(
  [, page, from, to, takeOffAt, landingAt, minutes, touchAndGoes, , abortedTakeOffs]: FlightRow,
  { corrects, notRun }: { readonly corrects: boolean; readonly notRun: NotRun | null },
): string {
  const [takeOff, landing] = [instantToWire(instant(takeOffAt)), instantToWire(instant(landingAt))];
  const sameDay = takeOff.slice(0, 10) === landing.slice(0, 10);
  let text = `Log page ${page}, ${from} to ${to}, take-off ${sameDay ? takeOff.slice(11) : takeOff.replace('T', ' ')}`;
  if (touchAndGoes > 0) text += `, touch-and-goes ${touchAndGoes}`;
  if (abortedTakeOffs > 0) text += `, aborted take-offs ${abortedTakeOffs}`;
  if (notRun !== null) text += `, ${notRun.told.replaceAll('-', ' ')} of ${formatHours(minutes)} h`;
  return corrects ? `${text}, corrects an entry struck before` : text;
}
