// Requirements and what was done about them before. Codes, documents and figures are invented.
import { minuteOf } from '../instants.mjs';

const HOUR = 60;
const hours = (n) => n * HOUR;

/** Each with what it is for, when it is due first and again, and how it is counted. */
export const requirements = [
  {
    code: 'V840-71-RT',
    title: 'Mount bolts, torque again after an engine change',
    kind: 'check',
    document: 'V-840 maintenance manual, 71-20-01',
    revision: '6',
    anchor: 'position',
    airframeType: 'V-840',
    threshold: { minutes: hours(50) },
    countedFrom: 'installation',
  },
  {
    code: 'K84-79-02',
    title: 'Oil filter and chip detectors',
    kind: 'inspection',
    document: 'K84 engine manual, chapter 79',
    revision: '12',
    anchor: 'engine',
    engineModel: 'K84',
    repeat: { minutes: hours(600) },
  },
  {
    code: 'R63-72-14',
    title: 'High-pressure turbine, borescope inspection',
    kind: 'inspection',
    document: 'R63 engine manual, 72-50-00',
    revision: '8',
    anchor: 'engine',
    engineModel: 'R63',
    repeat: { cycles: 1200, months: 12 },
  },
  {
    code: 'GEN-26-01',
    title: 'Engine fire bottles, weight check',
    kind: 'check',
    document: 'Maintenance programme, task 26-20-01',
    revision: '4',
    anchor: 'airframe',
    repeat: { months: 24 },
    monthRule: 'month-end',
  },
  {
    code: 'V420-54-02',
    title: 'Strut fittings, detailed inspection',
    kind: 'inspection',
    document: 'V-420 maintenance manual, 54-10-02',
    revision: '9',
    anchor: 'airframe',
    airframeType: 'V-420',
    repeat: { minutes: hours(5000), months: 24 },
  },
  {
    code: 'V840-54-07',
    title: 'Struts and nacelles, zonal inspection',
    kind: 'inspection',
    document: 'Maintenance programme, task 54-00-07',
    revision: '4',
    anchor: 'airframe',
    airframeType: 'V-840',
    repeat: { months: 18 },
  },
  {
    code: 'D45-AD-26-03',
    title: 'Fuel manifold clamps, replacement',
    kind: 'directive',
    document: 'Directive 26-03',
    revision: '1',
    anchor: 'engine',
    engineModel: 'D45',
    threshold: { cycles: 13200 },
    effectiveOn: '2026-01-05',
  },
  {
    code: 'TN-78-OH',
    title: 'Pod overhaul',
    kind: 'overhaul',
    document: 'Tessom component manual, 78-30-11',
    revision: '5',
    anchor: 'part',
    partNumber: 'TN-POD-K84',
    threshold: { minutes: hours(21000) },
    repeat: { minutes: hours(15000) },
  },
  {
    code: 'O630-78-11',
    title: 'Reverser cascades, detailed inspection',
    kind: 'inspection',
    document: 'O-630 maintenance manual, 78-31-11',
    revision: '7',
    anchor: 'position',
    airframeType: 'O-630',
    repeat: { minutes: hours(4000), months: 18 },
  },
  {
    code: 'K84-SB-72-0088',
    title: 'Booster spool, eddy-current check',
    kind: 'bulletin',
    document: 'K84 service bulletin 72-0088',
    revision: '2',
    anchor: 'part',
    partNumber: 'K84-1210',
    threshold: { cycles: 9200 },
    effectiveOn: '2025-07-01',
  },
].map((requirement) => ({
  threshold: null,
  repeat: null,
  combine: 'first',
  monthRule: 'same-day',
  countedFrom: 'new',
  effectiveOn: '2024-11-20',
  ...requirement,
}));

const on = (code, evidence) => (subject, at) => ({
  code,
  ...(typeof subject === 'string' ? { serialNumber: subject } : subject),
  at: minuteOf(`${at}T12:00Z`),
  evidence: typeof evidence === 'function' ? evidence(at) : evidence,
});
const airframe = (registration) => ({ registration });
const position = (registration, positionNumber) => ({ registration, positionNumber });
const sheet = (words) => (at) => `${words} of ${at}`;

const oil = on('K84-79-02', sheet('Work order, sheet 79,'));
const borescope = on('R63-72-14', sheet('Borescope report'));
const bottles = on('GEN-26-01', sheet('Weight card'));
const fittings = on('V420-54-02', sheet('Base check task card'));
const zonal = on('V840-54-07', sheet('Base check task card'));
const clamps = on('D45-AD-26-03', sheet('Directive record'));
const cascades = on('O630-78-11', sheet('Base check task card'));

/** The last time each was done, by subjects, from the records before. The repeat checks of bolts are found in `due.mjs`. */
export const accomplished = [
  oil('KT-442', '2026-10-06'),
  oil('KT-518', '2026-10-06'),
  // Six hundred hours went by since: the one that is over.
  oil('KT-377', '2026-08-20'),
  oil('KT-601', '2026-10-06'),
  oil('KT-455', '2026-10-19'),
  oil('KT-588', '2026-10-19'),
  oil('KT-599', '2026-10-19'),
  oil('KT-610', '2026-10-19'),
  oil('KT-530', '2026-03-20'),
  oil('KT-561', '2026-08-20'),
  oil('KT-574', '2026-01-15'),
  // Before the record here begins: counters as the card says.
  { ...oil('KT-622', '2024-10-30'), minutes: 279410, cycles: 2205 },
  borescope('RV-204', '2026-05-20'),
  borescope('RV-270', '2026-05-20'),
  borescope('RV-226', '2026-05-20'),
  borescope('RV-217', '2025-12-09'),
  borescope('RV-245', '2026-02-20'),
  borescope('RV-263', '2026-05-28'),
  borescope('RV-231', '2026-03-11'),
  borescope('RV-252', '2026-04-02'),
  bottles(airframe('ZZ-417'), '2026-08-19'),
  bottles(airframe('ZZ-823'), '2026-05-06'),
  bottles(airframe('ZZ-731'), '2026-05-19'),
  bottles(airframe('ZZ-739'), '2025-12-09'),
  bottles(airframe('ZZ-952'), '2024-11-26'),
  bottles(airframe('ZZ-958'), '2026-03-24'),
  fittings(airframe('ZZ-952'), '2026-02-17'),
  fittings(airframe('ZZ-958'), '2026-03-24'),
  zonal(airframe('ZZ-417'), '2025-12-04'),
  zonal(airframe('ZZ-823'), '2026-05-06'),
  clamps('DM-118', '2026-01-14'),
  clamps('DM-126', '2026-02-17'),
  clamps('DM-133', '2026-03-24'),
  cascades(position('ZZ-731', 1), '2025-11-05'),
  cascades(position('ZZ-731', 2), '2026-05-20'),
  cascades(position('ZZ-731', 3), '2025-06-12'),
  cascades(position('ZZ-739', 1), '2025-12-10'),
  cascades(position('ZZ-739', 2), '2025-12-10'),
  cascades(position('ZZ-739', 3), '2026-06-09'),
];
