import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { eventually } from '../../support/isolation/full-register.js';
import {
  atMinute,
  type FlightToLog,
  logFlights,
  onTheWire,
  recordChange,
} from '../../support/scenario/acts.js';
import { type Fleet, makeFleet } from '../../support/scenario/fleet.js';
import { faultsOfRefusal } from '../../support/scenario/impossible.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done } from '../../support/scenario/problem.js';
import { Register } from '../../support/scenario/register.js';
import { storedRows } from '../../support/scenario/stored-rows.js';

let office: Office;
let fleet: Fleet;
let path: string;

beforeAll(async () => {
  office = await openOffice();
  fleet = await makeFleet(new Register(office.administrator), { engines: 1 });
  const airframeId = fleet.airframes[0]!.id;
  path = `/api/airframes/${airframeId}/flights`;
  const change = {
    airframeId,
    positionNumber: 1,
    slot: 'engine',
    outgoingSerial: null,
    incomingSerial: 'ZZ-E1',
  } as const;
  done(await recordChange(office.administrator, { ...change, boundary: atMinute(1000) }));
  done(await logFlights(office.administrator, airframeId, [{ page: '1', takeOff: 2000, landing: 2100 }]));
}, 60_000);

afterAll(() => office?.close(), 30_000);

type Row = readonly [what: string, how: Partial<FlightToLog>, status: number, code: string, field: string];

const tooLong = { positionNumber: 1, kind: 'shut-down', minutes: 101 } as const;
const FLIGHTS: readonly Row[] = [
  ['inside another', { takeOff: 2010, landing: 2020 }, 409, 'FLIGHTS_OVERLAP', 'takeOffAt'],
  ['around another', { takeOff: 1999, landing: 2101 }, 409, 'FLIGHTS_OVERLAP', 'takeOffAt'],
  [
    'during which an engine was installed',
    { takeOff: 990, landing: 1010 },
    409,
    'FLIGHT_CONTAINS_BOUNDARY',
    'landingAt',
  ],
  ['on a page that is used', { page: '1' }, 409, 'LOG_PAGE_USED', 'logPage'],
  ['that lands before it takes off', { landing: 5999 }, 422, 'LANDING_NOT_AFTER_TAKE_OFF', 'landingAt'],
  ['that lands as it takes off', { landing: 6000 }, 422, 'LANDING_NOT_AFTER_TAKE_OFF', 'landingAt'],
  ['that lasts for more than a day', { landing: 6000 + 1441 }, 422, 'FLIGHT_TOO_LONG', 'landingAt'],
  ['before its records begin', { takeOff: -60, landing: -1 }, 422, 'BEFORE_OPENING', 'takeOffAt'],
  ['that has not happened', { takeOff: 10_000_000, landing: 10_000_060 }, 422, 'IN_THE_FUTURE', 'landingAt'],
  ['with less than no touch-and-go', { touchAndGoes: -1 }, 400, 'INVALID_FIELDS', 'touchAndGoes'],
  ['with half a start', { starts: 0.5 }, 400, 'INVALID_FIELDS', 'starts'],
  ['on no page', { page: '' }, 400, 'INVALID_FIELDS', 'logPage'],
  [
    'shut down for longer than it flew',
    { exceptions: [tooLong] },
    422,
    'EXCEPTION_BEYOND_FLIGHT',
    'exceptions',
  ],
  [
    'shut down twice at one position',
    { exceptions: [1, 2].map((minutes) => ({ ...tooLong, minutes })) },
    422,
    'EXCEPTION_TWICE',
    'exceptions',
  ],
  [
    'not running at no position',
    { exceptions: [{ positionNumber: 4, kind: 'not-running' }] },
    404,
    'NOT_FOUND',
    'exceptions[0].positionNumber',
  ],
];

describe('a flight', () => {
  it.each(FLIGHTS)('%s is refused, alone and among sound ones', async (_, how, status, code, field) => {
    const wrong = onTheWire({ page: '77', takeOff: 6000, landing: 6100, ...how });
    const before = onTheWire({ page: 'a', takeOff: 4000, landing: 4010 });
    const after = onTheWire({ page: 'b', takeOff: 8000, landing: 8010 });
    for (const [index, flights] of [
      [0, [wrong]],
      [1, [before, wrong, after]],
    ] as const) {
      const impossible = { body: { flights }, status, code, field: `flights[${index}].${field}` };
      const faults = await faultsOfRefusal(office.database.adminUrl, impossible, (sent) =>
        office.administrator.post(path, sent),
      );
      expect([index, faults]).toEqual([index, []]);
    }
  });

  it.each([
    ['that is cut off', '{"flights": ['],
    ['that is no object', '"flights"'],
    ['that is a list', '[]'],
    ['that poisons the prototype', '{"__proto__": {"admin": true}, "flights": []}'],
    ['of nothing', ''],
  ])('in a request %s is refused', async (_, text) => {
    const before = await storedRows(office.database.adminUrl);
    const answer = await office.administrator.post<{ code: string }>(path, text, {
      headers: { 'content-type': 'application/json' },
    });

    expect([answer.status, answer.body.code]).toEqual([
      400,
      expect.stringMatching(/^(MALFORMED|INVALID_FIELDS)$/),
    ]);
    expect(await storedRows(office.database.adminUrl)).toEqual(before);
  });
});

describe('a file of flights with a bad row', () => {
  it('names line, column, value, reason and fix, and adds no flight', async () => {
    const { administrator, database } = office;
    const content = [
      'registration,log_page,from,to,take_off_utc,landing_utc,touch_and_goes,starts,aborted_take_offs',
      'ZZ-102,1,VDL,KRN,2025-02-01 10:00,2025-02-01 11:00,0,1,0',
      'ZZ-102,2,VDL,KRN,2025-02-01 12:00,2025-02-01 11:30,0,1,0',
    ].join('\n');
    const before = await storedRows(database.adminUrl);
    const { id } = done(
      await administrator.post<{ id: string }>('/api/imports', {
        kind: 'flights',
        fileName: 'bad.csv',
        content,
      }),
    );
    const checked = await eventually(
      async () =>
        done(
          await administrator.get<{ state: string; errors: readonly object[]; version: number }>(
            `/api/imports/${id}`,
          ),
        ),
      ({ state }) => state !== 'checking',
    );
    const applied = await administrator.post<{ code: string }>(
      `/api/imports/${id}/apply`,
      {},
      { ifMatch: `"v${checked.version}"` },
    );
    const after = await storedRows(database.adminUrl);

    const told = { value: expect.any(String), reason: expect.any(String), fix: expect.any(String) };
    expect(checked.errors).toEqual([
      { line: 3, column: expect.stringMatching(/^(landing|take_off)_utc$/), ...told },
    ]);
    expect([applied.status, applied.body.code]).toEqual([422, 'REFUSED_BY_FACTS']);
    expect([after['flight'], after['carrier'], after['bucket']]).toEqual([
      before['flight'],
      before['carrier'],
      before['bucket'],
    ]);
  });
});
