import { describe, expect, it } from '@jest/globals';
import type { Capture } from './capture.js';
import type { StepEntry } from './entry.js';
import { exampleSignature as done, exampleDefinition } from './example-step.js';
import type { StepDefinition } from './step.js';
import {
  blockersOf,
  countingSignatures,
  isFinished,
  lastEntry,
  mayInspect,
  missingEntries,
  type StepFacts,
  type StepSignatureFacts,
  standingOf,
  wasSigned,
} from './step-standing.js';

const step = (
  key: string,
  of: Partial<Omit<StepFacts, 'definition'>> & { definition?: Partial<StepDefinition> } = {},
) => ({
  id: `id-${key}`,
  contentHash: 'now',
  entries: [],
  signatures: [],
  ...of,
  definition: exampleDefinition({ key, title: `Do ${key}.`, ...of.definition }),
});
const inspection = (of: Partial<StepSignatureFacts> = {}) =>
  done({ id: 'i', meaning: 'inspection', coversId: 'd', personId: 'bob', ...of });
const counting = (...signatures: StepSignatureFacts[]) => {
  const found = countingSignatures(step('a', { signatures }));
  return [found.done?.id ?? null, found.inspection?.id ?? null];
};

describe('a signature', () => {
  it('counts on the content it was given on', () => {
    expect(counting(done())).toEqual(['d', null]);
    expect(counting(done({ contentHash: 'before' }))).toEqual([null, null]);
    expect(counting(done({ undone: true }))).toEqual([null, null]);
    expect(counting(done({ id: 'old', contentHash: 'before' }), done())).toEqual(['d', null]);
  });

  it('of an inspection counts for the work it covers', () => {
    expect(counting(done(), inspection())).toEqual(['d', 'i']);
    expect(counting(done({ undone: true }), inspection())).toEqual([null, null]);
    expect(counting(done({ id: 'd2' }), inspection())).toEqual(['d2', null]);
    expect(counting(done(), inspection({ contentHash: 'before' }))).toEqual(['d', null]);
    expect(counting(done(), inspection({ undone: true }))).toEqual(['d', null]);
  });

  it('of an inspection is another person’s, or a recorded re-inspection', () => {
    expect(counting(done(), inspection({ personId: 'ann' }))).toEqual(['d', null]);
    expect(counting(done(), inspection({ personId: 'ann', reinspection: true }))).toEqual(['d', 'i']);
    expect([mayInspect(done(), 'bob', false), mayInspect(done(), 'ann', false)]).toEqual([true, false]);
  });
});

describe('a step', () => {
  const asked = { definition: { inspection: 'independent' } } as const;

  it('is finished by its signature, and its inspection where it asks for one', () => {
    expect(isFinished(step('a'))).toBe(false);
    expect(isFinished(step('a', { signatures: [done()] }))).toBe(true);
    expect(isFinished(step('a', { ...asked, signatures: [done()] }))).toBe(false);
    expect(isFinished(step('a', { ...asked, signatures: [done(), inspection()] }))).toBe(true);
  });

  it('waits for steps that are to be signed, and inspected', () => {
    const waits = step('c', { definition: { waitsFor: ['a', 'b'] } });
    const b = step('b', { definition: { number: 2, inspection: 'independent' } });
    const signedB = { ...b, signatures: [done()] };
    expect(blockersOf(waits, [step('a'), signedB, waits])).toEqual([
      { code: 'STEP_UNSIGNED', stepId: 'id-a', number: 1, title: 'Do a.' },
      { code: 'INSPECTION_MISSING', stepId: 'id-b', number: 2, title: 'Do b.' },
    ]);
    const finished = [step('a', { signatures: [done()] }), { ...b, signatures: [done(), inspection()] }];
    expect(blockersOf(waits, finished)).toEqual([]);
    expect(() => blockersOf(waits, [step('a')])).toThrow(RangeError);
  });

  it('stands as the first of these that is true', () => {
    const a = step('a');
    const waits = { ...asked, definition: { ...asked.definition, waitsFor: ['a'] } };
    const check: Capture = { kind: 'check', key: 'seen', label: 'Seen' };
    const rejected = { entries: [entry('seen', 'rejected')] };
    const standing = (of: Parameters<typeof step>[1]) => standingOf(step('b', of), [a, step('b', of)]);
    expect(standing({})).toBe('open');
    expect(standing(waits)).toBe('blocked');
    expect(standing({ ...rejected, definition: { captures: [check], waitsFor: ['a'] } })).toBe('rejected');
    expect(standing({ ...waits, signatures: [done({ contentHash: 'before' })] })).toBe('changed');
    const wrongNow = {
      ...rejected,
      definition: { captures: [check] },
      signatures: [done({ contentHash: 'before' })],
    };
    expect(standing(wrongNow)).toBe('rejected');
    expect(standing({ ...waits, signatures: [done({ undone: true })] })).toBe('blocked');
    expect(standing({ ...waits, signatures: [done()] })).toBe('to-inspect');
    expect(standing({ ...waits, signatures: [done(), inspection()] })).toBe('signed');
  });

  it('was signed while a signature of the work is not undone', () => {
    expect(wasSigned(step('a', { signatures: [done({ contentHash: 'before' })] }))).toBe(true);
    expect(wasSigned(step('a', { signatures: [done({ undone: true }), inspection()] }))).toBe(false);
  });
});

