import type { components } from '@strutbook/api-client/schema.gen.js';
import { flight } from './flights/flight-data.js';
import { WORK_LINES } from './history-data.js';

type Shapes = components['schemas'];

export const AIRFRAME: Shapes['AirframeDto'] = {
  id: 'a-417',
  registration: 'ZZ-417',
  serialNumber: '84017',
  airframeTypeId: 't-1',
  type: 'Velmarrow Aircraft V-840',
  ruleSet: 'eu-145',
  dayZone: 'UTC',
  owner: 'Dravenholm Air',
  lessor: null,
  manufacturedOn: '2012-05-14',
  version: 1,
  minutes: 1_288_836,
  flights: 9214,
  lastLandingAt: '2026-11-20T07:15Z',
  positions: [1, 2].map((number) => ({
    id: `p-${number}`,
    number,
    kind: 'engine' as const,
    mount: number === 1 ? ('left-wing' as const) : ('right-wing' as const),
    label: String(number),
    slots: [
      { id: `s-${number}e`, kind: 'engine' as const },
      { id: `s-${number}p`, kind: 'pod' as const },
    ],
  })),
};

const atEnd = (logPage: string, landingAt: string): Shapes['FlightAtEndDto'] => ({
  ...{ id: `f-${logPage}`, airframeId: 'a-417', registration: 'ZZ-417', logPage },
  takeOffAt: landingAt,
  landingAt,
});

export const REACHED: Shapes['FlightsAnswerDto'] = {
  flights: [flight('0420')],
  airframe: { minutes: 1_289_297, flights: 9215 },
  late: true,
  newlyOver: [
    {
      componentId: 'c-D80114',
      serialNumber: 'D80114',
      partNumber: '2A1234-03',
      description: 'LPT disk 3',
      engineSerial: 'KT-377',
      requirement: null,
      dimension: 'cycles',
      remaining: -4,
    },
    {
      componentId: 'c-F00981',
      serialNumber: 'F00981',
      partNumber: '2A1104-01',
      description: 'Fan shaft',
      engineSerial: 'KT-518',
      requirement: null,
      dimension: 'cycles',
      remaining: 0,
    },
  ],
  newlyUnknown: [
    {
      kind: 'not-verified',
      componentId: 'c-D90002',
      serialNumber: 'D90002',
      description: 'HPC spool',
      engineSerial: 'KT-377',
      requirement: null,
      reason: 'A gap in its trace',
    },
  ],
  overruns: [
    {
      ...{ componentId: 'c-D80114', airframeId: null, positionId: null, serialNumber: 'D80114' },
      ...{ partNumber: '2A1234-03', description: 'LPT disk 3', kind: 'life-limit', requirement: null },
      ...{ requirementId: null, document: 'K1 manual, chapter 05', revision: '12', dimension: 'cycles' },
      ...{ limit: 15_000, dueOn: null, by: 4, isOpen: false, flights: 4 },
      first: atEnd('0417', '2016-03-12T10:20Z'),
      last: atEnd('0420', '2016-03-13T07:15Z'),
    },
  ],
};

const FILE: Shapes['ImportDto'] = {
  id: 'i-1',
  kind: 'flights',
  fileName: 'flights-nov.csv',
  sha256: '4284d65ba084699e9e0145631904d8a3b6afde4618c9c7b7d557904de259e5d3',
  state: 'checked',
  rows: 388,
  ready: 386,
  failed: 0,
  already: 2,
  errors: [],
  errorsLeftOut: 0,
  effect: [{ airframeId: 'a-417', registration: 'ZZ-417', flights: 386, minutes: 148_260 }],
  newlyOver: [],
  newlyUnknown: [],
  overruns: [],
  sameAs: null,
  root: null,
  createdBy: 'R. Kay',
  createdAt: '2026-11-20T09:11Z',
  version: 2,
  job: null,
};

const job = (more: Partial<Shapes['ImportJobDto']>): Shapes['ImportJobDto'] => ({
  id: 'j-1',
  state: 'running',
  done: 120,
  total: 388,
  failure: null,
  ...more,
});

