import { describe, expect, it } from '@jest/globals';
import { startOfDay } from '../units/calendar.js';
import { later } from '../units/minutes.js';
import type { StepEntry } from './entry.js';
import { judgement } from './judgement.js';
import type { StepDefinition } from './step.js';
import { stepContent, stepStatement } from './step-content.js';

const step: StepDefinition = {
  key: 'count-tags',
  number: 7,
  group: 'make-safe',
  title: 'Pull and tag the breakers.',
  text: null,
  cautions: [],
  source: { document: 'Maintenance manual 71-00-02', revision: '14' },
  waitsFor: [],
  inspection: 'independent',
  captures: [{ kind: 'count', key: 'tags', label: 'Tags hung', what: 'tags', direction: 'out' }],
  opens: [],
  closes: [],
  moves: null,
};
const entry: StepEntry = {
  id: 'e1',
  capture: 'tags',
  point: null,
  kind: 'count',
  typed: { kind: 'count', number: '14' },
  judgement: judgement([]),
  tool: null,
  personId: 'ann',
  personName: 'Ann',
};

describe('the content of a step', () => {
  it('is its definition and its entries', () => {
    expect(stepContent(step, [entry])).toEqual({
      version: 1,
      definition: step,
      entries: [
        {
          id: 'e1',
          capture: 'tags',
          point: null,
          typed: { kind: 'count', number: '14' },
          judgement: { verdict: 'accepted', reasons: [], computed: {} },
          tool: null,
          personId: 'ann',
        },
      ],
    });
  });

  it('differs with anything in the definition, with an entry more, less, or in another order', () => {
    const other: StepEntry = { ...entry, id: 'e2', typed: { kind: 'count', number: '15' } };
    const contents = [
      stepContent(step, [entry]),
      stepContent({ ...step, title: 'Pull the breakers.' }, [entry]),
      stepContent({ ...step, cautions: ['Wait.'] }, [entry]),
      stepContent(step, []),
      stepContent(step, [other]),
      stepContent(step, [entry, other]),
      stepContent(step, [other, entry]),
      stepContent(step, [{ ...entry, tool: 'TW-7' }]),
    ].map((content) => JSON.stringify(content));
    expect(new Set(contents).size).toBe(contents.length);
  });
});

describe('the words to be signed', () => {
  const facts = {
    package: { title: 'Engine change', reference: 'WO-31', on: 'airframe ZZ-417, position 2' },
    step,
    entries: [entry],
    performedAt: later(startOfDay('2026-05-03'), 14 * 60 + 5),
    signer: { name: 'Ann', licence: 'L-5' },
  };

  it('name package, step, data, every entry as typed, time and signer', () => {
    expect(stepStatement({ ...facts, meaning: 'done' })).toBe(
      [
        'I did this step as its data says, and what is entered is what I found.',
        'Package: Engine change (WO-31), airframe ZZ-417, position 2',
        'Step 7: Pull and tag the breakers.',
        'Data: Maintenance manual 71-00-02, revision 14',
        'Tags hung: 14; accepted',
        'Performed 2026-05-03 14:05 UTC',
        'Signed by Ann, L-5',
      ].join('\n'),
    );
  });

  it('say what an inspection covers, and that it is one’s own work where it is', () => {
    const first = (of: object) => stepStatement({ ...facts, meaning: 'inspection', ...of }).split('\n')[0];
    expect(first({ doneBy: 'Bob' })).toBe(
      'I inspected the work signed by Bob, which I did not do, and found it satisfactory.',
    );
    expect(first({})).toMatch(/^I inspected the work, which I did not do/);
    expect(first({ doneBy: 'Ann', reinspectionReason: 'Nobody else on the station.' })).toBe(
      'I did this work myself and inspected it again, and found it satisfactory. Why alone: Nobody else on the station.',
    );
  });

  it('leave out what is not there', () => {
    const bare = stepStatement({
      ...facts,
      package: { ...facts.package, reference: null },
      step: { ...step, source: null },
      entries: [],
      signer: { name: 'Ann', licence: null },
      meaning: 'done',
    });
    expect(bare.split('\n').slice(1)).toEqual([
      'Package: Engine change, airframe ZZ-417, position 2',
      'Step 7: Pull and tag the breakers.',
      'Performed 2026-05-03 14:05 UTC',
      'Signed by Ann',
    ]);
  });
});
