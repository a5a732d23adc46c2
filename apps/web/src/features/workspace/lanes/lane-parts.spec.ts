import { describe, expect, test } from '@jest/globals';
import type { StepDefinition, StepGroup } from '@strutbook/domain/work/step.js';
import type { Standing, Step } from '../work/work-shapes.js';
import { groupsOf, hasLanes, lanesOf, signedOf, stepNamed } from './lane-parts.js';
import { groupStanding } from './standing.js';

const group = (letter: string, lane: StepGroup['lane']): StepGroup => ({
  key: letter,
  letter,
  title: letter,
  lane,
  place: 'inlet',
});

function step(number: number, of: string, standing: Standing = 'open'): Step {
  const definition: StepDefinition = {
    key: `step-${number}`,
    number,
    group: of,
    title: `Step ${number}`,
    text: null,
    cautions: [],
    source: null,
    waitsFor: [],
    inspection: 'none',
    captures: [],
    opens: [],
    closes: [],
    moves: null,
  };
  const nothing = { blockers: [], missing: [], entries: [], signatures: [] };
  return { id: `id-${number}`, version: 1, contentHash: '', standing, definition, ...nothing };
}

const CHANGE = {
  groups: [group('A', 'both'), group('B', 'out'), group('C', 'in'), group('D', 'both'), group('E', 'in')],
  steps: [step(1, 'A', 'signed'), step(2, 'B'), step(3, 'C', 'signed'), step(4, 'D'), step(5, 'C')],
};

const told = (work: typeof CHANGE) =>
  lanesOf(work).map(({ name, groups }) => [name, groups.map(({ letter }) => letter).join('')]);

describe('the lanes of a package', () => {
  test('are out and in, with what belongs to neither before and after them', () => {
    expect(told(CHANGE)).toEqual([
      ['before', 'A'],
      ['out', 'B'],
      ['in', 'C'],
      ['after', 'D'],
    ]);
  });

  test('are one list where nothing goes out or in', () => {
    const plain = { groups: [group('A', 'both')], steps: [step(1, 'A')] };
    expect(hasLanes(plain)).toBe(false);
    expect(lanesOf(plain).map(({ name }) => name)).toEqual(['after']);
  });

  test('leave out no step: one added later stands in a group of its own', () => {
    const added = { ...CHANGE, steps: [...CHANGE.steps, step(6, 'none of these')] };
    expect(groupsOf(added).at(-1)).toMatchObject({ title: 'Added steps', steps: [{ id: 'id-6' }] });
  });

  test('count what is signed', () => {
    expect(signedOf(lanesOf(CHANGE).flatMap(({ groups }) => groups))).toEqual({ signed: 2, total: 5 });
  });
});

describe('how a group stands', () => {
  test('is the worst that somebody can act on; signed only when all of it is', () => {
    expect(groupStanding([step(1, 'A', 'signed'), step(2, 'A', 'blocked')])).toBe('blocked');
    expect(groupStanding([step(1, 'A', 'open'), step(2, 'A', 'rejected')])).toBe('rejected');
    expect(groupStanding([step(1, 'A', 'signed')])).toBe('signed');
  });
});

describe('a step in an address', () => {
  test('is found by its id, its key or its number', () => {
    for (const name of ['id-3', 'step-3', '3']) expect(stepNamed(CHANGE.steps, name)?.id).toBe('id-3');
    expect(stepNamed(CHANGE.steps, '33')).toBeNull();
    expect(stepNamed(CHANGE.steps, undefined)).toBeNull();
  });
});