export const FILES: Readonly<Record<string, Shapes['ImportDto']>> = {
  ready: FILE,
  checking: { ...FILE, state: 'checking', rows: 0, ready: 0, already: 0, effect: [], job: job({}) },
  errors: {
    ...FILE,
    ready: 380,
    failed: 6,
    errorsLeftOut: 4,
    errors: [
      {
        line: 41,
        column: 'touch_and_goes',
        value: '1.5',
        reason: 'This is not a whole number.',
        fix: 'Enter a whole number from 0 to 9999.',
      },
      {
        line: 97,
        column: 'take_off_utc',
        value: '03/04/26 06:10',
        reason: 'Day and month can be mistaken for each other here.',
        fix: 'Write it in UTC as YYYY-MM-DD HH:MM, for example 2026-04-03 06:10.',
      },
    ],
  },
  applied: {
    ...FILE,
    state: 'applied',
    root: '4847af89d7c608409de9873a136a2e4634ba2c180ad3f0aaa5a5c381dd1f2664',
    newlyOver: REACHED.newlyOver,
  },
  again: { ...FILE, ready: 0, already: 388, effect: [], sameAs: { id: 'i-0', fileName: 'flights-nov.csv' } },
  failed: { ...FILE, state: 'cancelled', job: job({ state: 'failed', failure: 'The disk is full.' }) },
};

export const FILE_ROWS: readonly Shapes['ImportRowDto'][] = [
  FILES['errors'],
  FILES['ready'],
  FILES['applied'],
]
  .filter((file) => file !== undefined)
  .map(({ kind, fileName, state, rows, ready, failed, already, createdBy, createdAt }, place) => ({
    id: `i-${place}`,
    ...{ kind, fileName, state, rows, ready, failed, already, createdBy, createdAt },
  }));

const line = (more: Partial<Shapes['HistoryLineDto']>): Shapes['HistoryLineDto'] => ({
  at: '2026-11-11T18:02Z',
  placed: null,
  title: 'Flight',
  detail: 'Log page 0417, QXA to KQX, take-off 14:20Z',
  struck: null,
  adds: { minutes: 222, cycles: { units: 3, denominator: 2 } },
  totals: { minutes: 1_092_246, cycles: 7981 },
  work: null,
  entry: { number: 1560, recordedAt: '2026-11-12T08:00Z', by: 'R. Kay', hash: '4b66e6f96deca679' },
  ...more,
});

export const HISTORY: Shapes['HistoryDto'] = {
  subject: {
    kind: 'component',
    id: 'c-KT-442',
    label: 'Engine KT-442',
    identity: [
      { name: 'Serial number', value: 'KT-442' },
      { name: 'Maker', value: 'Karneth Turbines' },
    ],
  },
  lines: [
    line({
      at: '2024-11-20T00:00Z',
      title: 'Opening balance',
      detail: 'Engine log card KT-442, carried forward',
      totals: { minutes: 750_617, cycles: 7133 },
    }),
    line({
      at: '2025-03-02T09:40Z',
      placed: 'after log page 0102',
      title: 'Installed',
      detail: 'Position 1 of ZZ-417',
      adds: null,
    }),
    line({
      struck: { recordedAt: '2026-11-03T09:11Z', by: 'R. Kay', reason: 'entered twice' },
      entry: { number: null, recordedAt: '2026-11-02T08:00Z', by: 'R. Kay', hash: null },
    }),
    line({}),
    line({
      title: 'Gap in the trace',
      detail: 'until 9 Apr 2026',
      adds: { minutes: null, cycles: null },
      totals: { minutes: null, cycles: null },
    }),
    ...WORK_LINES,
  ],
  totals: { lines: 11, minutes: null, cycles: null },
};

export const DOCUMENTS: readonly Shapes['DocumentDto'][] = [
  {
    id: 'd-1',
    kind: 'history',
    subjectId: 'c-KT-442',
    fileName: 'history-Engine-KT-442-2026-11-20.pdf',
    pages: 47,
    sha256: 'aa',
    createdAt: '2026-11-20T09:11Z',
    by: 'R. Kay',
  },
];

const person = (fullName: string, roles: readonly string[], more: Partial<Shapes['PersonDto']> = {}) => ({
  id: `p-${fullName}`,
  signInName: fullName.toLowerCase().replace(/[^a-z]+/g, '.'),
  fullName,
  roles,
  licence: null,
  mustChangePassword: false,
  disabledAt: null,
  version: 1,
  ...more,
});

export const PEOPLE = [
  person('Rena Oskwold', ['records']),
  person('Cora Lindqvane', ['certifying-staff'], { licence: 'ZQ.66.0107' }),
  person('Tove Braskel', ['technician', 'inspector'], { mustChangePassword: true }),
  person('Odd Thornebeck', ['auditor'], { disabledAt: '2026-11-03T09:11Z' }),
];
