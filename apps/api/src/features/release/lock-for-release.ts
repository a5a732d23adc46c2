import type { Tx } from '../../platform/database/database.js';
import { requireVersion } from '../../platform/http/if-match.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { withAllAbove } from '../../records/usage/kinship.js';
import { lockRunning } from '../../records/usage/lock-running.js';

/**
 * Locks what a release freezes: the airframe's head, or a component with all it ever hung in and the heads it ran on,
 * and so what its requirements are met on; then the package, for which every act on its steps waits.
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
  const named = await tx.packageRequirement.findMany({
    where: { operatorId, packageId, voidedSeq: null },
    select: { componentId: true },
  });
  const own = [componentId, ...named.map((row) => row.componentId)].filter((id) => id !== null);
  const componentIds = own.length === 0 ? [] : await withAllAbove(tx, operatorId, own);
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

/** Keeps the tools used in a package, and so their calibrations, as they are until its release is given. */
export async function holdTools(tx: Tx, operatorId: number, packageId: string): Promise<void> {
  await tx.$queryRaw`SELECT id FROM tool WHERE operator_id = ${operatorId}::int AND id IN (
      SELECT tool_id FROM step_entry
       WHERE operator_id = ${operatorId}::int AND package_id = ${packageId}::uuid AND voided_seq IS NULL)
    ORDER BY id FOR SHARE`;
}

/** Who signed a step of a package, undone signatures left out. */
export async function signersOf(tx: Tx, operatorId: number, packageId: string): Promise<string[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`SELECT DISTINCT s.person_id AS id
    FROM step_signature ss JOIN signature s ON s.operator_id = ss.operator_id AND s.id = ss.signature_id
   WHERE ss.operator_id = ${operatorId}::int AND ss.package_id = ${packageId}::uuid AND ss.voided_seq IS NULL`;
  return rows.map((row) => row.id);
}
