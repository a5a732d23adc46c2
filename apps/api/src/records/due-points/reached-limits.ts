import type { Tx } from '../../platform/database/database.js';
import { nameOfPosition } from '../requirements/package-requirements.js';
import type { Scope } from '../requirements/subjects.js';

/** A due point that its clock, or the calendar, has reached or passed; `dueAt` and `reading` in units of 1 / denominator, days since 1970. */
export interface PassedPoint {
  /** What it is about: exactly one of a component, an airframe and a position. */
  readonly componentId: string | null;
  readonly airframeId: string | null;
  readonly positionId: string | null;
  /** The requirement it is of; null for a life limit. */
  readonly requirementId: string | null;
  readonly engineId: string | null;
  readonly dimension: 'cycles' | 'minutes' | 'days';
  readonly dueAt: number;
  readonly reading: number;
  readonly denominator: number;
}

/** A limit or requirement that an act has newly reached or passed, in words that can be shown. */
export interface ReachedLimit {
  /** Null for a requirement of an airframe or a position, which `serialNumber` names then. */
  readonly componentId: string | null;
  readonly serialNumber: string;
  readonly partNumber: string;
  readonly description: string;
  /** The engine it is in; null when it is in none. */
  readonly engineSerial: string | null;
  /** Code and title of the requirement; null for a life limit. */
  readonly requirement: string | null;
  readonly dimension: 'cycles' | 'minutes' | 'days';
  /** Whole cycles, minutes or days left: 0 is the last one used, below 0 is an overrun. */
  readonly remaining: number;
}

/**
 * The limits and requirements that what a scope names has reached or passed, now. Of 'whichever last' a single counter
 * says nothing: only what has no other is told.
 */
export async function reachedLimits(
  tx: Tx,
  operatorId: number,
  { componentIds, airframeIds }: Scope,
): Promise<PassedPoint[]> {
  const ids = [...componentIds];
  const rows = await tx.$queryRaw<
    (Omit<PassedPoint, 'dueAt' | 'reading'> & { dueAt: bigint; reading: bigint })[]
  >`
    SELECT "componentId", "airframeId", "positionId", "requirementId", "engineId", dimension, "dueAt", denominator, reading
      FROM (
      SELECT d.component_id AS "componentId", d.airframe_id AS "airframeId", d.position_id AS "positionId",
             d.requirement_id AS "requirementId", d.engine_id AS "engineId",
             coalesce(d.due_at, d.due_on - date '1970-01-01') AS "dueAt",
             CASE WHEN d.due_on IS NOT NULL THEN 'days' WHEN d.dimension = 'flights' THEN 'cycles' ELSE d.dimension END AS dimension,
             coalesce(r.denominator, 1) AS denominator,
             coalesce(CASE WHEN d.due_on IS NOT NULL THEN (now() AT TIME ZONE coalesce(f.day_zone, 'UTC'))::date - date '1970-01-01'
               WHEN d.dimension = 'minutes' THEN n.minutes WHEN d.dimension = 'flights' THEN n.flights
               ELSE r.per_flight * n.flights + r.per_landing * n.landings + r.per_touch_and_go * n.touch_and_goes
                  + r.per_start * n.starts + r.per_aborted_take_off * n.aborted_take_offs END, 0)::bigint AS reading
        FROM due_point d
        LEFT JOIN clock_now n ON n.operator_id = d.operator_id AND n.carrier_id = d.carrier_id
        LEFT JOIN cycle_rule r ON r.operator_id = d.operator_id AND r.id = d.cycle_rule_id
        LEFT JOIN airframe f ON f.operator_id = d.operator_id AND f.id = n.airframe_id
       WHERE d.operator_id = ${operatorId}::int AND (d.due_at IS NOT NULL OR d.due_on IS NOT NULL)
         AND (d.component_id = ANY (${ids}::uuid[]) OR d.airframe_id = ANY (${[...airframeIds]}::uuid[])
              OR d.position_id IN (SELECT p.id FROM position p WHERE p.operator_id = ${operatorId}::int
                                    AND p.airframe_id = ANY (${[...airframeIds]}::uuid[])))
         AND (d.requirement_id IS NULL OR d.bound OR NOT EXISTS (
           SELECT FROM requirement q JOIN due_point o ON o.operator_id = q.operator_id AND o.requirement_id = q.id
            WHERE q.operator_id = ${operatorId}::int AND q.id = d.requirement_id AND q.combine = 'last' AND NOT o.bound AND o.id <> d.id
              AND (o.component_id, o.airframe_id, o.position_id)
                  IS NOT DISTINCT FROM (d.component_id, d.airframe_id, d.position_id)))
    ) AS points WHERE "dueAt" <= reading`;
  return rows.map((row) => ({ ...row, dueAt: Number(row.dueAt), reading: Number(row.reading) }));
}

