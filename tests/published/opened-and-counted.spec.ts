import { describe, expect, it } from '@jest/globals';
import { mayBeReleased } from '@strutbook/domain/release/check-release.js';
import { NO_WORK } from '@strutbook/domain/release/work-snapshot.js';
import { countsOf, openItems } from '@strutbook/domain/work/accounts.js';
import type { StepFacts } from '@strutbook/domain/work/step-standing.js';
import { heldAgainst } from './release-with.js';
import { signedBy, stepWith } from './signed-steps.js';

/**
 * Source: AAIB AAR 1/2015 (both engines' fan cowls left unlatched) and EASA SIB 2015-15 (opening them was not
 * recorded). The steps are invented.
 */
describe('a cowl opened in the work (AAIB AAR 1/2015; EASA SIB 2015-15)', () => {
  const cowl = { key: 'cowl', kind: 'cowl', name: 'Fan cowl', side: 'left' } as const;
  const opened = stepWith({ key: 'open', opens: ['cowl'] }, { signatures: [signedBy('ann')] });
  const close = stepWith({ key: 'close', number: 2, closes: ['cowl'] });

  it('is open until the step that closes it is signed', () => {
    expect(openItems([cowl], [opened, close]).map(({ item }) => item.key)).toEqual(['cowl']);
    expect(openItems([cowl], [opened, { ...close, signatures: [signedBy('bob')] }])).toEqual([]);
  });

  it('blocks the release until then', () => {
    const check = (steps: readonly StepFacts[]) =>
      heldAgainst({ work: { ...NO_WORK, items: [cowl], steps } });
    expect(check([opened]).map(({ code }) => code)).toEqual(['ITEM_OPEN']);
    expect(mayBeReleased(check([opened]))).toBe(false);
    expect(check([opened, { ...close, signatures: [signedBy('bob')] }])).toEqual([]);
  });
});

/** Source: 145.A.48 of Reg. (EU) 1321/2014; AAIB AAR 3/96 (a blanking plug left in an oil line). Numbers invented. */
describe('blanks put on and taken off (145.A.48; AAIB AAR 3/96)', () => {
  const counted = (direction: 'out' | 'in', number: string) =>
    stepWith(
      { captures: [{ kind: 'count', key: 'n', label: 'Blanks', what: 'blanks', direction }] },
      {
        entries: [
          {
            id: number,
            capture: 'n',
            point: null,
            kind: 'count',
            typed: { kind: 'count', number },
            judgement: { verdict: 'accepted', reasons: [], computed: {} },
            tool: null,
            personId: 'ann',
            personName: 'ann',
          },
        ],
      },
    );

  it('14 out and 13 in leave one unaccounted for', () => {
    expect(countsOf([counted('out', '14'), counted('in', '13')])).toEqual([
      { what: 'blanks', out: 14, in: 13 },
    ]);
  });

  it('block the release until they agree', () => {
    const check = (back: string) => {
      const steps = [counted('out', '14'), counted('in', back)].map((step, index) => ({
        ...step,
        id: `step ${index}`,
        signatures: [signedBy('ann')],
      }));
      return heldAgainst({ work: { ...NO_WORK, steps } });
    };
    expect(check('13').map(({ code, detail }) => [code, detail['out'], detail['in']])).toEqual([
      ['COUNTS_DIFFER', 14, 13],
    ]);
    expect(mayBeReleased(check('13'))).toBe(false);
    expect(check('14')).toEqual([]);
  });
});
