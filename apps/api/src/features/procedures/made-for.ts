import type { Tx } from '../../platform/database/database.js';
import { refuse } from '../../platform/problems/refusal.error.js';

/**
 * The ids of the type or the model a procedure is for, by their designations.
 * Refuses: INVALID_FIELDS when both are named, NOT_FOUND, REFUSED_BY_FACTS when two makers use the designation.
 */
export async function idsOfWhatItIsFor(
  tx: Tx,
  operatorId: number,
  {
    airframeType,
    engineModel,
  }: { readonly airframeType: string | null; readonly engineModel: string | null },
): Promise<{ readonly airframeTypeId: string | null; readonly engineModelId: string | null }> {
  if (airframeType !== null && engineModel !== null)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'engineModel',
          reason: 'A procedure is for a type of airframe or for a model of engine, not for both.',
          fix: 'Name one of the two.',
        },
      ],
    });
  const types =
    airframeType === null
      ? []
      : await tx.airframeType.findMany({ where: { operatorId, designation: airframeType } });
  const models =
    engineModel === null
      ? []
      : await tx.engineModel.findMany({ where: { operatorId, designation: engineModel } });
  return {
    airframeTypeId:
      airframeType === null ? null : only(types, `airframe type ${airframeType}`, 'airframeType'),
    engineModelId: engineModel === null ? null : only(models, `engine model ${engineModel}`, 'engineModel'),
  };
}

function only(found: readonly { readonly id: string }[], what: string, field: string): string {
  const [one, ...more] = found;
  if (one === undefined) refuse({ code: 'NOT_FOUND', what, field });
  if (more.length > 0)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field,
      reason: `More than one maker has the ${what}.`,
      fix: 'Give one of them its full designation.',
    });
  return one.id;
}
