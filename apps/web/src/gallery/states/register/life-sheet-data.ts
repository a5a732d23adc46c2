import type { components } from '@strutbook/api-client/schema.gen.js';

type Shapes = components['schemas'];

const cycles = (units: number, denominator = 1) => ({ units, denominator });

const LIFE: Shapes['LifeDto'] = {
  kind: 'limited',
  status: 'soon',
  used: cycles(979, 1000),
  cyclesUsed: cycles(10_771),
  minutesUsed: 1_292_520,
  cycleLimit: 11_000,
  remainingCycles: 229,
  minuteLimit: null,
  remainingMinutes: null,
  calendar: { span: 216, unit: 'months', countedFrom: 'new', monthRule: 'same-day', countedOn: '2015-09-12' },
  goodThrough: '2033-09-12',
  remainingDays: 2482,
  flagged: false,
  acceptedBy: [],
  reasons: [],
  ratingCode: '84A',
  document: 'ZZ-AD 2026-18, fan hub',
  revision: '1',
  sources: [
    {
      ...{ basis: 'manual', document: 'K84 engine manual, chapter 05-11', revision: '7' },
      ...{ effectiveOn: '2026-07-01', governs: ['days'] },
    },
    {
      ...{ basis: 'directive', document: 'ZZ-AD 2026-18, fan hub', revision: '1' },
      ...{ effectiveOn: '2026-10-01', governs: ['cycles'] },
    },
  ],
  projectedOn: '2027-01-20',
  projectedBy: 'cycles',
  basis: 'Average use of the last 90 days',
};

const part = (
  place: string,
  serialNumber: string,
  more: Partial<Shapes['SheetPartDto']> = {},
): Shapes['SheetPartDto'] => ({
  module: 'Fan module KT-442-M1',
  place,
  componentId: `c-${serialNumber}`,
  description: place,
  partNumber: 'K84-1101',
  serialNumber,
  limits: [
    {
      ...{ ratingCode: '84A', authorisation: 'limited', cycles: 11_000, minutes: null },
      calendar: LIFE.calendar === null ? [] : [LIFE.calendar],
    },
    { ratingCode: '84B', authorisation: 'limited', cycles: 9800, minutes: null, calendar: [] },
  ],
  usedAt: [{ ratingCode: '84A', cycles: cycles(10_771), minutes: 1_292_520 }],
  sinceNew: { minutes: 1_292_520, cycles: cycles(10_771) },
  life: LIFE,
  trace: 'verified',
  flags: ['Lowered by a directive'],
  ...more,
});

/** A sheet with what is near, what is flagged, what is not verified, and a place with nothing in it. */
export const LIFE_SHEET: Shapes['LifeSheetDto'] = {
  title: 'Status of life-limited parts',
  operator: 'Dravenholm Air',
  at: '2026-11-24T15:00Z',
  subject: {
    id: 'c-KT-442',
    kind: 'engine',
    description: 'K84 engine',
    partNumber: 'K84-0001',
    serialNumber: 'KT-442',
    model: 'Karneth Turbines K84',
    ratingCode: '84A',
    place: 'ZZ-417, position 1',
    sinceNew: { minutes: 1_292_520, cycles: cycles(10_771) },
  },
  ruleSet: 'US air carrier (14 CFR part 121), days in UTC',
  parts: [
    part('Fan hub', 'K841101-7823'),
    part('Fan shaft', 'K841104-8370', {
      life: {
        ...LIFE,
        ...{ status: 'later', flagged: true, remainingCycles: 2735, calendar: null, goodThrough: null },
        acceptedBy: [{ by: 'Ruvane Propulsion, life management', reference: 'Letter RP-LM-0098' }],
      },
      trace: 'worst-case',
      flags: ['Worst case accepted by Ruvane Propulsion, life management, Letter RP-LM-0098'],
    }),
    part('Disk 2', 'K841210-5546', {
      sinceNew: { minutes: null, cycles: null },
      life: {
        ...LIFE,
        ...{ kind: 'unsubstantiated', status: 'not-verified', used: null, remainingCycles: null },
        ...{ calendar: null, goodThrough: null, projectedOn: null, projectedBy: null, sources: [] },
        basis: 'Nothing can be projected from what is not known',
      },
      trace: 'not-verified',
      flags: ['The records have a gap: on loan for 38 days without a log.'],
    }),
    part('HPT shaft', 'none', {
      ...{ componentId: null, partNumber: '', serialNumber: '', limits: [], usedAt: [], life: null },
      ...{ sinceNew: { minutes: null, cycles: null }, trace: 'not-verified' },
      flags: ['A life-limited part is expected here and none is recorded'],
    }),
  ],
  limiterByCycles: 'Disk 2 K841210-5546: not verified',
  limiterByDate: 'Disk 2 K841210-5546: not verified',
  cautions: ['This sheet is an aid to record-keeping. It does not determine airworthiness.'],
  toSign: ['Stated by', 'Authorisation', 'Signature', 'Date'],
};
