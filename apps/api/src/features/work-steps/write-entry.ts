import type { Capture } from '@strutbook/domain/work/capture.js';
import type { Judgement, Typed } from '@strutbook/domain/work/entry.js';
import { canonical } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { plainJson } from '../../records/journal/plain-json.js';
import type { LockedStep } from '../../records/work/step-records.js';

interface EntryToWrite {
  readonly locked: LockedStep;
  readonly capture: Capture;
  readonly typed: Typed;
  readonly toolId: string | null;
  readonly judgement: Judgement;
  readonly componentId: string | null;
  readonly at: Date;
  readonly number: bigint;
}

/** An entry as the journal tells it. */
export interface WrittenEntry {
  readonly id: string;
  readonly capture: string;
  readonly typed: Typed;
  readonly judgement: Judgement;
  readonly toolId: string | null;
  readonly componentId: string | null;
}

/** Keeps an entry exactly as typed, with what was made of it. */
export async function writeEntry(
  tx: Tx,
  { operatorId, personId, fullName }: Actor,
  { locked, capture, typed, toolId, judgement, componentId, at, number }: EntryToWrite,
): Promise<WrittenEntry> {
  const id = newId();
  await tx.stepEntry.create({
    data: {
      operatorId,
      id,
      packageId: locked.packageId,
      stepId: locked.step.id,
      capture: capture.key,
      point: typed.kind === 'torque' ? typed.point : null,
      kind: capture.kind,
      typed: canonical(plainJson(typed)),
      judged: canonical(plainJson(judgement)),
      verdict: judgement.verdict,
      toolId,
      componentId,
      personId,
      personName: fullName,
      enteredAt: at,
      recordedSeq: number,
    },
  });
  return { id, capture: capture.key, typed, judgement, toolId, componentId };
}

/** What an act in a step concerns: the package, the step, what the package is on, and these components. */
export async function aboutStep(
  tx: Tx,
  operatorId: number,
  { packageId, step }: LockedStep,
  componentIds: readonly (string | null)[],
): Promise<string[]> {
  const { airframeId, componentId } = await tx.workPackage.findUniqueOrThrow({
    where: { operatorId_id: { operatorId, id: packageId } },
    select: { airframeId: true, componentId: true },
  });
  const about = [packageId, step.id, airframeId, componentId, ...componentIds];
  return [...new Set(about.filter((each) => each !== null))];
}
