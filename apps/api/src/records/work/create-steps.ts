import type { StepDefinition } from '@strutbook/domain/work/step.js';
import { canonical } from '@strutbook/journal/canonical.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { plainJson } from '../journal/plain-json.js';
import { hashOfStep } from './step-records.js';

/** Adds steps to an open package and answers their ids in order. */
export async function createSteps(
  tx: Tx,
  operatorId: number,
  {
    packageId,
    number,
    definitions,
  }: {
    readonly packageId: string;
    readonly number: bigint;
    readonly definitions: readonly StepDefinition[];
  },
): Promise<string[]> {
  const rows = definitions.map((definition) => ({
    operatorId,
    id: newId(),
    packageId,
    key: definition.key,
    number: definition.number,
    definition: canonical(plainJson(definition)),
    contentHash: hashOfStep(definition, []),
    recordedSeq: number,
  }));
  await tx.workStep.createMany({ data: rows });
  return rows.map((row) => row.id);
}
