import type { Capture, TorqueCapture } from '@strutbook/domain/work/capture.js';
import type { AccountableItem, StepDefinition, StepGroup } from '@strutbook/domain/work/step.js';

const SOURCE = { document: 'V-840 maintenance manual, 71-00-02', revision: '14' };

export const GROUPS: readonly StepGroup[] = [
  { key: 'plan', letter: 'A', title: 'Plan', lane: 'both', place: 'cockpit' },
  { key: 'make-safe', letter: 'B', title: 'Make safe', lane: 'out', place: 'ground' },
  { key: 'open', letter: 'C', title: 'Open the cowls', lane: 'out', place: 'fan-cowls' },
  { key: 'part', letter: 'D', title: 'Part fluids, right side', lane: 'out', place: 'core-right' },
  { key: 'lower', letter: 'E', title: 'Lower the engine', lane: 'out', place: 'aft-mount' },
  { key: 'accept', letter: 'F', title: 'Accept the incoming engine', lane: 'in', place: 'stand' },
  { key: 'lift', letter: 'G', title: 'Lift and mount', lane: 'in', place: 'forward-mount' },
  { key: 'run', letter: 'H', title: 'Run and check for leaks', lane: 'in', place: 'exhaust' },
  { key: 'close', letter: 'I', title: 'Close up', lane: 'both', place: 'inlet' },
];

export const ITEMS: readonly AccountableItem[] = [
  { key: 'cowl-left', kind: 'cowl', name: 'Fan cowl', side: 'left' },
  { key: 'cowl-right', kind: 'cowl', name: 'Fan cowl', side: 'right' },
  { key: 'fuel-supply', kind: 'connection', name: 'Fuel supply line', side: 'right' },
  { key: 'breakers', kind: 'safety', name: 'Breakers pulled and tagged', side: null },
];

/** Four bolts crosswise, run-on torque always added. */
const FORWARD_BOLTS: TorqueCapture = {
  kind: 'torque',
  key: 'forward-bolts',
  label: 'Forward mount bolts',
  points: ['1', '3', '2', '4'],
  low: '105.0',
  high: '115.0',
  unit: 'N·m',
  thread: 'lubricated',
  runOn: { rule: 'add', low: null, high: null },
  binds: 'range',
};

const FUEL_NUT: TorqueCapture = {
  ...FORWARD_BOLTS,
  key: 'fuel-nut',
  label: 'Fuel supply nut',
  points: ['1'],
  low: '450',
  high: '500',
  unit: 'lbf·in',
  thread: 'dry',
  runOn: { rule: 'none', low: null, high: null },
};

const blanks = (key: string, direction: 'out' | 'in'): Capture => ({
  kind: 'count',
  key,
  label: 'Blanks put on the lines',
  what: 'blanks',
  direction,
});

const RUN: readonly Capture[] = [
  { kind: 'leak-check', key: 'idle-check', label: 'Leak check at idle', minMinutes: 5, power: 'idle' },
  {
    kind: 'readings',
    key: 'power-readings',
    label: 'Power run',
    rows: [
      { key: 'n1', label: 'N1', unit: '%', low: '88.0', high: '92.5' },
      { key: 'egt', label: 'Exhaust gas temperature', unit: '°C', low: null, high: '865' },
      { key: 'oil', label: 'Oil pressure', unit: 'psi', low: '42', high: '88' },
      { key: 'oat', label: 'Outside air', unit: '°C', low: null, high: null },
    ],
  },
];

type Written = Partial<StepDefinition> & Pick<StepDefinition, 'key' | 'group' | 'title'>;

