import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { logFlights } from '../../support/scenario/acts.js';
import { type InService, putInService } from '../../support/scenario/in-service.js';
import { minutesOf } from '../../support/scenario/instants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done } from '../../support/scenario/problem.js';
import { accomplish, recordRequirement, type StatusAnswer } from '../../support/scenario/requirements.js';

interface Row {
  readonly id: string;
  readonly kind: string;
  readonly requirement: { readonly code: string } | null;
  readonly serialNumber: string | null;
  readonly airframe: string | null;
  readonly positionNumber: number | null;
  readonly status: string;
  readonly dimension: string;
  readonly remainingCycles: number | null;
  readonly remainingDays: number | null;
  readonly dueOn: string | null;
  readonly dues: readonly { readonly dimension: string; readonly remaining: number }[];
  readonly projectedOn: string | null;
  readonly basis: string;
  readonly reason: string | null;
}
interface Page {
  readonly rows: readonly Row[];
  readonly next: string | null;
}

const HOUR = 60;
const minuteAgo = (minutes: number) => Math.floor(minutesOf(new Date(Date.now() - minutes * 60_000)));
const dayFromNow = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

let office: Office;
let fleet: InService;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 0 });
  const start = minuteAgo(20 * 1440);
  // Forty-five flights of an hour within 90 days: one every two days on average.
  done(
    await logFlights(
      office.administrator,
      fleet.airframe.id,
      Array.from({ length: 45 }, (_, index) => ({
        page: `F${1000 + index}`,
        takeOff: start + index * 2 * HOUR,
        landing: start + index * 2 * HOUR + HOUR,
      })),
    ),
  );
  const add = async (code: string, more: object) =>
    done(await recordRequirement(office.administrator, code, more)).id;
  const airframeId = fleet.airframe.id;
  const first = await add('D-FIRST', {
    anchor: 'airframe',
    airframeTypeId: fleet.typeId,
    repeat: { cycles: 50, days: 300 },
  });
  done(
    await accomplish(office.administrator, {
      requirementId: first,
      airframeId,
      on: dayFromNow(-60),
      cycles: 5_005,
    }),
  );
  const later = await add('D-LAST', {
    anchor: 'airframe',
    repeat: { cycles: 50, days: 30 },
    combine: 'last',
  });
  done(
    await accomplish(office.administrator, {
      requirementId: later,
      airframeId,
      on: dayFromNow(-60),
      cycles: 5_005,
    }),
  );
  const calendar = await add('D-DAYS', { anchor: 'airframe', repeat: { days: 60 } });
  done(await accomplish(office.administrator, { requirementId: calendar, airframeId, on: dayFromNow(-61) }));
  await add('D-ENGINE', { engineModelId: fleet.modelId, repeat: { cycles: 1_055 } });
  await add('D-UNKNOWN', { repeat: { cycles: 2000, months: 12 } });
  await add('D-PLACE', { anchor: 'position', countedFrom: 'installation', repeat: { minutes: 46 * HOUR } });
}, 120_000);

afterAll(() => office?.close(), 30_000);

const page = async (query = ''): Promise<Page> =>
  done(await office.administrator.get<Page>(`/api/due-points${query}`));
const rowsOf = async (code: string) =>
  (await page('?limit=200')).rows.filter((row) => row.requirement?.code === code);

