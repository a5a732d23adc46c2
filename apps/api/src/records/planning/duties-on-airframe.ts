import type { CounterUnit, DutyDimension, DutyToCome } from '@strutbook/domain/due/readiness.js';
import type { Tx } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';
import { reasonInWords } from '../due-points/windows.js';
import { groupRows } from '../usage/group-rows.js';

/** What is left of one dimension, in whole minutes, cycles or days, as it is told. */
export interface DutyLeft {
  readonly dimension: 'minutes' | 'cycles' | 'days' | 'months';
  readonly remaining: number;
  /** The same until the end of what is granted past the due. */
  readonly untilLatest: number;
  /** The last day it is good through; null for minutes and cycles. */
  readonly dueOn: string | null;
}

/** A life or a requirement of something on the airframe, with what flights use up of it. */
export interface DutyOnAirframe extends DutyToCome {
  readonly kind: 'life-limit' | 'counters' | 'requirement';
  /** Code and title of a requirement, or what a life is of. */
  readonly name: string;
  /** What it is of, in words: a component with its serial number, the airframe or a position. */
  readonly of: string;
  readonly requirementId: string | null;
  /** The component, position or airframe it is of. */
  readonly subjectId: string;
  readonly componentId: string | null;
  readonly engineSerial: string | null;
  readonly positionNumber: number | null;
  /** Why something is not known; null when all is. */
  readonly reason: string | null;
  readonly left: readonly DutyLeft[];
}

interface Row {
  id: string;
  kind: DutyOnAirframe['kind'];
  componentId: string | null;
  subjectId: string;
  requirementId: string | null;
  verdict: string;
  dimension: string;
  reason: string | null;
  dueAt: bigint | null;
  latestAt: bigint | null;
  dueOn: Date | null;
  latestOn: Date | null;
  bound: boolean;
  carrierKind: string | null;
  reading: bigint;
  ruleId: string | null;
  perFlight: number | null;
  perLanding: number | null;
  perTouchAndGo: number | null;
  perStart: number | null;
  perAbortedTakeOff: number | null;
  denominator: number;
  combine: 'first' | 'last' | null;
  code: string | null;
  title: string | null;
  description: string | null;
  serialNumber: string | null;
  engineSerial: string | null;
  positionNumber: number | null;
}

/** Everything that can fall due on an airframe: of itself, its positions and these components, which hang on it. One statement. */
export async function dutiesOnAirframe(
  tx: Tx,
  operatorId: number,
  { airframeId, componentIds }: { readonly airframeId: string; readonly componentIds: readonly string[] },
  today: string,
): Promise<DutyOnAirframe[]> {
  const rows = await tx.$queryRaw<Row[]>`/* planned once */
    SELECT p.id, p.kind, p.component_id AS "componentId", coalesce(p.component_id, p.position_id, p.airframe_id) AS "subjectId",
           p.requirement_id AS "requirementId", p.verdict, p.dimension, p.reason, p.due_at AS "dueAt", p.due_on AS "dueOn",
           p.latest_at AS "latestAt", p.latest_on AS "latestOn", p.bound,
           n.kind AS "carrierKind", r.id AS "ruleId", r.per_flight AS "perFlight", r.per_landing AS "perLanding",
           r.per_touch_and_go AS "perTouchAndGo", r.per_start AS "perStart", r.per_aborted_take_off AS "perAbortedTakeOff",
           coalesce(r.denominator, 1) AS denominator, q.combine, q.code, q.title, k.description, k.serial_number AS "serialNumber",
           e.serial_number AS "engineSerial", coalesce(o.number, h.number) AS "positionNumber",
           coalesce(CASE p.dimension WHEN 'minutes' THEN n.minutes WHEN 'flights' THEN n.flights
             WHEN 'cycles' THEN r.per_flight * n.flights + r.per_landing * n.landings + r.per_touch_and_go * n.touch_and_goes
               + r.per_start * n.starts + r.per_aborted_take_off * n.aborted_take_offs END, 0)::bigint AS reading
      FROM due_point p
      LEFT JOIN clock_now n ON n.operator_id = p.operator_id AND n.carrier_id = p.carrier_id
      LEFT JOIN cycle_rule r ON r.operator_id = p.operator_id AND r.id = p.cycle_rule_id
      LEFT JOIN requirement q ON q.operator_id = p.operator_id AND q.id = p.requirement_id
      LEFT JOIN component k ON k.operator_id = p.operator_id AND k.id = p.component_id
      LEFT JOIN component e ON e.operator_id = p.operator_id AND e.id = p.engine_id
      LEFT JOIN position o ON o.operator_id = p.operator_id AND o.id = coalesce(p.position_id, n.position_id)
      LEFT JOIN LATERAL (
        SELECT w.number FROM stay st
          JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id
          JOIN position w ON w.operator_id = s.operator_id AND w.id = s.position_id
         WHERE st.operator_id = p.operator_id AND st.component_id = p.engine_id AND st.voided_seq IS NULL AND st.to_at IS NULL
         LIMIT 1) AS h ON true
     WHERE p.operator_id = ${operatorId}::int
       AND (p.component_id = ANY (${[...componentIds]}::uuid[]) OR p.airframe_id = ${airframeId}::uuid
            OR p.position_id IN (SELECT id FROM position WHERE operator_id = ${operatorId}::int AND airframe_id = ${airframeId}::uuid))
     ORDER BY p.kind, q.code, k.description, k.serial_number, p.dimension, p.id`;
  const grouped = groupRows(rows, (row) => `${row.kind} ${row.requirementId ?? ''} ${row.subjectId}`);
  return [...grouped.values()].flatMap((group) => dutyOf(group, today));
}

