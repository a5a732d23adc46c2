import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HttpClient } from '../support/http-client.js';
import { employ, type Office, openOffice } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';
import { storedRows } from '../support/scenario/stored-rows.js';

interface Calibration {
  readonly id: string;
  readonly certificate: string;
  readonly governs: boolean;
  readonly voided: boolean;
  readonly voidReason: string | null;
}

interface Tool {
  readonly id: string;
  readonly serialNumber: string;
  readonly rangeLow: string | null;
  readonly rangeHigh: string | null;
  readonly deviation: string | null;
  readonly status: string;
  readonly dueOn: string | null;
  readonly version: number;
  readonly calibrations: readonly Calibration[];
  readonly uses: readonly unknown[];
  readonly usesInAll: number;
}

let office: Office;
let planner: HttpClient;

beforeAll(async () => {
  office = await openOffice();
  planner = await employ(office, { signInName: 'plan', fullName: 'Pia Lanner', roles: ['planner'] });
}, 120_000);

afterAll(() => office?.close(), 30_000);

const wrench = (serialNumber: string) => ({
  serialNumber,
  description: 'Torque wrench, 1/2 inch drive',
  kind: 'torque-wrench',
  unit: 'N·m',
  rangeLow: '20',
  rangeHigh: '112,5',
  deviation: '4',
});

const add = async (serialNumber: string): Promise<Tool> =>
  done(await planner.post<Tool>('/api/tools', wrench(serialNumber)));

/** The day so many days from today, in UTC. */
const day = (fromToday: number): string =>
  new Date(Date.now() + fromToday * 86_400_000).toISOString().slice(0, 10);

const calibrate = (id: string, calibratedOn: string, dueOn: string, certificate = 'C-1') =>
  planner.post<Tool>(`/api/tools/${id}/calibrations`, { calibratedOn, dueOn, certificate });

const faultsOf = (answer: Parameters<typeof problemOf>[0]) =>
  (problemOf(answer).fields ?? []).map(({ field, reason, fix }) => `${field}: ${reason} ${fix}`);

describe('a tool', () => {
  it('is registered with its range and deviation as typed, and was never calibrated', async () => {
    const made = await add('TW-014');

    expect(made).toMatchObject({
      ...{ serialNumber: 'TW-014', rangeLow: '20', rangeHigh: '112,5', deviation: '4', version: 1 },
      ...{ status: 'never', dueOn: null, calibrations: [], uses: [], usesInAll: 0 },
    });
    expect(await planner.get(`/api/tools/${made.id}`)).toMatchObject({ status: 200, body: made });
  });

  it('is one tool for each serial number', async () => {
    await add('TW-015');
    const again = await planner.post('/api/tools', wrench('TW-015'));

    expect([again.status, problemOf(again).code]).toEqual([409, 'ALREADY_EXISTS']);
    expect(faultsOf(again)).toEqual([
      'serialNumber: There is already a tool with the serial number "TW-015". Use the one that is there, or enter another.',
    ]);
  });

  it.each([
    [
      'a wrench in no unit of torque',
      { unit: 'bar' },
      'unit: A torque wrench shows one of these units of torque. Choose N·m, lbf·ft, lbf·in or kgf·m.',
    ],
    [
      'half a range',
      { rangeHigh: null },
      'rangeHigh: A range has a lowest and a highest value. Enter both, or leave both empty.',
    ],
    [
      'a range upside down, by its numbers and not by its letters',
      { rangeLow: '100', rangeHigh: '20.5' },
      'rangeHigh: The highest value, 20.5, lies below the lowest, 100. Enter 100 or more, or correct the lowest.',
    ],
    [
      'a range that is no number',
      { rangeLow: '1e2' },
      'rangeLow: It is not a number that can be read. Enter digits with at most one decimal mark, such as 20 or 12.5.',
    ],
    [
      'a deviation of all or nothing',
      { deviation: '100' },
      'deviation: A deviation is more than 0 and less than 100 percent. Enter the percentage of its certificate, or leave it empty.',
    ],
    [
      'another kind of thing',
      { kind: 'hammer' },
      'kind: It must be torque-wrench, gauge or other. Choose what kind of tool it is.',
    ],
    [
      'a gauge with a range and no unit',
      { kind: 'gauge', unit: null },
      'unit: A range needs its unit. Enter the unit, such as bar or mm.',
    ],
  ])('is refused as %s, and nothing is kept', async (_what, wrong, told) => {
    const before = await storedRows(office.database.adminUrl);
    const answer = await planner.post('/api/tools', { ...wrench('TW-WRONG'), ...wrong });

    expect([answer.status, problemOf(answer).code]).toEqual([400, 'INVALID_FIELDS']);
    expect(faultsOf(answer)).toEqual([told]);
    expect(await storedRows(office.database.adminUrl)).toEqual(before);
  });

  it('may be a gauge in any unit, from the same low to the same high', async () => {
    const gauge = { serialNumber: 'PG-1', description: 'Gauge block', kind: 'gauge', unit: 'mm' };

    const made = await planner.post<Tool>('/api/tools', { ...gauge, rangeLow: '10', rangeHigh: '10.0' });

    expect([made.status, made.body.rangeHigh]).toEqual([201, '10.0']);
  });

  it('is kept by planner, records office and administrator, and read by everyone', async () => {
    const { id } = await add('TW-016');
    const people = await Promise.all(
      ['technician', 'inspector', 'certifying-staff', 'auditor', 'records'].map((role) =>
        employ(office, { signInName: `tools.${role}`, fullName: `Tools ${role}`, roles: [role] }),
      ),
    );
    const made = await Promise.all(
      people.map((person, place) => person.post('/api/tools', wrench(`TW-2${place}`))),
    );
    const read = await Promise.all(people.map((person) => person.get(`/api/tools/${id}`)));

    expect(made.map(({ status }) => status)).toEqual([403, 403, 403, 403, 201]);
    expect(read.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200]);
  });
});

