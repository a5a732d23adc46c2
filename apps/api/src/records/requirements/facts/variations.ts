import type { Variation as ApprovedVariation } from '@strutbook/domain/due/chain.js';
import type { Tx } from '../../../platform/database/database.js';
import type { Variation } from '../../../platform/database/generated/client.js';
import { groupRows } from '../../usage/group-rows.js';
import type { Subject } from '../subjects.js';

/** A variation with the code of what it varies. */
export type VariationRow = Variation & { readonly requirement: { readonly code: string } };

/** The variations approved for these subjects, by subject and code. */
export async function loadVariations(
  tx: Tx,
  operatorId: number,
  subjects: readonly Subject[],
): Promise<ReadonlyMap<string, readonly VariationRow[]>> {
  const ids = { in: [...new Set(subjects.map(({ id }) => id))] };
  const rows = await tx.variation.findMany({
    where: {
      operatorId,
      voidedSeq: null,
      OR: [{ componentId: ids }, { airframeId: ids }, { positionId: ids }],
    },
    include: { requirement: { select: { code: true } } },
    orderBy: { recordedSeq: 'asc' },
  });
  return groupRows(
    rows,
    (row) => `${row.componentId ?? row.positionId ?? row.airframeId} ${row.requirement.code}`,
  );
}

/** Variations by their place among the accomplishments that count; one of a due that is no more is left out. Total. */
export function placedVariations(
  rows: readonly VariationRow[],
  done: readonly { readonly id: string }[],
): ApprovedVariation[] {
  return rows.flatMap(({ accomplishmentId, minutes, cycles, days }) => {
    const after = accomplishmentId === null ? -1 : done.findIndex(({ id }) => id === accomplishmentId);
    if (accomplishmentId !== null && after < 0) return [];
    return [{ after, minutes: minutes === null ? null : Number(minutes), cycles, days }];
  });
}
