import {
  type CountingSignatures,
  countingSignatures,
  missingEntries,
  type StepFacts,
  type StepSignatureFacts,
} from '../../work/step-standing.js';
import type { Objection } from '../objection.js';
import { heldAgainstStep } from './held-against-step.js';

/**
 * What is held against the signatures of a step: not signed for its present content, not inspected where that is asked,
 * or inspected by who did the work. Total.
 */
export function objectionsToStep(step: StepFacts, onePersonReinspection: boolean): readonly Objection[] {
  const { done, inspection } = countingSignatures(step);
  if (done === null)
    return [heldAgainstStep(step, 'STEP_UNSIGNED', { detail: { signedBefore: signedBefore(step) } })];
  const missing = missingEntries(step).filter(({ code }) => code === 'CAPTURE_MISSING');
  return [
    ...missing.map(({ label, point }) =>
      heldAgainstStep(step, 'CAPTURE_MISSING', { detail: { label, point } }),
    ),
    ...(step.definition.inspection === 'independent'
      ? objectionsToInspection(step, { done, inspection, onePersonReinspection })
      : []),
  ];
}

interface Inspected extends CountingSignatures {
  readonly done: StepSignatureFacts;
  readonly onePersonReinspection: boolean;
}

function objectionsToInspection(
  step: StepFacts,
  { done, inspection, onePersonReinspection }: Inspected,
): readonly Objection[] {
  const own = step.signatures.some(
    ({ meaning, undone, coversId, personId }) =>
      meaning === 'inspection' && !undone && coversId === done.id && personId === done.personId,
  );
  const detail = { person: done.personName };
  if (inspection === null)
    return [heldAgainstStep(step, own ? 'INSPECTION_BY_SAME_PERSON' : 'INSPECTION_MISSING', { detail })];
  if (inspection.personId !== done.personId) return [];
  return onePersonReinspection
    ? [heldAgainstStep(step, 'ONE_PERSON_REINSPECTION', { detail, severity: 'advisory' })]
    : [heldAgainstStep(step, 'INSPECTION_BY_SAME_PERSON', { detail })];
}

/** Who signed what the step held before it was changed; null when nobody did, or it was undone. */
function signedBefore({ signatures, contentHash }: StepFacts): string | null {
  const before = signatures.findLast(
    (signature) => signature.meaning === 'done' && !signature.undone && signature.contentHash !== contentHash,
  );
  return before?.personName ?? null;
}
