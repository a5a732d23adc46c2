import { describe, expect, it } from '@jest/globals';
import type { TorqueCapture } from '../work/capture.js';
import { judgeTorque, type ToolFacts, type TorqueTyped } from './judge-torque.js';

const capture: TorqueCapture = {
  kind: 'torque',
  key: 'bolts',
  label: 'Forward mount bolt',
  points: ['1', '3', '2', '4'],
  low: '105.0',
  high: '115.0',
  unit: 'N·m',
  thread: 'lubricated',
  runOn: { rule: 'none', low: null, high: null },
  binds: 'range',
};
const tool: ToolFacts = {
  serial: 'TW-7',
  unit: 'N·m',
  low: '40',
  high: '200',
  deviation: '4',
  calibrations: [{ calibratedOn: '2026-01-01', dueOn: '2026-06-30' }],
};
const typed: TorqueTyped = {
  kind: 'torque',
  point: '1',
  indication: '110',
  unit: 'N·m',
  method: 'set-value',
  runOn: null,
  extension: null,
};

interface Given {
  readonly capture?: Partial<TorqueCapture>;
  readonly typed?: Partial<TorqueTyped>;
  readonly tool?: Partial<ToolFacts> | null;
  readonly accepted?: readonly string[];
  readonly on?: string;
}

const judge = (given: Given) =>
  judgeTorque(
    { ...capture, ...given.capture },
    { ...typed, ...given.typed },
    given.tool === null ? null : { ...tool, ...given.tool },
    given.accepted ?? [],
    given.on ?? '2026-06-30',
  );
const codes = (given: Given) => judge(given).reasons.map((reason) => reason.code);
const indication = (text: string) => codes({ typed: { indication: text } });

describe('a torque', () => {
  it.each([
    ['105.0', []],
    ['105', []],
    ['112,5', []],
    ['115.0', []],
    ['115.01', ['ABOVE_RANGE']],
    ['104.99', ['BELOW_RANGE']],
    ['118.4', ['ABOVE_RANGE']],
    ['1e2', ['NOT_A_NUMBER']],
    ['', ['NOT_A_NUMBER']],
    ['0', ['BELOW_RANGE', 'TOOL_OUT_OF_RANGE']],
  ])('typed %j against 105.0 to 115.0 is held %j against', (text, expected) => {
    expect(indication(text)).toEqual(expected);
  });

  it('accepted tells its figures with the decimals of the data', () => {
    expect(judge({})).toEqual({
      verdict: 'accepted',
      reasons: [],
      computed: {
        atFastener: '110.0 N·m',
        required: '105.0 to 115.0 N·m',
        window: '109.375 to 110.576 N·m',
        setting: '105.0 to 115.0 N·m',
        binds: 'range',
      },
    });
  });

  it('rejected tells the value and the bound', () => {
    expect(judge({ typed: { indication: '115.01' } }).reasons).toEqual([
      {
        code: 'ABOVE_RANGE',
        detail: { what: 'The torque at the fastener', value: '115.01 N·m', high: '115.0 N·m' },
      },
    ]);
  });

  it('is judged in the unit typed', () => {
    expect(codes({ typed: { indication: '81', unit: 'lbf·ft' } })).toEqual([]);
    expect(codes({ typed: { indication: '110', unit: 'lbf·in' } })).toEqual([
      'BELOW_RANGE',
      'TOOL_OUT_OF_RANGE',
    ]);
  });

  it('is not judged by data that is no number', () => {
    expect(() => judge({ capture: { low: '' } })).toThrow(RangeError);
  });
});

