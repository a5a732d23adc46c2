import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { atMinute, logFlights, recordChange } from '../../support/scenario/acts.js';
import { makeFleet } from '../../support/scenario/fleet.js';
import { instantAt } from '../../support/scenario/instants.js';
import { brokenInvariants } from '../../support/scenario/invariants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import {
  Register,
  type RegisteredAirframe,
  type RegisteredComponent,
} from '../../support/scenario/register.js';

interface Counts {
  readonly minutes: number;
  readonly starts: number;
}

interface Balance {
  readonly balanced: boolean;
  readonly rows: readonly {
    readonly registration: string;
    readonly positionNumber: number;
    readonly runs: Counts;
  }[];
  readonly cells: readonly {
    readonly name: string;
    readonly ran: Counts;
    readonly taken: Counts;
    readonly notTaken: Counts;
  }[];
}

interface RunAnswer {
  readonly run: { readonly id: string; readonly countedMinutes: number; readonly runMinutes: number };
  readonly late: boolean;
}

let office: Office;
let register: Register;
let modelId: string;
let engines: RegisteredComponent[];
let airframe: RegisteredAirframe;
let cell: { readonly id: string; readonly slotId: string };
let round = 0;
const fleets: RegisteredAirframe[] = [];

beforeAll(async () => {
  office = await openOffice();
  register = new Register(office.administrator);
  const fleet = await makeFleet(register, { mark: 'ZZ', airframes: 6, engines: 2 });
  modelId = fleet.modelId;
  fleets.push(...fleet.airframes);
}, 120_000);

beforeEach(async () => {
  round += 1;
  const next = fleets.shift();
  if (next === undefined) throw new Error('no airframe left');
  airframe = next;
  engines = [];
  for (const number of [1, 2]) {
    const engine = await register.component({
      ...{ kind: 'engine', serialNumber: `R${round}-E${number}`, engineModelId: modelId },
      slots: [{ kind: 'part', name: 'Hub', lifeLimited: false }],
    });
    await register.opening({ componentId: engine.id }, [{ ratingCode: 'A', minutes: 6_000, cycles: 100 }]);
    await register.rating(engine.id, 'A');
    await register.place(engine.id, { locationName: 'Store' });
    engines.push(engine);
  }
  cell = await register.post('/api/test-cells', { name: `Cell ${round}` });
}, 60_000);
afterAll(() => office?.close(), 30_000);

const change = (off: number | null, on: number | null, minute: number) =>
  recordChange(office.administrator, {
    ...{ airframeId: airframe.id, positionNumber: 1, slot: 'engine', boundary: atMinute(minute) },
    outgoingSerial: off === null ? null : `R${round}-E${off}`,
    incomingSerial: on === null ? null : `R${round}-E${on}`,
  });

const span = (from: number, to: number) => ({ startedAt: instantAt(from), endedAt: instantAt(to) });
const TOLD = { starts: 1, purpose: 'Leak check', source: 'Work order 1' };
const run = (from: number, to: number, more: object = {}) =>
  office.administrator.post<RunAnswer>(`/api/airframes/${airframe.id}/ground-runs`, {
    ...{ positionNumber: 1, ...span(from, to), ...TOLD, ...more },
  });
const cellRun = (from: number, to: number, more: object = {}) =>
  office.administrator.post<RunAnswer>(`/api/test-cells/${cell.id}/runs`, {
    ...span(from, to),
    ...TOLD,
    ...more,
  });

async function sinceNew(index: number): Promise<readonly (number | null)[]> {
  const { counters } = done(
    await office.administrator.get<{
      counters: {
        sinceNew: { minutes: number | null; cycles: { units: number; denominator: number } | null };
      };
    }>(`/api/components/${engines[index]?.id}`),
  );
  const { minutes, cycles } = counters.sinceNew;
  return [minutes, cycles === null ? null : cycles.units / cycles.denominator];
}
const balance = async () => done(await office.administrator.get<Balance>('/api/trial-balance'));

