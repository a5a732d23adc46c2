import { describe, expect, test } from '@jest/globals';
import type { TorqueCapture } from '@strutbook/domain/work/capture.js';
import type { Step } from '../work/work-shapes.js';
import { EMPTY_DRAFT, judgeDraft, judgedField, nextPoint, typedTorque } from './torque-draft.js';

const BOLTS: TorqueCapture = {
  kind: 'torque',
  key: 'bolts',
  label: 'Forward mount bolt',
  points: ['1', '3', '2', '4'],
  low: '105.0',
  high: '115.0',
  unit: 'N·m',
  thread: 'dry',
  runOn: { rule: 'none', low: null, high: null },
  binds: 'range',
};

const WRENCH = {
  serial: 'TW-014',
  unit: 'N·m',
  low: '40',
  high: '200',
  deviation: '4',
  calibrations: [{ calibratedOn: '2026-03-03', dueOn: '2027-03-03' }],
};

const step = (accepted: readonly string[]): Step => ({
  id: 's-1',
  version: 1,
  contentHash: '',
  standing: 'open',
  blockers: [],
  missing: [],
  definition: {
    key: 's',
    number: 1,
    group: 'A',
    title: '',
    text: null,
    cautions: [],
    source: null,
    waitsFor: [],
    inspection: 'none',
    captures: [BOLTS],
    opens: [],
    closes: [],
    moves: null,
  },
  entries: accepted.map((point) => ({
    id: `e-${point}`,
    capture: 'bolts',
    point,
    kind: 'torque',
    typed: typedTorque({ ...EMPTY_DRAFT, indication: '110' }, point, 'N·m'),
    judgement: { verdict: 'accepted', reasons: [], computed: {} },
    tool: 'TW-014',
    personId: 'p',
    personName: 'P',
    enteredAt: '2026-11-24T09:12:00.000Z',
    photoId: null,
    voided: false,
    voidReason: null,
  })),
  signatures: [],
});

const judged = (indication: string) => {
  const typed = typedTorque({ ...EMPTY_DRAFT, indication }, '1', 'N·m');
  return judgedField(judgeDraft(step([]), BOLTS, typed, WRENCH, '2026-11-25'), BOLTS);
};

describe('the next bolt', () => {
  test('is the first of the order that is not accepted', () => {
    expect(nextPoint(step([]), BOLTS)).toBe('1');
    expect(nextPoint(step(['1']), BOLTS)).toBe('3');
    expect(nextPoint(step(['1', '3', '2', '4']), BOLTS)).toBe('4');
  });
});

describe('what is typed', () => {
  test('is recorded letter by letter; what was left empty is null', () => {
    expect(typedTorque({ ...EMPTY_DRAFT, indication: ' 112,5' }, '1', 'N·m')).toMatchObject({
      indication: ' 112,5',
      runOn: null,
      extension: null,
    });
  });

  test('is judged at both bounds, which are inside', () => {
    expect(judged('105.0')).toMatchObject({ inside: true, range: { low: '105.0', high: '115.0' } });
    expect(judged('115,0')).toMatchObject({ inside: true });
    expect(judged('115.01')).toMatchObject({ inside: false, words: '0.01 N·m above the range' });
    expect(judged('118.4')).toMatchObject({ inside: false, words: '3.4 N·m above the range' });
    expect(judged('101')).toMatchObject({ inside: false, words: '4 N·m below the range' });
  });

  test('has no place on the range while it is no number', () => {
    expect(judged('1e2')).toMatchObject({ inside: false, at: null });
  });
});
