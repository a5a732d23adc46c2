import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { logFlights } from '../../support/scenario/acts.js';
import { type InService, putInService } from '../../support/scenario/in-service.js';
import { minutesOf } from '../../support/scenario/instants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { accomplish, recordRequirement } from '../../support/scenario/requirements.js';

interface Item {
  readonly name: string;
  readonly of: string;
  readonly reason: string | null;
  readonly dueOnFlight: number | null;
  readonly breaksOnFlight: number | null;
  readonly left: readonly { readonly dimension: string; readonly remaining: number }[];
}

interface Readiness {
  readonly verdict: string;
  readonly statement: string;
  readonly basisText: string;
  readonly lastAllowed: number;
  readonly flights: readonly {
    readonly number: number;
    readonly allowed: boolean;
    readonly minutes: number;
  }[];
  readonly notVerified: readonly Item[];
  readonly items: readonly Item[];
  readonly notLogged: number;
}

interface Planned {
  readonly flights: readonly { readonly id: string; readonly takeOffAt: string; readonly minutes: number }[];
}

/** So many days from today, at this minute of the day, as the wire has it. */
function onDay(days: number, minute = 600): string {
  const midnight = Math.floor(Date.now() / 86_400_000) * 86_400_000;
  return `${new Date(midnight + days * 86_400_000 + minute * 60_000).toISOString().slice(0, 16)}Z`;
}

const dayText = (days: number): string => onDay(days).slice(0, 10);

/** One flight of an hour a day from tomorrow on. */
const daily = (count: number) =>
  Array.from({ length: count }, (_, index) => ({
    ...{ flightNumber: `T${index + 1}`, fromStation: 'VDL', toStation: 'KRN' },
    ...{ takeOffAt: onDay(index + 1), landingAt: onDay(index + 1, 660) },
  }));

let office: Office;
let fleet: InService;
let of: string;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 0 });
  of = `/api/airframes/${fleet.airframe.id}`;
  // Both engines have 1,000 cycles since new: three are left.
  done(await recordRequirement(office.administrator, 'R-CYC', { repeat: { cycles: 1003 } }));
}, 120_000);

afterAll(() => office?.close(), 30_000);

const ready = async (asked: object = {}): Promise<Readiness> =>
  done(await office.administrator.post<Readiness>(`${of}/readiness`, asked));