describe('a ground run', () => {
  it('counts nothing unless it is said, and then for the engine that was there', async () => {
    done(await change(null, 1, 100));
    done(await run(200, 230));
    expect(await sinceNew(0)).toEqual([6_000, 100]);
    const { run: counted } = done(await run(300, 345, { runMinutes: 40, countedMinutes: 12 }));
    expect(counted).toMatchObject({ runMinutes: 40, countedMinutes: 12 });
    expect(await sinceNew(0)).toEqual([6_012, 100]);
    expect(await sinceNew(1)).toEqual([6_000, 100]);

    const { balanced, rows } = await balance();
    expect(balanced).toBe(true);
    expect(
      rows.find((row) => row.registration === airframe.registration && row.positionNumber === 1)?.runs,
    ).toMatchObject({ minutes: 12, starts: 2 });
    expect(await brokenInvariants(office.database.adminUrl)).toEqual({});
  });

  it('that is entered late counts for the engine that ran, not for the one there now, and goes again when voided', async () => {
    done(await change(null, 1, 100));
    done(await change(1, 2, 1_000));
    const late = done(await run(200, 230, { countedMinutes: 30 }));
    expect(late.late).toBe(true);
    expect([await sinceNew(0), await sinceNew(1)]).toEqual([
      [6_030, 100],
      [6_000, 100],
    ]);
    const now = done(await run(1_100, 1_120, { countedMinutes: 20 }));
    expect(now.late).toBe(false);
    expect(await sinceNew(1)).toEqual([6_020, 100]);
    expect(await brokenInvariants(office.database.adminUrl)).toEqual({});

    const voided = (id: string) =>
      office.administrator.post(`/api/ground-runs/${id}/void`, { reason: 'Twice' });
    expect(done(await voided(late.run.id))).toMatchObject({ run: { voided: true, voidReason: 'Twice' } });
    expect([await sinceNew(0), await sinceNew(1)]).toEqual([
      [6_000, 100],
      [6_020, 100],
    ]);
    expect(problemOf(await voided(late.run.id))).toMatchObject({ status: 409, code: 'ALREADY_VOIDED' });
    expect((await balance()).balanced).toBe(true);
    expect(await brokenInvariants(office.database.adminUrl)).toEqual({});
  });

  it('cannot have been while the airframe flew, another run was under way, or no engine was there', async () => {
    done(await change(null, 1, 100));
    done(await logFlights(office.administrator, airframe.id, [{ page: '1', takeOff: 300, landing: 400 }]));
    done(await run(420, 440));
    const refused = async (answer: ReturnType<typeof run>) => {
      const { status, code, fields } = problemOf(await answer);
      return [status, code, fields?.[0]?.field];
    };
    expect(await refused(run(390, 410))).toEqual([422, 'REFUSED_BY_FACTS', 'startedAt']);
    expect(await refused(run(435, 450))).toEqual([422, 'REFUSED_BY_FACTS', 'startedAt']);
    expect(await refused(run(50, 90))).toEqual([422, 'REFUSED_BY_FACTS', 'startedAt']);
    expect(await refused(run(90, 110))).toEqual([422, 'REFUSED_BY_FACTS', 'startedAt']);
    expect(await refused(run(500, 500))).toEqual([422, 'RUN_NOT_AFTER_START', 'endedAt']);
    expect(await refused(run(500, 560, { runMinutes: 61 }))).toEqual([422, 'RUN_BEYOND_SPAN', 'runMinutes']);
    expect(await refused(run(500, 560, { runMinutes: 20, countedMinutes: 21 }))).toEqual([
      422,
      'COUNTED_BEYOND_RUN',
      'countedMinutes',
    ]);
    expect(await refused(run(500, 2_000))).toEqual([422, 'RUN_TOO_LONG', 'endedAt']);
    expect(await refused(run(5_000_000, 5_000_010))).toEqual([422, 'IN_THE_FUTURE', 'endedAt']);
    expect(await refused(run(500, 560, { positionNumber: 8 }))).toEqual([404, 'NOT_FOUND', 'positionNumber']);
    expect(await refused(run(500, 560, { starts: -1 }))).toEqual([400, 'INVALID_FIELDS', 'starts']);
    // Equal instants are allowed: it started as it landed.
    done(await run(400, 410));
  });

  it('lets neither a flight nor a change into it', async () => {
    done(await change(null, 1, 100));
    done(await run(420, 440));
    const flown = await logFlights(office.administrator, airframe.id, [
      { page: '1', takeOff: 430, landing: 500 },
    ]);
    expect(problemOf(flown)).toMatchObject({ status: 422, code: 'REFUSED_BY_FACTS' });
    expect(problemOf(await change(1, 2, 430))).toMatchObject({ status: 422, code: 'REFUSED_BY_FACTS' });
    done(await change(1, 2, 440));
    done(await logFlights(office.administrator, airframe.id, [{ page: '1', takeOff: 440, landing: 500 }]));
  });
});

