// What happened in two years: changes, visits, the loan whose records never came back, flights typed by hand.
import { minuteOf } from './instants.mjs';

/** Days an airframe stands in the hangar besides its changes. */
export const checks = [
  ['ZZ-417', '2025-06-10', '2025-06-13'],
  ['ZZ-417', '2025-12-02', '2025-12-06'],
  ['ZZ-417', '2026-08-18', '2026-08-21'],
  ['ZZ-823', '2025-03-18', '2025-03-21'],
  ['ZZ-823', '2025-10-20', '2025-10-25'],
  ['ZZ-823', '2026-05-05', '2026-05-08'],
  ['ZZ-731', '2025-01-27', '2025-01-30'],
  ['ZZ-731', '2025-11-03', '2025-11-06'],
  ['ZZ-731', '2026-05-18', '2026-05-22'],
  ['ZZ-739', '2025-05-12', '2025-05-15'],
  ['ZZ-739', '2025-12-08', '2025-12-12'],
  ['ZZ-952', '2025-02-10', '2025-02-12'],
  ['ZZ-952', '2026-02-16', '2026-02-19'],
  ['ZZ-958', '2025-04-07', '2025-04-09'],
  ['ZZ-958', '2026-03-23', '2026-03-26'],
].map(([registration, from, to]) => ({ registration, from: minuteOf(from), to: minuteOf(to) }));

/** Training at the base: [registration, day, touch-and-goes of each flight]. */
export const training = [
  ['ZZ-823', '2025-03-21', [8, 6]],
  ['ZZ-823', '2026-05-08', [10]],
  ['ZZ-731', '2026-05-22', [5]],
  ['ZZ-952', '2025-02-12', [7, 7, 5]],
  ['ZZ-958', '2026-03-26', [6, 8]],
];

/** An engine shut down in flight at position 3, and the ferry home on the three others. */
export const incident = {
  registration: 'ZZ-823',
  after: minuteOf('2025-06-14'),
  diversion: 'WXQ',
  flown: 254,
  position: 3,
  notRunningFor: 141,
  stands: 39 * 60 + 25,
  ferry: 233,
};

/**
 * The changes in order. `window` is when the airframe stands; `boundary` how the record tells the moment.
 * `logged` says whether the change was typed before the airframe's flights or after them.
 */
export const changes = [
  {
    registration: 'ZZ-417',
    position: 1,
    slot: 'engine',
    outgoing: 'KT-455',
    incoming: 'KT-442',
    window: ['2025-03-01', '2025-03-03'],
    boundary: { kind: 'instant', at: '2025-03-02T09:40Z' },
    toLocation: 'Karneth shop, Tarnwick',
    logged: 'before',
    reason: 'Planned shop visit: performance restoration due by programme.',
    releasedBy: 'cora.lindqvane',
  },
  {
    registration: 'ZZ-417',
    position: 4,
    slot: 'engine',
    outgoing: 'KT-530',
    incoming: 'KT-601',
    window: ['2026-04-13', '2026-04-15'],
    boundary: { kind: 'instant', at: '2026-04-14T13:05Z' },
    toLocation: 'Karneth shop, Tarnwick',
    logged: 'before',
    reason: 'Oil consumption rising; removed before the busy season.',
    releasedBy: 'cora.lindqvane',
  },
  {
    registration: 'ZZ-823',
    position: 3,
    slot: 'engine',
    outgoing: 'KT-588',
    incoming: 'KT-455',
    window: ['incident', 3],
    boundary: { kind: 'after-page' },
    toLocation: 'Karneth shop, Tarnwick',
    logged: 'after',
    reason: 'Shut down in flight: high vibration, stall; metal on the chip detector.',
    releasedBy: 'joss.merriwold',
  },
  {
    registration: 'ZZ-823',
    position: 2,
    slot: 'engine',
    outgoing: 'KT-574',
    incoming: 'KT-610',
    window: ['2026-02-09', '2026-02-12'],
    boundary: { kind: 'after-last' },
    toLocation: 'Engine store, QXA',
    logged: 'after',
    reason: 'Exhaust gas temperature margin used up.',
    releasedBy: 'cora.lindqvane',
  },
  {
    registration: 'ZZ-823',
    position: 1,
    slot: 'engine',
    outgoing: 'KT-561',
    incoming: 'KT-588',
    window: ['2026-09-01', '2026-09-03'],
    boundary: { kind: 'instant', at: '2026-09-02T06:30Z' },
    toLocation: 'Karneth shop, Tarnwick',
    logged: 'after',
    ratingCode: '84B',
    reason: 'Life-limited parts planned out; incoming engine runs at the higher rating.',
    releasedBy: 'joss.merriwold',
  },
  {
    registration: 'ZZ-731',
    position: 2,
    slot: 'engine',
    outgoing: 'RV-217',
    incoming: 'RV-270',
    window: ['2025-04-21', '2025-04-24'],
    boundary: { kind: 'instant', at: '2025-04-22T15:10Z' },
    toLocation: 'Ruvane shop, Oldersund',
    logged: 'after',
    reason: 'Blade damage found by borescope after a bird strike.',
    releasedBy: 'joss.merriwold',
  },
  {
    registration: 'ZZ-731',
    position: 1,
    slot: 'pod',
    outgoing: 'TN-4201',
    incoming: 'TN-4221',
    window: ['2025-10-06', '2025-10-07'],
    boundary: { kind: 'before-first' },
    toLocation: 'Pod shop, QZJ',
    logged: 'after',
    reason: 'Inlet lip dent beyond limits; pod exchanged.',
    releasedBy: 'cora.lindqvane',
  },
  {
    registration: 'ZZ-739',
    position: 3,
    slot: 'engine',
    outgoing: 'RV-252',
    incoming: 'RV-263',
    window: ['2026-06-08', '2026-06-11'],
    boundary: { kind: 'after-page' },
    toLocation: 'Engine store, QZJ',
    logged: 'after',
    reason: 'Convenience: records of the engine under review before its sale.',
    releasedBy: 'cora.lindqvane',
  },
  {
    registration: 'ZZ-739',
    position: 1,
    slot: 'engine',
    outgoing: 'RV-231',
    incoming: 'RV-217',
    window: ['2026-08-24', '2026-08-27'],
    boundary: { kind: 'instant', at: '2026-08-25T11:45Z' },
    toLocation: 'Ruvane shop, Oldersund',
    logged: 'after',
    reason: 'High-pressure turbine disks near their planned removal.',
    releasedBy: 'joss.merriwold',
  },
  {
    registration: 'ZZ-952',
    position: 1,
    slot: 'engine',
    outgoing: 'DM-118',
    incoming: 'DM-141',
    window: ['2025-08-19', '2025-08-21'],
    boundary: { kind: 'after-last' },
    toLocation: 'Dorsmeer shop, Hexelby',
    logged: 'after',
    reason: 'Fuel in oil; gearbox leak beyond limits.',
    releasedBy: 'cora.lindqvane',
  },
  {
    registration: 'ZZ-958',
    position: 2,
    slot: 'pod',
    outgoing: 'TN-5112',
    incoming: 'TN-5121',
    window: ['2025-12-15', '2025-12-16'],
    boundary: { kind: 'before-first' },
    toLocation: 'Pod shop, QZJ',
    logged: 'after',
    reason: 'Reverser translating sleeve cracked; pod exchanged.',
    releasedBy: 'joss.merriwold',
  },
  {
    registration: 'ZZ-952',
    position: 2,
    slot: 'engine',
    outgoing: 'DM-126',
    incoming: null,
    window: ['2026-11-19', '2026-11-21'],
    boundary: { kind: 'instant', at: '2026-11-19T10:20Z' },
    toLocation: 'Dorsmeer shop, Hexelby',
    logged: 'after',
    reason: 'High-pressure compressor stall on the ground run; no engine to put on yet.',
    releasedBy: null,
  },
  {
    registration: 'ZZ-958',
    position: 1,
    slot: 'engine',
    outgoing: 'DM-133',
    incoming: 'DM-118',
    window: ['2026-11-20T12:00Z', '2026-11-21'],
    boundary: { kind: 'instant', at: '2026-11-20T21:40Z' },
    toLocation: 'Engine store, QQJ',
    logged: 'after',
    reason: 'Planned: compressor wash no longer restores performance.',
    releasedBy: null,
  },
];

