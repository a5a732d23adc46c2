import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import {
  asRequest,
  atMinute,
  type ChangeToRecord,
  logFlights,
  previewChange,
  recordChange,
} from '../../support/scenario/acts.js';
import { type Fleet, makeFleet, slotOf } from '../../support/scenario/fleet.js';
import { faultsOfRefusal } from '../../support/scenario/impossible.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { Register } from '../../support/scenario/register.js';
import { storedRows } from '../../support/scenario/stored-rows.js';

let office: Office;
let fleet: Fleet;

/** The second engine onto the empty second position: nothing is wrong with it. */
const sound = (): ChangeToRecord => ({
  airframeId: fleet.airframes[0]!.id,
  positionNumber: 2,
  slot: 'engine',
  outgoingSerial: null,
  incomingSerial: 'ZZ-E2',
  boundary: atMinute(9000),
});

beforeAll(async () => {
  office = await openOffice();
  fleet = await makeFleet(new Register(office.administrator), { engines: 3 });
  const first = { ...sound(), positionNumber: 1, incomingSerial: 'ZZ-E1', boundary: atMinute(1000) };
  done(await recordChange(office.administrator, first));
  done(
    await logFlights(office.administrator, first.airframeId, [{ page: '1', takeOff: 2000, landing: 2100 }]),
  );
}, 60_000);

afterAll(() => office?.close(), 30_000);

type Row = readonly [what: string, how: Partial<ChangeToRecord>, status: number, code: string, field: string];

const before = { kind: 'instant', at: '2024-12-31T23:59Z' } as const;
const later = { kind: 'instant', at: '2999-01-01T00:00Z' } as const;
const CHANGES: readonly Row[] = [
  ['with a serial nobody has', { incomingSerial: 'ZZ-E9' }, 404, 'NOT_FOUND', 'incomingSerial'],
  [
    'taking off another serial than is there',
    { positionNumber: 1, outgoingSerial: 'ZZ-E3' },
    409,
    'NOT_INSTALLED_THERE',
    'outgoingSerial',
  ],
  ['taking off what is not there', { outgoingSerial: 'ZZ-E3' }, 409, 'NOT_INSTALLED_THERE', 'outgoingSerial'],
  ['into an occupied place', { positionNumber: 1 }, 409, 'SLOT_OCCUPIED', 'outgoingSerial'],
  [
    'of an engine installed elsewhere',
    { incomingSerial: 'ZZ-E1' },
    409,
    'ALREADY_INSTALLED',
    'incomingSerial',
  ],
  [
    'of a pod into the place of an engine',
    { incomingSerial: 'ZZ-N-airframe' },
    422,
    'WRONG_KIND',
    'incomingSerial',
  ],
  ['at a position that is not there', { positionNumber: 4 }, 404, 'NOT_FOUND', 'positionNumber'],
  ['inside a flight', { boundary: atMinute(2050) }, 422, 'INSIDE_A_FLIGHT', 'boundary'],
  [
    'after a page without a flight',
    { boundary: { kind: 'after-page', page: '404' } },
    422,
    'NO_SUCH_LOG_PAGE',
    'boundary.page',
  ],
  ['before its records begin', { boundary: before }, 422, 'BEFORE_OPENING', 'boundary'],
  ['in the future', { boundary: later }, 422, 'IN_THE_FUTURE', 'boundary'],
  [
    'at the minute the other came',
    { positionNumber: 1, outgoingSerial: 'ZZ-E1', boundary: atMinute(1000) },
    422,
    'ENDS_BEFORE_START',
    'boundary',
  ],
  ['of nothing', { incomingSerial: null }, 422, 'NOTHING_TO_CHANGE', 'incomingSerial'],
  ['at a rating nobody knows', { ratingCode: 'Z' }, 404, 'NOT_FOUND', 'ratingCode'],
  ['at no instant', { boundary: { kind: 'instant', at: 'yesterday' } }, 400, 'INVALID_FIELDS', 'boundary.at'],
];

