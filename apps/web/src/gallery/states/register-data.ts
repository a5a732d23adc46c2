import type { components } from '@strutbook/api-client/schema.gen.js';

type Shapes = components['schemas'];

export const TYPES: readonly Shapes['AirframeTypeDto'][] = [
  {
    id: 't-1',
    maker: 'Velmarrow Aircraft',
    designation: 'V-840',
    version: 1,
    positions: [
      { number: 1, kind: 'engine', mount: 'left-wing', label: '1' },
      { number: 2, kind: 'engine', mount: 'right-wing', label: '2' },
      { number: 0, kind: 'apu', mount: 'tail', label: 'APU' },
    ],
  },
];

export const MODELS: readonly Shapes['EngineModelDto'][] = [
  {
    id: 'm-1',
    kind: 'engine',
    maker: 'Karneth Turbines',
    designation: 'K84',
    lifeMethod: 'pro-rata',
    lifeSource: 'K84 engine manual, chapter 05-11',
    version: 1,
    ratings: [
      { id: 'r-1', code: '84A', description: 'Lower take-off thrust' },
      { id: 'r-2', code: '84B', description: null },
    ],
    cycleRules: [
      {
        id: 'cr-1',
        airframeTypeId: 't-1',
        perFlight: 2,
        perLanding: 0,
        perTouchAndGo: 1,
        perStart: 0,
        perAbortedTakeOff: 0,
        denominator: 2,
        source: 'K84 engine manual, chapter 05-11',
        revision: '6',
        effectiveOn: null,
      },
    ],
  },
];

const limit = (partNumber: string, more: Partial<Shapes['LifeLimitDto']>): Shapes['LifeLimitDto'] => ({
  id: `l-${partNumber}-${more.ratingCode ?? ''}-${more.revision ?? ''}`,
  partNumber,
  engineModelId: 'm-1',
  engineModel: 'Karneth Turbines K84',
  ratingCode: null,
  authorisation: 'limited',
  cycles: 11_000,
  minutes: null,
  calendarSpan: null,
  calendarUnit: null,
  calendarFrom: null,
  monthRule: null,
  basis: 'manual',
  document: 'K84 engine manual, chapter 05-11',
  revision: '7',
  effectiveOn: '2026-04-01',
  standing: 'in-force',
  voided: false,
  voidReason: null,
  ...more,
});

export const LIMITS: readonly Shapes['LifeLimitDto'][] = [
  limit('2A1234-01', { ratingCode: '84A' }),
  limit('2A1234-02', { ratingCode: '84B', minutes: 1_800_000 }),
  limit('2A1235-01', { authorisation: 'not-authorised', cycles: null }),
  limit('2A1236-01', { standing: null, voided: true, voidReason: 'Row of another model', revision: '6' }),
];

export const LOCATIONS: readonly Shapes['LocationDto'][] = [
  { id: 'o-1', name: 'Engine store, QXA', kind: 'store' },
  { id: 'o-2', name: 'Quarantine, QXA', kind: 'quarantine' },
];

export const PLACE: Shapes['PlaceDto'] = {
  kind: 'slot',
  label: 'ZZ-417, position 1',
  airframeId: 'a-417',
  positionNumber: 1,
  parentId: null,
  parentSerial: null,
  slotName: null,
  since: '2025-03-02T09:40Z',
  precision: 'page',
};

export const COMPONENT_ROWS: readonly Shapes['ComponentRowDto'][] = [
  {
    id: 'c-KT-442',
    kind: 'engine',
    maker: 'Karneth Turbines',
    partNumber: 'K84-0001',
    serialNumber: 'KT-442',
    description: 'K84 engine',
    lifeLimited: false,
    engineModelId: 'm-1',
    place: PLACE,
  },
];

const counters = { minutes: 1_092_246, cycles: { units: 15_961, denominator: 2 } };

export const COMPONENT: Shapes['ComponentDto'] = {
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
  lessor: 'Ostravel Leasing',
  manufacturedOn: '2015-09-12',
  firstInstalledOn: null,
  version: 1,
  place: PLACE,
  ratingCode: '84A',
  counters: {
    sinceNew: counters,
    sinceOverhaul: null,
    sinceShopVisit: null,
    sinceRepair: null,
    sinceInstalled: null,
  },
  verified: true,
  gaps: [],
  life: null,
  limiter: null,
  limiterByDate: null,
  slots: [
    {
      id: 's-fan',
      name: 'Fan module',
      kind: 'module',
      lifeLimited: false,
      component: {
        id: 'c-M1',
        kind: 'module',
        partNumber: 'K84-1000',
        serialNumber: 'KT-442-M1',
        description: 'Fan module',
        lifeLimited: false,
        counters: { sinceNew: counters },
        life: null,
        slots: [{ id: 's-hub', name: 'Fan hub', kind: 'part', lifeLimited: true, component: null }],
      },
    },
    { id: 's-hpt', name: 'High-pressure turbine', kind: 'module', lifeLimited: false, component: null },
  ],
};

export const FACTS: Shapes['ComponentFactsDto'] = {
  openings: [
    {
      id: 'op-1',
      componentId: 'c-KT-442',
      airframeId: null,
      at: '2024-11-20T00:00Z',
      basis: 'new',
      rows: [
        { id: 'x', ratingCode: '84A', minutes: 750_617, cycles: 14_267, cycleDenominator: 2 },
        { id: 'y', ratingCode: null, minutes: null, cycles: null, cycleDenominator: 1 },
      ],
      source: 'Engine log card KT-442',
      ...{ precision: 'minute', text: null, trace: 'stated', traceNote: 'Statement of the seller' },
      voided: false,
      voidReason: null,
    },
  ],
  ratingChanges: [
    {
      id: 'rc-1',
      componentId: 'c-KT-442',
      at: '2024-11-20T00:00Z',
      ratingCode: '84B',
      ...{ precision: 'minute', text: null },
      source: 'Plate',
      voided: true,
      voidReason: 'Read from another plate',
    },
  ],
  resets: [],
  traceGaps: [],
  gapAcceptances: [],
};
