import type { ComponentView, Life, Part, Slot, Stay } from '../../server/wire.js';
import { counters } from './fleet-data.js';

const statusAt = (remaining: number): Life['status'] =>
  remaining < 0 ? 'over' : remaining <= 250 ? 'soon' : remaining <= 1000 ? 'planned' : 'later';

const life = (used: number, limit: number, more: Partial<Life> = {}): Life => ({
  kind: 'limited',
  status: statusAt(limit - used),
  used: { units: used, denominator: limit },
  cyclesUsed: { units: used, denominator: 1 },
  minutesUsed: null,
  cycleLimit: limit,
  remainingCycles: limit - used,
  minuteLimit: null,
  remainingMinutes: null,
  calendar: null,
  goodThrough: null,
  remainingDays: null,
  flagged: false,
  acceptedBy: [],
  reasons: [],
  ratingCode: '84A',
  document: 'K84 engine manual, chapter 05-11',
  revision: '7',
  sources: [
    {
      basis: 'manual',
      document: 'K84 engine manual, chapter 05-11',
      revision: '7',
      effectiveOn: '2026-07-01',
      governs: ['cycles'],
    },
  ],
  projectedOn: '2027-02-11',
  projectedBy: 'cycles',
  basis: 'Average use of the last 90 days',
  ...more,
});

const UNKNOWN = life(0, 1, {
  kind: 'unsubstantiated',
  status: 'not-verified',
  projectedOn: null,
  projectedBy: null,
  basis: 'Nothing can be projected from what is not known',
  used: null,
  cyclesUsed: null,
  cycleLimit: null,
  remainingCycles: null,
  reasons: [{ code: 'TRACE_GAP', text: 'The records have a gap: on loan for 38 days without a log.' }],
});

const part = (description: string, serialNumber: string, more: Partial<Part> = {}): Part => ({
  id: `c-${serialNumber}`,
  kind: 'part',
  partNumber: '2A1234-01',
  serialNumber,
  description,
  lifeLimited: true,
  counters: { sinceNew: counters(1_092_246, 17_962) },
  life: null,
  slots: [],
  ...more,
});

const slot = (name: string, component: Part | null, lifeLimited = true): Slot => ({
  id: `s-${name}-${component?.serialNumber ?? 'none'}`,
  name,
  kind: component?.kind === 'module' ? 'module' : 'part',
  lifeLimited,
  component,
});

const SLOTS: readonly Slot[] = [
  slot(
    'HPT module',
    part('High-pressure turbine', 'M2-118', {
      kind: 'module',
      lifeLimited: false,
      slots: [
        slot('HPT disk 1', part('HPT disk 1', 'D77120', { life: life(8981, 11_000) })),
        slot(
          'HPT disk 2',
          part('HPT disk 2', 'D77233', { life: UNKNOWN, counters: { sinceNew: counters(null, null) } }),
        ),
        slot('HPT shaft', null),
      ],
    }),
    false,
  ),
  slot(
    'LPT module',
    part('Low-pressure turbine', 'MRK0000-8BIl1O0-7719', {
      kind: 'module',
      lifeLimited: false,
      slots: [
        slot('LPT disk 3', part('LPT disk 3', 'D80114', { life: life(9004, 9000) })),
        slot('LPT disk 4', part('LPT disk 4', 'D80115', { life: life(8771, 9000) })),
        slot(
          'Seal',
          part('Compressor discharge seal', 'S55010', { life: life(8139, 9000, { flagged: true }) }),
        ),
        slot(
          'LPT shaft',
          part('LPT shaft', 'F10002', {
            life: life(0, 1, { kind: 'not-limited', used: null, cycleLimit: null, remainingCycles: null }),
          }),
        ),
      ],
    }),
    false,
  ),
  slot('Accessory gearbox', null, false),
];

