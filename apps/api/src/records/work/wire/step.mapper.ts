import {
  blockersOf,
  countingSignatures,
  missingEntries,
  type StepFacts,
  standingOf,
} from '@strutbook/domain/work/step-standing.js';
import { instantToWire } from '../../../platform/http/instants.js';
import { type KeptSignature, type KeptStep, stepFacts } from '../kept-step.js';
import type { StepDefinitionDto } from './procedure-content.dto.js';
import type { JudgementDto, MissingDto, ShownSignatureDto, StepDto } from './step.dto.js';

/** A step as it stands among all steps of its package. Total. */
export function stepToWire(step: KeptStep, all: readonly KeptStep[]): StepDto {
  return stepAmong(step, all.map(stepFacts));
}

/** All steps of a package as they stand. Total. */
export function stepsToWire(all: readonly KeptStep[]): StepDto[] {
  const facts = all.map(stepFacts);
  return all.map((step) => stepAmong(step, facts));
}

function stepAmong(step: KeptStep, all: readonly StepFacts[]): StepDto {
  const facts = stepFacts(step);
  const { done, inspection } = countingSignatures(facts);
  const counting = new Set([done?.id, inspection?.id]);
  return {
    id: step.id,
    packageId: step.packageId,
    version: step.version,
    contentHash: step.contentHash,
    standing: standingOf(facts, all),
    blockers: blockersOf(facts, all),
    missing: missingEntries(facts) as unknown as MissingDto[],
    definition: step.definition as unknown as StepDefinitionDto,
    entries: step.entries.map(({ typed, judgement, ...entry }) => ({
      ...entry,
      typed: typed as StepDto['entries'][number]['typed'],
      judgement: judgement as unknown as JudgementDto,
    })),
    signatures: step.signatures.map((signature) => shown(signature, counting.has(signature.id))),
  };
}

function shown(signature: KeptSignature, counts: boolean): ShownSignatureDto {
  return {
    id: signature.id,
    meaning: signature.meaning,
    coversId: signature.coversId,
    personId: signature.personId,
    personName: signature.personName,
    licence: signature.licence,
    method: signature.method,
    performedAt: instantToWire(signature.performedAt),
    signedAt: instantToWire(signature.signedAt),
    contentHash: signature.contentHash,
    undone: signature.undone,
    undoneReason: signature.undoneReason,
    reinspectionReason: signature.reinspectionReason,
    counts,
  };
}