function dutyOf(rows: readonly Row[], today: string): DutyOnAirframe[] {
  const [first] = rows;
  if (first === undefined) return [];
  const unknown = rows.find((row) => row.verdict === 'not-verified');
  const known = rows.filter((row) => row.verdict !== 'not-verified');
  const { description, serialNumber } = first;
  return [
    {
      kind: first.kind,
      name:
        first.kind === 'requirement'
          ? `${first.code ?? ''}, ${first.title ?? ''}`
          : first.kind === 'counters'
            ? 'Counters'
            : 'Life limit',
      of: description === null ? placeOf(first.positionNumber) : `${description} ${serialNumber ?? ''}`,
      requirementId: first.requirementId,
      subjectId: first.subjectId,
      componentId: first.componentId,
      engineSerial: first.engineSerial === serialNumber ? null : first.engineSerial,
      positionNumber: first.positionNumber,
      combine: first.combine ?? 'first',
      hasUnknown: unknown !== undefined,
      reason: reasonInWords((unknown ?? rows.find((row) => row.reason !== null))?.reason ?? null),
      dimensions: known.map(dimensionOf),
      left: known.flatMap((row) => leftOf(row, today)),
    },
  ];
}

const placeOf = (positionNumber: number | null) =>
  positionNumber === null ? 'Airframe' : `Position ${positionNumber}`;

function dimensionOf(row: Row): DutyDimension {
  const { verdict, dimension, dueOn, dueAt, bound: isBound } = row;
  // What is not authorised here, and what was due at an event that has been, is past already.
  if (verdict === 'not-authorised' || dimension === 'event') return { kind: 'past', isBound };
  if (dueOn !== null)
    return {
      ...{ kind: 'day', isBound, goodThrough: dayToWire(dueOn) },
      latestThrough: dayToWire(row.latestOn ?? dueOn),
    };
  const left = Number((dueAt ?? 0n) - row.reading);
  const latestLeft = Number((row.latestAt ?? dueAt ?? 0n) - row.reading);
  return { kind: 'counter', unit: unitOf(row), left, latestLeft, isBound };
}

function unitOf(row: Row): CounterUnit {
  // Flights run the clocks of the airframe and its positions alone.
  if (row.carrierKind !== 'airframe' && row.carrierKind !== 'position') return { kind: 'still' };
  if (row.dimension === 'minutes') return { kind: 'minutes' };
  if (row.ruleId === null) return row.dimension === 'flights' ? { kind: 'flights' } : { kind: 'still' };
  return {
    kind: 'cycles',
    rule: {
      id: row.ruleId,
      perFlight: row.perFlight ?? 0,
      perLanding: row.perLanding ?? 0,
      perTouchAndGo: row.perTouchAndGo ?? 0,
      perStart: row.perStart ?? 0,
      perAbortedTakeOff: row.perAbortedTakeOff ?? 0,
      denominator: row.denominator,
    },
  };
}

const DAY_MS = 86_400_000;

function leftOf(row: Row, today: string): DutyLeft[] {
  const { dueAt, dueOn, reading, denominator } = row;
  const dimension = row.dimension === 'flights' ? 'cycles' : row.dimension;
  if (dimension !== 'minutes' && dimension !== 'cycles' && dimension !== 'days' && dimension !== 'months')
    return [];
  if (dueOn !== null) {
    const daysTo = (on: Date) => Math.round((on.getTime() - Date.parse(`${today}T00:00:00Z`)) / DAY_MS);
    const untilLatest = daysTo(row.latestOn ?? dueOn);
    return [{ dimension, remaining: daysTo(dueOn), untilLatest, dueOn: dayToWire(dueOn) }];
  }
  if (dueAt === null) return [];
  const wholes = (at: bigint) => Math.floor(Number(at - reading) / denominator);
  return [{ dimension, remaining: wholes(dueAt), untilLatest: wholes(row.latestAt ?? dueAt), dueOn: null }];
}
