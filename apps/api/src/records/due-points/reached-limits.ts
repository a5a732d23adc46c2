import type { Tx } from '../../platform/database/database.js';
import { everOnAirframes } from '../usage/kinship.js';

/** A due point that its clock has reached or passed; `dueAt` and `reading` in units of 1 / denominator. */
export interface PassedPoint {
  readonly componentId: string;
  readonly engineId: string | null;
  readonly dimension: 'cycles' | 'minutes';
  readonly dueAt: number;
  readonly reading: number;
  readonly denominator: number;
}

/** A limit that an act has newly reached or passed, in words that can be shown. */
export interface ReachedLimit {
  readonly componentId: string;
  readonly serialNumber: string;
  readonly partNumber: string;
  readonly description: string;
  /** The engine it is in; null when it is in none. */
  readonly engineSerial: string | null;
  readonly dimension: 'cycles' | 'minutes';
  /** Whole cycles or minutes left: 0 is the last one used, below 0 is an overrun. */
  readonly remaining: number;
}

/** The limits that what ever ran on these airframes has reached or passed, now. */
export async function reachedLimits(
  tx: Tx,
  operatorId: number,
  airframeIds: readonly string[],
): Promise<PassedPoint[]> {
  const ids = await everOnAirframes(tx, operatorId, airframeIds);
  const rows = await tx.$queryRaw<
    (Omit<PassedPoint, 'dueAt' | 'reading'> & { dueAt: bigint; reading: bigint })[]
  >`
    SELECT * FROM (
      SELECT d.component_id AS "componentId", d.engine_id AS "engineId", d.dimension, d.due_at AS "dueAt",
             coalesce(r.denominator, 1) AS denominator,
             coalesce(CASE WHEN d.dimension = 'minutes' THEN n.minutes
               ELSE r.per_flight * n.flights + r.per_landing * n.landings + r.per_touch_and_go * n.touch_and_goes
                  + r.per_start * n.starts + r.per_aborted_take_off * n.aborted_take_offs END, 0)::bigint AS reading
        FROM due_point d
        LEFT JOIN clock_now n ON n.operator_id = d.operator_id AND n.carrier_id = d.carrier_id
        LEFT JOIN cycle_rule r ON r.operator_id = d.operator_id AND r.id = d.cycle_rule_id
       WHERE d.operator_id = ${operatorId}::int AND d.component_id = ANY (${ids}::uuid[]) AND d.due_at IS NOT NULL
    ) AS points WHERE "dueAt" <= reading`;
  return rows.map((row) => ({ ...row, dueAt: Number(row.dueAt), reading: Number(row.reading) }));
}

/** Those of `after` that were not among `before`. Total. */
export function newlyReached(before: readonly PassedPoint[], after: readonly PassedPoint[]): PassedPoint[] {
  return after.filter(
    (point) =>
      !before.some((old) => old.componentId === point.componentId && old.dimension === point.dimension),
  );
}

/** The points with the names of what they are about, the worst first. */
export async function describeReached(
  tx: Tx,
  operatorId: number,
  points: readonly PassedPoint[],
): Promise<ReachedLimit[]> {
  if (points.length === 0) return [];
  const ids = points.flatMap(({ componentId, engineId }) => [
    componentId,
    ...(engineId === null ? [] : [engineId]),
  ]);
  const rows = await tx.component.findMany({
    where: { operatorId, id: { in: ids } },
    select: { id: true, serialNumber: true, partNumber: true, description: true },
  });
  const components = new Map(rows.map((row) => [row.id, row]));
  return points
    .map(({ componentId, engineId, dimension, dueAt, reading, denominator }) => {
      const component = components.get(componentId);
      return {
        componentId,
        serialNumber: component?.serialNumber ?? '',
        partNumber: component?.partNumber ?? '',
        description: component?.description ?? '',
        engineSerial: engineId === null ? null : (components.get(engineId)?.serialNumber ?? null),
        dimension,
        remaining: Math.floor((dueAt - reading) / denominator),
      };
    })
    .sort((a, b) => a.remaining - b.remaining);
}
