import type { Tx } from '../../../platform/database/database.js';
import { newId } from '../../../platform/database/uuid.js';

/** The variations of the due after an accomplishment that was corrected go with the one that takes its place. */
export async function moveVariations(
  tx: Tx,
  operatorId: number,
  { from, to, number }: { readonly from: string; readonly to: string; readonly number: bigint },
): Promise<void> {
  const rows = await tx.variation.findMany({
    where: { operatorId, accomplishmentId: from, voidedSeq: null },
  });
  if (rows.length === 0) return;
  await tx.variation.updateMany({
    where: { operatorId, accomplishmentId: from, voidedSeq: null },
    data: {
      voidedSeq: number,
      voidReason: 'The accomplishment it follows was corrected; it goes with the new one.',
    },
  });
  await tx.variation.createMany({
    data: rows.map((row) => ({ ...row, id: newId(), accomplishmentId: to, recordedSeq: number })),
  });
}
