import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { CounterDesk, unitFleet } from '../../support/counting/units.js';
import { withClient } from '../../support/database.js';
import { atMinute, logFlights, recordChange } from '../../support/scenario/acts.js';
import { makeFleet } from '../../support/scenario/fleet.js';
import { instantAt } from '../../support/scenario/instants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done } from '../../support/scenario/problem.js';
import {
  Register,
  type RegisteredAirframe,
  type RegisteredComponent,
} from '../../support/scenario/register.js';
import { accomplish, recordRequirement } from '../../support/scenario/requirements.js';

interface Amount {
  readonly minutes: number | null;
  readonly cycles: { readonly units: number; readonly denominator: number } | null;
}

interface Counter {
  readonly basis: string;
  readonly total: Amount;
  readonly addends: readonly (Amount & { readonly kind: string })[];
}

let office: Office;
let register: Register;
let modelId: string;
let airframe: RegisteredAirframe;
let engine: RegisteredComponent;
let cell: { readonly id: string; readonly slotId: string };
let round = 0;
const airframes: RegisteredAirframe[] = [];

beforeAll(async () => {
  office = await openOffice();
  register = new Register(office.administrator);
  const fleet = await makeFleet(register, { mark: 'ZZ', airframes: 3, engines: 1 });
  modelId = fleet.modelId;
  airframes.push(...fleet.airframes);
}, 120_000);

beforeEach(async () => {
  const next = airframes[round];
  if (next === undefined) return;
  airframe = next;
  round += 1;
  engine = await register.component({
    kind: 'engine',
    serialNumber: `L${round}`,
    engineModelId: modelId,
  });
  await register.opening({ componentId: engine.id }, [{ ratingCode: 'A', minutes: 6_000, cycles: 100 }]);
  await register.rating(engine.id, 'A');
  await register.place(engine.id, { locationName: 'Store' });
  cell = await register.post('/api/test-cells', { name: `Cell ${round}` });
}, 60_000);
afterAll(() => office?.close(), 30_000);

const installed = async (minute: number) =>
  done(
    await recordChange(office.administrator, {
      ...{ airframeId: airframe.id, positionNumber: 1, slot: 'engine', boundary: atMinute(minute) },
      ...{ outgoingSerial: null, incomingSerial: `L${round}` },
    }),
  );
const placed = async (where: object, minute: number) =>
  done(
    await office.administrator.post('/api/placements', {
      ...{ componentId: engine.id, ...where },
      boundary: { kind: 'instant', at: instantAt(minute) },
    }),
  );
const run = async (path: string, from: number, to: number, more: object) =>
  done(
    await office.administrator.post<{ readonly run: { readonly id: string }; readonly late: boolean }>(path, {
      ...{ startedAt: instantAt(from), endedAt: instantAt(to), starts: 1 },
      ...{ purpose: 'Leak check', source: 'Work order 1', ...more },
    }),
  );
const groundRun = (from: number, to: number, countedMinutes: number) =>
  run(`/api/airframes/${airframe.id}/ground-runs`, from, to, { positionNumber: 1, countedMinutes });
const cellRun = (from: number, to: number, countedMinutes: number) =>
  run(`/api/test-cells/${cell.id}/runs`, from, to, { countedMinutes });

/** A requirement of 600 minutes that was met on the engine. */
async function metAt(minute: number): Promise<string> {
  const { id } = done(
    await recordRequirement(office.administrator, `L-${round}`, {
      ...{ engineModelId: modelId, repeat: { minutes: 600 }, countedFrom: 'accomplishment' },
    }),
  );
  const met = { requirementId: id, componentId: engine.id, at: instantAt(minute) };
  done(await accomplish(office.administrator, met));
  return id;
}

/** Where on its clock a requirement is due on the engine. */
const dueOnClock = (requirementId: string) =>
  withClient(office.database.adminUrl, async (client) => {
    const { rows } = await client.query<{ due_at: string }>(
      'SELECT due_at FROM due_point WHERE requirement_id = $1 AND component_id = $2',
      [requirementId, engine.id],
    );
    return rows.map((row) => Number(row.due_at));
  });

/** What its lines add up to, beside what is told, for every counter at one moment; and of what kinds they were. */
async function sums(id: string, minute?: number) {
  const at = minute === undefined ? '' : `?at=${instantAt(minute)}`;
  const { counters } = done(
    await office.administrator.get<{ readonly counters: readonly Counter[] }>(
      `/api/components/${id}/counters${at}`,
    ),
  );
  const cyclesOf = ({ cycles }: Amount) => (cycles === null ? Number.NaN : cycles.units / cycles.denominator);
  return counters.map(({ basis, total, addends }) => ({
    basis,
    told: [total.minutes, cyclesOf(total)],
    added: [
      addends.reduce((sum, line) => sum + (line.minutes ?? Number.NaN), 0),
      addends.reduce((sum, line) => sum + cyclesOf(line), 0),
    ],
  }));
}

describe('a run that is entered after a duty was met', () => {
  it('at a position moves what is due next, and back when it is voided', async () => {
    await installed(100);
    const requirementId = await metAt(1_000);
    expect(await dueOnClock(requirementId)).toEqual([600]);

    const before = await groundRun(200, 230, 30);

    expect(before.late).toBe(true);
    // It was met with 30 minutes more on the clock.
    expect(await dueOnClock(requirementId)).toEqual([630]);
    const reason = 'Another engine';
    done(await office.administrator.post(`/api/ground-runs/${before.run.id}/void`, { reason }));
    expect(await dueOnClock(requirementId)).toEqual([600]);
  });

  it('in a test cell moves it as well', async () => {
    await placed({ slotId: cell.slotId }, 1_000);
    const requirementId = await metAt(2_000);

    await cellRun(1_100, 1_200, 90);

    expect(await dueOnClock(requirementId)).toEqual([690]);
  });
});

describe('the lines of a counter', () => {
  it('add up to it, with runs in a test cell, on the ground and flights between them', async () => {
    await placed({ slotId: cell.slotId }, 1_000);
    await cellRun(1_100, 1_200, 90);
    await placed({ locationName: 'Store' }, 1_300);
    await installed(2_000);
    await groundRun(2_100, 2_130, 12);
    done(
      await logFlights(office.administrator, airframe.id, [{ page: '1', takeOff: 2_200, landing: 2_260 }]),
    );

    const now = await sums(engine.id);
    expect(now.find(({ basis }) => basis === 'new')?.told).toEqual([6_000 + 90 + 12 + 60, 101]);
    for (const minute of [1_000, 1_199, 1_200, 1_300, 2_000, 2_130, 2_260, 3_000])
      for (const { told, added } of await sums(engine.id, minute)) expect(added).toEqual(told);
    for (const { told, added } of now) expect(added).toEqual(told);
  });

  it('add up to it for a unit that counts by its own counter, and for what hangs in it', async () => {
    const day = 1_440;
    const fleet = await unitFleet(office.administrator, 'ZL');
    const desk = new CounterDesk(office.administrator);
    const reading = { minutes: 5_000, starts: 100 };
    done(await desk.change(fleet.airframe.id, day, { on: { serial: 'ZL-U1', reading } }));
    done(await desk.read(fleet.units[0].id, 3 * day, { minutes: 5_600, starts: 104 }));

    const found = [...(await sums(fleet.units[0].id)), ...(await sums(fleet.wheel.id))];
    expect(found.filter(({ basis }) => basis === 'new').map(({ told }) => told)).toEqual([
      [60_600, 2_004],
      [30_600, 804],
    ]);
    for (const { told, added } of found) expect(added).toEqual(told);
  });
});