const WRITTEN: readonly Written[] = [
  {
    key: 'confirm-position',
    group: 'plan',
    title: 'Confirm airframe, position and order.',
    inspection: 'independent',
    captures: [
      { kind: 'check', key: 'right-airframe', label: 'Registration and position are those of the order' },
    ],
  },
  {
    key: 'pull-breakers',
    group: 'make-safe',
    title: 'Pull and tag the breakers.',
    captures: [{ kind: 'count', key: 'tags-out', label: 'Tags hung', what: 'tags', direction: 'out' }],
    opens: ['breakers'],
  },
  { key: 'cool-down', group: 'make-safe', title: 'Let the engine cool as long as the manual says.' },
  {
    key: 'open-cowls',
    group: 'open',
    title: 'Open both fan cowls and lock the hold-open rods.',
    cautions: [
      'Look at the wind limit of the manual before a cowl is opened.',
      'A rod that is not locked lets the cowl fall on whoever is beneath.',
    ],
    opens: ['cowl-left', 'cowl-right'],
    waitsFor: ['pull-breakers'],
  },
  {
    key: 'part-fuel',
    group: 'part',
    title: 'Part the fuel supply line at the strut; cap both sides.',
    inspection: 'independent',
    cautions: ['Cap the line at once: dirt in it damages the pump.'],
    captures: [blanks('fuel-blanks', 'out')],
    opens: ['fuel-supply'],
    waitsFor: ['open-cowls'],
  },
  {
    key: 'release-mounts',
    group: 'lower',
    title: 'Release the aft mount, then the forward mount, and lower the engine level.',
    inspection: 'independent',
    cautions: ['Suspended load: no one beneath. Watch the clearance all round.'],
    captures: [{ kind: 'component-off', key: 'engine-off', label: 'Engine that comes off' }],
    moves: 'removal',
    waitsFor: ['part-fuel'],
  },
  {
    key: 'compare-papers',
    group: 'accept',
    title: 'Compare the data plate with the release document.',
    inspection: 'independent',
    cautions: ['When plate and papers differ, the engine goes to quarantine. Do not fit it.'],
    captures: [
      { kind: 'papers', key: 'papers', label: 'Plate and release document' },
      { kind: 'photo', key: 'plate-photo', label: 'Picture of the data plate', required: false },
    ],
  },
  {
    key: 'note-standard',
    group: 'accept',
    title: 'Note differences of its build standard.',
    captures: [{ kind: 'text', key: 'differences', label: 'Differences found', required: true }],
  },
  {
    key: 'lift',
    group: 'lift',
    title: 'Lift the engine level to the strut and align the mounts.',
    inspection: 'independent',
    captures: [{ kind: 'component-on', key: 'engine-on', label: 'Engine that goes on' }],
    moves: 'installation',
    waitsFor: ['compare-papers', 'release-mounts'],
  },
  {
    key: 'torque-forward',
    group: 'lift',
    title: 'Torque the forward mount bolts in order.',
    text: 'New bolts and nuts. Pull smoothly; watch the run-on torque of each nut.',
    inspection: 'independent',
    captures: [FORWARD_BOLTS],
  },
  {
    key: 'rejoin-fuel',
    group: 'lift',
    title: 'Rejoin the fuel supply line with a new seal; torque the nut.',
    cautions: ['Start the nut by hand. A nut that is lockwired can still be cross-threaded.'],
    captures: [blanks('fuel-blanks-in', 'in'), FUEL_NUT],
    closes: ['fuel-supply'],
  },
  { key: 'run', group: 'run', title: 'Run at idle and at power; look for leaks.', captures: RUN },
  {
    key: 'close-cowls',
    group: 'close',
    title: 'Close and latch both fan cowls; see every latch flush.',
    inspection: 'independent',
    closes: ['cowl-left', 'cowl-right', 'breakers'],
    waitsFor: ['run'],
  },
];

/** An invented procedure of an engine change, short enough to be looked through. */
export const DEFINITIONS: readonly StepDefinition[] = WRITTEN.map((step, place) => ({
  number: place + 1,
  text: null,
  cautions: [],
  source: SOURCE,
  waitsFor: [],
  inspection: 'none',
  captures: [],
  opens: [],
  closes: [],
  moves: null,
  ...step,
}));
