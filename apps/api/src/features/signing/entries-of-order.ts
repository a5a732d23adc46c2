import type { CaptureKind } from '@strutbook/domain/work/capture.js';
import type { Tx } from '../../platform/database/database.js';
import type { KeptStep } from '../../records/work/kept-step.js';
import { loadKeptSteps, rehash } from '../../records/work/step-records.js';
import type { EntryToRenewDto } from './amend-order.dto.js';

/** Which sides of an order are no longer as they were. */
export interface ChangedSides {
  readonly off: boolean;
  readonly on: boolean;
}

/** The captures that are judged by each side of an order. */
const JUDGED_BY: Readonly<Record<keyof ChangedSides, readonly CaptureKind[]>> = {
  off: ['component-off'],
  on: ['component-on', 'papers'],
};

/** The steps with entries that were judged by a side that changed. */
export async function stepsToRenew(
  tx: Tx,
  operatorId: number,
  packageId: string,
  changed: ChangedSides,
): Promise<KeptStep[]> {
  const kinds = [...(changed.off ? JUDGED_BY.off : []), ...(changed.on ? JUDGED_BY.on : [])];
  const steps = await loadKeptSteps(tx, operatorId, packageId);
  return steps
    .map((step) => ({
      ...step,
      entries: step.entries.filter((entry) => !entry.voided && kinds.includes(entry.kind)),
    }))
    .filter((step) => step.entries.length > 0);
}

/**
 * Voids what was judged by the order before. The steps' content is then another: signatures on them stay visible and
 * no longer count, and plates and papers are read anew against the order that stands. The package's lock is held.
 */
export async function voidEntries(
  tx: Tx,
  operatorId: number,
  steps: readonly KeptStep[],
  { number, reason }: { readonly number: bigint; readonly reason: string },
): Promise<EntryToRenewDto[]> {
  const entries = steps.flatMap((step) =>
    step.entries.map((entry) => ({ stepId: step.id, entryId: entry.id })),
  );
  await tx.stepEntry.updateMany({
    where: { operatorId, id: { in: entries.map((entry) => entry.entryId) }, voidedSeq: null },
    data: { voidedSeq: number, voidReason: `The order was amended: ${reason}` },
  });
  for (const step of steps) await rehash(tx, operatorId, step);
  return entries;
}
