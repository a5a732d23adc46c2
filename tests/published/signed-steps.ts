import { instant } from '@strutbook/domain/units/minutes.js';
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
    definition: {
      key: 'step',
      number: 1,
      group: 'group',
      title: 'Do it.',
      text: null,
      cautions: [],
      source: null,
      waitsFor: [],
      inspection: 'none',
      captures: [],
      opens: [],
      closes: [],
      moves: null,
      ...definition,
    },
  };
}

/** A person's signature of the work on the present content, unless given otherwise. */
export function signedBy(personId: string, of: Partial<StepSignatureFacts> = {}): StepSignatureFacts {
  return {
    id: `by ${personId}`,
    meaning: 'done',
    coversId: null,
    contentHash: 'now',
    personId,
    personName: personId,
    licence: null,
    performedAt: instant(0),
    signedAt: instant(0),
    undone: false,
    reinspection: false,
    ...of,
  };
}
