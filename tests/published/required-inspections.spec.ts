import { describe, expect, it } from '@jest/globals';
import { isFinished, mayInspect, standingOf } from '@strutbook/domain/work/step-standing.js';
import { signedBy, stepWith } from './signed-steps.js';

const inspectedBy = (personId: string, reinspection: boolean) =>
  stepWith(
    { inspection: 'independent' },
    {
      signatures: [
        signedBy('ann'),
        signedBy(personId, { id: 'inspection', meaning: 'inspection', coversId: 'by ann', reinspection }),
      ],
    },
  );

/** Source: 14 CFR 121.371: who performed an item does not perform its required inspection. Persons invented. */
describe('a required inspection (14 CFR 121.371)', () => {
  it('by the person who did the work does not count', () => {
    const step = inspectedBy('ann', false);
    expect(mayInspect(signedBy('ann'), 'ann', false)).toBe(false);
    expect(isFinished(step)).toBe(false);
    expect(standingOf(step, [step])).toBe('to-inspect');
  });

  it('by another person counts', () => {
    expect(mayInspect(signedBy('ann'), 'bob', false)).toBe(true);
    expect(isFinished(inspectedBy('bob', false))).toBe(true);
  });
});

/** Source: AMC M.A.402(h) of Reg. (EU) 1321/2014: in unforeseen circumstances one person may re-inspect, recorded. */
describe('a one-person re-inspection (AMC M.A.402)', () => {
  it('counts when it is recorded as one', () => {
    expect(isFinished(inspectedBy('ann', true))).toBe(true);
  });
});

/** Source: FAA AC 120-78, from memory: a record that is changed later does not carry the old signature. */
describe('a signed step that is edited (FAA AC 120-78, from memory)', () => {
  it('keeps its signature to be seen, and is to be signed again', () => {
    const edited = stepWith(
      {},
      { contentHash: 'now', signatures: [signedBy('ann', { contentHash: 'before' })] },
    );
    expect(standingOf(edited, [edited])).toBe('changed');
    expect(edited.signatures).toHaveLength(1);
    const signedAgain = { ...edited, signatures: [...edited.signatures, signedBy('ann', { id: 'again' })] };
    expect(standingOf(signedAgain, [signedAgain])).toBe('signed');
  });
});
