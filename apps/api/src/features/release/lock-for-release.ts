import type { Tx } from '../../platform/database/database.js';
import { requireVersion } from '../../platform/http/if-match.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { withAllAbove } from '../../records/usage/kinship.js';
import { lockRunning } from '../../records/usage/lock-running.js';

/**
 * Locks what a release freezes: the airframe's head, or a component with all it ever hung in and the heads it ran on;
 * then the package, for which every act on its steps waits.
 * Refuses: NOT_FOUND, ALREADY_RELEASED, WRONG_STATE when it is withdrawn, STALE.
 */
export async function lockForRelease(
  tx: Tx,
  operatorId: number,
  { packageId, version }: { readonly packageId: string; readonly version: number },
): Promise<void> {
  const where = { operatorId_id: { operatorId, id: packageId } };
  const found = await tx.workPackage.findUnique({ where, select: { airframeId: true, componentId: true } });
  const { airframeId, componentId } = orNotFound(found, 'package');
  const componentIds = componentId === null ? [] : await withAllAbove(tx, operatorId, [componentId]);
  await lockRunning(tx, operatorId, componentIds, airframeId === null ? [] : [airframeId]);
  await tx.$queryRaw`SELECT id FROM work_package WHERE operator_id = ${operatorId}::int AND id = ${packageId}::uuid FOR NO KEY UPDATE`;
  const release = await tx.release.findUnique({
    where: { operatorId_packageId: { operatorId, packageId } },
    select: { number: true },
  });
  if (release !== null) refuse({ code: 'ALREADY_RELEASED', number: release.number });
  const locked = await tx.workPackage.findUniqueOrThrow({ where });
  if (locked.status !== 'open')
    refuse({ code: 'WRONG_STATE', what: `package ${locked.number}`, state: locked.status, needed: 'open' });
  requireVersion(locked.version, version, 'the package');
}
