// An engine change in work: the engine is lifted, and one mount bolt was found out of range.
import { procedures } from '../procedures/procedures.mjs';
import { workedChanges } from '../story.mjs';
import { attempts, torques, workedSteps } from './script.mjs';

const { code, content } = procedures.find((procedure) => procedure.kind === 'engine-change');
const change = workedChanges.find(({ registration }) => registration === 'ZZ-823');
const { registration, position, outgoing, incoming, toLocation, reason } = change;
const technician = 'tove.braskel';
const inspector = 'ilo.fenwarth';

const answers = {
  'registration-read': registration,
  'tags-out': '9',
  'tools-out': '31',
  'plug-blanks-out': '14',
  'feeder-blanks-out': '3',
  'fuel-blanks-out': '2',
  'hydraulic-blanks-out': '10',
  'duct-blanks-out': [
    { typed: '5', voided: 'Counted again: the second blank of the bleed duct was left out.' },
    { typed: '6' },
  ],
  'load-read': 'Forward 21.4 kN, aft 17.9 kN, by GA-0433.',
  'engine-off': { serialNumber: outgoing, partNumber: 'K84-0001', positionNumber: String(position) },
  'strut-found': 'Fittings and bearings in order. Light fretting at the aft fitting, within limits, cleaned.',
  'harness-found': 'One clamp of the lower harness worn; renewed.',
  'incoming-papers': {
    plateSerial: incoming,
    documentSerial: incoming,
    documentNumber: 'KS-26-0719',
    tag: 'serviceable',
  },
  'standard-found': 'None. Rating 84A, as at this position.',
  'incoming-blanks': '22',
  'engine-on': { serialNumber: incoming, partNumber: 'K84-0001', positionNumber: String(position) },
};

// The first wrench drawn was out of date; point 2 went beyond the range.
const bolts = [
  ...torques('TW-2088', 'N·m', [['1', '111.0', '2.0']]),
  ...torques('TW-2107', 'N·m', [
    ['1', '111.2', '2.0'],
    ['3', '110.6', '1.9'],
    ['2', '118.4', '2.1'],
  ]),
];

// The lowering and the lifting are signed at the moments of the story.
const begins = {
  'confirm-position': '2026-11-23T07:10Z',
  'lock-reverser': '2026-11-23T09:05Z',
  'part-harness': '2026-11-23T10:10Z',
  'fit-hoists': '2026-11-23T13:10Z',
  'lower-engine': '2026-11-23T13:54Z',
  'inspect-strut': '2026-11-23T15:00Z',
  'compare-papers': '2026-11-24T06:40Z',
  'lift-engine': '2026-11-24T08:59Z',
};

/** Found while looking at the strut; signed, and waiting for the second person. */
const blend = {
  title: 'Blend the nick on the lower edge of the firewall, aft of the bleed duct.',
  text: 'Found while the engine was off. Limits of the structural repair manual, 54-50-01.',
  inspection: 'independent',
  captures: [{ kind: 'text', key: 'depth-after', label: 'Depth after blending', required: true }],
};

const torqueStep = content.steps.find(({ key }) => key === 'torque-forward-mount');

export const engineChangeInWork = {
  reference: 'W-7351',
  procedure: code,
  openedBy: 'pim.haldorey',
  open: {
    kind: 'engine-change',
    title: `Engine change, position ${position}: ${outgoing} off, ${incoming} on`,
    registration,
    order: {
      positionNumber: position,
      slot: 'engine',
      outgoingSerial: outgoing,
      incomingSerial: incoming,
      removedToLocation: toLocation,
      reason,
    },
    requirements: [],
  },
  own: [blend],
  acts: [
    ...workedSteps({
      content,
      until: 'lift-engine',
      answers,
      begins,
      by: technician,
      inspectedBy: inspector,
    }),
    { act: 'add', by: 'cora.lindqvane', step: blend },
    {
      act: 'capture',
      step: '+1',
      by: technician,
      capture: 'depth-after',
      typed: { kind: 'text', text: '0.15 mm over 12 mm; limit 0.25 mm.' },
    },
    { act: 'sign', step: '+1', meaning: 'done', by: technician, performedAt: '2026-11-24T10:35Z' },
    ...attempts(
      torqueStep.captures[0],
      { 'forward-bolts': bolts },
      { step: torqueStep.key, rejected: true },
      technician,
    ),
  ],
};
