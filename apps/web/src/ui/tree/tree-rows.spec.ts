import { describe, expect, test } from '@jest/globals';
import { type Branch, idsOfOpenable, moveFrom, visibleRows } from './tree-rows.js';

const leaf = (id: string, ...words: string[]): Branch => ({ id, words, branches: [] });
const TREE: readonly Branch[] = [
  {
    id: 'hpt',
    words: ['HPT module', 'M2-118'],
    branches: [leaf('d1', 'D77120'), leaf('d2', 'D77233')],
  },
  { id: 'lpt', words: ['LPT module', 'M3-004'], branches: [leaf('d3', 'D80114')] },
  leaf('spare', 'S1'),
];

function press(from: string, key: string, closed: readonly string[] = [], typed = '') {
  const rows = visibleRows(TREE, new Set(closed));
  const row = rows.find(({ branch }) => branch.id === from);
  if (row === undefined) throw new Error(`${from} is not in sight`);
  return moveFrom({ rows, from: row, key, typing: (letter) => typed + letter });
}

describe('the rows of a tree', () => {
  test('are in sight while all above them are open', () => {
    expect(visibleRows(TREE, new Set()).map(({ branch }) => branch.id)).toEqual([
      'hpt',
      'd1',
      'd2',
      'lpt',
      'd3',
      'spare',
    ]);
    expect(visibleRows(TREE, new Set(['hpt'])).map(({ branch, open }) => [branch.id, open])).toEqual([
      ['hpt', false],
      ['lpt', true],
      ['d3', null],
      ['spare', null],
    ]);
    expect(idsOfOpenable(TREE)).toEqual(['hpt', 'lpt']);
  });

  test('say their level and their place among those beside them', () => {
    const [, first, second] = visibleRows(TREE, new Set());
    expect([first?.level, first?.place, first?.of]).toEqual([2, 1, 2]);
    expect([second?.level, second?.place, second?.of]).toEqual([2, 2, 2]);
  });
});

describe('the keys of a tree', () => {
  test('walk, and stop at the ends', () => {
    expect(press('hpt', 'ArrowDown')).toEqual({ kind: 'go', id: 'd1' });
    expect(press('hpt', 'ArrowUp')).toBeNull();
    expect(press('hpt', 'End')).toEqual({ kind: 'go', id: 'spare' });
    expect(press('spare', 'Home')).toEqual({ kind: 'go', id: 'hpt' });
  });

  test('open, go in, close and go out', () => {
    expect(press('hpt', 'ArrowRight', ['hpt'])).toEqual({ kind: 'open', ids: ['hpt'] });
    expect(press('hpt', 'ArrowRight')).toEqual({ kind: 'go', id: 'd1' });
    expect(press('hpt', 'ArrowLeft')).toEqual({ kind: 'close', ids: ['hpt'] });
    expect(press('d2', 'ArrowLeft')).toEqual({ kind: 'go', id: 'hpt' });
    expect(press('d2', 'ArrowRight')).toBeNull();
    expect(press('spare', '*', ['hpt', 'lpt'])).toEqual({ kind: 'open', ids: ['hpt', 'lpt'] });
    expect(press('d1', 'Enter')).toEqual({ kind: 'enter' });
  });

  test('go to the row that begins with what is typed, round the end', () => {
    expect(press('hpt', 'd')).toEqual({ kind: 'go', id: 'd1' });
    expect(press('d1', 'd')).toEqual({ kind: 'go', id: 'd2' });
    expect(press('d1', '8', [], 'd')).toEqual({ kind: 'go', id: 'd3' });
    expect(press('spare', 'h')).toEqual({ kind: 'go', id: 'hpt' });
    expect(press('hpt', 'z')).toBeNull();
  });
});
