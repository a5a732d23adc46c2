import { randomUUID } from 'node:crypto';
import { describe, expect, it } from '@jest/globals';
import { type FlightAnswer, flightDesk } from '../support/logbook/flight-desk.js';
import { type FlightToLog, logFlights, onTheWire } from '../support/scenario/acts.js';
import { buildEngine, slotOf } from '../support/scenario/fleet.js';
import { instantAt } from '../support/scenario/instants.js';
import { done, problemOf } from '../support/scenario/problem.js';

const { desk, log, flightsOf, componentOf, onWing } = flightDesk();

describe('a flight logged wrongly', () => {
  const voided = (id: string | undefined, reason = 'Twice') =>
    desk.office.administrator.post<FlightAnswer>(`/api/flights/${id}/void`, { reason });
  const corrected = (id: string | undefined, flight: FlightToLog) =>
    desk.office.administrator.post<FlightAnswer>(`/api/flights/${id}/correct`, {
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
    const engine = await buildEngine(desk.register, desk.fleet.modelId, `ZZ-PAGE${desk.marks}`);
    const boundary = { kind: 'after-page', page: 'P1', airframeId: desk.airframe.id };
    await desk.register.post('/api/placements', {
      componentId: engine.id,
      slotId: slotOf(desk.airframe, 1, 'engine'),
      boundary,
    });
    await log({ page: 'P2', takeOff: 300, landing: 360 });
    const places = async () =>
      done(await desk.office.administrator.get<object[]>(`/api/components/${engine.id}/places`));
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
        logFlights(desk.office.administrator, desk.airframe.id, [
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
        desk.office.administrator.post(`/api/flights/${flights[0]?.id}/void`, { reason: 'Twice' }),
      ),
    );

    expect(answers.map(({ status }) => status).sort()).toEqual([200, 409, 409]);
    expect((await flightsOf('?voided=true')).rows).toHaveLength(1);
  });
});
