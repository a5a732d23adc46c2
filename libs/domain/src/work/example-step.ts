import { instant } from '../units/minutes.js';
import type { StepDefinition } from './step.js';
import type { StepSignatureFacts } from './step-facts.js';

// A step and a signature in order, from which tests depart.

/** A step that asks for nothing but what is given. Total. */
export function exampleDefinition(of: Partial<StepDefinition> = {}): StepDefinition {
  return {
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
    ...of,
  };
}

/** Ann's signature of the work on content whose hash is 'now', unless given otherwise. Total. */
export function exampleSignature(of: Partial<StepSignatureFacts> = {}): StepSignatureFacts {
  return {
    id: 'd',
    meaning: 'done',
    coversId: null,
    contentHash: 'now',
    personId: 'ann',
    personName: 'Ann',
    licence: null,
    performedAt: instant(0),
    signedAt: instant(1),
    undone: false,
    reinspection: false,
    ...of,
  };
}
