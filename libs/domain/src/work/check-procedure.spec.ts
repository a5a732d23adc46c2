import { describe, expect, it } from '@jest/globals';
import type { Capture, TorqueCapture } from './capture.js';
import { checkProcedure } from './check-procedure.js';
import { exampleDefinition } from './example-step.js';
import type { ProcedureContent, StepDefinition } from './step.js';

const step = (number: number, of: Partial<StepDefinition> = {}): StepDefinition =>
  exampleDefinition({ key: `step-${number}`, number, group: 'a', ...of });
const procedure = (...steps: StepDefinition[]): ProcedureContent => ({
  groups: [{ key: 'a', letter: 'A', title: 'Group', lane: 'out', place: 'ground' }],
  items: [{ key: 'cowl', kind: 'cowl', name: 'Fan cowl', side: 'left' }],
  steps,
});
const found = (content: ProcedureContent) =>
  checkProcedure(content).map(({ code, field }) => `${code} ${field}`);
const capture = (of: Capture) => found(procedure(step(1, { captures: [of] })));

describe('a procedure', () => {
  it('in order has nothing against it', () => {
    expect(
      found(procedure(step(1, { opens: ['cowl'] }), step(2, { waitsFor: ['step-1'], closes: ['cowl'] }))),
    ).toEqual([]);
  });

  it('has steps', () => {
    expect(found(procedure())).toEqual(['NO_STEPS steps']);
  });

  it('has every key once, and numbers from 1', () => {
    expect(found(procedure(step(1), step(2, { key: 'step-1' })))).toEqual(['KEY_TWICE steps[1].key']);
    expect(found(procedure(step(2), step(2, { key: 'b' })))).toEqual(['NUMBER_OUT_OF_LINE steps[0].number']);
    const twice = procedure(step(1));
    expect(found({ ...twice, groups: [...twice.groups, ...twice.groups] })).toEqual([
      'KEY_TWICE groups[1].key',
    ]);
  });

  it('has steps that wait for earlier ones, in groups that are there', () => {
    expect(found(procedure(step(1, { waitsFor: ['step-2'] }), step(2)))).toEqual([
      'WAITS_FOR_LATER steps[0].waitsFor',
    ]);
    expect(found(procedure(step(1, { waitsFor: ['step-1'] })))).toEqual([
      'WAITS_FOR_LATER steps[0].waitsFor',
    ]);
    expect(found(procedure(step(1, { waitsFor: ['nowhere'] })))).toEqual(['NO_SUCH_STEP steps[0].waitsFor']);
    expect(found(procedure(step(1, { group: 'b' })))).toEqual(['NO_SUCH_GROUP steps[0].group']);
  });

  it('closes what it opens, after it was opened', () => {
    expect(found(procedure(step(1, { opens: ['cowl'] })))).toEqual(['OPENED_NOT_CLOSED items[0]']);
    expect(found(procedure(step(1, { closes: ['cowl'] }), step(2, { opens: ['cowl'] })))).toEqual([
      'OPENED_NOT_CLOSED items[0]',
    ]);
    expect(found(procedure(step(1, { opens: ['cowl'], closes: ['cowl'] })))).toEqual([
      'OPENED_NOT_CLOSED items[0]',
    ]);
    expect(found(procedure(step(1, { opens: ['door'], closes: ['door'] })))).toEqual([
      'NO_SUCH_ITEM steps[0].opens',
      'NO_SUCH_ITEM steps[0].closes',
    ]);
  });

  it('counts both ways what it counts', () => {
    const count = (direction: 'out' | 'in'): Capture => ({
      kind: 'count',
      key: direction,
      label: 'Tags',
      what: 'tags',
      direction,
    });
    expect(capture(count('out'))).toEqual(['COUNTED_ONE_WAY steps[0].captures']);
    expect(capture(count('in'))).toEqual(['COUNTED_ONE_WAY steps[0].captures']);
    expect(
      found(procedure(step(1, { captures: [count('out')] }), step(2, { captures: [count('in')] }))),
    ).toEqual([]);
  });

  it('moves the component once each way', () => {
    expect(found(procedure(step(1, { moves: 'removal' }), step(2, { moves: 'installation' })))).toEqual([]);
    expect(found(procedure(step(1, { moves: 'removal' }), step(2, { moves: 'removal' })))).toEqual([
      'MOVED_TWICE steps[1].moves',
    ]);
  });

  it('tells reason and fix', () => {
    expect(checkProcedure(procedure(step(1, { opens: ['cowl'] })))).toEqual([
      {
        code: 'OPENED_NOT_CLOSED',
        field: 'items[0]',
        reason: 'Fan cowl is opened by step 1 and no later step closes it.',
        fix: 'Add the step that closes it.',
      },
    ]);
  });
});

describe('the figures of a procedure', () => {
  const torque = (of: Partial<TorqueCapture> = {}): TorqueCapture => ({
    kind: 'torque',
    key: 'bolts',
    label: 'Bolt',
    points: ['1', '2'],
    low: '105.0',
    high: '115,0',
    unit: 'N·m',
    thread: 'dry',
    runOn: { rule: 'none', low: null, high: null },
    binds: 'range',
    ...of,
  });
  const bad = ['BAD_RANGE steps[0].captures[0]'];

  it('are ranges that can be read, the lower bound first', () => {
    expect(capture(torque())).toEqual([]);
    expect(capture(torque({ low: '115', high: '115.0' }))).toEqual([]);
    expect(capture(torque({ low: '115.01' }))).toEqual(bad);
    expect(capture(torque({ low: '' }))).toEqual(bad);
    expect(capture(torque({ low: '1e2' }))).toEqual(bad);
    expect(capture(torque({ runOn: { rule: 'add', low: '5', high: '4' } }))).toEqual([
      'BAD_RANGE steps[0].captures[0].runOn',
    ]);
    expect(capture(torque({ unit: 'ft-lb' as 'N·m' }))).toEqual(['BAD_RANGE steps[0].captures[0].unit']);
  });

  it('name each point once', () => {
    for (const points of [[], ['1', '1'], ['1', '']])
      expect(capture(torque({ points }))).toEqual(['BAD_POINTS steps[0].captures[0].points']);
  });

  it('bound a reading on one side, both or none, below zero too', () => {
    const row = (low: string | null, high: string | null) =>
      capture({
        kind: 'readings',
        key: 'r',
        label: 'Run',
        rows: [{ key: 'n1', label: 'N1', unit: '%', low, high }],
      });
    expect([row(null, null), row('-40', null), row(null, '9'), row('-40', '-40')]).toEqual([[], [], [], []]);
    expect(row('2', '1')).toEqual(['BAD_RANGE steps[0].captures[0].rows[0]']);
    expect(row(null, 'x')).toEqual(['BAD_RANGE steps[0].captures[0].rows[0]']);
  });

  it('ask for a duration and a power of a leak check', () => {
    const check = (minMinutes: number, power: string) =>
      capture({ kind: 'leak-check', key: 'l', label: 'Leaks', minMinutes, power });
    expect(check(1, 'idle')).toEqual([]);
    for (const [minutes, power] of [
      [0, 'idle'],
      [1.5, 'idle'],
      [5, ' '],
    ] as const)
      expect(check(minutes, power)).toEqual(['BAD_DURATION steps[0].captures[0]']);
  });
});
