// An engine comes off: made safe, opened, parted on both sides, lowered. Every figure and document is invented.
import { count, held, item, photo, seen, step, text } from './parts.mjs';

const MANUAL = { document: 'V-840 maintenance manual, 71-00-02', revision: '14' };

export const items = [
  item('fan-cowl-left', 'cowl', 'Fan cowl', 'left'),
  item('fan-cowl-right', 'cowl', 'Fan cowl', 'right'),
  item('reverser-left', 'cowl', 'Reverser half', 'left'),
  item('reverser-right', 'cowl', 'Reverser half', 'right'),
  item('reverser-lock', 'safety', 'Reverser lock-out pin'),
  item('fuel-valve', 'safety', 'Fuel shut-off valve closed'),
  item('harness-upper', 'connection', 'Electrical plugs, upper row', 'left'),
  item('harness-lower', 'connection', 'Electrical plugs, lower row', 'left'),
  item('generator-feeder', 'connection', 'Generator feeders', 'left'),
  item('fire-loop', 'connection', 'Fire detector plugs', 'left'),
  item('fuel-supply', 'connection', 'Fuel supply line', 'right'),
  item('hydraulic-lines', 'connection', 'Hydraulic supply, pressure and case drain lines', 'right'),
  item('drain-lines', 'connection', 'Drain lines', 'right'),
  item('bleed-duct', 'connection', 'Bleed air duct', 'right'),
  item('starter-duct', 'connection', 'Starter air duct', 'right'),
  item('anti-ice-duct', 'connection', 'Inlet anti-ice duct', 'right'),
  item('thrust-control', 'connection', 'Thrust control'),
  item('forward-mount', 'connection', 'Forward mount'),
  item('aft-mount', 'connection', 'Aft mount'),
];

export const makeSafe = {
  key: 'make-safe',
  title: 'Make safe',
  lane: 'out',
  place: 'cockpit',
  source: MANUAL,
  steps: [
    step('confirm-position', 'Confirm airframe, position and serial with the order.', {
      ...held,
      text: 'Read registration, position and the engine’s data plate aloud against the order, two persons.',
      cautions: ['Stop when registration, position or serial differs from the order. Ask before going on.'],
      captures: [text('registration-read', 'Registration read at the aircraft')],
    }),
    step('ground-aircraft', 'Chock, ground and level the aircraft; fit the gear pins.', {
      cautions: [
        'The aircraft can tip or roll when the weight of an engine leaves the wing: follow the limits of the manual.',
      ],
    }),
    step('pull-breakers', 'Pull and tag the breakers of the position.', {
      text: 'Ignition, starter, generator, reverser and fire system of this position, as the list in the manual says.',
      cautions: ['The ignition holds a charge. Wait as long as the manual says before touching it.'],
      captures: [count('tags-out', 'Tags hung', 'tags', 'out')],
    }),
    step('shut-fuel', 'Close the fuel shut-off valve and make the bottle cartridges safe.', {
      cautions: ['Fire bottle cartridges can fire by static charge: only trained staff, bonded tools.'],
      opens: ['fuel-valve'],
    }),
    step('depressurise-hydraulics', 'Depressurise the hydraulic system of the position.', {
      cautions: ['Hydraulic fluid under pressure cuts skin. Read zero on the gauge before parting a line.'],
    }),
    step('issue-tools', 'Draw the tools for the position and count them.', {
      captures: [count('tools-out', 'Tools drawn', 'tools', 'out')],
    }),
  ],
};

export const open = {
  key: 'open',
  title: 'Open',
  lane: 'out',
  place: 'fan-cowls',
  source: MANUAL,
  waitsFor: ['make-safe'],
  steps: [
    step('lock-reverser', 'Lock out the reverser.', {
      ...held,
      cautions: ['The reverser can close on people. The pin stays in until the work is done.'],
      opens: ['reverser-lock'],
    }),
    step('open-fan-cowls', 'Open both fan cowls; lock the hold-open rods.', {
      cautions: [
        'Wind can tear open cowls loose: read the wind and the limit of the manual first.',
        'Stand clear of the path of the cowl until the rod is seen to be locked.',
      ],
      captures: [seen('rods-locked', 'Hold-open rods seen locked')],
      opens: ['fan-cowl-left', 'fan-cowl-right'],
    }),
    step('open-reverser', 'Open both reverser halves; lock the hold-open rods.', {
      cautions: ['The halves are heavy and driven by a pump: no one between half and core while they move.'],
      captures: [seen('reverser-rods-locked', 'Hold-open rods seen locked')],
      opens: ['reverser-left', 'reverser-right'],
    }),
  ],
};

