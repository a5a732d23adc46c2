import type { Tx } from '../../platform/database/database.js';
import { namesOfPoints } from '../due-points/reached-limits.js';
import { reasonInWords } from '../due-points/windows.js';
import type { Scope } from '../requirements/subjects.js';
import type { NewlyUnknownDto } from './consequences.dto.js';

/** A due point that says nothing, or forbids. */
export interface UnknownPoint {
  readonly componentId: string | null;
  readonly airframeId: string | null;
  readonly positionId: string | null;
  readonly engineId: string | null;
  readonly requirementId: string | null;
  readonly kind: string;
  readonly verdict: string;
  readonly reason: string | null;
}

/** What of a scope cannot be told, or is not authorised, now. */
export async function unknownPoints(
  tx: Tx,
  operatorId: number,
  { componentIds, airframeIds }: Scope,
): Promise<UnknownPoint[]> {
  return tx.duePoint.findMany({
    where: {
      operatorId,
      verdict: { in: ['not-verified', 'not-authorised'] },
      OR: [
        { componentId: { in: [...componentIds] } },
        { airframeId: { in: [...airframeIds] } },
        { position: { is: { operatorId, airframeId: { in: [...airframeIds] } } } },
      ],
    },
    select: {
      ...{ componentId: true, airframeId: true, positionId: true, engineId: true },
      ...{ requirementId: true, kind: true, verdict: true, reason: true },
    },
  });
}

/** Those of `after` that were not among `before`, whatever the reason was. Total. */
export function newlyUnknown(
  before: readonly UnknownPoint[],
  after: readonly UnknownPoint[],
): UnknownPoint[] {
  const keyOf = (point: UnknownPoint) =>
    [
      point.componentId ?? point.positionId ?? point.airframeId,
      ...[point.requirementId, point.kind, point.verdict],
    ].join(' ');
  const known = new Set(before.map(keyOf));
  return after.filter((point) => !known.has(keyOf(point)));
}

/** The same with the names of what they are about. */
export async function describeUnknown(
  tx: Tx,
  operatorId: number,
  points: readonly UnknownPoint[],
): Promise<NewlyUnknownDto[]> {
  if (points.length === 0) return [];
  const names = await namesOfPoints(tx, operatorId, points);
  return points.map((point) => ({
    kind: point.verdict === 'not-authorised' ? 'not-authorised' : 'not-verified',
    componentId: point.componentId,
    ...names.subject(point),
    engineSerial: names.engine(point),
    requirement: names.requirement(point),
    reason: reasonInWords(point.reason),
  }));
}
