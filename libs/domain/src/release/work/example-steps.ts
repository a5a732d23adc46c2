import type { Capture } from '../../work/capture.js';
import type { EntryReasonCode, StepEntry, Typed } from '../../work/entry.js';
import { exampleDefinition, exampleSignature } from '../../work/example-step.js';
import { judgement } from '../../work/judgement.js';
import type { StepDefinition } from '../../work/step.js';
import type { StepFacts, StepSignatureFacts } from '../../work/step-standing.js';
import { objectionText } from '../objection-text.js';
import { NO_WORK, type WorkSnapshot } from '../work-snapshot.js';
import { objectionsToWork } from './objections-to-work.js';

// Steps in order, from which the tests beside this file depart.

const definition = (change: Partial<StepDefinition> = {}): StepDefinition =>
  exampleDefinition({
    key: 'bolts',
    number: 12,
    group: 'mounts',
    title: 'Torque the mount bolts',
    ...change,
  });
export const signature = (change: Partial<StepSignatureFacts> = {}): StepSignatureFacts =>
  exampleSignature({ id: 'done-1', personName: 'Ann Able', ...change });
export const inspected = (change: Partial<StepSignatureFacts> = {}) =>
  signature({
    id: 'seen-1',
    meaning: 'inspection',
    coversId: 'done-1',
    personId: 'ben',
    personName: 'Ben Bold',
    ...change,
  });
export const step = ({
  of = {},
  ...change
}: Partial<StepFacts> & { of?: Partial<StepDefinition> } = {}): StepFacts => ({
  id: 'step-12',
  definition: definition(of),
  contentHash: 'now',
  entries: [],
  signatures: [signature()],
  ...change,
});
export const held = (work: Partial<WorkSnapshot>, onePersonReinspection = false) => {
  const objections = objectionsToWork({ ...NO_WORK, ...work }, { packageId: 'w', onePersonReinspection });
  // Words that lack a value would say so on the screen; those of a reason are tested where they are made.
  const told = objections.map(({ code, detail }) =>
    objectionText({ code, detail: { ...detail, ...(detail['why'] === undefined ? {} : { why: '' }) } }),
  );
  if (JSON.stringify(told).includes('undefined')) throw new Error(JSON.stringify(told));
  return objections;
};
export const codes = (work: Partial<WorkSnapshot>, onePersonReinspection = false) =>
  held(work, onePersonReinspection).map(({ code, severity }) => [code, severity]);
export const words = (work: Partial<WorkSnapshot>) => held(work).map(objectionText);

let made = 0;
export const entry = (
  typed: Typed,
  reasons: readonly EntryReasonCode[] = [],
  change: Partial<StepEntry> = {},
): StepEntry => {
  made += 1;
  return {
    id: `entry-${made}`,
    capture: 'c',
    point: typed.kind === 'torque' ? typed.point : null,
    kind: typed.kind,
    typed,
    judgement: judgement(reasons.map((code) => ({ code, detail: {} }))),
    tool: null,
    personId: 'ann',
    personName: 'Ann Able',
    ...change,
  };
};
export const capture = (change: object): Capture =>
  ({ key: 'c', label: 'Forward mount', ...change }) as Capture;
