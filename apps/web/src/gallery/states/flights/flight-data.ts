import type { components } from '@strutbook/api-client/schema.gen.js';

type Shapes = components['schemas'];

/** One flight of the log. */
export const flight = (
  logPage: string,
  more: Partial<Shapes['LoggedFlightDto']> = {},
): Shapes['LoggedFlightDto'] => ({
  id: `f-${logPage}`,
  airframeId: 'a-417',
  logPage,
  fromStation: 'QXA',
  toStation: 'KQX',
  takeOffAt: '2026-11-19T21:29Z',
  landingAt: '2026-11-20T05:10Z',
  minutes: 461,
  touchAndGoes: 0,
  starts: 1,
  abortedTakeOffs: 0,
  exceptions: [],
  source: 'entered',
  entryRow: null,
  replacesId: null,
  voided: false,
  voidReason: null,
  gaps: [],
  gapNotes: [],
  ...more,
});

const shutDown: Shapes['FlightExceptionDto'] = {
  positionNumber: 2,
  kind: 'shut-down',
  minutes: 70,
  flights: 0,
  landings: 0,
  touchAndGoes: 0,
  starts: 0,
  abortedTakeOffs: 0,
};

const note = (more: Partial<Shapes['GapNoteDto']>): Shapes['GapNoteDto'] => ({
  id: 'n-1',
  flightId: 'f-0414',
  kind: 'pages',
  before: '0412',
  after: '0414',
  note: 'Page 0413 spoilt and left blank',
  voided: false,
  voidReason: null,
  ...more,
});

/** Flights after gaps: none noted, one noted of both, a note voided, a note on what is no longer there. */
export const GAPS: readonly Shapes['LoggedFlightDto'][] = [
  flight('0419', {
    fromStation: 'QZJ',
    gaps: [
      { kind: 'stations', before: 'KQX', after: 'QZJ', noteId: null },
      { kind: 'pages', before: '0416', after: '0419', noteId: null },
    ],
    gapNotes: [note({ id: 'n-4', voided: true, voidReason: 'Pages 0417 and 0418 were found flown' })],
  }),
  flight('0416', {
    gaps: [],
    gapNotes: [
      note({
        id: 'n-3',
        kind: 'stations',
        before: 'KQX',
        after: 'QXA',
        note: 'Moved by road after the show',
      }),
    ],
  }),
  flight('0415'),
  flight('0414', {
    gaps: [{ kind: 'pages', before: '0412', after: '0414', noteId: 'n-1' }],
    gapNotes: [note({})],
  }),
  flight('0412'),
];

/** A log that goes on without a gap. */
export const FLIGHTS: readonly Shapes['LoggedFlightDto'][] = [
  flight('0419', { exceptions: [shutDown], touchAndGoes: 2 }),
  flight('0418', { id: 'f-0418b', replacesId: 'f-0418' }),
  flight('0418', { voided: true, voidReason: 'Landing was typed 20 minutes late', minutes: 481 }),
  flight('0417', { voided: true, voidReason: 'Entered twice' }),
  flight('0416'),
];
