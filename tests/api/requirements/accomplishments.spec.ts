import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { atMinute, logFlights, recordChange } from '../../support/scenario/acts.js';
import { DAY, daily, type InService, putInService } from '../../support/scenario/in-service.js';
import { instantAt } from '../../support/scenario/instants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { accomplish, recordRequirement, type StatusAnswer } from '../../support/scenario/requirements.js';

let office: Office;
let fleet: InService;
let byCycles: string;
let byAirframe: string;
let byPosition: string;

const engine = () => fleet.engines[0]!;
const add = async (code: string, more: object) =>
  done(await recordRequirement(office.administrator, code, more)).id;
const statusOf = async (code: string, path: string): Promise<StatusAnswer> => {
  const rows = done(await office.administrator.get<StatusAnswer[]>(`${path}/requirements`));
  const row = rows.find((each) => each.code === code);
  if (row === undefined) throw new Error(`${code} is not held against ${path}`);
  return row;
};
const ofEngine = (code: string, id = engine().id) => statusOf(code, `/api/components/${id}`);
const ofAirframe = (code: string) => statusOf(code, `/api/airframes/${fleet.airframe.id}`);

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator);
  byCycles = await add('A-CYCLES', { threshold: { cycles: 1200 }, repeat: { cycles: 500, months: 6 } });
  byAirframe = await add('A-AIRFRAME', { anchor: 'airframe', repeat: { cycles: 100 } });
  byPosition = await add('A-POSITION', {
    anchor: 'position',
    positionNumber: 1,
    countedFrom: 'installation',
    threshold: { minutes: 600 },
    repeat: null,
  });
}, 120_000);

afterAll(() => office?.close(), 30_000);

describe('an accomplishment recorded by hand', () => {
  it('begins the repeat at the counters the papers say, and the last one counts', async () => {
    expect(await ofEngine('A-CYCLES')).toMatchObject({ counting: 'threshold', dues: [{ dueAt: 1200 }] });
    const old = { requirementId: byCycles, componentId: engine().id };
    done(await accomplish(office.administrator, { ...old, on: '2024-06-30', minutes: 40_000, cycles: 600 }));
    const last = done(await accomplish(office.administrator, { ...old, on: '2024-08-31', cycles: 900 }));

    expect(await ofEngine('A-CYCLES')).toMatchObject({
      counting: 'repeat',
      lastDone: { on: '2024-08-31' },
      dues: [
        { dimension: 'cycles', dueAt: 1400, remaining: 397 },
        { dimension: 'months', dueOn: '2025-02-28' },
      ],
      status: 'over',
      governing: 'months',
    });

    done(
      await office.administrator.post(`/api/accomplishments/${last.id}/void`, { reason: 'Another engine' }),
    );
    expect((await ofEngine('A-CYCLES')).dues[0]).toMatchObject({ dueAt: 1100 });
    const again = await office.administrator.post(`/api/accomplishments/${last.id}/void`, {
      reason: 'Again',
    });
    expect([again.status, problemOf(again).code]).toEqual([409, 'ALREADY_VOIDED']);
  });

  it('takes the counters the records say where the papers say none, and moves with a late flight', async () => {
    const at = instantAt(2 * DAY);
    done(
      await accomplish(office.administrator, {
        requirementId: byAirframe,
        airframeId: fleet.airframe.id,
        at,
      }),
    );
    // Two of three flights had landed: done at 5,002.
    expect(await ofAirframe('A-AIRFRAME')).toMatchObject({
      lastDone: { on: '2025-01-03' },
      dues: [{ dueAt: 5102, remaining: 99 }],
    });

    done(
      await logFlights(office.administrator, fleet.airframe.id, [
        { page: 'L1', takeOff: DAY + 100, landing: DAY + 200 },
      ]),
    );
    expect((await ofAirframe('A-AIRFRAME')).dues[0]).toMatchObject({ dueAt: 5103, remaining: 99 });
  });

  it('closes what is to be met once, until the position has another engine', async () => {
    expect((await ofAirframe('A-POSITION')).dues[0]?.remaining).toBe(600 - 460);
    const { positionId } = await ofAirframe('A-POSITION');
    done(
      await accomplish(office.administrator, {
        requirementId: byPosition,
        positionId,
        at: instantAt(3 * DAY),
      }),
    );
    expect(await ofAirframe('A-POSITION')).toMatchObject({ status: 'closed', dues: [] });

    done(
      await recordChange(office.administrator, {
        airframeId: fleet.airframe.id,
        positionNumber: 1,
        slot: 'engine',
        outgoingSerial: 'ZZ-E1',
        incomingSerial: 'ZZ-E3',
        boundary: atMinute(4 * DAY),
      }),
    );
    expect(await ofAirframe('A-POSITION')).toMatchObject({
      counting: 'threshold',
      dues: [{ remaining: 600 }],
    });
  });

  it('is told with its evidence, voided ones too', async () => {
    const { accomplishments } = done(
      await office.administrator.get<{
        accomplishments: { on: string; evidence: string; voided: boolean }[];
      }>(`/api/requirements/${byCycles}`),
    );
    expect(accomplishments.map(({ on, evidence, voided }) => [on, evidence, voided])).toEqual([
      ['2024-08-31', 'Work card 1', true],
      ['2024-06-30', 'Work card 1', false],
    ]);
  });

  it('on an overhaul counts anew from it, and the time since new runs on', async () => {
    await add('A-OVERHAUL', { countedFrom: 'overhaul', threshold: { minutes: 3000 }, repeat: null });
    const id = fleet.engines[1]!.id;
    done(
      await office.administrator.post('/api/resets', {
        componentId: id,
        kind: 'overhaul',
        at: instantAt(3 * DAY),
        evidence: 'Shop report 7',
      }),
    );
    // 1,000:00 hours before, four flights: 460 minutes by then.
    expect((await ofEngine('A-OVERHAUL', id)).dues[0]).toMatchObject({
      dueAt: 60_000 + 460 + 3000,
      remaining: 3000,
    });
    done(await logFlights(office.administrator, fleet.airframe.id, daily(1, { from: 5 })));
    expect((await ofEngine('A-OVERHAUL', id)).dues[0]).toMatchObject({ dueAt: 63_460, remaining: 2880 });
  });
});

