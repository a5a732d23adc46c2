import { describe, expect, it } from '@jest/globals';
import { countsOf, openItems } from './accounts.js';
import type { CountCapture } from './capture.js';
import { exampleDefinition, exampleSignature } from './example-step.js';
import type { AccountableItem, StepDefinition } from './step.js';
import type { StepFacts } from './step-standing.js';

type Signed = 'unsigned' | 'signed' | 'changed' | 'undone';

function step(
  key: string,
  of: Partial<StepDefinition>,
  signed: Signed,
  entries: StepFacts['entries'] = [],
): StepFacts {
  const signature = exampleSignature({
    contentHash: signed === 'changed' ? 'before' : 'now',
    undone: signed === 'undone',
  });
  return {
    id: key,
    definition: exampleDefinition({ key, ...of }),
    contentHash: 'now',
    entries,
    signatures: signed === 'unsigned' ? [] : [signature],
  };
}

describe('what was opened', () => {
  const cowl: AccountableItem = { key: 'cowl', kind: 'cowl', name: 'Fan cowl', side: 'left' };
  const open = (opened: Signed, closed: Signed) =>
    openItems(
      [cowl],
      [
        step('open', { opens: ['cowl'], number: 1 }, opened),
        step('close', { closes: ['cowl'], number: 2 }, closed),
      ],
    ).map(({ item, openedBy }) => `${item.key} by ${openedBy.id}`);

  it('is open until a step that closes it counts', () => {
    expect(open('unsigned', 'unsigned')).toEqual([]);
    expect(open('signed', 'unsigned')).toEqual(['cowl by open']);
    expect(open('signed', 'signed')).toEqual([]);
  });

  it('stays open though the content of the opening step changed, and when the closing does not count', () => {
    expect(open('changed', 'unsigned')).toEqual(['cowl by open']);
    expect(open('signed', 'changed')).toEqual(['cowl by open']);
    expect(open('signed', 'undone')).toEqual(['cowl by open']);
  });

  it('and closed and opened again is open', () => {
    const again = [
      step('open', { opens: ['cowl'], number: 1 }, 'signed'),
      step('close', { closes: ['cowl'], number: 2 }, 'signed'),
      step('again', { opens: ['cowl'], number: 3 }, 'signed'),
    ];
    expect(openItems([cowl], again).map(({ openedBy }) => openedBy.id)).toEqual(['again']);
    expect(openItems([cowl], [...again, step('shut', { closes: ['cowl'], number: 4 }, 'signed')])).toEqual(
      [],
    );
  });

  it('is not open when the opening was undone', () => {
    expect(open('undone', 'unsigned')).toEqual([]);
  });
});

describe('tags, blanks and tools', () => {
  const counted = (
    direction: 'out' | 'in',
    ...numbers: (readonly [string, 'accepted' | 'rejected'])[]
  ): StepFacts => {
    const capture: CountCapture = { kind: 'count', key: 'n', label: 'Blanks', what: 'blanks', direction };
    const entries = numbers.map(([number, verdict], index) => ({
      id: `${index}`,
      capture: 'n',
      point: null,
      kind: 'count' as const,
      typed: { kind: 'count' as const, number },
      judgement: { verdict, reasons: [], computed: {} },
      tool: null,
      personId: 'ann',
      personName: 'Ann',
    }));
    return step(direction, { captures: [capture] }, 'unsigned', entries);
  };

  it('are added up over the steps, out and in', () => {
    expect(
      countsOf([
        counted('out', ['12', 'accepted']),
        counted('out', ['2', 'accepted']),
        counted('in', ['9', 'accepted'], ['13', 'accepted']),
      ]),
    ).toEqual([{ what: 'blanks', out: 14, in: 13 }]);
  });

  it('are unknown, not none, while a count is missing or rejected', () => {
    expect(countsOf([counted('out', ['12', 'accepted']), counted('out')])).toEqual([
      { what: 'blanks', out: null, in: null },
    ]);
    expect(countsOf([counted('out', ['12', 'accepted'], ['x', 'rejected'])])).toEqual([
      { what: 'blanks', out: null, in: null },
    ]);
    expect(countsOf([counted('out', ['0', 'accepted']), counted('in', ['0', 'accepted'])])).toEqual([
      { what: 'blanks', out: 0, in: 0 },
    ]);
  });

  it('are told only where a step counts them', () => {
    expect(countsOf([step('a', {}, 'signed')])).toEqual([]);
  });
});
