import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../../support/database.js';
import {
  asRequest,
  atMinute,
  type ChangeToRecord,
  logFlights,
  onTheWire,
  previewChange,
} from '../../support/scenario/acts.js';
import { AT_ONCE, fifty, statuses } from '../../support/scenario/at-once.js';
import { buildEngine, type Fleet, makeFleet } from '../../support/scenario/fleet.js';
import { instantAt } from '../../support/scenario/instants.js';
import { brokenInvariants } from '../../support/scenario/invariants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { Register } from '../../support/scenario/register.js';

let office: Office;
let fleet: Fleet;

beforeAll(async () => {
  office = await openOffice();
  fleet = await makeFleet(new Register(office.administrator), { airframes: 10, engines: 2 });
}, 120_000);

afterAll(() => office?.close(), 30_000);

const rows = (sql: string, values: readonly unknown[]): Promise<number> =>
  withClient(office.database.adminUrl, async (client) =>
    Number((await client.query(sql, [...values])).rows[0]?.count),
  );

describe('one act sent fifty times at once', () => {
  it('logs one flight and is answered alike each time', async () => {
    const airframeId = fleet.airframes[4]?.id ?? '';
    const idempotencyKey = randomUUID();

    const answers = await fifty(() =>
      logFlights(office.administrator, airframeId, [{ page: 'once', takeOff: 7000, landing: 7090 }], {
        idempotencyKey,
      }),
    );

    expect(new Set(answers.map(({ status, etag, body }) => JSON.stringify([status, etag, body]))).size).toBe(
      1,
    );
    expect(answers[0]?.status).toBe(201);
    expect(await rows('SELECT count(*) FROM flight WHERE airframe_id = $1', [airframeId])).toBe(1);
    expect(await rows('SELECT count(*) FROM act WHERE key = $1', [idempotencyKey])).toBe(1);
  }, 60_000);

  it('logs three flights of one request once', async () => {
    const airframeId = fleet.airframes[5]?.id ?? '';
    const idempotencyKey = randomUUID();
    const flights = [0, 1, 2].map((index) => ({
      page: `three-${index}`,
      takeOff: 7000 + index * 60,
      landing: 7050 + index * 60,
    }));

    const answers = await fifty(() =>
      logFlights(office.administrator, airframeId, flights, { idempotencyKey }),
    );

    expect(new Set(answers.map(({ status, body }) => JSON.stringify([status, body]))).size).toBe(1);
    expect(answers[0]?.status).toBe(201);
    expect(await rows('SELECT count(*) FROM flight WHERE airframe_id = $1', [airframeId])).toBe(3);
  }, 60_000);

  it('changes one engine once', async () => {
    const { administrator } = office;
    const engine = await buildEngine(fleet.register, fleet.modelId, 'ZZ-ONCE');
    const change: ChangeToRecord = {
      airframeId: fleet.airframes[6]?.id ?? '',
      positionNumber: 1,
      slot: 'engine',
      outgoingSerial: null,
      incomingSerial: engine.serialNumber,
      boundary: atMinute(8000),
    };
    const { digest } = done(await previewChange(administrator, change));
    const idempotencyKey = randomUUID();

    const answers = await fifty(() =>
      administrator.post('/api/changes', { ...asRequest(change), confirmDigest: digest }, { idempotencyKey }),
    );

    expect(new Set(answers.map(({ status, etag, body }) => JSON.stringify([status, etag, body]))).size).toBe(
      1,
    );
    expect(answers[0]?.status).toBe(201);
    expect(await rows('SELECT count(*) FROM package_change WHERE incoming_id = $1', [engine.id])).toBe(1);
  }, 60_000);

  it('with another flight under its key is refused, and the first stands', async () => {
    const airframeId = fleet.airframes[7]?.id ?? '';
    const idempotencyKey = randomUUID();
    const flight = { page: 'keyed', takeOff: 7000, landing: 7090 };
    done(await logFlights(office.administrator, airframeId, [flight], { idempotencyKey }));

    const other = await logFlights(office.administrator, airframeId, [{ ...flight, landing: 7091 }], {
      idempotencyKey,
    });
    const elsewhere = await logFlights(office.administrator, fleet.airframes[8]?.id ?? '', [flight], {
      idempotencyKey,
    });

    expect([other, elsewhere].map((answer) => [answer.status, problemOf(answer).code])).toEqual([
      [422, 'KEY_REUSED'],
      [422, 'KEY_REUSED'],
    ]);
  });

  it('without a key is refused', async () => {
    const path = `/api/airframes/${fleet.airframes[7]?.id}/flights`;
    const flights = [onTheWire({ page: 'keyless', takeOff: 9000, landing: 9001 })];
    const answer = await office.administrator.post(path, { flights }, { idempotencyKey: null });

    expect([answer.status, problemOf(answer).code]).toEqual([400, 'MISSING_KEY']);
  });
});

describe('the void of one flight, sent by many under keys of their own', () => {
  it('happens once', async () => {
    const airframeId = fleet.airframes[9]?.id ?? '';
    const { flights } = done(
      await logFlights(office.administrator, airframeId, [{ page: 'void', takeOff: 7000, landing: 7090 }]),
    );

    const answers = await fifty(() =>
      office.administrator.post(`/api/flights/${flights[0]?.id}/void`, { reason: 'Never flown' }),
    );

    expect(statuses(answers)).toEqual({ 200: 1, 409: AT_ONCE - 1 });
    expect(await rows('SELECT minutes AS count FROM carrier WHERE id = $1', [airframeId])).toBe(0);
  }, 60_000);
});

describe('one opening balance, sent by many under keys of their own', () => {
  it('is recorded once', async () => {
    const { id } = await fleet.register.component({ kind: 'part', serialNumber: 'ZZ-OPENED' });
    const opening = {
      componentId: id,
      at: instantAt(0),
      basis: 'new',
      rows: [{ ratingCode: null, minutes: 1, cycles: 1 }],
      source: 'Card',
    };

    const answers = await fifty(() => office.administrator.post('/api/openings', opening));

    expect(statuses(answers)).toEqual({ 201: 1, 409: AT_ONCE - 1 });
    expect(await rows('SELECT count(*) FROM opening WHERE component_id = $1', [id])).toBe(1);
  }, 60_000);
});

describe('after all of it', () => {
  it('everything still adds up', async () => {
    expect(await brokenInvariants(office.database.adminUrl)).toEqual({});
  });
});