describe('an accomplishment is refused', () => {
  const tomorrow = () => `${new Date(Date.now() + 2 * 86_400_000).toISOString().slice(0, 16)}Z`;

  it.each([
    ['without its evidence', { on: '2025-01-02', evidence: '' }, 400, 'evidence'],
    ['without a day', {}, 400, 'on'],
    ['with a day and an instant', { on: '2025-01-02', at: '2025-01-02T10:00Z' }, 400, 'on'],
    ['in the future', 'tomorrow', 422, 'at'],
    ['at more hours than it has run', { on: '2025-01-02', minutes: 90_000 }, 422, 'minutes'],
    ['at more cycles than it has run', { on: '2025-01-02', cycles: 9000 }, 422, 'cycles'],
    ['at less than nothing', { on: '2025-01-02', cycles: -1 }, 400, 'cycles'],
  ])('%s', async (_, more, status, field) => {
    const answer = await accomplish(office.administrator, {
      requirementId: byCycles,
      componentId: engine().id,
      ...(more === 'tomorrow' ? { at: tomorrow() } : (more as object)),
    });

    expect([answer.status, problemOf(answer).fields?.[0]?.field]).toEqual([status, field]);
  });

  it('on two things or on none, on what is not there, and on what the requirement is not for', async () => {
    const on = { requirementId: byCycles, on: '2025-01-02' };
    const nobody = '00000000-0000-7000-8000-000000000000';
    const answers = [
      await accomplish(office.administrator, on),
      await accomplish(office.administrator, {
        ...on,
        componentId: engine().id,
        airframeId: fleet.airframe.id,
      }),
      await accomplish(office.administrator, { ...on, componentId: nobody }),
      await accomplish(office.administrator, { ...on, airframeId: fleet.airframe.id }),
      await accomplish(office.administrator, { ...on, requirementId: nobody, componentId: engine().id }),
    ];

    expect(answers.map((answer) => [answer.status, problemOf(answer).fields?.[0]?.field])).toEqual([
      [400, 'componentId'],
      [400, 'componentId'],
      [404, 'componentId'],
      [422, 'requirementId'],
      [404, 'requirementId'],
    ]);
  });

  it('twice at one instant', async () => {
    const same = { requirementId: byCycles, componentId: fleet.engines[3]!.id, at: '2025-01-05T10:00Z' };
    done(await accomplish(office.administrator, same));

    expect((await accomplish(office.administrator, same)).status).toBe(409);
  });
});

describe('what is kept of requirements', () => {
  it('is what the records say, computed anew', async () => {
    const run = promisify(execFile)(process.execPath, ['apps/api/dist/rebuild.js'], {
      env: { ...process.env, DATABASE_URL: office.database.appUrl },
    });
    const { stdout } = await run.catch((error: { stdout: string; stderr: string }) => ({
      stdout: `failed: ${error.stdout}${error.stderr}`,
    }));

    expect(stdout).toMatch(/due points of airframes and positions: [1-9]/);
    expect(stdout).not.toMatch(/differ|failed/);
  });
});