describe('a torque through an adapter', () => {
  const extension = { wrenchLength: '400', length: '100', angle: '0' };

  it('is accepted by what arrives, and its tool by what is set', () => {
    const given = { typed: { indication: '88', extension } };
    expect(judge(given)).toMatchObject({
      verdict: 'accepted',
      computed: { atFastener: '110.0 N·m', setting: '84.0 to 92.0 N·m' },
    });
    expect(codes({ ...given, tool: { low: '88.1' } })).toEqual(['TOOL_OUT_OF_RANGE']);
    expect(codes({ ...given, tool: { high: '88' } })).toEqual([]);
    expect(codes({ typed: { indication: '110', extension } })).toEqual(['ABOVE_RANGE']);
  });

  it('has lengths, an angle and a lever', () => {
    const wrong = (part: Partial<typeof extension>) =>
      judge({ typed: { extension: { ...extension, ...part } } }).reasons;
    expect(wrong({ wrenchLength: 'a', length: '' }).map((reason) => reason.detail['what'])).toEqual([
      'The length of the wrench',
      'The length of the adapter',
    ]);
    expect(wrong({ angle: '181' })).toEqual([
      {
        code: 'NOT_A_NUMBER',
        detail: { what: 'The angle', typed: '181', within: 'from 0 to 180 degrees' },
      },
    ]);
    expect(wrong({ angle: '180', length: '400' })).toEqual([{ code: 'NO_EFFECTIVE_LENGTH', detail: {} }]);
  });
});

describe('a torque with run-on torque', () => {
  const add = { runOn: { rule: 'add', low: null, high: '6' } } as const;
  const at = (text: string, runOn: string | null) =>
    judge({ capture: add, typed: { indication: text, runOn } });

  it('lies in the range moved up by it', () => {
    expect(at('118.5', '3.5')).toMatchObject({
      verdict: 'accepted',
      computed: { required: '108.5 to 118.5 N·m' },
    });
    expect(at('118.51', '3.5').verdict).toBe('rejected');
    expect(at('108.4', '3.5').verdict).toBe('rejected');
  });

  it('is not accepted without it, nor with one beyond its bound', () => {
    expect(at('110', null)).toMatchObject({
      verdict: 'rejected',
      reasons: [{ code: 'RUN_ON_MISSING' }],
      computed: { atFastener: '110.0 N·m', required: null },
    });
    expect(at('115', '6.1').reasons.map((reason) => reason.code)).toEqual(['RUN_ON_ABOVE']);
  });
});

describe('the tool of a torque', () => {
  it('is named, in date and in its range', () => {
    expect(codes({ tool: null })).toEqual(['TOOL_MISSING']);
    expect(codes({ on: '2026-07-01' })).toEqual(['TOOL_OUT_OF_DATE']);
    expect(codes({ tool: { low: null } })).toEqual(['TOOL_RANGE_UNKNOWN']);
  });

  it('has a window that binds only where the data says so', () => {
    const outside = { typed: { indication: '111' } };
    expect(codes(outside)).toEqual([]);
    const binds = { capture: { binds: 'window' } } as const;
    expect(codes({ ...outside, ...binds })).toEqual(['OUTSIDE_WINDOW']);
    expect(codes({ typed: { indication: '110.57' }, ...binds })).toEqual([]);
    expect(codes({ typed: { indication: '110.58' }, ...binds })).toEqual(['OUTSIDE_WINDOW']);
    expect(codes({ tool: { deviation: '6' }, ...binds })).toEqual(['OUTSIDE_WINDOW']);
    expect(codes({ tool: { deviation: null }, ...binds })).toEqual(['TOOL_RANGE_UNKNOWN']);
  });
});

describe('the points of a group', () => {
  const point = (of: string, accepted: string[]) => codes({ typed: { point: of }, accepted });

  it('are torqued in their order', () => {
    expect(point('1', [])).toEqual([]);
    expect(point('3', [])).toEqual(['OUT_OF_ORDER']);
    expect(point('2', ['1', '3'])).toEqual([]);
    expect(point('2', ['3'])).toEqual(['OUT_OF_ORDER']);
    expect(point('1', ['1', '3'])).toEqual([]);
  });

  it('are those of the data', () => {
    expect(point('5', ['1', '3', '2', '4'])).toEqual(['NO_SUCH_POINT']);
  });

  it('out of order tell which comes first', () => {
    expect(judge({ typed: { point: '4' }, accepted: ['1'] }).reasons).toEqual([
      { code: 'OUT_OF_ORDER', detail: { point: '4', first: '3' } },
    ]);
  });
});
