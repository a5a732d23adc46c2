import type { Tx } from '../../platform/database/database.js';

/** A component that a package moved, and when. */
export interface RecordedMove {
  readonly stayId: string;
  readonly componentId: string;
  readonly serialNumber: string;
  readonly at: Date;
}

/** What a package took out of a slot and put into it, as the places of the components stand now: a voided stay moved nothing. */
export async function recordedMoves(
  tx: Tx,
  operatorId: number,
  { packageId, slotId }: { readonly packageId: string; readonly slotId: string },
): Promise<{ readonly removal: RecordedMove | null; readonly installation: RecordedMove | null }> {
  const stays = await tx.stay.findMany({
    where: { operatorId, slotId, voidedSeq: null, OR: [{ packageId }, { endPackageId: packageId }] },
    include: { component: { select: { serialNumber: true } } },
  });
  const removed = stays.find((stay) => stay.endPackageId === packageId);
  const installed = stays.find((stay) => stay.packageId === packageId);
  const move = (stay: (typeof stays)[number], at: Date): RecordedMove => ({
    stayId: stay.id,
    componentId: stay.componentId,
    serialNumber: stay.component.serialNumber,
    at,
  });
  return {
    removal: removed === undefined || removed.toAt === null ? null : move(removed, removed.toAt),
    installation: installed === undefined ? null : move(installed, installed.fromAt),
  };
}
