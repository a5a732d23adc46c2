// Directives with their assessments, and a check with a window and an approved variation. All of it is invented.
import { minuteOf, wire } from '../instants.mjs';

const hours = (n) => n * 60;
const at = (day) => wire(minuteOf(`${day}T12:00Z`));

/** After the other requirements, each after what it names. */
export const directives = [
  {
    code: 'K84-AD-25-31',
    title: 'Fuel pump drive, torque check',
    kind: 'directive',
    document: 'Directive 25-31',
    revision: '1',
    anchor: 'engine',
    engineModel: 'K84',
    threshold: { cycles: 12000 },
    countedFrom: 'new',
    effectiveOn: '2025-03-10',
  },
  {
    code: 'K84-AD-26-12',
    title: 'Fuel pump drive, replacement',
    kind: 'directive',
    document: 'Directive 26-12',
    revision: '1',
    anchor: 'engine',
    engineModel: 'K84',
    serialFrom: 'KT-600',
    serialTo: 'KT-650',
    threshold: { cycles: 3000, event: 'shop-visit', notToExceed: { months: 120 } },
    countedFrom: 'effective',
    effectiveOn: '2026-06-01',
    supersedes: 'K84-AD-25-31',
  },
  {
    code: 'R63-79-09',
    title: 'Oil cooler, flow check',
    kind: 'check',
    document: 'R63 engine manual, chapter 79',
    revision: '8',
    anchor: 'engine',
    engineModel: 'R63',
    repeat: { minutes: hours(3000) },
    countedFrom: 'accomplishment',
    effectiveOn: '2024-11-20',
    window: {
      early: { minutes: [{ percent: 10, atMost: hours(100) }] },
      late: { minutes: [{ percent: 10, atMost: hours(100) }] },
    },
    variation: { minutes: [{ percent: 10, atMost: hours(500) }] },
  },
];

const assessed = (code, subject, on) => ({
  code,
  ...subject,
  applicable: true,
  reason: null,
  assessedBy: 'Airworthiness review, powerplant',
  reference: `Assessment sheet ${code}`,
  on,
});

/** Of the engines in the range one was never assessed: KT-610, which went to its shop. */
export const assessments = [
  assessed('D45-AD-26-03', {}, '2026-01-06'),
  assessed('K84-AD-26-12', { serialNumber: 'KT-601' }, '2026-06-02'),
  assessed('K84-AD-26-12', { serialNumber: 'KT-622' }, '2026-06-02'),
];

const flow = (serialNumber, day) => ({
  code: 'R63-79-09',
  serialNumber,
  at: at(day),
  evidence: `Flow check card of ${day}`,
});

export const directivesMet = [
  flow('RV-204', '2026-05-20'),
  flow('RV-217', '2025-12-09'),
  flow('RV-226', '2026-05-20'),
  flow('RV-231', '2026-03-11'),
  flow('RV-245', '2026-02-20'),
  flow('RV-252', '2026-04-02'),
  flow('RV-263', '2026-05-28'),
  flow('RV-270', '2026-05-20'),
];

export const variations = [
  {
    code: 'R63-79-09',
    serialNumber: 'RV-217',
    minutes: hours(200),
    approvedBy: 'Airworthiness manager',
    reference: 'Variation 26-04',
    reason: 'The flow rig is at its maker until December.',
    on: '2026-10-12',
  },
];
