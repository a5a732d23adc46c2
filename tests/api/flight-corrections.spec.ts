import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { type FlightToLog, logFlights, onTheWire } from '../support/scenario/acts.js';
import { type BuiltEngine, buildEngine, type Fleet, makeFleet, slotOf } from '../support/scenario/fleet.js';
import { instantAt } from '../support/scenario/instants.js';
import { type Office, openOffice } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';
import { Register, type RegisteredAirframe } from '../support/scenario/register.js';

interface Flight {
  readonly id: string;
  readonly logPage: string;
  readonly minutes: number;
  readonly voided: boolean;
  readonly replacesId: string | null;
}

interface Answer {
  readonly flights: readonly Flight[];
  readonly airframe: { readonly minutes: number; readonly flights: number };
  readonly late: boolean;
  readonly newlyOver: readonly {
    readonly serialNumber: string;
    readonly engineSerial: string;
    readonly dimension: string;
    readonly remaining: number;
  }[];
}

interface Page {
  readonly rows: readonly Flight[];
  readonly next: string | null;
}

let office: Office;
let register: Register;
let fleet: Fleet;
let airframe: RegisteredAirframe;
let marks = 0;

beforeAll(async () => {
  office = await openOffice();
  register = new Register(office.administrator);
  fleet = await makeFleet(register, { engines: 0, airframes: 1 });
}, 60_000);

afterAll(() => office?.close(), 30_000);

// An airframe of its own for each test, 10 000:00 hours and 5 000 flights old.
beforeEach(async () => {
  marks += 1;
  airframe = await register.airframe(`ZZ-F${marks}`, fleet.typeId);
  await register.opening({ airframeId: airframe.id }, [
    { ratingCode: null, minutes: 600_000, cycles: 5_000 },
  ]);
});

const log = async (...flights: FlightToLog[]) =>
  done(await logFlights(office.administrator, airframe.id, flights)) as unknown as Answer;
const flightsOf = async (query = '') =>
  done(await office.administrator.get<Page>(`/api/airframes/${airframe.id}/flights${query}`));
const componentOf = async (id: string) =>
  done(
    await office.administrator.get<{ counters: { sinceNew: object; sinceInstalled: object } }>(
      `/api/components/${id}`,
    ),
  );

async function onWing(at = 50): Promise<BuiltEngine> {
  const engine = await buildEngine(register, fleet.modelId, `ZZ-FE${marks}-${at}`);
  await register.place(engine.id, { slotId: slotOf(airframe, 1, 'engine') }, at);
  return engine;
}

