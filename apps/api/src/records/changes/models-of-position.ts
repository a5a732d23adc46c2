import type { Tx } from '../../platform/database/database.js';

/**
 * The models that a position takes: those whose cycles are counted on its airframe's type by a recorded rule. A model
 * without one was never entered for this type, and its cycles could not be counted there. A rule for any type stands
 * for all only where the model has none for a type: beside such rules it is there for test cells.
 */
export async function modelsOfPosition(tx: Tx, operatorId: number, positionId: string): Promise<string[]> {
  const { airframe } = await tx.position.findUniqueOrThrow({
    where: { operatorId_id: { operatorId, id: positionId } },
    select: { airframe: { select: { airframeTypeId: true } } },
  });
  const rules = await tx.cycleRule.findMany({
    where: { operatorId, voidedSeq: null },
    select: { engineModelId: true, airframeTypeId: true },
  });
  const hasOwn = new Set(rules.flatMap((rule) => (rule.airframeTypeId === null ? [] : [rule.engineModelId])));
  const taken = rules.filter(({ engineModelId, airframeTypeId }) =>
    airframeTypeId === null ? !hasOwn.has(engineModelId) : airframeTypeId === airframe.airframeTypeId,
  );
  return [...new Set(taken.map((rule) => rule.engineModelId))];
}
