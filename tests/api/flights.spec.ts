import { randomUUID } from 'node:crypto';
import { describe, expect, it } from '@jest/globals';
import { withClient } from '../support/database.js';
import { flightDesk } from '../support/logbook/flight-desk.js';
import { type FlightToLog, logFlights, onTheWire } from '../support/scenario/acts.js';
import { done, problemOf } from '../support/scenario/problem.js';

const { desk, log, refusalOf, flightsOf, onWing } = flightDesk();

describe('logging flights', () => {
  it('answers the flight, what the airframe has flown with its opening, and that it is not late', async () => {
    const answer = await log({ page: 'P1', takeOff: 100, landing: 175, touchAndGoes: 2 });

    expect(answer).toMatchObject({
      flights: [
        {
          logPage: 'P1',
          minutes: 75,
          touchAndGoes: 2,
          starts: 0,
          abortedTakeOffs: 0,
          voided: false,
          source: 'entered',
        },
      ],
      airframe: { minutes: 600_075, flights: 5_001 },
      late: false,
      newlyOver: [],
    });
  });

  it('takes fifty at once, in any order', async () => {
    const flights = Array.from({ length: 50 }, (_, index) => ({
      page: `P${index}`,
      takeOff: (50 - index) * 100,
      landing: (50 - index) * 100 + 60,
    }));

    expect(await log(...flights)).toMatchObject({ airframe: { minutes: 603_000, flights: 5_050 } });
  });

  it('takes all or none', async () => {
    const problem = await refusalOf(
      { page: 'P1', takeOff: 100, landing: 160 },
      { page: 'P2', takeOff: 159, landing: 200 },
    );

    expect(problem).toMatchObject({
      status: 409,
      code: 'FLIGHTS_OVERLAP',
      fields: [{ field: 'flights[1].takeOffAt' }],
    });
    expect(problem.detail).toContain('log page P1');
    expect((await flightsOf('?voided=true')).rows).toEqual([]);
  });

  it('lets a flight begin in the minute in which the one before ended', async () => {
    await log({ page: 'P1', takeOff: 100, landing: 160 });

    expect(await log({ page: 'P2', takeOff: 160, landing: 200 })).toMatchObject({ late: false });
    expect(await log({ page: 'P0', takeOff: 50, landing: 100 })).toMatchObject({
      airframe: { flights: 5_003 },
    });
  });

  it.each<[string, FlightToLog, string, string]>([
    ['a flight over another', { page: 'P2', takeOff: 150, landing: 155 }, 'FLIGHTS_OVERLAP', 'takeOffAt'],
    ['a flight around another', { page: 'P2', takeOff: 50, landing: 300 }, 'FLIGHTS_OVERLAP', 'takeOffAt'],
    ['a used log page', { page: 'P1', takeOff: 500, landing: 560 }, 'LOG_PAGE_USED', 'logPage'],
    ['a flight before the opening', { page: 'P2', takeOff: -1, landing: 60 }, 'BEFORE_OPENING', 'takeOffAt'],
    [
      'a landing before the take-off',
      { page: 'P2', takeOff: 500, landing: 499 },
      'LANDING_NOT_AFTER_TAKE_OFF',
      'landingAt',
    ],
    [
      'a landing at the take-off',
      { page: 'P2', takeOff: 500, landing: 500 },
      'LANDING_NOT_AFTER_TAKE_OFF',
      'landingAt',
    ],
    [
      'a flight of more than 24 hours',
      { page: 'P2', takeOff: 500, landing: 1_941 },
      'FLIGHT_TOO_LONG',
      'landingAt',
    ],
    [
      'a flight in the future',
      { page: 'P2', takeOff: 50_000_000, landing: 50_000_060 },
      'IN_THE_FUTURE',
      'landingAt',
    ],
  ])('refuses %s, names the field, and writes nothing', async (_, flight, code, field) => {
    await log({ page: 'P1', takeOff: 100, landing: 160 });
    const ok = { page: 'P9', takeOff: 300, landing: 310 };

    expect(await refusalOf(flight)).toMatchObject({ code, fields: [{ field: `flights[0].${field}` }] });
    if (flight.takeOff !== 50)
      expect(await refusalOf(ok, flight)).toMatchObject({ code, fields: [{ field: `flights[1].${field}` }] });
    expect((await flightsOf('?voided=true')).rows).toHaveLength(1);
  });

  it('takes a flight of exactly 24 hours', async () => {
    expect(await log({ page: 'P1', takeOff: 500, landing: 1_940 })).toMatchObject({
      flights: [{ minutes: 1_440 }],
    });
  });

  it('refuses an airframe nobody has', async () => {
    expect(
      problemOf(
        await logFlights(desk.office.administrator, randomUUID(), [{ page: 'P1', takeOff: 1, landing: 2 }]),
      ),
    ).toMatchObject({ status: 404, code: 'NOT_FOUND' });
  });

  it.each(['2025-01-01T10:00:00Z', '2025-01-01T10:00+01:00', '2025-01-01 10:00Z', '2025-02-30T10:00Z', ''])(
    'refuses the take-off "%s"',
    async (takeOffAt) => {
      const flight = { ...onTheWire({ page: 'P1', takeOff: 1, landing: 2 }), takeOffAt };

      const problem = problemOf(
        await desk.office.administrator.post(`/api/airframes/${desk.airframe.id}/flights`, {
          flights: [flight],
        }),
      );

      expect(problem).toMatchObject({ status: 400, fields: [{ field: 'flights[0].takeOffAt' }] });
    },
  );

  it('keeps what was typed, as canonical JSON', async () => {
    const { flights } = await log({ page: 'P1', takeOff: 100, landing: 160 });

    const [row] = await withClient(
      desk.office.database.adminUrl,
      async (client) =>
        (await client.query<{ typed: string }>('SELECT typed FROM flight WHERE id = $1', [flights[0]?.id]))
          .rows,
    );
    expect(row?.typed).toMatch(/^{"abortedTakeOffs":0,"exceptions":\[\],"fromStation":"VDL",/);
  });
});

describe('the same act twice', () => {
  it.each([
    ['a flight', [{ page: 'P1', takeOff: 100, landing: 160 }]],
    [
      'two flights',
      [
        { page: 'P1', takeOff: 100, landing: 160 },
        { page: 'P2', takeOff: 200, landing: 260 },
      ],
    ],
  ])('logs %s once, and answers the same', async (_, flights) => {
    const options = { idempotencyKey: randomUUID() };

    const answers = await Promise.all(
      [1, 2, 3].map(() => logFlights(desk.office.administrator, desk.airframe.id, flights, options)),
    );
    answers.push(await logFlights(desk.office.administrator, desk.airframe.id, flights, options));

    expect(new Set(answers.map(({ status, body }) => JSON.stringify([status, body]))).size).toBe(1);
    expect(answers[0]?.status).toBe(201);
    expect((await flightsOf()).rows).toHaveLength(flights.length);
  });

  it('is refused when the key belongs to another flight', async () => {
    const options = { idempotencyKey: randomUUID() };
    done(
      await logFlights(
        desk.office.administrator,
        desk.airframe.id,
        [{ page: 'P1', takeOff: 100, landing: 160 }],
        options,
      ),
    );

    const problem = problemOf(
      await logFlights(
        desk.office.administrator,
        desk.airframe.id,
        [{ page: 'P2', takeOff: 200, landing: 260 }],
        options,
      ),
    );

    expect(problem).toMatchObject({ status: 422, code: 'KEY_REUSED' });
  });

  it('answers the same for a late flight too', async () => {
    await onWing(1_000);
    const options = { idempotencyKey: randomUUID() };
    const flights = [{ page: 'P1', takeOff: 100, landing: 160 }];

    const first = done(await logFlights(desk.office.administrator, desk.airframe.id, flights, options));

    expect(first).toMatchObject({ late: true });
    expect(done(await logFlights(desk.office.administrator, desk.airframe.id, flights, options))).toEqual(
      first,
    );
  });
});

describe('the list', () => {
  it('gives the newest first, page by page, each once', async () => {
    await log(
      ...Array.from({ length: 7 }, (_, index) => ({
        page: `P${index}`,
        takeOff: 100 * index,
        landing: 100 * index + 50,
      })),
    );

    const first = await flightsOf('?limit=4');
    const second = await flightsOf(`?limit=4&after=${first.next}`);

    expect([...first.rows, ...second.rows].map(({ logPage }) => logPage)).toEqual([
      'P6',
      'P5',
      'P4',
      'P3',
      'P2',
      'P1',
      'P0',
    ]);
    expect(second.next).toBeNull();
  });

  it('refuses more than 200 a page, and a place that is none', async () => {
    const problem = async (query: string) =>
      problemOf(await desk.office.administrator.get(`/api/airframes/${desk.airframe.id}/flights?${query}`));

    expect(await problem('limit=201')).toMatchObject({ status: 400, fields: [{ field: 'limit' }] });
    expect(await problem('after=zzz')).toMatchObject({ status: 400, fields: [{ field: 'after' }] });
  });
});