describe('a run in a test cell', () => {
  const placed = (more: object, minute: number) =>
    office.administrator.post<{ id: string }>('/api/placements', {
      ...{ componentId: engines[0]?.id, ...more },
      boundary: { kind: 'instant', at: instantAt(minute) },
    });

  it('reaches the engine in it and what hangs in that, and no other', async () => {
    const rule = {
      perFlight: 2,
      perLanding: 0,
      perTouchAndGo: 0,
      perStart: 1,
      perAbortedTakeOff: 0,
      denominator: 2,
    };
    await register.post(`/api/engine-models/${modelId}/cycle-rules`, {
      ...{ ...rule, source: 'Manual', revision: 'T1', effectiveOn: '2025-01-01' },
    });
    done(await placed({ slotId: cell.slotId }, 1_000));
    done(await cellRun(1_100, 1_200, { countedMinutes: 90, starts: 3 }));
    expect(await sinceNew(0)).toEqual([6_090, 101.5]);
    done(await placed({ locationName: 'Store' }, 1_300));
    done(await change(null, 1, 2_000));
    expect(await sinceNew(0)).toEqual([6_090, 101.5]);
    expect(await sinceNew(1)).toEqual([6_000, 100]);

    const { balanced, cells } = await balance();
    expect(balanced).toBe(true);
    expect(cells.find(({ name }) => name === `Cell ${round}`)).toMatchObject({
      ran: { minutes: 90, starts: 3 },
      taken: { minutes: 90, starts: 3 },
      notTaken: { minutes: 0, starts: 0 },
    });
    // After the engine is gone, a run of the time it was there is still its own.
    const late = done(await cellRun(1_210, 1_230, { countedMinutes: 20, starts: 1 }));
    expect(late.late).toBe(true);
    expect(await sinceNew(0)).toEqual([6_110, 102]);
    expect(await brokenInvariants(office.database.adminUrl)).toEqual({});
  });

  it('cannot have been without an engine there, and holds one engine at a time', async () => {
    expect(problemOf(await cellRun(100, 200))).toMatchObject({
      status: 422,
      code: 'REFUSED_BY_FACTS',
      fields: [{ field: 'startedAt' }],
    });
    done(await placed({ slotId: cell.slotId }, 1_000));
    expect(
      problemOf(await placed({ componentId: engines[1]?.id, slotId: cell.slotId }, 1_100)),
    ).toMatchObject({
      status: 409,
    });
    const same = await office.administrator.post('/api/test-cells', { name: `Cell ${round}` });
    expect(problemOf(same)).toMatchObject({
      status: 409,
      code: 'ALREADY_EXISTS',
      fields: [{ field: 'name' }],
    });
    const found = done(
      await office.administrator.get<readonly { id: string; engine: { serialNumber: string } | null }[]>(
        '/api/test-cells',
      ),
    );
    expect(found.find(({ id }) => id === cell.id)?.engine?.serialNumber).toBe(`R${round}-E1`);
  });
});
