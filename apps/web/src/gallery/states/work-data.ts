import type { ChangePreview, DueBasis, DueRow, DueTotals, Objection } from '../../server/wire.js';
import { counters } from './fleet-data.js';

export const objection = (
  code: string,
  severity: Objection['severity'],
  [kind, label, reason, fix]: readonly [string, string, string, string],
): Objection => ({
  code,
  severity,
  positionNumber: 3,
  subject: { kind, id: `c-${label}`, label },
  reason,
  fix,
});

export const OBJECTIONS: readonly Objection[] = [
  objection('ENGINE_MISSING', 'blocking', [
    'position',
    'Position 2',
    'No engine is installed there.',
    'Record the installation of the engine.',
  ]),
  objection('OVER_LIMIT', 'blocking', [
    'component',
    'Part 2A1234-03 serial D80114 (LPT disk 3, engine KT-377)',
    'Its life limit is passed: 4 past 9000 cycles.',
    'Replace the part, and report the overrun.',
  ]),
  objection('LIMITED_PART_UNTRACED', 'blocking', [
    'component',
    'Part 2A1234-01 serial D77233 (HPT disk 2, engine KT-655)',
    'Its life is not substantiated; not known: its cycles.',
    'Complete the trace, or record the acceptance of the worst case with its reference.',
  ]),
  objection('LOG_GAP', 'blocking', [
    'flight',
    'Log page 0419',
    'It follows page 0417: a page may be missing, and with it its hours and cycles.',
    'Enter the missing flight, or explain the gap by a note at this flight.',
  ]),
  objection('LOG_GAP_EXPLAINED', 'advisory', [
    'flight',
    'Log page 0402',
    'It left from QZJ, but the flight before arrived at QXA. Noted: “Station of arrival typed otherwise: landed at QZJ”',
    'Nothing, while the note holds.',
  ]),
];

/** What a change would record. */
export const PREVIEW: ChangePreview = {
  at: '2026-11-20T21:40Z',
  precision: 'minute',
  outgoing: {
    id: 'c-KT-377',
    serialNumber: 'KT-377',
    partNumber: 'K84-0001',
    description: 'K84 engine',
    sinceNew: counters(1_206_774, 18_008),
    sinceInstalled: counters(398_136, 1976),
  },
  incoming: {
    id: 'c-KT-655',
    serialNumber: 'KT-655',
    partNumber: 'K84-0001',
    description: 'K84 engine',
    sinceNew: counters(917_871, 23_860),
    sinceInstalled: null,
  },
  ratingCode: '84A',
  objections: [...OBJECTIONS.slice(2, 3)],
  digest: '21e3039850a4218a2525a9a8de01a9dee88e3738626c69715093908160f7d221',
};

/** A life of one dimension, with what is left of it inside. */
function due(id: string, more: Partial<DueRow>): DueRow {
  const row = dueRow(id, more);
  const { dimension, remainingCycles: cycles, remainingMinutes: minutes, dueOn, projectedOn, limit } = row;
  const remaining = cycles ?? minutes;
  if (row.dues.length > 0 || dimension === 'none' || remaining === null) return row;
  const due = {
    dimension,
    interval: limit,
    remaining,
    untilLatest: remaining,
    isBound: false,
    dueOn,
    projectedOn,
  };
  return { ...row, dues: [due] };
}

const dueRow = (id: string, more: Partial<DueRow>): DueRow => ({
  id,
  kind: 'life-limit',
  requirement: null,
  componentId: `c-${id}`,
  description: 'LPT disk 3',
  partNumber: '2A1234-03',
  serialNumber: id,
  engineId: 'c-KT-377',
  engineSerial: 'KT-377',
  airframeId: 'a-417',
  airframe: 'ZZ-417',
  positionNumber: 3,
  status: 'later',
  dimension: 'cycles',
  remainingCycles: 2019,
  remainingMinutes: null,
  remainingDays: null,
  dueOn: null,
  dues: [],
  limit: 9000,
  document: 'K84 engine manual, chapter 05-11',
  revision: '7',
  projectedOn: '2031-03-10',
  basis: 'Average use of the last 90 days',
  reason: null,
  flagged: false,
  ...more,
});

const NOTHING_KNOWN = {
  remainingCycles: null,
  limit: null,
  projectedOn: null,
  basis: 'Nothing can be projected from what is not known',
} as const;

