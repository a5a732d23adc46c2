// The operator, its people, airframes, engines, pods and auxiliary power units as the record begins. All invented.

export const OPERATOR = { code: 'ZQD', name: 'Dravenholm Air (demonstration)' };
export const OWNER = 'Dravenholm Air';
const LESSOR = 'Cormorel Leasing';

const longHaul = { turn: [320, 950], hours: null };
const medium = { turn: [70, 190], hours: [5 * 60, 15 * 60], extra: 110 };
const shortHaul = { turn: [35, 70], hours: [5 * 60, 13 * 60 + 50], extra: 50 };

export const airframes = [
  {
    registration: 'ZZ-417',
    serialNumber: '84017',
    type: 'V-840',
    ruleSet: 'eu-145',
    manufacturedOn: '2012-05-14',
    base: 'QXA',
    firstPage: 20117,
    ...longHaul,
    now: { minutes: 21480 * 60 + 36, flights: 9214 },
    routes: [
      ['QVX', 402],
      ['ZQX', 366],
      ['KQX', 447],
      ['HQX', 391],
    ],
    apu: 'PV-071',
    positions: {
      1: ['KT-455', 'TN-3101'],
      2: ['KT-518', 'TN-3102'],
      3: ['KT-377', 'TN-3103'],
      4: ['KT-530', 'TN-3104'],
    },
  },
  {
    registration: 'ZZ-823',
    serialNumber: '84023',
    type: 'V-840',
    ruleSet: 'eu-145',
    manufacturedOn: '2013-02-02',
    lessor: LESSOR,
    base: 'QXA',
    firstPage: 31840,
    ...longHaul,
    start: { minutes: 1039140, flights: 8011 },
    routes: [
      ['VQX', 424],
      ['ZQX', 369],
      ['JQX', 455],
      ['KQX', 440],
    ],
    apu: 'PV-078',
    positions: {
      1: ['KT-561', 'TN-3111'],
      2: ['KT-574', 'TN-3112'],
      3: ['KT-588', 'TN-3113'],
      4: ['KT-599', 'TN-3114'],
    },
  },
  {
    registration: 'ZZ-731',
    serialNumber: '63-0112',
    type: 'O-630',
    ruleSet: 'eu-145',
    manufacturedOn: '2008-09-19',
    base: 'QZJ',
    firstPage: 44020,
    ...medium,
    start: { minutes: 2142660, flights: 13120 },
    routes: [
      ['QXA', 171],
      ['WQJ', 148],
      ['GQX', 202],
      ['XQV', 163],
    ],
    apu: 'PV-043',
    positions: { 1: ['RV-204', 'TN-4201'], 2: ['RV-217', 'TN-4202'], 3: ['RV-226', 'TN-4203'] },
  },
  {
    registration: 'ZZ-739',
    serialNumber: '63-0119',
    type: 'O-630',
    ruleSet: 'eu-145',
    manufacturedOn: '2009-03-27',
    lessor: LESSOR,
    base: 'QZJ',
    firstPage: 52710,
    ...medium,
    start: { minutes: 2067015, flights: 12655 },
    routes: [
      ['QHX', 157],
      ['WQJ', 151],
      ['GQX', 199],
      ['QYX', 184],
    ],
    apu: 'PV-046',
    positions: { 1: ['RV-231', 'TN-4211'], 2: ['RV-245', 'TN-4212'], 3: ['RV-252', 'TN-4213'] },
  },
  {
    registration: 'ZZ-952',
    serialNumber: '42-311',
    type: 'V-420',
    ruleSet: 'uk-145',
    manufacturedOn: '2011-11-08',
    base: 'QQJ',
    firstPage: 60004,
    ...shortHaul,
    start: { minutes: 1304310, flights: 17040 },
    routes: [
      ['QJW', 71],
      ['QKZ', 84],
      ['JXQ', 62],
      ['QXA', 95],
    ],
    apu: 'PV-112',
    positions: { 1: ['DM-118', 'TN-5101'], 2: ['DM-126', 'TN-5102'] },
  },
  {
    registration: 'ZZ-958',
    serialNumber: '42-327',
    type: 'V-420',
    ruleSet: 'uk-145',
    manufacturedOn: '2014-06-30',
    base: 'QQJ',
    firstPage: 71300,
    ...shortHaul,
    start: { minutes: 983205, flights: 12710 },
    routes: [
      ['WXQ', 78],
      ['QKZ', 82],
      ['ZXQ', 66],
      ['QZJ', 90],
    ],
    apu: 'PV-119',
    positions: { 1: ['DM-133', 'TN-5111'], 2: ['DM-137', 'TN-5112'] },
  },
];