describe('readiness for planned flying', () => {
  it('names the last flight that may be made: what is used up exactly may be flown', async () => {
    const answer = await ready({ flights: daily(5) });

    expect(answer).toMatchObject({ verdict: 'some', lastAllowed: 3, notVerified: [], notLogged: 0 });
    expect(answer.statement).toContain('number 3 (T3), VDL to KRN');
    expect(answer.basisText).toContain('5 flights, 5:00 hours');
    expect(answer.flights.map(({ allowed }) => allowed)).toEqual([true, true, true, false, false]);
    expect(answer.items.map(({ name, breaksOnFlight }) => [name, breaksOnFlight])).toEqual([
      ['R-CYC, Test R-CYC', 4],
      ['R-CYC, Test R-CYC', 4],
    ]);
    expect(answer.items[0]?.left).toEqual([
      { dimension: 'cycles', remaining: 3, untilLatest: expect.any(Number), dueOn: null },
    ]);
  });

  it('says that all may be made where nothing breaks', async () => {
    expect(await ready({ flights: daily(3) })).toMatchObject({ verdict: 'all', lastAllowed: 3 });
  });

  it('answers for a rate and a horizon', async () => {
    const answer = await ready({ rate: { days: 7, minutes: 840, flights: 14, horizonDays: 7 } });

    expect(answer).toMatchObject({ verdict: 'some', lastAllowed: 3 });
    expect(answer.flights).toHaveLength(14);
    expect(answer.flights.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(840);
  });

  it('a day is good through its end: the flight that lands on the next breaks it', async () => {
    const requirement = done(
      await recordRequirement(office.administrator, 'R-DAY', { repeat: { days: 30 } }),
    );
    for (const engine of fleet.engines)
      done(
        await accomplish(office.administrator, {
          ...{ requirementId: requirement.id, componentId: engine.id, on: dayText(-28) },
        }),
      );
    const night = { takeOffAt: onDay(2, 1380), landingAt: onDay(3, 30) };
    const answer = await ready({ flights: [...daily(2), night] });

    expect(answer.items.filter(({ name }) => name.startsWith('R-DAY'))).toMatchObject([
      { breaksOnFlight: 3 },
      { breaksOnFlight: 3 },
    ]);
    expect(answer.lastAllowed).toBe(2);
    done(await office.administrator.post(`/api/requirements/${requirement.id}/void`, { reason: 'Test' }));
  });

  it('states no readiness while something is not verified, and lists it first', async () => {
    const requirement = done(
      await recordRequirement(office.administrator, 'R-OVH', {
        ...{ repeat: { cycles: 9000 }, countedFrom: 'overhaul' },
      }),
    );
    const answer = await ready({ flights: daily(5) });

    expect(answer.verdict).toBe('not-verified');
    expect(answer.statement).toMatch(
      /^No readiness can be stated: 2 items are not verified\. By what is known/,
    );
    expect(answer.notVerified).toMatchObject([
      { name: 'R-OVH, Test R-OVH', reason: 'No overhaul of it is recorded to count from' },
      { name: 'R-OVH, Test R-OVH' },
    ]);
    expect(answer.lastAllowed).toBe(3);
    done(await office.administrator.post(`/api/requirements/${requirement.id}/void`, { reason: 'Test' }));
  });

  it.each([
    [
      'a flight that lands before it takes off',
      [{ takeOffAt: onDay(1), landingAt: onDay(1) }],
      'flights[0].landingAt',
    ],
    ['a flight of the past', [{ takeOffAt: onDay(-1), landingAt: onDay(-1, 660) }], 'flights[0].takeOffAt'],
    [
      'two flights at once',
      [
        { takeOffAt: onDay(1), landingAt: onDay(1, 660) },
        { takeOffAt: onDay(1, 659), landingAt: onDay(1, 700) },
      ],
      'flights[1].takeOffAt',
    ],
  ])('refuses %s', async (_what, flights, field) => {
    for (const answer of [
      await office.administrator.post(`${of}/readiness`, { flights }),
      await office.administrator.post(`${of}/planned-flights`, { flights, replace: true }),
    ])
      expect([answer.status, problemOf(answer).fields?.map((each) => each.field)]).toEqual([400, [field]]);
  });

  it('refuses flights and a rate together, and a rate of more minutes than its days have', async () => {
    const rate = { days: 1, minutes: 60, flights: 1, horizonDays: 1 };
    const both = await office.administrator.post(`${of}/readiness`, { flights: daily(1), rate });
    const tooMuch = await office.administrator.post(`${of}/readiness`, { rate: { ...rate, minutes: 1441 } });

    expect(problemOf(both).fields?.[0]?.field).toBe('rate');
    expect(problemOf(tooMuch).fields?.[0]?.field).toBe('rate.minutes');
  });
});

describe('planned flights that are kept', () => {
  it('are what readiness is asked for when nothing else is', async () => {
    expect(await ready()).toMatchObject({ verdict: 'no-flights', flights: [] });
    done(await office.administrator.post(`${of}/planned-flights`, { flights: daily(4), replace: false }));

    expect(await ready()).toMatchObject({ verdict: 'some', lastAllowed: 3 });
  });

  it('are not planned twice over: a flight in the time of another is refused, nothing kept', async () => {
    const flights = [{ takeOffAt: onDay(9), landingAt: onDay(9, 660) }, daily(1)[0]];
    const answer = await office.administrator.post(`${of}/planned-flights`, { flights, replace: false });

    expect(answer.status).toBe(400);
    expect(problemOf(answer).fields).toMatchObject([{ field: 'flights[1].takeOffAt' }]);
    expect(done(await office.administrator.get<Planned>(`${of}/planned-flights`)).flights).toHaveLength(4);
  });

  it('are replaced as a whole by a new plan, and voided one by one with a reason', async () => {
    const planned = done(
      await office.administrator.post<{ replaced: number }>(`${of}/planned-flights`, {
        ...{ flights: daily(2), replace: true },
      }),
    );
    expect(planned.replaced).toBe(4);
    const { flights } = done(await office.administrator.get<Planned>(`${of}/planned-flights`));
    expect(flights.map(({ minutes }) => minutes)).toEqual([60, 60]);

    const gone = await office.administrator.post(`/api/planned-flights/${flights[0]?.id}/void`, {
      reason: 'Cancelled',
    });
    expect(gone.body).toMatchObject({ voided: true, voidReason: 'Cancelled' });
    const again = await office.administrator.post(`/api/planned-flights/${flights[0]?.id}/void`, {
      reason: 'Cancelled',
    });
    expect(problemOf(again).code).toBe('ALREADY_VOIDED');
  });

  it('change no counter: what is due stays as it was', async () => {
    const before = await ready({ flights: daily(5) });
    done(await office.administrator.post(`${of}/planned-flights`, { flights: daily(5), replace: true }));

    expect((await ready({ flights: daily(5) })).lastAllowed).toBe(before.lastAllowed);
  });

  it('follow what is flown: one flight more leaves one fewer', async () => {
    const at = Math.floor(minutesOf(new Date(Date.now() - 3 * 3_600_000)));
    done(
      await logFlights(office.administrator, fleet.airframe.id, [
        { page: 'X1', takeOff: at, landing: at + 60 },
      ]),
    );

    expect((await ready({ flights: daily(5) })).lastAllowed).toBe(2);
  });
});

describe('planned rates', () => {
  const rate = { fromOn: '2025-01-01', days: 7, minutes: 2100, flights: 21, source: 'Summer plan' };

  it('count from their day on, the newest of those begun', async () => {
    done(await office.administrator.post(`${of}/planned-rates`, rate));
    const later = { ...rate, fromOn: dayText(30), flights: 14, source: 'Winter plan' };
    done(await office.administrator.post(`${of}/planned-rates`, later));
    const rates = done(
      await office.administrator.get<{ source: string; inForce: boolean }[]>(`${of}/planned-rates`),
    );

    expect(rates.map(({ source, inForce }) => [source, inForce])).toEqual([
      ['Winter plan', false],
      ['Summer plan', true],
    ]);
  });

  it('have one for each day; a voided one makes room', async () => {
    const second = await office.administrator.post(`${of}/planned-rates`, rate);
    expect([second.status, problemOf(second).code]).toEqual([409, 'ALREADY_EXISTS']);
    const rates = done(
      await office.administrator.get<{ id: string; source: string }[]>(`${of}/planned-rates`),
    );
    const summer = rates.find(({ source }) => source === 'Summer plan')?.id ?? '';
    done(await office.administrator.post(`/api/planned-rates/${summer}/void`, { reason: 'Changed' }));

    expect((await office.administrator.post(`${of}/planned-rates`, rate)).status).toBe(201);
  });

  it('refuses minutes that the days do not have, and less than a minute a flight', async () => {
    for (const minutes of [10_081, 20]) {
      const answer = await office.administrator.post(`${of}/planned-rates`, {
        ...{ ...rate, fromOn: '2025-03-01', minutes },
      });
      expect([answer.status, problemOf(answer).fields?.[0]?.field]).toEqual([400, 'minutes']);
    }
  });
});

describe('the check of a release', () => {
  it('tells as advice what planned flights would make over, and nothing once they are voided', async () => {
    interface Check {
      readonly objections: readonly {
        readonly code: string;
        readonly severity: string;
        readonly reason: string;
      }[];
    }
    done(await office.administrator.post(`${of}/planned-flights`, { flights: daily(5), replace: true }));
    const path = `/api/packages/${fleet.packages[0]?.id}/release-check`;
    const advice = async () =>
      done(await office.administrator.get<Check>(path)).objections.filter(
        ({ code }) => code === 'DUE_WITHIN_PLANNED_FLYING',
      );
    const told = await advice();

    expect(told.map(({ severity }) => severity)).toEqual(['advisory', 'advisory']);
    expect(told[0]?.reason).toContain(`take off ${dayText(3)} 10:00 UTC`);
    const { flights } = done(await office.administrator.get<Planned>(`${of}/planned-flights`));
    for (const { id } of flights)
      done(
        await office.administrator.post(`/api/planned-flights/${id}/void`, { reason: 'No longer planned' }),
      );
    expect(await advice()).toEqual([]);
  });
});
