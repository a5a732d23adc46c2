import { describe, expect, it } from '@jest/globals';
import type { EntryReasonCode, StepEntry } from '../../work/entry.js';
import { capture, codes, entry, held, inspected, signature, step, words } from './example-steps.js';

const torqueOf = (points: readonly string[]) =>
  capture({
    kind: 'torque',
    points,
    low: '90',
    high: '110',
    unit: 'N·m',
    thread: 'dry',
    runOn: { rule: 'none', low: null, high: null },
    binds: 'range',
  });
const torque = (reasons: readonly EntryReasonCode[] = [], point = '1', tool: string | null = 'TW-1') =>
  entry(
    {
      kind: 'torque',
      point,
      indication: '100',
      unit: 'N·m',
      method: 'set-value',
      runOn: null,
      extension: null,
    },
    reasons,
    { tool },
  );
const bolts = (...entries: readonly StepEntry[]) => step({ of: { captures: [torqueOf(['1'])] }, entries });

describe('what is held against a step', () => {
  it('is nothing when it is signed as it stands', () => {
    expect(codes({ steps: [step()] })).toEqual([]);
  });

  it('is that nobody signed it, or that it was changed since', () => {
    expect(codes({ steps: [step({ signatures: [] })] })).toEqual([['STEP_UNSIGNED', 'blocking']]);
    expect(codes({ steps: [step({ signatures: [signature({ undone: true })] })] })).toEqual([
      ['STEP_UNSIGNED', 'blocking'],
    ]);
    const changed = step({ signatures: [signature({ contentHash: 'before' })] });
    expect(words({ steps: [changed] })[0]).toMatchObject({
      record: 'Step 12, Torque the mount bolts',
      reason: 'It was changed after Ann Able signed it, and is not signed for its present content.',
    });
    expect(codes({ steps: [{ ...changed, signatures: [...changed.signatures, signature()] }] })).toEqual([]);
  });

  it('is what it asks for and does not hold, though it was signed', () => {
    expect(codes({ steps: [bolts()] })).toEqual([['CAPTURE_MISSING', 'blocking']]);
    expect(codes({ steps: [bolts(torque([], '1', null))] })).toEqual([]);
  });

  // 14 CFR 121.371(c): who inspects did not perform the item inspected.
  it('is a missing inspection, or one by who did the work', () => {
    const of = { inspection: 'independent' } as const;
    const own = inspected({ personId: 'ann', personName: 'Ann Able' });
    expect(codes({ steps: [step({ of })] })).toEqual([['INSPECTION_MISSING', 'blocking']]);
    expect(codes({ steps: [step({ of, signatures: [signature(), inspected()] })] })).toEqual([]);
    expect(codes({ steps: [step({ of, signatures: [signature(), own] })] }, true)).toEqual([
      ['INSPECTION_BY_SAME_PERSON', 'blocking'],
    ]);
    const again = step({ of, signatures: [signature(), { ...own, reinspection: true }] });
    expect(codes({ steps: [again] }, true)).toEqual([['ONE_PERSON_REINSPECTION', 'advisory']]);
    expect(codes({ steps: [again] }, false)).toEqual([['INSPECTION_BY_SAME_PERSON', 'blocking']]);
  });

  it('is an inspection of work that was undone or done anew', () => {
    const of = { inspection: 'independent' } as const;
    const signatures = [signature({ undone: true }), inspected(), signature({ id: 'done-2' })];
    expect(codes({ steps: [step({ of, signatures })] })).toEqual([['INSPECTION_MISSING', 'blocking']]);
    const anew = [...signatures, inspected({ id: 'seen-2', coversId: 'done-2' })];
    expect(codes({ steps: [step({ of, signatures: anew })] })).toEqual([]);
  });
});

