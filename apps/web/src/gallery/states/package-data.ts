import type { ReleaseCheck, ReleaseNote } from '../../server/wire.js';
import type { Order, WorkPackage, WorkRow } from '../../server/work.js';
import { counters } from './fleet-data.js';
import { OBJECTIONS, objection } from './work-data.js';

const ROW: WorkRow = {
  id: 'k-231',
  number: 'EC-0231',
  kind: 'engine-change',
  title: 'Engine, position 3 of ZZ-417: KT-377 off, KT-655 on',
  status: 'open',
  openedAt: '2026-11-20T21:40Z',
  airframe: { id: 'a-417', registration: 'ZZ-417' },
  component: null,
  place: 'Position 3',
  reference: null,
  steps: { signed: 0, total: 0 },
  releaseNumber: null,
  version: 1,
};

export const PACKAGES: readonly WorkRow[] = [
  ROW,
  {
    ...ROW,
    id: 'k-102',
    number: 'PS-0102',
    kind: 'pod-swap',
    title: 'Pod, position 2 of ZZ-203: TN-5112 off, TN-5121 on',
    status: 'released',
    releaseNumber: 'RN-0103',
    airframe: { id: 'a-203', registration: 'ZZ-203' },
  },
  {
    ...ROW,
    id: 'k-240',
    number: 'EC-0240',
    title: 'Engine change, position 3 of ZZ-417: KT-377 off, KT-655 on',
    steps: { signed: 14, total: 46 },
  },
  {
    ...ROW,
    id: 'k-241',
    number: 'CC-0241',
    kind: 'component-change',
    title: 'HPT disk 2 replaced in the shop',
    airframe: null,
    component: {
      id: 'c-KT-601',
      kind: 'engine',
      serialNumber: 'KT-601',
      partNumber: 'K84-0001',
      description: 'K84 engine',
    },
    place: 'HPT disk 2',
    status: 'withdrawn',
    steps: { signed: 0, total: 6 },
  },
  {
    ...ROW,
    id: 'k-242',
    number: 'IN-0242',
    kind: 'inspection',
    title: 'Mount bolts looked at again after 25 hours',
    steps: { signed: 2, total: 2 },
  },
];

/** Steps that wait: one rejected, one to inspect, many to do. */
export const MY_WORK = {
  packages: [
    {
      id: 'k-240',
      number: 'EC-0240',
      kind: 'engine-change',
      title: 'Engine change, position 3 of ZZ-417: KT-377 off, KT-655 on',
      steps: [
        { id: 's-27', number: 27, title: 'Torque the forward mount bolts in order.', why: 'rejected' },
        { id: 's-12', number: 12, title: 'Cap the lines and count the blanks.', why: 'to-inspect' },
        ...[13, 14, 15, 16, 17, 18].map((number) => ({
          id: `s-${number}`,
          number,
          title: `Part line ${number - 12} and tag both ends.`,
          why: 'to-do',
        })),
      ],
    },
    {
      id: 'k-242',
      number: 'IN-0242',
      kind: 'inspection',
      title: 'Mount bolts looked at again after 25 hours',
      steps: [{ id: 's-2', number: 2, title: 'Look at the slippage marks.', why: 'to-do' }],
    },
  ],
};

/** A package that waits for its release. */
export const OPEN_PACKAGE: WorkPackage = {
  ...ROW,
  ruleSet: 'eu-145',
  procedure: null,
  order: null,
  requirements: [],
  changes: [
    {
      position: { id: 'p-3', number: 3, label: '3' },
      slot: 'engine',
      slotName: 'Engine',
      outgoing: {
        id: 'c-KT-377',
        serialNumber: 'KT-377',
        partNumber: 'K84-0001',
        sinceNew: counters(1_206_774, 18_008),
        sinceInstalled: counters(398_136, 1976),
      },
      incoming: {
        id: 'c-KT-655',
        serialNumber: 'KT-655',
        partNumber: 'K84-0001',
        sinceNew: counters(null, null),
        sinceInstalled: null,
      },
      at: '2026-11-20T21:40Z',
      precision: 'page',
      placed: '0417',
      reason: 'LPT disk 3 past its limit, which a newer revision lowered.',
    },
  ],
  release: null,
};

const PASSED = [
  { label: 'Positions with an engine', count: 3, of: 4 },
  { label: 'Engines with known hours and cycles', count: 4, of: 4 },
  { label: 'Last flights logged without a gap', count: 100, of: 100 },
];

const RULES = {
  code: 'eu-145',
  name: 'EU (Regulation (EU) 1321/2014, Part-145)',
  source: 'Regulation (EU) 1321/2014, 145.A.50',
};
const HASH = '21e3039850a4218a2525a9a8de01a9dee88e3738626c69715093908160f7d221';

/** Three points stand against releasing, one is told beside them. */
export const BLOCKED_CHECK: ReleaseCheck = {
  asOf: '2026-11-25T01:20Z',
  packageNumber: ROW.number,
  summary: 'Engine at position 3: serial KT-377 removed, serial KT-655 installed.',
  ruleSet: RULES,
  statement:
    'The work specified, except as otherwise specified, was carried out in accordance with Part-145.',
  digest: HASH,
  objections: [...OBJECTIONS],
  passed: PASSED,
  released: false,
  version: 1,
};

export const CLEAR_CHECK: ReleaseCheck = { ...BLOCKED_CHECK, objections: OBJECTIONS.slice(3) };

