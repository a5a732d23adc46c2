import type { Tx } from '../../../platform/database/database.js';
import type { Accomplishment, Requirement } from '../../../platform/database/generated/client.js';
import { groupRows } from '../../usage/group-rows.js';
import type { Subject } from '../subjects.js';

/** An accomplishment with the code of what it met. */
export type MetRow = Accomplishment & { readonly requirement: { readonly code: string } };

/** What was accomplished on subjects, by the subject, in order. */
export async function loadMet(
  tx: Tx,
  operatorId: number,
  subjects: readonly Subject[],
  at: Date | null,
): Promise<ReadonlyMap<string, readonly MetRow[]>> {
  const ids = { in: [...new Set(subjects.map(({ id }) => id))] };
  const rows = await tx.accomplishment.findMany({
    where: {
      operatorId,
      voidedSeq: null,
      ...(at === null ? {} : { at: { lte: at } }),
      OR: [{ componentId: ids }, { airframeId: ids }, { positionId: ids }],
    },
    include: { requirement: { select: { code: true } } },
    orderBy: [{ at: 'asc' }, { recordedSeq: 'asc' }],
  });
  return groupRows(rows, (row) => row.componentId ?? row.positionId ?? row.airframeId ?? '');
}

/**
 * Of what was accomplished on one subject, what counts for a requirement: by its credit this revision's alone, those of
 * earlier revisions of its code too, or also those of what it supersedes. Total.
 */
export function creditedTo(
  { id, code, credit }: Requirement,
  met: readonly MetRow[],
  supersededCode: string | null,
): readonly MetRow[] {
  if (credit === 'none') return met.filter((row) => row.requirementId === id);
  return met.filter(
    (row) =>
      row.requirement.code === code || (credit === 'superseded' && row.requirement.code === supersededCode),
  );
}
