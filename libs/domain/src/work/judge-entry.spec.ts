import { describe, expect, it } from '@jest/globals';
import type { Capture, TorqueCapture } from './capture.js';
import type { StepEntry, Typed } from './entry.js';
import { type EntryFacts, judgeEntry } from './judge-entry.js';
import { judgement } from './judgement.js';

const tool = {
  serial: 'TW-7',
  unit: 'N·m',
  low: '40',
  high: '200',
  deviation: '4',
  calibrations: [{ calibratedOn: '2026-01-01', dueOn: '2026-06-30' }],
};
const facts: EntryFacts = { tool: null, entries: [], on: '2026-06-30', ordered: null, register: null };
const codes = (capture: Capture, typed: Typed, given: Partial<EntryFacts> = {}) =>
  judgeEntry(capture, typed, { ...facts, ...given }).reasons.map((reason) => reason.code);

describe('a count', () => {
  const capture = { kind: 'count', key: 'tags', label: 'Tags hung', what: 'tags', direction: 'out' } as const;
  const count = (number: string) => codes(capture, { kind: 'count', number });

  it('is a whole number, none too', () => {
    expect(['0', '14', ' 14 '].map(count)).toEqual([[], [], []]);
    for (const number of ['', '-1', '1.5', '1,000', '1e2', 'ten', '1234567'])
      expect(count(number)).toEqual(['NOT_A_NUMBER']);
  });
});

describe('a text, a condition, a picture', () => {
  it('is there where it is asked for', () => {
    const text = { kind: 'text', key: 't', label: 'Software part number', required: true } as const;
    expect(codes(text, { kind: 'text', text: ' ' })).toEqual(['EMPTY']);
    expect(codes(text, { kind: 'text', text: '0' })).toEqual([]);
    expect(codes({ ...text, required: false }, { kind: 'text', text: '' })).toEqual([]);
  });

  it('was seen', () => {
    const check = { kind: 'check', key: 'c', label: 'Every latch seen flush' } as const;
    expect(codes(check, { kind: 'check', seen: true })).toEqual([]);
    expect(codes(check, { kind: 'check', seen: false })).toEqual(['NOT_SEEN']);
  });

  it('is a picture with its hash', () => {
    const photo = { kind: 'photo', key: 'p', label: 'Plate', required: false } as const;
    const of = (sha256: string) => codes(photo, { kind: 'photo', fileName: 'plate.jpg', sha256 });
    expect(of('0a'.repeat(32))).toEqual([]);
    expect(of('')).toEqual(['EMPTY']);
  });
});

describe('readings by a tool', () => {
  it('are taken with one in date, where one is named', () => {
    const rows = [{ key: 'n1', label: 'N1', unit: '%', low: null, high: null }];
    const capture = { kind: 'readings', key: 'r', label: 'Run', rows } as const;
    const typed = { kind: 'readings', values: { n1: '90' } } as const;
    expect(codes(capture, typed)).toEqual([]);
    expect(codes(capture, typed, { tool })).toEqual([]);
    expect(codes(capture, typed, { tool, on: '2026-07-01' })).toEqual(['TOOL_OUT_OF_DATE']);
  });
});

describe('a torque of a group', () => {
  const capture: TorqueCapture = {
    kind: 'torque',
    key: 'bolts',
    label: 'Bolt',
    points: ['1', '2'],
    low: '105.0',
    high: '115.0',
    unit: 'N·m',
    thread: 'dry',
    runOn: { rule: 'none', low: null, high: null },
    binds: 'range',
  };
  const typed = (point: string): Typed => ({
    kind: 'torque',
    point,
    indication: '110',
    unit: 'N·m',
    method: 'reading',
    runOn: null,
    extension: null,
  });
  const entry = (id: string, verdict: 'accepted' | 'rejected', key = 'bolts'): StepEntry => ({
    id,
    capture: key,
    point: '1',
    kind: 'torque',
    typed: typed('1'),
    judgement: { verdict, reasons: [], computed: {} },
    tool: 'TW-7',
    personId: 'p',
    personName: 'P',
  });
  const second = (...entries: StepEntry[]) => codes(capture, typed('2'), { tool, entries });

  it('follows the last entry of the point before it', () => {
    expect(second()).toEqual(['OUT_OF_ORDER']);
    expect(second(entry('a', 'rejected'), entry('b', 'accepted'))).toEqual([]);
    expect(second(entry('a', 'accepted'), entry('b', 'rejected'))).toEqual(['OUT_OF_ORDER']);
    expect(second(entry('a', 'accepted', 'other-bolts'))).toEqual(['OUT_OF_ORDER']);
  });
});

describe('an entry', () => {
  it('is of the kind its capture asks for', () => {
    const check = { kind: 'check', key: 'c', label: 'Seen' } as const;
    expect(() => codes(check, { kind: 'count', number: '1' })).toThrow(RangeError);
  });

  it('is rejected with any reason, accepted with none', () => {
    expect(judgement([])).toEqual({ verdict: 'accepted', reasons: [], computed: {} });
    expect(judgement([{ code: 'NOT_SEEN', detail: {} }]).verdict).toBe('rejected');
  });

  it('that names papers, a leak check or a component is judged as such', () => {
    const papers = {
      kind: 'papers',
      plateSerial: 'A',
      documentSerial: 'B',
      documentNumber: 'C',
      tag: 'serviceable',
    } as const;
    expect(codes({ kind: 'papers', key: 'p', label: 'Papers' }, papers)).toEqual(['PAPERS_DIFFER']);
    const leaks = { kind: 'leak-check', key: 'l', label: 'Leaks', minMinutes: 5, power: 'idle' } as const;
    expect(codes(leaks, { kind: 'leak-check', minutes: '', power: '', found: 'none' })).toEqual([
      'DURATION_MISSING',
      'POWER_MISSING',
    ]);
    const on = { kind: 'component-on', key: 'e', label: 'Engine' } as const;
    expect(
      codes(on, { kind: 'component-on', serialNumber: 'A', partNumber: null, positionNumber: null }),
    ).toEqual(['NOT_IN_REGISTER']);
  });
});
