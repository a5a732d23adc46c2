import { describe, expect, it } from '@jest/globals';
import { fraction } from '../units/fraction.js';
import type { TorqueCapture } from '../work/capture.js';
import { judgeRunOn } from './judge-run-on.js';
import { rangeWithRunOn } from './run-on.js';

const range = { low: fraction(60), high: fraction(90) };
const moved = (by: number) => ({ low: fraction(60 + by), high: fraction(90 + by) });

describe('a range with run-on torque', () => {
  it('does not move where the rule is none, and always where it is to add', () => {
    expect(rangeWithRunOn(range, fraction(30), 'none')).toEqual(range);
    expect(rangeWithRunOn(range, fraction(1), 'add')).toEqual(moved(1));
    expect(rangeWithRunOn(range, fraction(0), 'add')).toEqual(range);
  });

  it('moves from a third of the lower bound on', () => {
    expect(rangeWithRunOn(range, fraction(1999, 100), 'one-third')).toEqual(range);
    expect(rangeWithRunOn(range, fraction(20), 'one-third')).toEqual(moved(20));
    expect(rangeWithRunOn(range, fraction(21), 'one-third')).toEqual(moved(21));
  });

  it('has no run-on torque below zero', () => {
    expect(() => rangeWithRunOn(range, fraction(-1), 'add')).toThrow(RangeError);
  });
});

describe('a run-on torque typed', () => {
  const capture = (runOn: TorqueCapture['runOn']): TorqueCapture => ({
    kind: 'torque',
    key: 'bolts',
    label: 'Bolt',
    points: ['1'],
    low: '60',
    high: '90',
    unit: 'lbf·in',
    thread: 'dry',
    runOn,
    binds: 'range',
  });
  const add = capture({ rule: 'add', low: '2.0', high: '18' });
  const codes = (of: ReturnType<typeof judgeRunOn>) => of.reasons.map((reason) => reason.code);

  it('is asked for where the rule counts it, or the data bounds it', () => {
    for (const runOn of [null, '', ' '])
      expect(judgeRunOn(add, { runOn, unit: 'lbf·in' })).toEqual({
        range: null,
        reasons: [{ code: 'RUN_ON_MISSING', detail: {} }],
      });
    const bounded = capture({ rule: 'none', low: null, high: '18' });
    expect(judgeRunOn(bounded, { runOn: null, unit: 'lbf·in' })).toMatchObject({
      range,
      reasons: [{ code: 'RUN_ON_MISSING' }],
    });
    const none = capture({ rule: 'none', low: null, high: null });
    expect(judgeRunOn(none, { runOn: null, unit: 'lbf·in' })).toEqual({ range, reasons: [] });
  });

  it('lies in its own bounds, both included', () => {
    const at = (runOn: string) => codes(judgeRunOn(add, { runOn, unit: 'lbf·in' }));
    expect(['1.99', '2', '18.0', '18.01'].map(at)).toEqual([['RUN_ON_BELOW'], [], [], ['RUN_ON_ABOVE']]);
  });

  it('is a number, in the unit typed', () => {
    expect(codes(judgeRunOn(add, { runOn: '1e1', unit: 'lbf·in' }))).toEqual(['NOT_A_NUMBER']);
    expect(judgeRunOn(add, { runOn: '0,5', unit: 'lbf·ft' }).range).toEqual(moved(6));
  });

  it('is not judged by data that is no number', () => {
    expect(() => judgeRunOn({ ...add, low: 'sixty' }, { runOn: '5', unit: 'lbf·in' })).toThrow(RangeError);
  });
});