/** Changes worked by steps after the last flights: each move takes effect with the signature of its step. */
export const workedChanges = [
  {
    registration: 'ZZ-731',
    position: 3,
    slot: 'pod',
    outgoing: 'TN-4203',
    incoming: 'TN-4201',
    removedAt: '2026-11-21T09:05Z',
    installedAt: '2026-11-21T11:30Z',
    toLocation: 'Pod shop, QZJ',
    reason: 'Cracked cascade box found on the walk-round; pod exchanged.',
  },
  {
    registration: 'ZZ-823',
    position: 2,
    slot: 'engine',
    outgoing: 'KT-610',
    incoming: 'KT-622',
    removedAt: '2026-11-23T14:05Z',
    installedAt: '2026-11-24T09:10Z',
    toLocation: 'Karneth shop, Tarnwick',
    reason: 'Borescope: material missing from a high-pressure turbine blade, beyond limits.',
  },
];

/** Moves between locations and the visits that lower counters since the last shop visit. */
export const moves = [
  ['KT-601', 'On loan', '2026-03-02T08:00Z'],
  ['KT-601', 'Engine store, QXA', '2026-04-09T10:00Z'],
  ['KT-455', 'Engine store, QXA', '2025-05-28T12:00Z'],
  ['KT-588', 'Engine store, QXA', '2025-12-18T12:00Z'],
  ['RV-217', 'Engine store, QZJ', '2025-09-30T12:00Z'],
  ['DM-118', 'Engine store, QQJ', '2026-01-22T12:00Z'],
];
export const shopVisits = [
  ['KT-455', '2025-05-20T12:00Z', 'Release document KS-25-0417'],
  ['KT-588', '2025-12-10T12:00Z', 'Release document KS-25-1188'],
  ['RV-217', '2025-09-22T12:00Z', 'Release document RP-2509-31'],
  ['DM-118', '2026-01-14T12:00Z', 'Release document DX-26-006'],
];

/** Rating changes of engines on the wing, inside a check. */
export const ratingChanges = [
  ['RV-204', '2025-11-04T10:00Z', '63-2', 'Rating plug change, work order W-5521'],
  ['DM-137', '2026-03-24T09:00Z', '45H', 'Control software change, work order W-6104'],
];

/** 38 days nobody can account for: the engine ran elsewhere and its log did not come back. */
export const lostLog = {
  engine: 'KT-601',
  from: '2026-03-02T08:00Z',
  to: '2026-04-09T10:00Z',
  note: 'On loan for 38 days; the log pages of the loan did not come back with the engine.',
};
/** A gap before the record begins, with an acceptance of its worst case. */
export const acceptedGap = {
  engine: 'RV-252',
  part: 'LPT disk 2',
  from: '2019-03-04T00:00Z',
  to: '2019-05-20T00:00Z',
  cycles: 180,
  minutes: 31200,
  note: 'No off-log between two engines of the former operator.',
  acceptedBy: 'Ruvane Propulsion, life management',
  reference: 'Letter RP-LM-0098',
};