export const NOTE: ReleaseNote = {
  id: 'r-232',
  number: 'RN-0232',
  packageId: ROW.id,
  packageNumber: ROW.number,
  summary: BLOCKED_CHECK.summary,
  airframe: 'ZZ-417',
  subject: 'ZZ-417',
  certificate: {
    documentId: 'd-9',
    fileName: 'RN-0232.pdf',
    pages: 2,
    sha256: '9f2b6f0f1c9d1f3b7a0b5f9f0a4f2f8d1e6c3b5a7d9e0f1a2b3c4d5e6f708192',
  },
  ruleSet: RULES,
  signedAt: '2026-11-21T02:10Z',
  person: 'Wen Tolvarsen',
  licence: 'ZQ.66.0001',
  statement: `${BLOCKED_CHECK.statement} Release RN-0232, signed by Wen Tolvarsen, certificate ZQ.66.0001, 2026-11-21 at 02:10 UTC.`,
  contentHash: HASH,
  snapshotHash: HASH,
  digest: HASH,
  objections: OBJECTIONS.slice(3),
  passed: PASSED,
  version: 2,
};

export const RELEASED_PACKAGE: WorkPackage = {
  ...OPEN_PACKAGE,
  status: 'released',
  release: {
    id: NOTE.id,
    number: NOTE.number,
    signedAt: NOTE.signedAt,
    person: NOTE.person,
    licence: NOTE.licence,
  },
};

/** What the check of a package with steps holds against it. */
export const STEPS_CHECK: ReleaseCheck = {
  ...BLOCKED_CHECK,
  objections: [
    objection('TORQUE_OUT_OF_RANGE', 'blocking', [
      'step',
      'Step 27, Torque the forward mount bolts in order.',
      'The last torque at bolt 2 is 118.4 N·m, above 105.0 to 115.0 N·m.',
      'Torque it again within the range.',
    ]),
    objection('INSPECTION_MISSING', 'blocking', [
      'step',
      'Step 12, Cap the lines and count the blanks.',
      'It waits for an independent inspection.',
      'Another authorised person inspects it and signs.',
    ]),
    objection('TOOL_NOT_USABLE', 'blocking', [
      'tool',
      'Torque wrench TW-014',
      'Its calibration was due on 2026-11-20.',
      'Torque again with a tool in calibration.',
    ]),
    objection('REQUIREMENT_OVER', 'blocking', [
      'requirement',
      'Directive 2026-11-04 on ZZ-417',
      'It was due 12 days ago.',
      'Accomplish it, or record the permission with its limit.',
    ]),
    objection('RELEASER_NOT_AUTHORISED', 'blocking', [
      'person',
      'Wen Tolvarsen',
      'No release authorisation for this airframe type is in force today.',
      'An administrator records the authorisation.',
    ]),
    ...OBJECTIONS.slice(3),
  ],
};

/** An order with both sides. */
export const ORDER: Order = {
  id: 'o-1',
  slotId: 'slot-3',
  slot: 'engine',
  slotName: 'Engine',
  positionId: 'p-3',
  positionNumber: 3,
  outgoing: {
    id: 'c-KT-377',
    kind: 'engine',
    serialNumber: 'KT-377',
    partNumber: 'K84-0001',
    description: 'K84 engine',
    place: 'ZZ-417, 3',
  },
  incoming: {
    id: 'c-KT-655',
    kind: 'engine',
    serialNumber: 'KT-655',
    partNumber: 'K84-0001',
    description: 'K84 engine',
    place: 'Engine store',
  },
  ratingCode: '84A',
  removedToLocation: 'Quarantine, QXA',
  reason: 'LPT disk 3 past its limit, which a newer revision lowered.',
  confirmedBy: null,
};

/** Ordered, nothing moved yet. */
export const ORDERED_PACKAGE: WorkPackage = {
  ...OPEN_PACKAGE,
  changes: [],
  order: ORDER,
  reference: 'WO-26-1187',
  procedure: {
    id: 'pr-1',
    code: 'V840-71-CHANGE',
    revision: '3',
    title: 'Engine change',
    document: 'V-840 maintenance manual, 71-00',
    documentRevision: '14',
  },
};

export const WITHDRAWN_PACKAGE: WorkPackage = { ...ORDERED_PACKAGE, status: 'withdrawn' };

/** Procedures to choose from, and what is due on the airframe. */
export const PROCEDURES = [
  {
    id: 'pr-1',
    code: 'V840-71-CHANGE',
    revision: '3',
    title: 'Engine change',
    kind: 'engine-change',
    document: 'V-840 maintenance manual, 71-00',
    documentRevision: '14',
    steps: 46,
    latest: true,
  },
];

export const DUTIES = [
  {
    requirementId: 'rq-1',
    code: '2026-11-04',
    title: 'Look at the aft mount for cracks',
    document: 'Directive 2026-11-04',
    revision: '1',
    subject: 'ZZ-417, position 3',
    airframeId: 'a-417',
    positionId: 'p-3',
    componentId: null,
    status: 'over',
    reason: '12 days past',
    projectedOn: null,
  },
  {
    requirementId: 'rq-2',
    code: '71-CHECK-25',
    title: 'Mount bolts torqued again after 25 hours',
    document: 'V-840 maintenance programme',
    revision: '14',
    subject: 'Engine KT-655',
    airframeId: null,
    positionId: null,
    componentId: 'c-KT-655',
    status: 'later',
    reason: null,
    projectedOn: '2027-01-18',
  },
];