/** An engine with all that a component page can show. */
export const ENGINE: ComponentView = {
  id: 'c-KT-442',
  kind: 'engine',
  maker: 'Karneth Turbines',
  partNumber: 'K84-0001',
  serialNumber: 'KT-442',
  description: 'K84 engine',
  engineModelId: 'm-1',
  engineModel: 'Karneth Turbines K84',
  lifeLimited: false,
  podClock: null,
  owner: 'Dravenholm Air',
  lessor: 'Ostmark Leasing (invented)',
  manufacturedOn: '2015-09-12',
  firstInstalledOn: null,
  version: 3,
  place: {
    kind: 'slot',
    label: 'ZZ-417, 1',
    airframeId: 'a-417',
    positionNumber: 1,
    parentId: null,
    parentSerial: null,
    slotName: 'engine',
    since: '2025-03-02T09:40Z',
    precision: 'page',
  },
  ratingCode: '84A',
  counters: {
    sinceNew: counters(1_092_246, 15_963),
    sinceOverhaul: counters(700_123, 9000),
    sinceShopVisit: counters(399_393, 2536),
    sinceRepair: null,
    sinceInstalled: counters(341_629, 1696),
  },
  verified: false,
  gaps: [
    {
      id: 'g-1',
      from: '2026-03-02T08:00Z',
      to: '2026-04-09T10:00Z',
      note: 'On loan for 38 days without a log.',
      accepted: false,
    },
    {
      id: 'g-2',
      from: '2019-01-04T00:00Z',
      to: '2019-02-01T00:00Z',
      note: 'Log book 3 lost in a move.',
      accepted: true,
    },
  ],
  life: null,
  limiter: {
    componentId: 'c-D77233',
    description: 'HPT disk 2',
    partNumber: '2A1234-01',
    serialNumber: 'D77233',
    remainingCycles: null,
    remainingMinutes: null,
    status: 'not-verified',
    remainingDays: null,
    goodThrough: null,
    flagged: false,
    projectedOn: null,
    projectedBy: null,
    basis: 'Nothing can be projected from what is not known',
    reason: 'The records have a gap: on loan for 38 days without a log.',
  },
  limiterByDate: null,
  slots: [...SLOTS],
};

/** A part past its limit, with its arithmetic. */
export const DISK: ComponentView = {
  ...ENGINE,
  id: 'c-D80114',
  kind: 'part',
  partNumber: '2A1234-03',
  serialNumber: 'D80114',
  description: 'LPT disk 3',
  lifeLimited: true,
  lessor: null,
  place: {
    ...ENGINE.place,
    kind: 'location',
    label: 'Engine store, QXA',
    airframeId: null,
    positionNumber: null,
    precision: 'day',
  },
  ratingCode: null,
  counters: {
    sinceNew: counters(1_206_774, 18_008),
    sinceOverhaul: null,
    sinceShopVisit: null,
    sinceRepair: null,
    sinceInstalled: null,
  },
  verified: true,
  gaps: [],
  life: life(9004, 9000),
  limiter: null,
  slots: [],
};

const stay = (id: string, label: string, more: Partial<Stay>): Stay => ({
  id,
  kind: 'slot',
  label,
  slotId: null,
  locationId: null,
  from: '2024-11-20T00:00Z',
  fromPrecision: 'minute',
  fromText: null,
  to: null,
  toPrecision: null,
  toText: null,
  reason: null,
  endReason: null,
  voided: false,
  voidReason: null,
  ...more,
});

/** Stays known to the minute, by a log page, to the day, and one voided. */
export const STAYS: readonly Stay[] = [
  stay('1', 'ZZ-417, 1', {
    from: '2025-03-02T09:40Z',
    fromPrecision: 'page',
    fromText: '0417',
    reason: 'Limit reached',
  }),
  stay('2', 'ZZ-203, 2', {
    from: '2025-02-01T00:00Z',
    to: '2025-03-02T09:40Z',
    toPrecision: 'minute',
    voided: true,
    voidReason: 'Entered for the wrong engine',
  }),
  stay('3', 'Engine store, QXA', {
    kind: 'location',
    to: '2025-03-02T09:40Z',
    toPrecision: 'day',
    toText: '2025-03-02',
    reason: 'Where it was when the record began',
    endReason: 'Limit reached',
  }),
];