describe('a calibration', () => {
  it.each([
    ['in date', 31, 'in-date'],
    ['due soon', 30, 'soon'],
    ['good through the day it is due', 0, 'soon'],
    ['out of date the day after', -1, 'out-of-date'],
  ])('makes a tool %s', async (_what, due, status) => {
    const { id } = await add(`TW-due${due}`);
    const tool = done(await calibrate(id, day(-300), day(due)));

    expect([tool.status, tool.dueOn, tool.version]).toEqual([status, day(due), 2]);
    const listed = done(await planner.get<readonly Tool[]>('/api/tools')).find((row) => row.id === id);
    expect(listed?.status).toBe(status);
  });

  it('counts by the newest, and the older one again when that is voided, once', async () => {
    const { id } = await add('TW-030');
    done(await calibrate(id, day(-100), day(200), 'C-old'));
    const short = done(await calibrate(id, day(-10), day(-1), 'C-new'));
    const wrong = short.calibrations[0]?.id;
    const voided = done(
      await planner.post<Tool>(`/api/tool-calibrations/${wrong}/void`, { reason: 'Misread' }),
    );
    const again = await planner.post(`/api/tool-calibrations/${wrong}/void`, { reason: 'Misread' });

    expect(short.status).toBe('out-of-date');
    expect([voided.status, voided.version]).toEqual(['in-date', 4]);
    expect(voided.calibrations).toEqual([
      expect.objectContaining({ certificate: 'C-new', governs: false, voided: true, voidReason: 'Misread' }),
      expect.objectContaining({ certificate: 'C-old', governs: true, voided: false }),
    ]);
    expect([again.status, problemOf(again).code]).toEqual([409, 'ALREADY_VOIDED']);
  });

  it('is refused before it was made, and due before it was made', async () => {
    const { id } = await add('TW-031');
    const early = await calibrate(id, day(1), day(300));
    const backwards = await calibrate(id, '2025-06-30', '2025-06-29');

    expect([early.status, faultsOf(early)]).toEqual([
      400,
      [
        `calibratedOn: ${day(1)} is in the future; today is ${day(0)} in UTC. Enter the day of the certificate.`,
      ],
    ]);
    expect([backwards.status, faultsOf(backwards)]).toEqual([
      400,
      [
        'dueOn: It would be due on 2025-06-29, before it was made on 2025-06-30. Enter 2025-06-30 or a later day.',
      ],
    ]);
  });

  it('is refused twice, for no tool, and on no day', async () => {
    const { id } = await add('TW-032');
    done(await calibrate(id, '2025-06-30', '2025-06-30'));
    const twice = await calibrate(id, '2025-06-30', '2026-06-30');
    const nowhere = await calibrate('01a20000-0000-7000-8000-000000000000', '2025-06-30', '2026-06-30');
    const noDay = await calibrate(id, '2025-06-31', '2026-06-30');

    expect([twice.status, problemOf(twice).fields?.[0]?.field]).toEqual([409, 'certificate']);
    expect([nowhere.status, problemOf(nowhere).code]).toEqual([404, 'NOT_FOUND']);
    expect(faultsOf(noDay)).toEqual([
      'calibratedOn: There is no such day. Enter it as YYYY-MM-DD, such as 2026-03-04.',
    ]);
  });

  it('is recorded by every one of several at once', async () => {
    const { id } = await add('TW-033');
    const answers = await Promise.all(
      [1, 2, 3, 4].map((place) => calibrate(id, `2025-0${place}-01`, '2026-06-30', `C-${place}`)),
    );

    expect(answers.map(({ status }) => status)).toEqual([201, 201, 201, 201]);
    expect(done(await planner.get<Tool>(`/api/tools/${id}`))).toMatchObject({
      version: 5,
      calibrations: [4, 3, 2, 1].map((place) => ({ certificate: `C-${place}` })),
    });
  });
});
