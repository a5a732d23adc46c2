import type { Tx } from '../../platform/database/database.js';

/** Where a component was at an instant, by the stay that covers it; null where none does. */
export async function stayAt(
  tx: Tx,
  operatorId: number,
  componentId: string,
  at: Date,
): Promise<{ readonly slotId: string | null; readonly locationId: string | null } | null> {
  return tx.stay.findFirst({
    where: {
      ...{ operatorId, componentId, voidedSeq: null, fromAt: { lte: at } },
      OR: [{ toAt: null }, { toAt: { gt: at } }],
    },
    select: { slotId: true, locationId: true },
  });
}
