import type { Tx } from '../../../platform/database/database.js';
import type { Assessment } from '../../../platform/database/generated/client.js';
import { dayFromWire, dayToWire } from '../../../platform/http/instants.js';
import { groupRows } from '../../usage/group-rows.js';
import type { Subject } from '../subjects.js';

/** The assessments of these revisions up to an instant, by the revision, the newest first. */
export async function loadAssessments(
  tx: Tx,
  operatorId: number,
  requirementIds: readonly string[],
  at: Date | null,
): Promise<ReadonlyMap<string, readonly Assessment[]>> {
  if (requirementIds.length === 0) return new Map();
  const until = at === null ? {} : { assessedOn: { lte: dayFromWire(dayToWire(at)) ?? at } };
  const rows = await tx.assessment.findMany({
    where: { operatorId, requirementId: { in: [...requirementIds] }, voidedSeq: null, ...until },
    orderBy: [{ assessedOn: 'desc' }, { recordedSeq: 'desc' }],
  });
  return groupRows(rows, (row) => row.requirementId);
}

/**
 * The assessment that holds for a subject: one that names it, before one of its type or model, before one of all the
 * requirement may be for; of each the newest. Null: it was never assessed. Total.
 */
export function assessmentFor(rows: readonly Assessment[], subject: Subject): Assessment | null {
  const own = rows.find((row) => (row.componentId ?? row.positionId ?? row.airframeId) === subject.id);
  const group = rows.find((row) =>
    subject.kind === 'component'
      ? row.engineModelId !== null && row.engineModelId === subject.engineModelId
      : row.airframeTypeId !== null && row.airframeTypeId === subject.airframeTypeId,
  );
  const whole = rows.find(
    ({ componentId, positionId, airframeId, airframeTypeId, engineModelId }) =>
      (componentId ?? positionId ?? airframeId ?? airframeTypeId ?? engineModelId) === null,
  );
  return own ?? group ?? whole ?? null;
}