describe('a change', () => {
  it.each(CHANGES)(
    '%s is refused in its preview and when it is confirmed',
    async (_, how, status, code, field) => {
      const request = asRequest({ ...sound(), ...how });
      const { administrator, database } = office;
      for (const [path, body] of [
        ['/api/changes/preview', request],
        ['/api/changes', { ...request, confirmDigest: '0'.repeat(64) }],
      ] as const) {
        const faults = await faultsOfRefusal(database.adminUrl, { body, status, code, field }, (sent) =>
          administrator.post(path, sent),
        );
        expect([path, faults]).toEqual([path, []]);
      }
    },
  );

  it('that nobody was shown is refused', async () => {
    const body = { ...asRequest(sound()), confirmDigest: '0'.repeat(64) };
    const impossible = { body, status: 409, code: 'CHECK_CHANGED', field: null };

    expect(
      await faultsOfRefusal(office.database.adminUrl, impossible, (sent) =>
        office.administrator.post('/api/changes', sent),
      ),
    ).toEqual([]);
  });

  it('confirmed from an old preview is refused, when what that showed has changed', async () => {
    const { administrator, database } = office;
    const request = { ...sound(), incomingSerial: 'ZZ-E3' };
    const { digest } = done(await previewChange(administrator, request));
    await fleet.register.rating(fleet.engines[2]!.id, 'B', 50);
    const held = await storedRows(database.adminUrl);
    const answer = await administrator.post('/api/changes', { ...asRequest(request), confirmDigest: digest });

    expect([answer.status, problemOf(answer).code]).toEqual([409, 'CHECK_CHANGED']);
    expect(await storedRows(database.adminUrl)).toEqual(held);
  });
});

describe('a placement', () => {
  const boundary = atMinute(9000);
  const engine = (index: number) => fleet.engines[index]!;
  const slot = (position: number, kind: 'engine' | 'pod') => slotOf(fleet.airframes[0]!, position, kind);
  type PlacementRow = readonly [
    what: string,
    body: () => object,
    status: number,
    code: string,
    field: string,
  ];
  const PLACEMENTS: readonly PlacementRow[] = [
    [
      'of what is in another slot',
      () => ({ componentId: engine(2).partIds[0], slotId: engine(0).slotIds.hub }),
      409,
      'ALREADY_INSTALLED',
      'componentId',
    ],
    [
      'of an installed engine to a location',
      () => ({ componentId: engine(0).id, locationName: 'Store' }),
      409,
      'ALREADY_INSTALLED',
      'componentId',
    ],
    [
      'into an occupied slot',
      () => ({ componentId: engine(1).id, slotId: slot(1, 'engine') }),
      409,
      'SLOT_OCCUPIED',
      'slotId',
    ],
    [
      'of an engine into the place of a pod',
      () => ({ componentId: engine(1).id, slotId: slot(1, 'pod') }),
      422,
      'WRONG_KIND',
      'slotId',
    ],
    [
      'where it is already',
      () => ({ componentId: engine(1).id, locationName: 'Store' }),
      409,
      'SAME_PLACE',
      'locationName',
    ],
    [
      'inside a flight',
      () => ({ componentId: engine(1).id, slotId: slot(2, 'engine'), boundary: atMinute(2050) }),
      422,
      'INSIDE_A_FLIGHT',
      'boundary',
    ],
    ['to no place', () => ({ componentId: engine(1).id }), 400, 'INVALID_FIELDS', 'slotId'],
    [
      'to a location nobody knows',
      () => ({ componentId: engine(1).id, locationName: 'Nowhere' }),
      404,
      'NOT_FOUND',
      'locationName',
    ],
    [
      'with a field nobody knows',
      () => ({ componentId: engine(1).id, locationName: 'Store', colour: 'red' }),
      400,
      'INVALID_FIELDS',
      'colour',
    ],
    [
      'that ends as it begins',
      () => ({ componentId: engine(1).id, slotId: slot(2, 'engine'), until: boundary }),
      422,
      'ENDS_BEFORE_START',
      'until',
    ],
    [
      'until a page without a flight',
      () => ({
        componentId: engine(1).id,
        slotId: slot(2, 'engine'),
        until: { kind: 'after-page', page: '404' },
      }),
      422,
      'NO_SUCH_LOG_PAGE',
      'until.page',
    ],
  ];

  it.each(PLACEMENTS)('%s is refused', async (_, how, status, code, field) => {
    const body = { boundary, ...how() };

    expect(
      await faultsOfRefusal(office.database.adminUrl, { body, status, code, field }, (sent) =>
        office.administrator.post('/api/placements', sent),
      ),
    ).toEqual([]);
  });
});