export const part = {
  key: 'part-electrical',
  title: 'Part electrical, left side',
  lane: 'out',
  place: 'core-left',
  source: MANUAL,
  waitsFor: ['open'],
  steps: [
    step('part-harness', 'Part the electrical plugs; label and cap both halves.', {
      captures: [count('plug-blanks-out', 'Blanks put on plugs', 'blanks', 'out')],
      opens: ['harness-upper', 'harness-lower'],
    }),
    step('part-feeders', 'Part the generator feeders and cover the terminals.', {
      cautions: ['Check the feeders for no voltage first.'],
      captures: [count('feeder-blanks-out', 'Blanks put on feeders', 'blanks', 'out')],
      opens: ['generator-feeder'],
    }),
    step('part-fire-loop', 'Part the fire detector plugs.', { opens: ['fire-loop'] }),
  ],
};

export const partFluids = {
  key: 'part-fluids',
  title: 'Part fluids and air, right side',
  lane: 'out',
  place: 'core-right',
  source: MANUAL,
  waitsFor: ['open'],
  steps: [
    step('drain', 'Drain fuel and hydraulic fluid of the position.', {
      cautions: ['Fuel vapour burns: bonded containers, no ignition source, eye protection.'],
    }),
    step('part-fuel', 'Part the fuel supply line; cap both ends.', {
      captures: [count('fuel-blanks-out', 'Blanks put on the fuel line', 'blanks', 'out')],
      opens: ['fuel-supply'],
    }),
    step('part-hydraulics', 'Part the hydraulic and drain lines; cap both ends.', {
      captures: [count('hydraulic-blanks-out', 'Blanks put on hydraulic and drain lines', 'blanks', 'out')],
      opens: ['hydraulic-lines', 'drain-lines'],
    }),
    step('part-air', 'Part the bleed, starter and anti-ice ducts; blank the openings.', {
      captures: [count('duct-blanks-out', 'Blanks put on ducts', 'blanks', 'out')],
      opens: ['bleed-duct', 'starter-duct', 'anti-ice-duct'],
    }),
    step('part-control', 'Part the thrust control.', { opens: ['thrust-control'] }),
  ],
};

export const lower = {
  key: 'lower',
  title: 'Lower the engine',
  lane: 'out',
  place: 'aft-mount',
  source: MANUAL,
  waitsFor: ['part-electrical', 'part-fluids'],
  steps: [
    step('fit-hoists', 'Fit the hoists; take the weight and read the load.', {
      cautions: [
        'Suspended load: no one beneath. Use only the lifting gear and the method of the manual.',
        'An engine and its strut are never lowered as one.',
      ],
      captures: [text('load-read', 'Load read')],
    }),
    step('remove-mount-bolts', 'Take out the aft, then the forward mount bolts.', {
      opens: ['aft-mount', 'forward-mount'],
    }),
    step('lower-engine', 'Lower the engine level onto the stand and pin it.', {
      ...held,
      text: 'Watch the clearance all round. Read the serial from the data plate on the stand.',
      cautions: ['Stop at once when anything touches.'],
      captures: [{ kind: 'component-off', key: 'engine-off', label: 'Engine that came off' }],
      moves: 'removal',
    }),
  ],
};

export const inspect = {
  key: 'inspect',
  title: 'Look at what is exposed',
  lane: 'out',
  place: 'strut',
  source: MANUAL,
  waitsFor: ['lower'],
  steps: [
    step('inspect-strut', 'Inspect strut fittings, mount bearings and firewall.', {
      ...held,
      cautions: ['Damage to fittings can stay hidden under paint and sealant: clean first.'],
      captures: [text('strut-found', 'What was found'), photo('strut-photo', 'Picture of the fittings')],
    }),
    step('inspect-harness', 'Inspect harnesses, clamps, lines and drains of the strut.', {
      captures: [text('harness-found', 'What was found')],
    }),
  ],
};
