import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { type FlightToLog, logFlights } from '../support/scenario/acts.js';
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
const refusalOf = async (...flights: FlightToLog[]) =>
  problemOf(await logFlights(office.administrator, airframe.id, flights));
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

describe('engines on the airframe', () => {
  it('count what it flies from their installation, whichever was entered first', async () => {
    await log({ page: 'P1', takeOff: 100, landing: 160 });
    const engine = await onWing(200);
    await log({ page: 'P2', takeOff: 300, landing: 360 });

    const late = await log(
      { page: 'P3', takeOff: 200, landing: 250 },
      { page: 'P0', takeOff: 10, landing: 20 },
    );

    expect(late.late).toBe(true);
    expect((await componentOf(engine.id)).counters).toMatchObject({
      sinceNew: { minutes: 60_110, cycles: { units: 1_002 } },
      sinceInstalled: { minutes: 110, cycles: { units: 2 } },
    });
  });

  it('count less what their position did not run', async () => {
    const engine = await onWing();

    const answer = await log(
      {
        page: 'P1',
        takeOff: 100,
        landing: 160,
        exceptions: [{ positionNumber: 1, kind: 'shut-down', minutes: 20 }],
      },
      { page: 'P2', takeOff: 200, landing: 260, exceptions: [{ positionNumber: 1, kind: 'not-running' }] },
    );

    expect(answer.airframe).toEqual({ minutes: 600_120, flights: 5_002 });
    expect((await componentOf(engine.id)).counters.sinceInstalled).toEqual({
      minutes: 40,
      cycles: { units: 1, denominator: 1 },
    });
    expect((await flightsOf()).rows).toMatchObject([
      { exceptions: [{ positionNumber: 1, kind: 'not-running', minutes: 60, flights: 1 }] },
      { exceptions: [{ minutes: 20, flights: 0 }] },
    ]);
  });

  it('refuse an exception beyond the flight, twice for one position, or at a position that is none', async () => {
    const flight = (...exceptions: NonNullable<FlightToLog['exceptions']>) => ({
      page: 'P1',
      takeOff: 100,
      landing: 160,
      exceptions,
    });

    expect(await refusalOf(flight({ positionNumber: 1, kind: 'shut-down', minutes: 61 }))).toMatchObject({
      code: 'EXCEPTION_BEYOND_FLIGHT',
      fields: [{ field: 'flights[0].exceptions' }],
    });
    expect(
      await refusalOf(
        flight({ positionNumber: 1, kind: 'not-running' }, { positionNumber: 1, kind: 'not-running' }),
      ),
    ).toMatchObject({ code: 'EXCEPTION_TWICE' });
    expect(await refusalOf(flight({ positionNumber: 9, kind: 'not-running' }))).toMatchObject({
      status: 404,
      fields: [{ field: 'flights[0].exceptions[0].positionNumber' }],
    });
  });

  it('refuse a flight that would contain their installation, naming them and the moment', async () => {
    const engine = await onWing(150);

    for (const problem of [
      await refusalOf({ page: 'P1', takeOff: 100, landing: 160 }),
      await refusalOf({ page: 'P0', takeOff: 10, landing: 20 }, { page: 'P1', takeOff: 149, landing: 151 }),
    ]) {
      expect(problem).toMatchObject({ status: 409, code: 'FLIGHT_CONTAINS_BOUNDARY' });
      expect(problem.detail).toContain(engine.serialNumber);
      expect(problem.detail).toContain(instantAt(150));
      expect(problem.fields?.[0]?.field).toMatch(/^flights\[\d\]\.landingAt$/);
    }
    await log({ page: 'P1', takeOff: 100, landing: 150 }, { page: 'P2', takeOff: 150, landing: 160 });
  });

  it('tell which limits a flight newly reaches and passes, and no limit twice', async () => {
    const engine = await onWing();
    const disk = `${engine.serialNumber}-D`;
    await register.post('/api/life-limits', {
      partNumber: 'K-DISK',
      engineModelId: fleet.modelId,
      ratingCode: 'A',
      authorisation: 'limited',
      cycles: 1_002,
      document: 'Manual, chapter 05',
      revision: `tight ${marks}`,
      effectiveOn: '2024-06-01',
    });

    expect((await log({ page: 'P1', takeOff: 100, landing: 160 })).newlyOver).toEqual([]);
    expect((await log({ page: 'P2', takeOff: 200, landing: 260 })).newlyOver).toMatchObject([
      { serialNumber: disk, engineSerial: engine.serialNumber, dimension: 'cycles', remaining: 0 },
    ]);
    expect((await log({ page: 'P3', takeOff: 300, landing: 360 })).newlyOver).toEqual([]);
  });

  it('tell it of late flights and of several at once too', async () => {
    const engine = await onWing();
    await register.post('/api/life-limits', {
      partNumber: 'K-DISK',
      engineModelId: fleet.modelId,
      ratingCode: 'A',
      authorisation: 'limited',
      cycles: 1_002,
      document: 'Manual, chapter 05',
      revision: `tighter ${marks}`,
      effectiveOn: '2024-07-01',
    });

    const answer = await log(
      ...[1, 2, 3].map((page) => ({ page: `P${page}`, takeOff: page * 100, landing: page * 100 + 60 })),
    );

    expect(answer.newlyOver).toMatchObject([{ serialNumber: `${engine.serialNumber}-D`, remaining: -1 }]);
  });
});
