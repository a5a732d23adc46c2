import { describe, expect, it } from '@jest/globals';
import type { Capture } from './capture.js';
import type { EntryReason, EntryReasonCode, StepEntry, Typed } from './entry.js';
import { entryText, reasonText } from './entry-words.js';
import { judgement } from './judgement.js';

const entry = (typed: Typed, of: Partial<StepEntry> = {}): StepEntry => ({
  id: 'e',
  capture: 'key',
  point: null,
  kind: typed.kind,
  typed,
  judgement: judgement([]),
  tool: null,
  personId: 'ann',
  personName: 'Ann',
  ...of,
});
const labelled = (label: string): Capture => ({ kind: 'check', key: 'key', label });

describe('a reason in words', () => {
  const text = (code: EntryReasonCode, detail: EntryReason['detail'] = {}) => reasonText({ code, detail });

  it('says what is wrong and what to do', () => {
    expect(
      text('BELOW_RANGE', { what: 'The torque at the fastener', value: '504 lbf·in', low: '800 lbf·in' }),
    ).toBe(
      'The torque at the fastener 504 lbf·in is below 800 lbf·in. Check number and unit; else put it right, and enter the new one.',
    );
    expect(text('TOOL_OUT_OF_DATE', { tool: 'TW-7', dueOn: '2026-06-30', on: '2026-07-01' })).toBe(
      'The calibration of tool TW-7 was due on 2026-06-30; it was used on 2026-07-01. Torque again with a tool in date.',
    );
    expect(text('NOT_A_NUMBER', { what: 'The angle', typed: '181', within: 'from 0 to 180 degrees' })).toBe(
      'The angle ‘181’ is no number. Type digits with at most one decimal point, from 0 to 180 degrees.',
    );
    expect(text('POSITION_DIFFERS', { typed: null, expected: 2 })).toMatch(
      /^No position was typed; .* position 2\./,
    );
    expect(text('POSITION_DIFFERS', { typed: '1', expected: 2 })).toMatch(
      /^Position 1 was typed; .* position 2\./,
    );
    expect(text('PAPERS_DIFFER', { plate: 'A', document: 'B' })).toMatch(/quarantine/);
  });

  it('tells a tool that is not accurate enough from a torque outside its window', () => {
    expect(text('OUTSIDE_WINDOW', { tool: 'TW-7', value: '111 N·m', window: null })).toMatch(
      /not accurate enough/,
    );
    expect(text('OUTSIDE_WINDOW', { tool: 'TW-7', value: '111 N·m', window: '109 to 110 N·m' })).toMatch(
      /^111 N·m is outside 109 to 110 N·m/,
    );
  });
});

describe('an entry in one line', () => {
  it('of a torque tells all that was typed, the torque at the fastener, the tool and the verdict', () => {
    const typed: Typed = {
      kind: 'torque',
      point: '3',
      indication: '88,0',
      unit: 'N·m',
      method: 'set-value',
      runOn: '3.5',
      extension: { wrenchLength: '400', length: '100', angle: '0' },
    };
    const of = {
      point: '3',
      tool: 'TW-7',
      judgement: { ...judgement([]), computed: { atFastener: '110.0 N·m' } },
    };
    expect(entryText(labelled('Forward mount bolt'), entry(typed, of))).toBe(
      'Forward mount bolt 3: 88,0 N·m set, run-on 3.5 N·m, wrench 400, adapter 100 at 0°, 110.0 N·m at the fastener, tool TW-7; accepted',
    );
    const plain = { ...typed, method: 'reading', runOn: null, extension: null } as const;
    expect(
      entryText(null, entry(plain, { judgement: judgement([{ code: 'TOOL_MISSING', detail: {} }]) })),
    ).toBe('key: 88,0 N·m read; rejected');
  });

  it.each<[Typed, string]>([
    [{ kind: 'count', number: '14' }, '14'],
    [
      { kind: 'component-off', serialNumber: 'E-1', partNumber: 'V840', positionNumber: '2' },
      'serial E-1, part number V840, position 2',
    ],
    [{ kind: 'component-on', serialNumber: 'E-1', partNumber: null, positionNumber: null }, 'serial E-1'],
    [
      {
        kind: 'papers',
        plateSerial: 'E-1',
        documentSerial: 'E-2',
        documentNumber: 'F-7',
        tag: 'serviceable',
      },
      'plate E-1, document F-7 for E-2, tagged serviceable',
    ],
    [{ kind: 'leak-check', minutes: '5', power: 'idle', found: 'none' }, '5 minutes at idle, no leak'],
    [{ kind: 'leak-check', minutes: '', power: '', found: 'leak' }, 'no minutes at no power, leak found'],
    [{ kind: 'readings', values: { n1: '90', n2: '97' } }, 'n1 90, n2 97'],
    [{ kind: 'text', text: 'SW-4' }, 'SW-4'],
    [{ kind: 'check', seen: true }, 'seen'],
    [{ kind: 'check', seen: false }, 'not seen'],
    [{ kind: 'photo', fileName: 'a.jpg', sha256: 'ab' }, 'picture a.jpg, SHA-256 ab'],
  ])('of %j says %s', (typed, text) => {
    expect(entryText(labelled('Label'), entry(typed))).toBe(`Label: ${text}; accepted`);
  });

  it('of readings names each that is asked for, with its unit', () => {
    const rows = [
      { key: 'n1', label: 'N1', unit: '%', low: null, high: null },
      { key: 'n2', label: 'N2', unit: '%', low: null, high: null },
    ];
    const typed: Typed = { kind: 'readings', values: { n1: '90' } };
    expect(entryText({ kind: 'readings', key: 'key', label: 'Run', rows }, entry(typed))).toBe(
      'Run: N1 90 %, N2 not read; accepted',
    );
  });
});
