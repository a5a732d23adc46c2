import type { Step } from '../work/work-shapes.js';
import { countedSoFar, soFarWords } from './counted-so-far.js';

const step = (key: string, numbers: readonly (readonly [string, 'accepted' | 'rejected', boolean])[]): Step =>
  ({
    definition: { captures: [{ kind: 'count', key, label: key, what: 'blanks', direction: 'in' }] },
    entries: numbers.map(([number, verdict, voided]) => ({
      capture: key,
      point: null,
      typed: { kind: 'count', number },
      judgement: { verdict },
      voided,
    })),
  }) as unknown as Step;

describe('what was counted so far', () => {
  it('sums the last accepted count of each step and tells how many are to come', () => {
    const steps = [
      step('ducts', [
        ['abc', 'rejected', false],
        ['99', 'accepted', true],
        ['9', 'accepted', false],
      ]),
      step('lines', [['12', 'accepted', false]]),
      step('plugs', []),
    ];
    const sum = countedSoFar(steps, 'blanks', 'in');
    expect(sum).toEqual({ number: 21, toCome: 1, asked: 3 });
    expect(soFarWords(sum)).toBe('21, 1 count to come');
  });

  it('is not a zero where nothing was counted', () => {
    expect(soFarWords(countedSoFar([step('ducts', [])], 'blanks', 'in'))).toBe('not counted');
    expect(soFarWords(countedSoFar([], 'tools', 'out'))).toBe('not counted');
  });
});
