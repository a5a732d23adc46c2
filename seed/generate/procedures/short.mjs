// Short procedures: an inspection, a directive, an auxiliary power unit. Every figure and document is invented.
import { content, count, held, item, photo, seen, step, text, torque } from './parts.mjs';

const BORESCOPE = { document: 'R63 engine manual, 72-50-00', revision: '8' };
const plugs = item('borescope-plugs', 'panel', 'Borescope plugs');

export const borescope = {
  code: 'R63-72-BI',
  revision: '4',
  title: 'Borescope inspection, high-pressure turbine, R63',
  kind: 'inspection',
  document: 'R63 engine manual, chapter 72',
  documentRevision: '8',
  engineModel: 'R63',
  content: content({
    items: [item('fan-cowls', 'cowl', 'Fan cowls'), plugs],
    groups: [
      {
        key: 'open',
        title: 'Open',
        lane: 'both',
        place: 'fan-cowls',
        source: BORESCOPE,
        steps: [
          step('tag-breakers', 'Pull and tag the breakers of starter and ignition.', {
            captures: [count('tags-out', 'Tags hung', 'tags', 'out')],
          }),
          step('open-cowls', 'Open both fan cowls; lock the hold-open rods.', { opens: ['fan-cowls'] }),
          step('remove-plugs', 'Take out the borescope plugs of the high-pressure turbine.', {
            cautions: ['Hot parts: wait as long as the manual says.'],
            opens: ['borescope-plugs'],
          }),
        ],
      },
      {
        key: 'look',
        title: 'Look',
        lane: 'both',
        place: 'core-left',
        source: BORESCOPE,
        waitsFor: ['open'],
        steps: [
          step('inspect-stage-1', 'Inspect all blades of stage 1; turn the rotor one full turn.', {
            ...held,
            captures: [text('stage-1-found', 'What was found'), photo('stage-1-picture', 'Picture')],
          }),
          step('inspect-stage-2', 'Inspect all blades of stage 2; turn the rotor one full turn.', {
            ...held,
            captures: [text('stage-2-found', 'What was found'), photo('stage-2-picture', 'Picture')],
          }),
        ],
      },
      {
        key: 'close',
        title: 'Close',
        lane: 'both',
        place: 'fan-cowls',
        source: BORESCOPE,
        waitsFor: ['look'],
        steps: [
          step('fit-plugs', 'Fit the borescope plugs with new seals and torque them.', {
            ...held,
            captures: [
              torque('plug-torque', 'Borescope plug', {
                points: ['1', '2'],
                low: '240',
                high: '280',
                unit: 'lbf·in',
              }),
            ],
            closes: ['borescope-plugs'],
          }),
          step('close-cowls', 'Close and latch both fan cowls.', {
            ...held,
            captures: [seen('latches-flush', 'Every latch seen flush')],
            closes: ['fan-cowls'],
          }),
          step('remove-tags', 'Take off the tags and push in the breakers.', {
            captures: [count('tags-in', 'Tags taken off', 'tags', 'in')],
          }),
        ],
      },
    ],
  }),
};

const CLAMPS = { document: 'Directive 26-03', revision: '1' };

export const clampDirective = {
  code: 'D45-26-03',
  revision: '1',
  title: 'Fuel manifold clamps, replacement, D45',
  kind: 'directive',
  document: 'Directive 26-03',
  documentRevision: '1',
  engineModel: 'D45',
  content: content({
    items: [
      item('fan-cowls', 'cowl', 'Fan cowls'),
      item('clamps', 'connection', 'Clamps of the fuel manifold'),
    ],
    groups: [
      {
        key: 'do',
        title: 'Replace the clamps',
        lane: 'both',
        place: 'core-right',
        source: CLAMPS,
        steps: [
          step('open-cowls', 'Open both fan cowls; lock the hold-open rods.', { opens: ['fan-cowls'] }),
          step('take-off-clamps', 'Take off the eight clamps, one at a time; look for chafing beneath.', {
            captures: [text('chafing-found', 'What was found')],
            opens: ['clamps'],
          }),
          step('fit-clamps', 'Fit new clamps and torque their nuts.', {
            ...held,
            captures: [
              torque('clamp-nuts', 'Clamp nut', {
                points: ['1', '2', '3', '4', '5', '6', '7', '8'],
                low: '22.0',
                high: '26.0',
                thread: 'dry',
              }),
            ],
            closes: ['clamps'],
          }),
          step('leak-check', 'Run at idle and look for leaks.', {
            ...held,
            captures: [
              { kind: 'leak-check', key: 'leaks', label: 'Leak check', minMinutes: 5, power: 'idle' },
            ],
          }),
          step('close-cowls', 'Close and latch both fan cowls.', {
            ...held,
            captures: [seen('latches-flush', 'Every latch seen flush')],
            closes: ['fan-cowls'],
          }),
        ],
      },
    ],
  }),
};

const UNIT = { document: 'P20 manual, chapter 49', revision: '3' };

export const unitChange = {
  code: 'P20-49-CC',
  revision: '1',
  title: 'Auxiliary power unit change, P20',
  kind: 'component-change',
  document: 'P20 manual, chapter 49',
  documentRevision: '3',
  engineModel: 'P20',
  content: content({
    items: [
      item('doors', 'cowl', 'Doors of the compartment'),
      item('lines', 'connection', 'Fuel, bleed and drain lines'),
      item('plugs', 'connection', 'Plugs and generator leads'),
    ],
    groups: [
      {
        key: 'out',
        title: 'Out',
        lane: 'out',
        place: 'exhaust',
        source: UNIT,
        steps: [
          step('tag-breakers', 'Pull and tag the breakers of the unit.', {
            captures: [count('tags-out', 'Tags hung', 'tags', 'out')],
          }),
          step('open-doors', 'Open the doors and part lines and plugs; blank both ends.', {
            captures: [count('blanks-out', 'Blanks put on', 'blanks', 'out')],
            opens: ['doors', 'lines', 'plugs'],
          }),
          step('lower-unit', 'Lower the unit onto its stand.', {
            captures: [{ kind: 'component-off', key: 'unit-off', label: 'Unit that came off' }],
            moves: 'removal',
          }),
        ],
      },
      {
        key: 'in',
        title: 'In',
        lane: 'in',
        place: 'exhaust',
        source: UNIT,
        waitsFor: ['out'],
        steps: [
          step('compare-papers', 'Compare the plate with the release document.', {
            ...held,
            captures: [{ kind: 'papers', key: 'unit-papers', label: 'Plate and release document' }],
          }),
          step('raise-unit', 'Raise the unit and torque its mounts.', {
            ...held,
            captures: [
              { kind: 'component-on', key: 'unit-on', label: 'Unit that goes on' },
              torque('mounts', 'Mount bolt', { points: ['1', '2', '3'], low: '45', high: '52' }),
            ],
            moves: 'installation',
          }),
          step('join-lines', 'Join lines and plugs with new seals.', {
            ...held,
            captures: [count('blanks-in', 'Blanks taken off', 'blanks', 'in')],
            closes: ['lines', 'plugs'],
          }),
          step('run-unit', 'Run the unit under load and look for leaks.', {
            captures: [
              { kind: 'leak-check', key: 'leaks', label: 'Leak check', minMinutes: 10, power: 'full load' },
            ],
          }),
          step('close-doors', 'Close and latch the doors; take off the tags.', {
            ...held,
            captures: [count('tags-in', 'Tags taken off', 'tags', 'in')],
            closes: ['doors'],
          }),
        ],
      },
    ],
  }),
};
