import type { Tx } from '../../platform/database/database.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { airframeAbove } from '../stays/airframe-above.js';

/** What a procedure is for: a type of airframe, a model of engine, or any. */
export interface ProcedureFor {
  readonly airframeType: { readonly id: string; readonly designation: string } | null;
  readonly engineModel: { readonly id: string; readonly designation: string } | null;
}

/** What work is done on, and the engine it orders. */
export interface WorkedOn {
  readonly airframeId: string | null;
  readonly componentId: string | null;
  readonly orderedId: string | null;
}

/**
 * Makes sure that a procedure is for what is worked on: the airframe's type; or the model of the ordered engine, of
 * the component, or of an engine that hangs on the airframe.
 * Where no model is recorded, nothing tells that it is another.
 * Refuses: REFUSED_BY_FACTS about `procedureId`.
 */
export async function refuseOtherProcedure(
  tx: Tx,
  operatorId: number,
  { airframeType, engineModel }: ProcedureFor,
  on: WorkedOn,
): Promise<void> {
  if (airframeType !== null && (await typeWorkedOn(tx, operatorId, on)) !== airframeType.id)
    refuseAs(`airframes of type ${airframeType.designation}`);
  if (engineModel === null) return;
  const models = await modelsWorkedOn(tx, operatorId, on);
  if (models.length > 0 && !models.includes(engineModel.id)) refuseAs(`the model ${engineModel.designation}`);
}

function refuseAs(what: string): never {
  return refuse({
    code: 'REFUSED_BY_FACTS',
    field: 'procedureId',
    reason: `The procedure is for ${what}, and that is not what is worked on.`,
    fix: 'Choose a procedure made for it, from its approved data.',
  });
}

async function typeWorkedOn(
  tx: Tx,
  operatorId: number,
  { airframeId, componentId }: WorkedOn,
): Promise<string | null> {
  if (airframeId === null)
    return componentId === null ? null : ((await airframeAbove(tx, operatorId, componentId))?.typeId ?? null);
  const where = { operatorId_id: { operatorId, id: airframeId } };
  return (await tx.airframe.findUniqueOrThrow({ where, select: { airframeTypeId: true } })).airframeTypeId;
}

async function modelsWorkedOn(
  tx: Tx,
  operatorId: number,
  { airframeId, componentId, orderedId }: WorkedOn,
): Promise<string[]> {
  const id = orderedId ?? componentId;
  const where =
    id !== null
      ? { operatorId, id }
      : {
          operatorId,
          stayByComponent: {
            some: { voidedSeq: null, toAt: null, slot: { position: { airframeId: airframeId ?? '' } } },
          },
        };
  const found = await tx.component.findMany({ where, select: { engineModelId: true } });
  return found.flatMap((component) => component.engineModelId ?? []);
}
