// A pod swap worked from end to end, with a requirement that its release closes.
import { podSwap } from '../procedures/pod-swap.mjs';
import { workedChanges } from '../story.mjs';
import { torques, workedSteps } from './script.mjs';

const change = workedChanges.find(({ registration }) => registration === 'ZZ-731');
const { registration, position, outgoing, incoming, toLocation, reason } = change;

const answers = {
  'tags-out': '5',
  'blanks-out': '8',
  'pod-off': { serialNumber: outgoing, partNumber: 'TN-POD-R63', positionNumber: String(position) },
  'strut-found': 'Fittings and fire seal in order. Seal of the lower hinge renewed.',
  'pod-papers': {
    plateSerial: incoming,
    documentSerial: incoming,
    documentNumber: 'PS-26-0344',
    tag: 'serviceable',
  },
  'pod-on': { serialNumber: incoming, partNumber: 'TN-POD-R63', positionNumber: String(position) },
  'hinge-bolts': torques('TW-2111', 'N·m', [
    ['1', '66'],
    ['4', '66'],
    ['2', '67'],
    ['3', '66'],
  ]),
  'cascades-found': 'No cracks, no loose fasteners; coating worn at two vanes within limits.',
  'blanks-in': '8',
  'tags-in': '5',
  'reverser-times': { values: { deploy: '1.7', stow: '6.2' } },
  'hydraulic-leaks': { minutes: '6', power: 'idle', found: 'none' },
};

// The lowering and the raising are signed at the moments of the story.
const begins = {
  'pull-breakers': '2026-11-21T07:20Z',
  'lower-pod': '2026-11-21T08:54Z',
  'raise-pod': '2026-11-21T11:19Z',
  'remove-tags': '2026-11-21T13:40Z',
};

export const podSwapWorked = {
  reference: 'W-7344',
  procedure: podSwap.code,
  openedBy: 'pim.haldorey',
  open: {
    kind: 'pod-swap',
    title: `Pod swap, position ${position}: ${outgoing} off, ${incoming} on`,
    registration,
    order: {
      positionNumber: position,
      slot: 'pod',
      outgoingSerial: outgoing,
      incomingSerial: incoming,
      removedToLocation: toLocation,
      reason,
    },
    requirements: [{ code: 'O630-78-11', registration, positionNumber: position }],
  },
  acts: [
    ...workedSteps({
      content: podSwap.content,
      answers,
      begins,
      by: 'tove.braskel',
      inspectedBy: 'ilo.fenwarth',
    }),
    { act: 'release', by: 'joss.merriwold' },
  ],
};