describe('what is missing', () => {
  const torque: Capture = {
    kind: 'torque',
    key: 'bolts',
    label: 'Bolt',
    points: ['1', '2'],
    low: '1',
    high: '2',
    unit: 'N·m',
    thread: 'dry',
    runOn: { rule: 'none', low: null, high: null },
    binds: 'range',
  };
  const missing = (captures: readonly Capture[], entries: readonly StepEntry[] = []) =>
    missingEntries(step('a', { definition: { captures }, entries })).map(
      ({ code, capture, point }) => `${code} ${capture} ${point}`,
    );

  it('is each capture, and each point of a torque', () => {
    expect(missing([torque, { kind: 'check', key: 'seen', label: 'Seen' }])).toEqual([
      'CAPTURE_MISSING bolts 1',
      'CAPTURE_MISSING bolts 2',
      'CAPTURE_MISSING seen null',
    ]);
  });

  it('is decided by the last entry', () => {
    const first = entry('bolts', 'accepted', '1');
    expect(missing([torque], [first, entry('bolts', 'rejected', '2')])).toEqual(['CAPTURE_REJECTED bolts 2']);
    expect(
      missing([torque], [first, entry('bolts', 'rejected', '2'), entry('bolts', 'accepted', '2')]),
    ).toEqual([]);
    expect(lastEntry([first], 'bolts', '2')).toBeNull();
  });

  it('tells why the last entry is not accepted', () => {
    const captures: Capture[] = [{ kind: 'check', key: 'seen', label: 'Seen' }];
    expect(
      missingEntries(step('a', { definition: { captures }, entries: [entry('seen', 'rejected')] })),
    ).toEqual([
      {
        code: 'CAPTURE_REJECTED',
        capture: 'seen',
        point: null,
        label: 'Seen',
        reasons: [{ code: 'NOT_SEEN', detail: {} }],
      },
    ]);
  });

  it('is no text or picture that need not be there', () => {
    const text = (required: boolean): Capture => ({ kind: 'text', key: 'remark', label: 'Remark', required });
    const photo = (required: boolean): Capture => ({ kind: 'photo', key: 'photo', label: 'Photo', required });
    expect(missing([text(false), photo(false)])).toEqual([]);
    expect(missing([text(true), photo(true)])).toHaveLength(2);
    expect(missing([photo(false)], [entry('photo', 'rejected')])).toEqual(['CAPTURE_REJECTED photo null']);
  });
});

function entry(capture: string, verdict: 'accepted' | 'rejected', point: string | null = null): StepEntry {
  return {
    id: `${capture}-${point}-${verdict}`,
    capture,
    point,
    kind: 'check',
    typed: { kind: 'check', seen: verdict === 'accepted' },
    judgement: {
      verdict,
      reasons: verdict === 'accepted' ? [] : [{ code: 'NOT_SEEN', detail: {} }],
      computed: {},
    },
    tool: null,
    personId: 'ann',
    personName: 'Ann',
  };
}
