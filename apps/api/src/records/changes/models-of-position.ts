import type { Tx } from '../../platform/database/database.js';

/**
 * The models that a position takes: those whose cycles are counted on its airframe's type by a recorded rule. A model
 * without one was never entered for this type, and its cycles could not be counted there.
 */
export async function modelsOfPosition(tx: Tx, operatorId: number, positionId: string): Promise<string[]> {
  const { airframe } = await tx.position.findUniqueOrThrow({
    where: { operatorId_id: { operatorId, id: positionId } },
    select: { airframe: { select: { airframeTypeId: true } } },
  });
  const rules = await tx.cycleRule.findMany({
    where: {
      operatorId,
      voidedSeq: null,
      OR: [{ airframeTypeId: null }, { airframeTypeId: airframe.airframeTypeId }],
    },
    select: { engineModelId: true },
  });
  return [...new Set(rules.map((rule) => rule.engineModelId))];
}