describe('a flight logged wrongly', () => {
  const voided = (id: string | undefined, reason = 'Twice') =>
    office.administrator.post<Answer>(`/api/flights/${id}/void`, { reason });
  const corrected = (id: string | undefined, flight: FlightToLog) =>
    office.administrator.post<Answer>(`/api/flights/${id}/correct`, {
      reason: 'Read wrongly',
      flight: onTheWire(flight),
    });

  it('goes from every counter when it is voided, and stays in the list that asks for it', async () => {
    const engine = await onWing();
    const { flights } = await log(
      { page: 'P1', takeOff: 100, landing: 160 },
      { page: 'P2', takeOff: 200, landing: 260 },
    );

    const answer = done(await voided(flights[1]?.id));

    expect(answer).toMatchObject({
      airframe: { minutes: 600_060, flights: 5_001 },
      flights: [{ voided: true, voidReason: 'Twice' }],
    });
    expect((await componentOf(engine.id)).counters.sinceInstalled).toEqual({
      minutes: 60,
      cycles: { units: 1, denominator: 1 },
    });
    expect((await flightsOf()).rows.map(({ logPage }) => logPage)).toEqual(['P1']);
    expect((await flightsOf('?voided=true')).rows).toMatchObject([
      { logPage: 'P2', voided: true },
      { logPage: 'P1' },
    ]);
    expect(problemOf(await voided(flights[1]?.id))).toMatchObject({ status: 409, code: 'ALREADY_VOIDED' });
    expect(problemOf(await voided(randomUUID()))).toMatchObject({ status: 404 });
    expect(problemOf(await voided(flights[0]?.id, ' '))).toMatchObject({
      status: 400,
      fields: [{ field: 'reason' }],
    });
  });

  it('is entered again by a correction, and the counters are as if it had always been so', async () => {
    const engine = await onWing();
    const { flights } = await log({ page: 'P1', takeOff: 100, landing: 160, touchAndGoes: 1 });

    const answer = done(await corrected(flights[0]?.id, { page: 'P1', takeOff: 100, landing: 190 }));

    expect(answer).toMatchObject({
      airframe: { minutes: 600_090, flights: 5_001 },
      flights: [{ replacesId: flights[0]?.id, minutes: 90 }],
    });
    expect((await componentOf(engine.id)).counters.sinceInstalled).toEqual({
      minutes: 90,
      cycles: { units: 1, denominator: 1 },
    });
  });

  it('is left as it was when the correction is refused', async () => {
    const { flights } = await log(
      { page: 'P1', takeOff: 100, landing: 160 },
      { page: 'P2', takeOff: 200, landing: 260 },
    );

    const problem = problemOf(await corrected(flights[0]?.id, { page: 'P1', takeOff: 100, landing: 201 }));

    expect(problem).toMatchObject({ code: 'FLIGHTS_OVERLAP', fields: [{ field: 'flight.takeOffAt' }] });
    expect((await flightsOf('?voided=true')).rows).toMatchObject([{ voided: false }, { voided: false }]);
  });

  it('takes along what came by its log page, and may not be voided under it', async () => {
    const { flights } = await log({ page: 'P1', takeOff: 100, landing: 160 });
    const engine = await buildEngine(register, fleet.modelId, `ZZ-PAGE${marks}`);
    const boundary = { kind: 'after-page', page: 'P1', airframeId: airframe.id };
    await register.post('/api/placements', {
      componentId: engine.id,
      slotId: slotOf(airframe, 1, 'engine'),
      boundary,
    });
    await log({ page: 'P2', takeOff: 300, landing: 360 });
    const places = async () =>
      done(await office.administrator.get<object[]>(`/api/components/${engine.id}/places`));
    expect((await places())[0]).toMatchObject({
      from: instantAt(160),
      fromPrecision: 'page',
      fromText: 'P1',
    });

    const refusal = problemOf(await voided(flights[0]?.id));
    expect(refusal).toMatchObject({ status: 422, code: 'REFUSED_BY_FACTS' });
    expect(refusal.detail).toContain(engine.serialNumber);

    const later = done(await corrected(flights[0]?.id, { page: 'P1-A', takeOff: 100, landing: 190 }));
    expect((await places()).slice(0, 1)).toMatchObject([
      { from: instantAt(190), fromText: 'P1-A', voided: false },
    ]);
    done(await corrected(later.flights[0]?.id, { page: 'P1-A', takeOff: 100, landing: 130 }));

    expect((await places()).filter((place) => !(place as { voided: boolean }).voided)[0]).toMatchObject({
      from: instantAt(130),
      fromText: 'P1-A',
    });
    expect((await componentOf(engine.id)).counters.sinceInstalled).toEqual({
      minutes: 60,
      cycles: { units: 1, denominator: 1 },
    });
  });
});

describe('two at once', () => {
  it('log only one of two flights that overlap', async () => {
    const answers = await Promise.all(
      Array.from({ length: 6 }, (_, index) =>
        logFlights(office.administrator, airframe.id, [
          { page: `P${index}`, takeOff: 100 + index, landing: 200 + index },
        ]),
      ),
    );

    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409, 409, 409, 409, 409]);
  });

  it('void a flight once', async () => {
    const { flights } = await log({ page: 'P1', takeOff: 100, landing: 160 });

    const answers = await Promise.all(
      [1, 2, 3].map(() =>
        office.administrator.post(`/api/flights/${flights[0]?.id}/void`, { reason: 'Twice' }),
      ),
    );

    expect(answers.map(({ status }) => status).sort()).toEqual([200, 409, 409]);
    expect((await flightsOf('?voided=true')).rows).toHaveLength(1);
  });
});
