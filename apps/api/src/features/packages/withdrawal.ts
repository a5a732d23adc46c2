import type { Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import type { PackageWithdrawalDto } from './packages.dto.js';

/** Why a package was withdrawn, as its journal has it; null while it is not. */
export async function withdrawalOf(
  tx: Tx,
  operatorId: number,
  packageId: string,
): Promise<PackageWithdrawalDto | null> {
  const entry = await tx.journalEntry.findFirst({
    where: { operatorId, stream: packageId, kind: 'package-withdrawn' },
    select: { body: true, recordedAt: true },
  });
  if (entry === null) return null;
  const { by, done } = JSON.parse(entry.body) as {
    readonly by: { readonly fullName: string };
    readonly done: { readonly reason: string };
  };
  return { person: by.fullName, at: toWire(entry.recordedAt), reason: done.reason };
}
