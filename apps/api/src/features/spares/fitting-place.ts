import type { Tx } from '../../platform/database/database.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { modelsOfPosition } from '../../records/changes/models-of-position.js';
import type { FittingPlace } from './spares.sql.js';

/**
 * What goes into a slot. At a position: its kind, and for engines the models whose cycles are counted on that type. In a
 * component: its kind, and the part numbers that were ever in the place of that name in a component of the same part
 * number; where none ever was, any. Refuses: NOT_FOUND.
 */
export async function fittingPlace(tx: Tx, operatorId: number, slotId: string): Promise<FittingPlace> {
  const slot = orNotFound(
    await tx.slot.findUnique({
      where: { operatorId_id: { operatorId, id: slotId } },
      include: { component: { select: { partNumber: true } } },
    }),
    'slot',
    'slotId',
  );
  const { kind, name, positionId, component } = slot;
  if (positionId !== null) {
    const modelIds = kind === 'pod' ? null : await modelsOfPosition(tx, operatorId, positionId);
    return { kind, modelIds, partNumbers: null };
  }
  const rows = await tx.$queryRaw<{ partNumber: string }[]>`
    SELECT DISTINCT c.part_number AS "partNumber"
      FROM slot s
      JOIN component parent ON parent.operator_id = s.operator_id AND parent.id = s.component_id
      JOIN stay st ON st.operator_id = s.operator_id AND st.slot_id = s.id AND st.voided_seq IS NULL
      JOIN component c ON c.operator_id = st.operator_id AND c.id = st.component_id
     WHERE s.operator_id = ${operatorId}::int AND s.name = ${name}::text AND s.kind = ${kind}::text
       AND parent.part_number = ${component?.partNumber ?? ''}::text`;
  const partNumbers = rows.map((row) => row.partNumber);
  return { kind, modelIds: null, partNumbers: partNumbers.length === 0 ? null : partNumbers };
}
