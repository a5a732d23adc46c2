// A pod is exchanged: its two halves come off the strut, others go on. Every figure and document is invented.
import { content, count, held, item, seen, step, text, torque } from './parts.mjs';

const MANUAL = { document: 'O-630 maintenance manual, 78-30-00', revision: '11' };

const items = [
  item('cowls', 'cowl', 'Fan cowls'),
  item('reverser-lock', 'safety', 'Reverser lock-out pin'),
  item('hydraulic-lines', 'connection', 'Hydraulic lines of the reverser'),
  item('position-plugs', 'connection', 'Plugs of the position switches'),
  item('hinges', 'connection', 'Hinges of both halves'),
];

const makeSafe = {
  key: 'make-safe',
  title: 'Make safe and open',
  lane: 'both',
  place: 'cockpit',
  source: MANUAL,
  steps: [
    step('pull-breakers', 'Pull and tag the breakers of the reverser and the starter.', {
      captures: [count('tags-out', 'Tags hung', 'tags', 'out')],
    }),
    step('lock-reverser', 'Lock out the reverser; depressurise its hydraulics.', {
      ...held,
      cautions: ['The reverser can close on people. The pin stays in until the work is done.'],
      opens: ['reverser-lock'],
    }),
    step('open-cowls', 'Open both fan cowls; lock the hold-open rods.', {
      captures: [seen('rods-locked', 'Hold-open rods seen locked')],
      opens: ['cowls'],
    }),
  ],
};

const takeOff = {
  key: 'take-off',
  title: 'Take the pod off',
  lane: 'out',
  place: 'reverser',
  source: MANUAL,
  waitsFor: ['make-safe'],
  steps: [
    step('part-lines', 'Part the hydraulic lines and the plugs; blank both ends.', {
      captures: [count('blanks-out', 'Blanks put on', 'blanks', 'out')],
      opens: ['hydraulic-lines', 'position-plugs'],
    }),
    step('lower-pod', 'Lower both halves onto the stand.', {
      cautions: ['Suspended load: no one beneath.'],
      captures: [{ kind: 'component-off', key: 'pod-off', label: 'Pod that came off' }],
      opens: ['hinges'],
      moves: 'removal',
    }),
    step('look-at-strut', 'Look at hinge fittings, seals and the fire seal of the strut.', {
      captures: [text('strut-found', 'What was found')],
    }),
  ],
};

const putOn = {
  key: 'put-on',
  title: 'Put the other on',
  lane: 'in',
  place: 'reverser',
  source: MANUAL,
  waitsFor: ['take-off'],
  steps: [
    step('compare-papers', 'Compare the plate of the incoming pod with its release document.', {
      ...held,
      captures: [{ kind: 'papers', key: 'pod-papers', label: 'Plate and release document' }],
    }),
    step('raise-pod', 'Raise both halves and pin the hinges.', {
      ...held,
      captures: [{ kind: 'component-on', key: 'pod-on', label: 'Pod that goes on' }],
      moves: 'installation',
    }),
    step('torque-hinges', 'Torque the hinge bolts in order.', {
      ...held,
      captures: [
        torque('hinge-bolts', 'Hinge bolt', { points: ['1', '4', '2', '3'], low: '62', high: '70' }),
      ],
      closes: ['hinges'],
    }),
    step('inspect-cascades', 'Inspect the cascades and the translating sleeve in detail.', {
      ...held,
      captures: [text('cascades-found', 'What was found')],
    }),
    step('join-lines', 'Join the hydraulic lines with new seals, and the plugs by their labels.', {
      captures: [count('blanks-in', 'Blanks taken off', 'blanks', 'in')],
      closes: ['hydraulic-lines', 'position-plugs'],
    }),
  ],
};

const prove = {
  key: 'prove',
  title: 'Prove and close',
  lane: 'in',
  place: 'fan-cowls',
  source: MANUAL,
  waitsFor: ['put-on'],
  steps: [
    step('remove-tags', 'Take the lock-out pin out and the tags off; push in the breakers.', {
      ...held,
      captures: [count('tags-in', 'Tags taken off', 'tags', 'in')],
      closes: ['reverser-lock'],
    }),
    step('cycle-reverser', 'Deploy and stow the reverser three times; look for leaks.', {
      cautions: ['No one within reach of the sleeve while it moves.'],
      captures: [
        {
          kind: 'readings',
          key: 'reverser-times',
          label: 'Reverser',
          rows: [
            { key: 'deploy', label: 'Deploy', unit: 's', low: null, high: '2.0' },
            { key: 'stow', label: 'Stow', unit: 's', low: null, high: '7.5' },
          ],
        },
        { kind: 'leak-check', key: 'hydraulic-leaks', label: 'Leak check', minMinutes: 5, power: 'idle' },
      ],
    }),
    step('close-cowls', 'Close and latch both fan cowls.', {
      ...held,
      text: 'Lie down and see every latch flush. The second person looks again.',
      captures: [seen('latches-flush', 'Every latch seen flush')],
      closes: ['cowls'],
    }),
  ],
};

export const podSwap = {
  code: 'O630-78-PS',
  revision: '2',
  title: 'Pod swap, O-630, wing positions',
  kind: 'pod-swap',
  document: 'O-630 maintenance manual, chapter 78',
  documentRevision: '11',
  airframeType: 'O-630',
  content: content({ items, groups: [makeSafe, takeOff, putOn, prove] }),
};