/** [serial, model, rating, cycles since new, of these at the other rating, cycles since the last shop visit, minutes a cycle]. */
const table = [
  ['KT-442', 'K84', '84A', { now: { minutes: 18204 * 60 + 6, cycles: 7981 } }, 0, 420, 137],
  ['KT-518', 'K84', '84A', { now: { minutes: 16990 * 60 + 24, cycles: 8771 } }, 0, 980, 116],
  ['KT-377', 'K84', '84A', { now: { minutes: 20112 * 60 + 54, cycles: 9004 } }, 0, 1410, 134],
  ['KT-601', 'K84', '84A', 5214, 0, 760, 131],
  ['KT-455', 'K84', '84A', 7102, 1840, 1960, 133],
  ['KT-530', 'K84', '84A', 6058, 0, 1330, 129],
  ['KT-561', 'K84', '84A', 8160, 2210, 1150, 135],
  ['KT-574', 'K84', '84B', 7395, 3020, 1720, 132],
  ['KT-588', 'K84', '84A', 6711, 0, 1490, 130],
  ['KT-599', 'K84', '84A', 5837, 1200, 890, 134],
  ['KT-610', 'K84', '84A', 3904, 0, null, 128],
  ['KT-622', 'K84', '84A', 2210, 0, null, 127],
  ['RV-204', 'R63', '63-1', 11806, 0, 2410, 165],
  ['RV-217', 'R63', '63-1', 9612, 0, 3105, 161],
  ['RV-226', 'R63', '63-1', 12004, 0, 1885, 168],
  ['RV-231', 'R63', '63-1', 12411, 0, 2790, 163],
  ['RV-245', 'R63', '63-1', 8830, 0, 1240, 160],
  ['RV-252', 'R63', '63-1', 10957, 0, 2055, 164],
  ['RV-263', 'R63', '63-1', 7215, 0, 980, 159],
  ['RV-270', 'R63', '63-2', 6120, 2600, 1475, 162],
  ['DM-118', 'D45', '45L', 14105, 0, 3980, 77],
  ['DM-126', 'D45', '45L', 15922, 2150, 2890, 75],
  ['DM-133', 'D45', '45L', 12218, 0, 5120, 78],
  ['DM-137', 'D45', '45L', 9804, 3310, 2240, 76],
  ['DM-141', 'D45', '45H', 8422, 4015, 1660, 79],
  ['DM-152', 'D45', '45L', 11930, 0, 2600, 77],
  ['DM-160', 'D45', '45L', 4310, 0, null, 74],
];

export const engines = table.map(
  ([serial, model, rating, cycles, otherRating, sinceVisit, minutesACycle]) => ({
    serial,
    model,
    rating,
    cycles,
    otherRating,
    sinceVisit,
    minutesACycle,
    lessor: ['KT-599', 'RV-245'].includes(serial) ? LESSOR : null,
  }),
);

/** Engines in store as the record begins; the others hang at their first position. */
export const inStore = [
  'KT-442',
  'KT-601',
  'KT-610',
  'KT-622',
  'RV-263',
  'RV-270',
  'DM-141',
  'DM-152',
  'DM-160',
];
export const sparePods = [
  ['TN-4221', 'R63'],
  ['TN-5121', 'D45'],
];
export const spareApu = 'PV-125';

/** Parts meant to stand out: what shall remain of them at the end, in cycles; null: no record of their use. */
export const special = {
  'KT-442': { 'HPT disk 1': 2019 },
  'KT-518': { 'Fan shaft': 229 },
  'KT-377': { 'LPT disk 3': -4 },
  'RV-226': { 'HPT disk 1': 1120 },
  'DM-137': { 'HPT disk 2': 640 },
  'DM-152': { 'HPT disk 2': null },
};
/** All other parts of an engine have at least this many cycles left. */
export const atLeast = { 'KT-442': 2020, 'KT-518': 1000, 'KT-377': 700 };

// One person for each role, and a second technician, inspector and signer of releases. Names are invented; password and
// PIN are for the demonstration only.
const PASSWORD = 'strut-and-log-page-2026';
const PIN = '417823';
const SIGNS = ['technician', 'inspector', 'certifying-staff'];

export const people = [
  ['ottoline.winterlea', 'Ottoline Winterlea', 'administrator', null],
  ['tove.braskel', 'Tove Braskel', 'technician', 'ZQ.66.0318'],
  ['nils.garrowby', 'Nils Garrowby', 'technician', 'ZQ.66.0377'],
  ['ilo.fenwarth', 'Ilo Fenwarth', 'inspector', 'ZQ.66.0224'],
  ['hedda.marrowick', 'Hedda Marrowick', 'inspector', 'ZQ.66.0251'],
  ['cora.lindqvane', 'Cora Lindqvane', 'certifying-staff', 'ZQ.66.0107'],
  ['joss.merriwold', 'Joss Merriwold', 'certifying-staff', 'ZQ.66.0142'],
  ['pim.haldorey', 'Pim Haldorey', 'planner', null],
  ['rena.oskwold', 'Rena Oskwold', 'records', null],
  ['odd.thornebeck', 'Odd Thornebeck', 'auditor', null],
].map(([signInName, fullName, role, licence]) => ({
  signInName,
  password: PASSWORD,
  fullName,
  roles: [role],
  licence,
  pin: SIGNS.includes(role) ? PIN : null,
}));
