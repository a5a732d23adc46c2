import { createHash } from 'node:crypto';
import type { StepEntry } from '@strutbook/domain/work/entry.js';
import type { StepDefinition } from '@strutbook/domain/work/step.js';
import { stepContent } from '@strutbook/domain/work/step-content.js';
import type { StepFacts } from '@strutbook/domain/work/step-standing.js';
import { canonical, type Json } from '@strutbook/journal/canonical.js';
import type { Tx } from '../../platform/database/database.js';
import { Prisma } from '../../platform/database/generated/client.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { type KeptStep, keptStep, type StepRow, stepFacts } from './kept-step.js';
import { entryJson, SIGNATURE_JSON } from './kept-step.sql.js';
import { lockOpenPackage } from './package-head.js';

const WITH_PHOTO = entryJson(
  '(SELECT ph.id FROM step_photo ph WHERE ph.operator_id = e.operator_id AND ph.entry_id = e.id)',
);

/** A step under its lock, with all steps of its package as they stand. */
export interface LockedStep {
  readonly packageId: string;
  readonly step: KeptStep;
  readonly all: readonly KeptStep[];
}

/** The steps of a package as the core judges them, in their order, in one statement. */
export async function loadSteps(tx: Tx, operatorId: number, packageId: string): Promise<StepFacts[]> {
  return (await loadKeptSteps(tx, operatorId, packageId)).map(stepFacts);
}

/** The steps of a package in their order with all that is kept of them, voided and undone too, in one statement. */
export function loadKeptSteps(tx: Tx, operatorId: number, packageId: string): Promise<KeptStep[]> {
  return loadStepsOfPackages(tx, operatorId, [packageId]);
}

/** The same of several packages at once, package by package. */
export function loadStepsOfPackages(
  tx: Tx,
  operatorId: number,
  packageIds: readonly string[],
): Promise<KeptStep[]> {
  return stepsWhere(tx, operatorId, Prisma.sql`w.package_id = ANY (${[...packageIds]}::uuid[])`);
}

async function stepsWhere(tx: Tx, operatorId: number, which: Prisma.Sql): Promise<KeptStep[]> {
  const rows = await tx.$queryRaw<StepRow[]>`
    SELECT w.id, w.package_id AS "packageId", w.version, encode(w.content_hash, 'hex') AS "contentHash", w.definition,
      coalesce((SELECT json_agg(${WITH_PHOTO} ORDER BY e.recorded_seq, e.id)
        FROM step_entry e LEFT JOIN tool t ON t.operator_id = e.operator_id AND t.id = e.tool_id
       WHERE e.operator_id = w.operator_id AND e.step_id = w.id), '[]') AS entries,
      coalesce((SELECT json_agg(${SIGNATURE_JSON} ORDER BY ss.recorded_seq, ss.id)
        FROM step_signature ss JOIN signature s ON s.operator_id = ss.operator_id AND s.id = ss.signature_id
       WHERE ss.operator_id = w.operator_id AND ss.step_id = w.id), '[]') AS signatures
    FROM work_step w WHERE w.operator_id = ${operatorId}::int AND ${which}
    ORDER BY w.package_id, w.number`;
  return rows.map(keptStep);
}

/** The package of a step and what it moves, neither of which ever changes. Refuses: NOT_FOUND. */
export async function outlineOfStep(
  tx: Tx,
  operatorId: number,
  stepId: string,
): Promise<{ readonly packageId: string; readonly moves: StepDefinition['moves'] }> {
  const where = { operatorId_id: { operatorId, id: stepId } };
  const row = await tx.workStep.findUnique({ where, select: { packageId: true, definition: true } });
  const { packageId, definition } = orNotFound(row, 'step');
  return { packageId, moves: (JSON.parse(definition) as StepDefinition).moves };
}

/** The step of that id. Refuses: NOT_FOUND. */
export function stepIn<S extends { readonly id: string }>(steps: readonly S[], id: string): S {
  return orNotFound(
    steps.find((each) => each.id === id),
    'step',
  );
}

/**
 * Locks the step's package against release and withdrawal, then the step, and reads. Airframe heads and components,
 * where they are needed, are locked before.
 * Refuses: NOT_FOUND, WRONG_STATE when the package is not open.
 */
export async function loadStepForUpdate(tx: Tx, operatorId: number, stepId: string): Promise<LockedStep> {
  const { packageId } = await outlineOfStep(tx, operatorId, stepId);
  await lockOpenPackage(tx, operatorId, packageId);
  await tx.$queryRaw`SELECT id FROM work_step
    WHERE operator_id = ${operatorId}::int AND id = ${stepId}::uuid FOR NO KEY UPDATE`;
  const all = await loadKeptSteps(tx, operatorId, packageId);
  return { packageId, step: stepIn(all, stepId), all };
}

/** SHA-256 of a step's content: its definition and its entries that are not voided. Total. */
export function hashOfStep(
  definition: StepDefinition,
  entries: readonly StepEntry[],
): Uint8Array<ArrayBuffer> {
  const content = JSON.parse(JSON.stringify(stepContent(definition, entries))) as Json;
  return new Uint8Array(createHash('sha256').update(canonical(content)).digest());
}

/** Writes the hash of the step's content as it now stands and raises its version; the step's lock is held. */
export async function rehash(tx: Tx, operatorId: number, { id }: Pick<KeptStep, 'id'>): Promise<KeptStep> {
  const step = stepIn(await stepsWhere(tx, operatorId, Prisma.sql`w.id = ${id}::uuid`), id);
  const { definition, entries } = stepFacts(step);
  const contentHash = hashOfStep(definition, entries);
  const where = { operatorId_id: { operatorId, id } };
  const { version } = await tx.workStep.update({
    where,
    data: { contentHash, version: { increment: 1 } },
    select: { version: true },
  });
  return { ...step, version, contentHash: Buffer.from(contentHash).toString('hex') };
}

/** Raises a step's version where its content stays: a signature was given or undone. The step's lock is held. */
export async function touchStep(tx: Tx, operatorId: number, stepId: string): Promise<number> {
  const { version } = await tx.workStep.update({
    where: { operatorId_id: { operatorId, id: stepId } },
    data: { version: { increment: 1 } },
    select: { version: true },
  });
  return version;
}