describe('requirements on the due list', () => {
  it('are one row for each and its subject, by the dimension that comes first, the others told', async () => {
    const rows = (await rowsOf('D-FIRST')).filter((row) => row.airframe === 'ZZ-101');

    // 10 flights left at one every two days: 20 days; the calendar has 240.
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({
      kind: 'requirement',
      serialNumber: null,
      dimension: 'cycles',
      remainingCycles: 10,
      projectedOn: dayFromNow(20),
      dues: [
        { dimension: 'cycles', remaining: 10 },
        { dimension: 'days', remaining: 240 },
      ],
    });
  });

  it('are governed by what comes last where it says so: past by the calendar alone is not over', async () => {
    const [row] = (await rowsOf('D-LAST')).filter((each) => each.airframe === 'ZZ-101');

    expect(row).toMatchObject({ dimension: 'cycles', remainingCycles: 10 });
    expect(row?.status).not.toBe('over');
    expect(row?.dues[1]).toMatchObject({ dimension: 'days', remaining: -30 });
  });

  it('are due by their day, and what is past stands on top', async () => {
    const { rows } = await page('?limit=200');
    const index = rows.findIndex((row) => row.requirement?.code === 'D-DAYS' && row.airframe === 'ZZ-101');

    expect(rows[index]).toMatchObject({
      status: 'over',
      dimension: 'days',
      remainingDays: -1,
      dueOn: dayFromNow(-1),
      basis: 'Past its day',
    });
    expect(rows.slice(0, index).every((row) => row.status === 'over')).toBe(true);
    const firstKnown = rows.findIndex((row) => !['over', 'not-verified'].includes(row.status));
    expect(rows.slice(firstKnown).some((row) => ['over', 'not-verified'].includes(row.status))).toBe(false);
  });

  it('follow engines with the position they hang at, and positions', async () => {
    const engines = await rowsOf('D-ENGINE');
    expect(engines.find((row) => row.serialNumber === 'ZZ-E2')).toMatchObject({
      airframe: 'ZZ-101',
      positionNumber: 2,
      remainingCycles: 10,
    });
    expect(engines.find((row) => row.serialNumber === 'ZZ-E5')).toMatchObject({
      airframe: null,
      remainingCycles: 55,
      basis: 'On no airframe: its clock stands still',
    });
    expect(
      (await rowsOf('D-PLACE')).map((row) => [row.airframe, row.positionNumber, row.status]).sort(),
    ).toEqual([
      ['ZZ-101', 1, 'soon'],
      ['ZZ-101', 2, 'soon'],
    ]);
  });

  it('say why they are not verified', async () => {
    const rows = await rowsOf('D-UNKNOWN');

    expect(rows).toHaveLength(5);
    expect(rows[0]).toMatchObject({
      status: 'not-verified',
      dimension: 'none',
      reason: 'The day it counts from is not known',
      dues: [{ dimension: 'cycles' }],
    });
  });

  it.each([1, 3, 7])('come in the same order by pages of %i, life limits among them', async (limit) => {
    const whole = await page('?limit=200');
    const paged: Row[] = [];
    let next: string | null = '';
    while (next !== null) {
      const answer: Page = await page(`?limit=${limit}${next === '' ? '' : `&after=${next}`}`);
      paged.push(...answer.rows);
      next = answer.next;
    }

    expect(new Set(whole.rows.map((row) => row.kind))).toEqual(new Set(['life-limit', 'requirement']));
    expect(paged.map((row) => row.id)).toEqual(whole.rows.map((row) => row.id));
  });

  it('are those of one airframe alone when asked', async () => {
    const { rows } = await page(`?limit=200&airframeId=${fleet.airframe.id}`);

    expect(rows.every((row) => row.airframe === 'ZZ-101')).toBe(true);
    expect(new Set(rows.flatMap((row) => row.requirement?.code ?? []))).toEqual(
      new Set(['D-FIRST', 'D-LAST', 'D-DAYS', 'D-ENGINE', 'D-UNKNOWN', 'D-PLACE']),
    );
  });

  it('say the same as the requirement held against its subject', async () => {
    const statuses = done(
      await office.administrator.get<StatusAnswer[]>(`/api/airframes/${fleet.airframe.id}/requirements`),
    );
    const { rows } = await page(`?limit=200&airframeId=${fleet.airframe.id}`);
    const told = (code: string, status: string, governing: string | null) =>
      `${code} ${status} ${governing ?? 'none'}`;

    expect(
      rows
        .flatMap((row) =>
          row.requirement === null ? [] : told(row.requirement.code, row.status, row.dimension),
        )
        .sort(),
    ).toEqual(statuses.map((row) => told(row.code, row.status, row.governing)).sort());
  });

  it('are told by the flight that reaches them', async () => {
    const at = minuteAgo(6 * HOUR);
    const flights = Array.from({ length: 1 }, () => ({ page: 'F2000', takeOff: at, landing: at + HOUR }));
    const answer = done(await logFlights(office.administrator, fleet.airframe.id, flights)) as unknown as {
      newlyOver: { requirement: string | null; serialNumber: string; dimension: string; remaining: number }[];
    };

    const told = answer.newlyOver.filter((row) => row.requirement !== null);
    expect(told.sort((a, b) => a.serialNumber.localeCompare(b.serialNumber))).toEqual([
      expect.objectContaining({
        requirement: 'D-PLACE Test D-PLACE',
        serialNumber: 'ZZ-101 position 1',
        remaining: 0,
      }),
      expect.objectContaining({
        requirement: 'D-PLACE Test D-PLACE',
        serialNumber: 'ZZ-101 position 2',
        remaining: 0,
      }),
    ]);
  });
});
