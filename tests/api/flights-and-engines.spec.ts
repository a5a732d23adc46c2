import { describe, expect, it } from '@jest/globals';
import { flightDesk } from '../support/logbook/flight-desk.js';
import type { FlightToLog } from '../support/scenario/acts.js';
import { instantAt } from '../support/scenario/instants.js';

const { desk, log, refusalOf, flightsOf, componentOf, onWing } = flightDesk();

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
    await desk.register.post('/api/life-limits', {
      partNumber: 'K-DISK',
      engineModelId: desk.fleet.modelId,
      ratingCode: 'A',
      authorisation: 'limited',
      cycles: 1_002,
      document: 'Manual, chapter 05',
      revision: `tight ${desk.marks}`,
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
    await desk.register.post('/api/life-limits', {
      partNumber: 'K-DISK',
      engineModelId: desk.fleet.modelId,
      ratingCode: 'A',
      authorisation: 'limited',
      cycles: 1_002,
      document: 'Manual, chapter 05',
      revision: `tighter ${desk.marks}`,
      effectiveOn: '2024-07-01',
    });

    const answer = await log(
      ...[1, 2, 3].map((page) => ({ page: `P${page}`, takeOff: page * 100, landing: page * 100 + 60 })),
    );

    expect(answer.newlyOver).toMatchObject([{ serialNumber: `${engine.serialNumber}-D`, remaining: -1 }]);
  });
});
