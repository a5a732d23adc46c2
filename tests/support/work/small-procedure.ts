import type { Capture } from '../../../libs/domain/src/work/capture.js';
import type { ProcedureContent, StepDefinition } from '../../../libs/domain/src/work/step.js';

type StepWords = Partial<Omit<StepDefinition, 'key' | 'number' | 'group' | 'title'>>;

const SOURCE = { document: 'K1 maintenance manual, 71-00-02', revision: '7' };

const step = (key: string, group: string, title: string, more: StepWords = {}) => ({
  key,
  group,
  title,
  text: null,
  cautions: [],
  source: SOURCE,
  waitsFor: [],
  inspection: 'none' as const,
  captures: [],
  opens: [],
  closes: [],
  moves: null,
  ...more,
});

const count = (
  key: string,
  label: string,
  what: 'tags' | 'blanks' | 'tools',
  direction: 'out' | 'in',
): Capture => ({ kind: 'count', key, label, what, direction });

/** Four mount bolts, 105.0 to 115.0 N·m, crosswise. */
export const MOUNT_BOLTS: Capture = {
  kind: 'torque',
  key: 'mount-bolts',
  label: 'Forward mount bolt',
  points: ['1', '3', '2', '4'],
  low: '105.0',
  high: '115.0',
  unit: 'N·m',
  thread: 'lubricated',
  runOn: { rule: 'none', low: null, high: null },
  binds: 'range',
};

/** A change in eight steps: made safe, opened, parted, out, in, rejoined, looked at for leaks, closed. */
export function smallProcedure(): ProcedureContent {
  const steps = [
    step('make-safe', 'safe', 'Pull and tag the breakers of the position.', {
      cautions: ['A start with someone in the inlet kills.'],
      captures: [count('tags-out', 'Tags hung', 'tags', 'out')],
    }),
    step('open-cowl', 'open', 'Open the fan cowl; lock its rods.', {
      waitsFor: ['make-safe'],
      opens: ['fan-cowl'],
    }),
    step('part-fuel', 'out', 'Part the fuel supply line; blank both ends.', {
      waitsFor: ['open-cowl'],
      opens: ['fuel-supply'],
      captures: [count('blanks-out', 'Blanks put on', 'blanks', 'out')],
    }),
    step('remove', 'out', 'Lower the engine onto its stand.', {
      waitsFor: ['part-fuel'],
      captures: [{ kind: 'component-off', key: 'off', label: 'Serial off, from the plate' }],
      moves: 'removal',
    }),
    step('install', 'in', 'Raise the engine and torque the forward mount bolts.', {
      waitsFor: ['remove'],
      inspection: 'independent',
      captures: [
        { kind: 'papers', key: 'papers', label: 'Release document against the plate' },
        { kind: 'component-on', key: 'on', label: 'Serial on, from the plate' },
        MOUNT_BOLTS,
      ],
      moves: 'installation',
    }),
    step('rejoin-fuel', 'in', 'Take the blanks off and join the fuel supply line.', {
      waitsFor: ['install'],
      closes: ['fuel-supply'],
      captures: [count('blanks-in', 'Blanks taken off', 'blanks', 'in')],
    }),
    step('leak-check', 'in', 'Run at idle and look for leaks.', {
      waitsFor: ['rejoin-fuel'],
      captures: [
        { kind: 'leak-check', key: 'leaks', label: 'Leak check', minMinutes: 5, power: 'idle' },
        { kind: 'photo', key: 'picture', label: 'The joint after the run', required: false },
      ],
    }),
    step('close-cowl', 'close', 'Close and latch the fan cowl; take the tags in.', {
      waitsFor: ['leak-check'],
      inspection: 'independent',
      closes: ['fan-cowl'],
      captures: [count('tags-in', 'Tags taken in', 'tags', 'in')],
    }),
  ];
  return {
    groups: [
      { key: 'safe', letter: 'A', title: 'Make safe', lane: 'both', place: 'cockpit' },
      { key: 'open', letter: 'B', title: 'Open', lane: 'both', place: 'fan-cowls' },
      { key: 'out', letter: 'C', title: 'Part and lower', lane: 'out', place: 'core-left' },
      { key: 'in', letter: 'D', title: 'Raise and join', lane: 'in', place: 'forward-mount' },
      { key: 'close', letter: 'E', title: 'Close', lane: 'both', place: 'fan-cowls' },
    ],
    items: [
      { key: 'fan-cowl', kind: 'cowl', name: 'Fan cowl', side: 'left' },
      { key: 'fuel-supply', kind: 'connection', name: 'Fuel supply', side: 'left' },
    ],
    steps: steps.map((each, index) => ({ ...each, number: index + 1 })),
  };
}

/** A procedure that moves nothing: the same without the steps that lower and raise. */
export function smallInspection(): ProcedureContent {
  const { groups, items, steps } = smallProcedure();
  const kept = steps.filter(({ key }) => ['make-safe', 'open-cowl', 'close-cowl'].includes(key));
  const keys = new Set(kept.map(({ key }) => key));
  return {
    groups,
    items: items.filter(({ key }) => key === 'fan-cowl'),
    steps: kept.map((each, index) => ({
      ...each,
      number: index + 1,
      waitsFor: each.waitsFor.filter((key) => keys.has(key)),
    })),
  };
}
