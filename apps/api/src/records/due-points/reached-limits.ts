import type { Tx } from '../../platform/database/database.js';
import { everOnAirframes } from '../usage/kinship.js';

/** A due point that its clock has reached or passed; `dueAt` and `reading` in units of 1 / denominator. */
export interface PassedPoint {
  /** What it is about: exactly one of a component, an airframe and a position. */
  readonly componentId: string | null;
  readonly airframeId: string | null;
  readonly positionId: string | null;
  /** The requirement it is of; null for a life limit. */
  readonly requirementId: string | null;
  readonly engineId: string | null;
  readonly dimension: 'cycles' | 'minutes';
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
  readonly dimension: 'cycles' | 'minutes';
  /** Whole cycles or minutes left: 0 is the last one used, below 0 is an overrun. */
  readonly remaining: number;
}

/**
 * The limits and requirements that these airframes and what ever ran on them have reached or passed, now. Of 'whichever
 * last' a single counter says nothing: only what has no other is told.
 */
export async function reachedLimits(
  tx: Tx,
  operatorId: number,
  airframeIds: readonly string[],
): Promise<PassedPoint[]> {
  const ids = await everOnAirframes(tx, operatorId, airframeIds);
  const rows = await tx.$queryRaw<
    (Omit<PassedPoint, 'dueAt' | 'reading'> & { dueAt: bigint; reading: bigint })[]
  >`
    SELECT "componentId", "airframeId", "positionId", "requirementId", "engineId", dimension, "dueAt", denominator, reading
      FROM (
      SELECT d.component_id AS "componentId", d.airframe_id AS "airframeId", d.position_id AS "positionId",
             d.requirement_id AS "requirementId", d.engine_id AS "engineId", d.due_at AS "dueAt",
             CASE d.dimension WHEN 'flights' THEN 'cycles' ELSE d.dimension END AS dimension,
             coalesce(r.denominator, 1) AS denominator,
             coalesce(CASE d.dimension WHEN 'minutes' THEN n.minutes WHEN 'flights' THEN n.flights
               ELSE r.per_flight * n.flights + r.per_landing * n.landings + r.per_touch_and_go * n.touch_and_goes
                  + r.per_start * n.starts + r.per_aborted_take_off * n.aborted_take_offs END, 0)::bigint AS reading
        FROM due_point d
        LEFT JOIN clock_now n ON n.operator_id = d.operator_id AND n.carrier_id = d.carrier_id
        LEFT JOIN cycle_rule r ON r.operator_id = d.operator_id AND r.id = d.cycle_rule_id
       WHERE d.operator_id = ${operatorId}::int AND d.due_at IS NOT NULL
         AND (d.component_id = ANY (${ids}::uuid[]) OR d.airframe_id = ANY (${[...airframeIds]}::uuid[])
              OR d.position_id IN (SELECT p.id FROM position p WHERE p.operator_id = ${operatorId}::int
                                    AND p.airframe_id = ANY (${[...airframeIds]}::uuid[])))
         AND (d.requirement_id IS NULL OR NOT EXISTS (
           SELECT FROM requirement q JOIN due_point o ON o.operator_id = q.operator_id AND o.requirement_id = q.id
            WHERE q.operator_id = ${operatorId}::int AND q.id = d.requirement_id AND q.combine = 'last' AND o.id <> d.id
              AND (o.component_id, o.airframe_id, o.position_id)
                  IS NOT DISTINCT FROM (d.component_id, d.airframe_id, d.position_id)))
    ) AS points WHERE "dueAt" <= reading`;
  return rows.map((row) => ({ ...row, dueAt: Number(row.dueAt), reading: Number(row.reading) }));
}

/** Those of `after` that were not among `before`. Total. */
export function newlyReached(before: readonly PassedPoint[], after: readonly PassedPoint[]): PassedPoint[] {
  const keyOf = (point: PassedPoint) =>
    [point.componentId ?? point.positionId ?? point.airframeId, point.requirementId, point.dimension].join(
      ' ',
    );
  const known = new Set(before.map(keyOf));
  return after.filter((point) => !known.has(keyOf(point)));
}

/** The points with the names of what they are about, the worst first. */
export async function describeReached(
  tx: Tx,
  operatorId: number,
  points: readonly PassedPoint[],
): Promise<ReachedLimit[]> {
  if (points.length === 0) return [];
  const names = await namesOf(tx, operatorId, points);
  return points
    .map((point) => {
      const { componentId, engineId, requirementId, dimension, dueAt, reading, denominator } = point;
      const component = componentId === null ? undefined : names.components.get(componentId);
      return {
        componentId,
        serialNumber:
          component?.serialNumber ?? names.places.get(point.positionId ?? point.airframeId ?? '') ?? '',
        partNumber: component?.partNumber ?? '',
        description: component?.description ?? (point.positionId === null ? 'Airframe' : 'Position'),
        engineSerial: engineId === null ? null : (names.components.get(engineId)?.serialNumber ?? null),
        requirement: requirementId === null ? null : (names.requirements.get(requirementId) ?? null),
        dimension,
        remaining: Math.floor((dueAt - reading) / denominator),
      };
    })
    .sort((a, b) => a.remaining - b.remaining);
}

async function namesOf(tx: Tx, operatorId: number, points: readonly PassedPoint[]) {
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
  return {
    components: new Map(components.map((row) => [row.id, row])),
    requirements: new Map(requirements.map((row) => [row.id, `${row.code} ${row.title}`])),
    places: new Map([
      ...airframes.map((row): [string, string] => [row.id, row.registration]),
      ...positions.map((row): [string, string] => [
        row.id,
        `${row.airframe.registration} position ${row.number}`,
      ]),
    ]),
  };
}
