import type { Tx } from '../../platform/database/database.js';
import { dayToWire, toInstant } from '../../platform/http/instants.js';
import type { DuePointRow } from '../due-points/due-point-row.js';
import type { DuePoints } from '../due-points/due-points.js';
import type { Scope } from '../requirements/subjects.js';
import type { Exposures } from '../usage/exposures.js';
import type { Difference, Verdict } from './difference.js';

/** The exposures of these components as kept, against what their stays, ratings and flights say. */
export async function verifyExposures(
  tx: Tx,
  operatorId: number,
  exposures: Exposures,
  ids: readonly string[],
): Promise<Verdict> {
  const kept = await tx.exposure.findMany({ where: { operatorId, componentId: { in: [...ids] } } });
  const fresh = await exposures.fromFacts(tx, operatorId, ids);
  return {
    name: 'exposures',
    looked: kept.length,
    differences: differing(
      'exposure',
      kept.map((row) => [
        row.componentId,
        [
          row.carrierId,
          row.ratingId,
          row.cycleRuleId,
          toInstant(row.fromAt),
          row.toAt === null ? null : toInstant(row.toAt),
          ...[row.minutes, row.flights, row.landings, row.touchAndGoes, row.starts, row.abortedTakeOffs].map(
            Number,
          ),
        ],
      ]),
      fresh.map(({ componentId, carrierId, ratingId, cycleRuleId, from, to, counts }) => [
        componentId,
        [
          carrierId,
          ratingId,
          cycleRuleId,
          from,
          to,
          counts.minutes,
          counts.flights,
          counts.landings,
          counts.touchAndGoes,
          counts.starts,
          counts.abortedTakeOffs,
        ],
      ]),
    ),
  };
}

/** The due points of these components, or of these airframes and their positions, as kept, against what the facts say now. */
export async function verifyDuePoints(
  tx: Tx,
  operatorId: number,
  duePoints: DuePoints,
  { componentIds, airframeIds }: Scope,
): Promise<Verdict> {
  const kept = await tx.duePoint.findMany({
    where: {
      operatorId,
      OR: [
        { componentId: { in: [...componentIds] } },
        { airframeId: { in: [...airframeIds] } },
        { position: { is: { operatorId, airframeId: { in: [...airframeIds] } } } },
      ],
    },
  });
  const fresh = await duePoints.fromFacts(tx, operatorId, componentIds, airframeIds);
  const subjectOf = (row: Pick<DuePointRow, 'componentId' | 'positionId' | 'airframeId'>) =>
    row.componentId ?? row.positionId ?? row.airframeId ?? '';
  return {
    name: 'due points',
    looked: kept.length,
    differences: differing(
      'due point',
      kept.map((row) => [
        subjectOf(row),
        dueColumns({
          ...row,
          dueAt: row.dueAt === null ? null : Number(row.dueAt),
          latestAt: row.latestAt === null ? null : Number(row.latestAt),
          span: row.span === null ? null : Number(row.span),
        }),
      ]),
      fresh.map((row) => [subjectOf(row), dueColumns(row)]),
    ),
  };
}

type Columns = readonly (string | number | boolean | null)[];

function dueColumns(
  row: Omit<DuePointRow, 'kind' | 'verdict' | 'dimension'> & Record<'kind' | 'verdict' | 'dimension', string>,
): Columns {
  const { engineId, carrierId, kind, verdict, dimension, cycleRuleId, lifeLimitId, requirementId } = row;
  return [
    engineId,
    carrierId,
    kind,
    verdict,
    dimension,
    cycleRuleId,
    lifeLimitId,
    requirementId,
    row.span,
    row.dueAt,
    row.dueOn === null ? null : dayToWire(row.dueOn),
    row.latestAt,
    row.latestOn === null ? null : dayToWire(row.latestOn),
    row.bound,
    row.flagged,
    row.reason,
  ];
}

/** Rows that are on one side alone, or not as often on the other. */
function differing(
  what: string,
  kept: readonly (readonly [string, Columns])[],
  fresh: readonly (readonly [string, Columns])[],
): Difference[] {
  const count = (rows: typeof kept) => {
    const counts = new Map<string, number>();
    for (const row of rows) counts.set(JSON.stringify(row), (counts.get(JSON.stringify(row)) ?? 0) + 1);
    return counts;
  };
  const [inKept, inFresh] = [count(kept), count(fresh)];
  const differences: Difference[] = [];
  for (const text of new Set([...inKept.keys(), ...inFresh.keys()])) {
    const [here, there] = [inKept.get(text) ?? 0, inFresh.get(text) ?? 0];
    if (here === there) continue;
    const [id, columns] = JSON.parse(text) as [string, Columns];
    differences.push({ what, id, kept: `${here} × ${JSON.stringify(columns)}`, fromFacts: `${there} ×` });
  }
  return differences;
}