/** Those of `after` that were not among `before`: one that was reached and is passed now is told again. Total. */
export function newlyReached(before: readonly PassedPoint[], after: readonly PassedPoint[]): PassedPoint[] {
  const keyOf = (point: PassedPoint) =>
    [
      point.componentId ?? point.positionId ?? point.airframeId,
      ...[point.requirementId, point.dimension, point.dueAt < point.reading ? 'passed' : 'reached'],
    ].join(' ');
  // What was passed and is only reached now is no news.
  const known = new Set(before.flatMap((point) => [keyOf(point), keyOf({ ...point, dueAt: point.reading })]));
  return after.filter((point) => !known.has(keyOf(point)));
}

/** The points with the names of what they are about, the worst first. */
export async function describeReached(
  tx: Tx,
  operatorId: number,
  points: readonly PassedPoint[],
): Promise<ReachedLimit[]> {
  if (points.length === 0) return [];
  const names = await namesOfPoints(tx, operatorId, points);
  return points
    .map((point) => ({
      componentId: point.componentId,
      ...names.subject(point),
      engineSerial: names.engine(point),
      requirement: names.requirement(point),
      dimension: point.dimension,
      remaining: Math.floor((point.dueAt - point.reading) / point.denominator),
    }))
    .sort((a, b) => a.remaining - b.remaining);
}

type Named = Pick<PassedPoint, 'componentId' | 'airframeId' | 'positionId' | 'engineId' | 'requirementId'>;

/** What points are about, in words. */
export interface PointNames {
  readonly subject: (of: Pick<Named, 'componentId' | 'airframeId' | 'positionId'>) => {
    readonly serialNumber: string;
    readonly partNumber: string;
    readonly description: string;
  };
  readonly engine: (of: Pick<Named, 'engineId'>) => string | null;
  /** Code and title; null for what is no requirement. */
  readonly requirement: (of: Pick<Named, 'requirementId'>) => string | null;
}

/** The names of what these points are about, in a constant number of statements. */
export async function namesOfPoints(
  tx: Tx,
  operatorId: number,
  points: readonly Named[],
): Promise<PointNames> {
  const given = (key: 'componentId' | 'engineId' | 'airframeId' | 'positionId' | 'requirementId') =>
    points.flatMap((point) => point[key] ?? []);
  const components = await tx.component.findMany({
    where: { operatorId, id: { in: [...given('componentId'), ...given('engineId')] } },
    select: { id: true, serialNumber: true, partNumber: true, description: true },
  });
  const requirements = await tx.requirement.findMany({
    where: { operatorId, id: { in: given('requirementId') } },
    select: { id: true, code: true, title: true },
  });
  const airframes = await tx.airframe.findMany({
    where: { operatorId, id: { in: given('airframeId') } },
    select: { id: true, registration: true },
  });
  const positions = await tx.position.findMany({
    where: { operatorId, id: { in: given('positionId') } },
    select: { id: true, number: true, airframe: { select: { registration: true } } },
  });
  const parts = new Map(components.map((row) => [row.id, row]));
  const duties = new Map(requirements.map((row) => [row.id, `${row.code} ${row.title}`]));
  const places = new Map([
    ...airframes.map((row): [string, string] => [row.id, row.registration]),
    ...positions.map((row): [string, string] => [
      row.id,
      nameOfPosition(row.airframe.registration, row.number),
    ]),
  ]);
  return {
    subject: ({ componentId, positionId, airframeId }) => {
      const part = componentId === null ? undefined : parts.get(componentId);
      return {
        serialNumber: part?.serialNumber ?? places.get(positionId ?? airframeId ?? '') ?? '',
        partNumber: part?.partNumber ?? '',
        description: part?.description ?? (positionId === null ? 'Airframe' : 'Position'),
      };
    },
    engine: ({ engineId }) => (engineId === null ? null : (parts.get(engineId)?.serialNumber ?? null)),
    requirement: ({ requirementId }) => (requirementId === null ? null : (duties.get(requirementId) ?? null)),
  };
}