/** Every status; hours beside cycles; in store; a worst case; requirements. */
export const DUE_ROWS: readonly DueRow[] = [
  due('D80114', { status: 'over', remainingCycles: -4, projectedOn: null, basis: 'Past its limit' }),
  due('D77233', {
    ...NOTHING_KNOWN,
    status: 'not-verified',
    dimension: 'none',
    reason: 'A gap in its trace',
  }),
  due('MRK0000-8BIl1O0-7719', {
    ...NOTHING_KNOWN,
    status: 'not-verified',
    dimension: 'none',
    document: null,
    revision: null,
    airframeId: null,
    airframe: null,
    positionNumber: null,
    reason: 'Its counters are not known',
  }),
  due('F00981', { status: 'soon', remainingCycles: 229, projectedOn: '2027-05-21' }),
  due('S55010', { status: 'planned', remainingCycles: 861, flagged: true, projectedOn: '2028-11-13' }),
  due('H20001', {
    dimension: 'minutes',
    remainingCycles: null,
    remainingMinutes: 616_597,
    limit: 1_800_000,
    positionNumber: 0,
  }),
  due('rq-1', {
    kind: 'requirement',
    requirement: {
      id: 'rq-72-31-01',
      code: '72-31-01',
      title: 'Borescope inspection of the hot section',
      kind: 'inspection',
      combine: 'first',
    },
    componentId: 'c-KT-442',
    description: 'K84 engine',
    serialNumber: 'KT-442',
    status: 'soon',
    remainingCycles: 10,
    dues: [
      {
        dimension: 'minutes',
        interval: 30_000,
        remaining: 9000,
        untilLatest: 9000,
        isBound: false,
        dueOn: null,
        projectedOn: null,
      },
      {
        dimension: 'cycles',
        interval: 300,
        remaining: 10,
        untilLatest: 10,
        isBound: false,
        dueOn: null,
        projectedOn: null,
      },
      {
        dimension: 'months',
        interval: 6,
        remaining: 105,
        untilLatest: 105,
        isBound: false,
        dueOn: '2027-03-10',
        projectedOn: '2027-03-10',
      },
    ],
    limit: 300,
    document: 'V-840 maintenance programme',
    revision: '12',
    projectedOn: '2026-11-27',
  }),
  due('rq-2', {
    kind: 'requirement',
    requirement: {
      id: 'rq-05-20-12C',
      code: '05-20-12C',
      title: 'Yearly check',
      kind: 'check',
      combine: 'first',
    },
    ...{ componentId: null, description: null, partNumber: null, serialNumber: null },
    ...{ engineId: null, engineSerial: null, positionNumber: null },
    status: 'planned',
    dimension: 'months',
    remainingCycles: null,
    remainingDays: 66,
    dueOn: '2027-01-31',
    dues: [
      {
        dimension: 'months',
        interval: 12,
        remaining: 66,
        untilLatest: 66,
        isBound: false,
        dueOn: '2027-01-31',
        projectedOn: '2027-01-31',
      },
    ],
    limit: 12,
    document: 'V-840 maintenance programme',
    revision: '12',
    projectedOn: '2027-01-31',
    basis: 'By the calendar',
  }),
];

export const DUE_BASIS: DueBasis = {
  kind: 'average',
  days: 90,
  statement:
    'Dates are projected by what each airframe flew in the last 90 days, on average. A forecast is never a limit.',
  uses: [{ airframeId: 'a-417', registration: 'ZZ-417', minutes: 43_218, flights: 311, days: 90 }],
};

const NO_COUNTS = { over: 0, inTolerance: 0, soon: 0, planned: 0, later: 0, notVerified: 0, total: 0 };
const OF_ONE = { over: 1, inTolerance: 0, soon: 2, planned: 2, later: 1, notVerified: 2, total: 8 };

/** Two are left out by filters, and one is over limit elsewhere. */
export const DUE_TOTALS: DueTotals = {
  whole: { ...OF_ONE, over: 2, total: 9 },
  scope: OF_ONE,
  shown: { ...OF_ONE, over: 0, notVerified: 1, total: 6 },
};

export const NO_TOTALS: DueTotals = { whole: NO_COUNTS, scope: NO_COUNTS, shown: NO_COUNTS };
