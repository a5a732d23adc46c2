import { exampleDefinition, exampleSignature } from '@strutbook/domain/work/example-step.js';
import type { StepDefinition } from '@strutbook/domain/work/step.js';
import type { StepFacts, StepSignatureFacts } from '@strutbook/domain/work/step-standing.js';

/** A step with nothing in it but what is given; its present content has the hash 'now'. */
export function stepWith(
  definition: Partial<StepDefinition>,
  of: Partial<Omit<StepFacts, 'definition'>> = {},
): StepFacts {
  return {
    id: definition.key ?? 'step',
    contentHash: 'now',
    entries: [],
    signatures: [],
    ...of,
    definition: exampleDefinition(definition),
  };
}

/** A person's signature of the work on the present content, unless given otherwise. */
export function signedBy(personId: string, of: Partial<StepSignatureFacts> = {}): StepSignatureFacts {
  return exampleSignature({ id: `by ${personId}`, personId, personName: personId, ...of });
}