describe('what is held against what was captured', () => {
  it('is the last torque of a point out of range; an attempt before an accepted one holds nothing up', () => {
    expect(codes({ steps: [bolts(torque(), torque(['ABOVE_RANGE']))] })).toEqual([
      ['TORQUE_OUT_OF_RANGE', 'blocking'],
    ]);
    expect(codes({ steps: [bolts(torque(['ABOVE_RANGE']), torque())] })).toEqual([]);
    expect(words({ steps: [bolts(torque(['ABOVE_RANGE']))] })[0]?.record).toBe(
      'Step 12, Torque the mount bolts: Forward mount, point 1',
    );
  });

  it('is a tool out of date or out of its range, and one whose calibration no longer stands', () => {
    for (const code of ['TOOL_OUT_OF_DATE', 'TOOL_OUT_OF_RANGE', 'TOOL_NOT_CALIBRATED'] as const)
      expect(codes({ steps: [bolts(torque([code]))] })).toEqual([['TOOL_NOT_USABLE', 'blocking']]);
    const used = torque();
    const use = { entryId: used.id, toolId: 't', serial: 'TW-1', on: '2026-06-30' };
    const good = [{ calibratedOn: '2025-07-01', dueOn: '2026-06-30' }];
    const with_ = (change: object) =>
      held({ steps: [bolts(used)], toolUses: [{ ...use, calibrations: good, ...change }] });
    // Good through the due day: 30 June passes, 1 July does not.
    expect(with_({})).toEqual([]);
    expect(with_({ on: '2026-07-01' })).toMatchObject([
      { code: 'TOOL_NOT_USABLE', record: { kind: 'tool', id: 't' }, detail: { tool: 'TW-1' } },
    ]);
    expect(with_({ calibrations: [] })).toMatchObject([{ code: 'TOOL_NOT_USABLE' }]);
    // The newest made by then governs, as when the torque was judged, though an older one were good for longer.
    const shorter = { calibratedOn: '2026-01-10', dueOn: '2026-01-20' };
    expect(with_({ calibrations: [...good, shorter] })).toMatchObject([{ code: 'TOOL_NOT_USABLE' }]);
  });

  it('is readings of a gauge whose calibration no longer stands', () => {
    const read = entry({ kind: 'readings', values: {} }, [], { tool: 'G-1' });
    const run = step({ of: { captures: [capture({ kind: 'readings', rows: [] })] }, entries: [read] });
    const use = { entryId: read.id, toolId: 'g', serial: 'G-1', on: '2026-06-30' };
    const calibrations = [{ calibratedOn: '2026-01-01', dueOn: '2026-06-30' }];
    expect(held({ steps: [run], toolUses: [{ ...use, calibrations }] })).toEqual([]);
    expect(held({ steps: [run], toolUses: [{ ...use, calibrations: [] }] })).toMatchObject([
      { code: 'TOOL_NOT_USABLE', record: { kind: 'tool', id: 'g' } },
    ]);
  });

  it('is a look for leaks without duration or power, too short, or that found one', () => {
    const leakCheck = (reasons: readonly EntryReasonCode[]) =>
      step({
        of: { captures: [capture({ kind: 'leak-check', minMinutes: 5, power: 'idle' })] },
        entries: [entry({ kind: 'leak-check', minutes: '', power: '', found: 'none' }, reasons)],
      });
    for (const code of ['DURATION_MISSING', 'POWER_MISSING', 'DURATION_SHORT', 'POWER_DIFFERS'] as const)
      expect(codes({ steps: [leakCheck([code])] })).toEqual([['LEAK_CHECK_INCOMPLETE', 'blocking']]);
    expect(codes({ steps: [leakCheck(['LEAK_FOUND'])] })).toEqual([['LEAK_FOUND', 'blocking']]);
    expect(codes({ steps: [leakCheck([])] })).toEqual([]);
  });

  it('is papers that do not agree, and readings out of limits', () => {
    const papers = (reasons: readonly EntryReasonCode[]) =>
      step({
        of: { captures: [capture({ kind: 'papers' })] },
        entries: [
          entry(
            {
              kind: 'papers',
              plateSerial: 'E-2',
              documentSerial: 'E-3',
              documentNumber: 'D',
              tag: 'serviceable',
            },
            reasons,
          ),
        ],
      });
    expect(codes({ steps: [papers(['PAPERS_DIFFER'])] })).toEqual([['PAPERS_REJECTED', 'blocking']]);
    expect(codes({ steps: [papers([])] })).toEqual([]);
    const readings = (reasons: readonly EntryReasonCode[]) =>
      step({
        of: { captures: [capture({ kind: 'readings', rows: [] })] },
        entries: [entry({ kind: 'readings', values: {} }, reasons)],
      });
    expect(codes({ steps: [readings(['ABOVE_RANGE'])] })).toEqual([['ENTRY_REJECTED', 'blocking']]);
    expect(codes({ steps: [readings([])] })).toEqual([]);
  });
});
