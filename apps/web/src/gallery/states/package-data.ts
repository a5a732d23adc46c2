import type { Order, WorkPackage, WorkRow } from '../../server/work.js';
import { counters } from './fleet-data.js';

export const ROW: WorkRow = {
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
  withdrawal: null,
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

export const WITHDRAWN_PACKAGE: WorkPackage = {
  ...ORDERED_PACKAGE,
  status: 'withdrawn',
  withdrawal: { person: 'Mara Ostrevik', at: '2026-11-21T07:40Z', reason: 'Opened on the wrong airframe.' },
};

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
    airframeType: 'V-840',
    engineModel: null,
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
