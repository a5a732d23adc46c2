import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { dayFromNow, type ToldLife } from '../../support/limits.js';
import { type InService, putInService } from '../../support/scenario/in-service.js';
import { minutesOf } from '../../support/scenario/instants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';

let office: Office;
let fleet: InService;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 1 });
}, 120_000);

afterAll(() => office?.close(), 30_000);

const lifeOf = async (id: string): Promise<ToldLife> => {
  const { life } = done(await office.administrator.get<{ life: ToldLife }>(`/api/components/${id}`));
  return life;
};

async function limit(partNumber: string, more: object): Promise<void> {
  done(
    await office.administrator.post('/api/life-limits', {
      ...{ partNumber, engineModelId: fleet.modelId, authorisation: 'limited' },
      ...{ document: 'Manual, chapter 05', revision: '1', effectiveOn: '2020-01-01' },
      ...more,
    }),
  );
}

/** A limited part with no place yet: used nothing, unless told. */
async function part(
  partNumber: string,
  serialNumber: string,
  more: {
    readonly manufacturedOn?: string;
    readonly firstInstalledOn?: string;
    readonly cycles?: number;
    /** Since when it is on record. */
    readonly since?: string;
  } = {},
): Promise<string> {
  const { cycles = 0, since = `${dayFromNow(-1)}T00:00Z`, ...known } = more;
  const { id } = await fleet.register.component({
    ...{ kind: 'part', partNumber, serialNumber, engineModelId: fleet.modelId, lifeLimited: true },
    ...known,
  });
  await fleet.register.opening(
    { componentId: id },
    [{ ratingCode: 'A', minutes: cycles * 60, cycles }],
    minutesOf(since),
  );
  await fleet.register.place(id, { locationName: 'Store' }, minutesOf(since));
  return id;
}

describe('a calendar life', () => {
  it('runs in store, is good through its last day, and falls due on the list', async () => {
    await limit('K-SHELF', { calendarSpan: 400, calendarUnit: 'days', calendarFrom: 'new' });
    const last = await part('K-SHELF', 'LAST', { manufacturedOn: dayFromNow(-400) });
    const past = await part('K-SHELF', 'PAST', { manufacturedOn: dayFromNow(-401) });

    expect(await lifeOf(last)).toMatchObject({
      kind: 'limited',
      status: 'soon',
      goodThrough: dayFromNow(0),
      remainingDays: 0,
      remainingCycles: null,
      projectedBy: 'days',
      basis: 'By the calendar',
    });
    expect(await lifeOf(past)).toMatchObject({ status: 'over', remainingDays: -1, basis: 'Past its day' });
    const { rows } = done(
      await office.administrator.get<{ rows: { serialNumber: string }[] }>('/api/due-points?limit=200'),
    );
    const told = (serial: string) => rows.find((row) => row.serialNumber === serial);
    expect(told('PAST')).toMatchObject({
      status: 'over',
      dimension: 'days',
      remainingDays: -1,
      dueOn: dayFromNow(-1),
      limit: 400,
    });
    expect(told('LAST')).toMatchObject({ status: 'soon', remainingDays: 0, basis: 'By the calendar' });
    expect(rows.findIndex((row) => row.serialNumber === 'PAST')).toBe(0);
  });

  it('stands beside cycles: whichever ends first', async () => {
    await limit('K-BOTH', { cycles: 100, calendarSpan: 6, calendarUnit: 'months', calendarFrom: 'new' });
    const worn = await part('K-BOTH', 'WORN', { manufacturedOn: dayFromNow(-1), cycles: 101 });
    const old = await part('K-BOTH', 'OLD', { manufacturedOn: '2024-08-31' });
    expect(await lifeOf(worn)).toMatchObject({ status: 'over', remainingCycles: -1 });
    expect(await lifeOf(old)).toMatchObject({
      status: 'over',
      remainingCycles: 100,
      goodThrough: '2025-02-28',
    });
  });

  it('from overhaul counts from the last one, and is not verified without', async () => {
    await limit('K-OH', {
      calendarSpan: 12,
      calendarUnit: 'months',
      calendarFrom: 'overhaul',
      monthRule: 'month-end',
    });
    const id = await part('K-OH', 'OH', { manufacturedOn: '2020-01-01', since: '2025-01-01T00:00Z' });
    expect(await lifeOf(id)).toMatchObject({ kind: 'unsubstantiated', reasons: [{ code: 'DAY_UNKNOWN' }] });

    done(
      await office.administrator.post('/api/resets', {
        ...{ componentId: id, kind: 'overhaul', at: '2025-03-10T10:00Z', evidence: 'Shop report 3' },
      }),
    );
    expect(await lifeOf(id)).toMatchObject({ kind: 'limited', goodThrough: '2026-03-31' });
  });

  it('from first installation counts from the records, or from the papers of what came here used', async () => {
    await limit('K-FIT', { calendarSpan: 10, calendarUnit: 'days', calendarFrom: 'first-installation' });
    const used = await part('K-FIT', 'USED', { firstInstalledOn: dayFromNow(-9), cycles: 4 });
    const untold = await part('K-FIT', 'UNTOLD', { cycles: 4 });
    expect(await lifeOf(used)).toMatchObject({ remainingDays: 1 });
    expect(await lifeOf(untold)).toMatchObject({ kind: 'unsubstantiated' });

    const disk = fleet.engines[4]?.slotIds.disk ?? '';
    const held = fleet.engines[4]?.partIds[1] ?? '';
    done(
      await office.administrator.post('/api/placements', {
        ...{
          componentId: held,
          locationName: 'Store',
          boundary: { kind: 'instant', at: `${dayFromNow(-4)}T08:00Z` },
        },
      }),
    );
    const fresh = await part('K-FIT', 'FRESH', { since: `${dayFromNow(-5)}T00:00Z` });
    expect(await lifeOf(fresh)).toMatchObject({ kind: 'limited', status: 'later', goodThrough: null });
    done(
      await office.administrator.post('/api/placements', {
        ...{
          componentId: fresh,
          slotId: disk,
          boundary: { kind: 'instant', at: `${dayFromNow(-3)}T08:00Z` },
        },
      }),
    );
    expect(await lifeOf(fresh)).toMatchObject({
      kind: 'limited',
      remainingDays: 7,
      goodThrough: dayFromNow(7),
    });
  });

  it('limits an engine by date before one in cycles', async () => {
    const [engine] = fleet.engines;
    await limit('K-DISK', {
      ...{
        cycles: 20_000,
        calendarSpan: 30,
        calendarUnit: 'days',
        calendarFrom: 'first-installation',
        revision: '2',
      },
    });
    const view = done(
      await office.administrator.get<{ limiterByDate: object; limiter: object }>(
        `/api/components/${engine?.id}`,
      ),
    );
    // What was in use before these records says when it was first installed nowhere: it can't be told, and stands first.
    expect(view.limiterByDate).toMatchObject({
      serialNumber: 'ZZ-E1-D',
      status: 'not-verified',
      projectedOn: null,
    });
    const card = done(
      await office.administrator.get<{ positions: { engine: { soonest: object } | null }[] }>(
        `/api/airframes/${fleet.airframe.id}/positions`,
      ),
    ).positions.find(({ engine: here }) => here !== null);
    expect(card?.engine?.soonest).toMatchObject({ serialNumber: 'ZZ-E1-D', projectedOn: null });
  });

  it('is refused where what it says does not fit', async () => {
    const refusal = async (more: object) =>
      problemOf(
        await office.administrator.post('/api/life-limits', {
          ...{ partNumber: 'K-X', engineModelId: fleet.modelId, authorisation: 'limited' },
          ...{ document: 'D', revision: '1', effectiveOn: '2020-01-01' },
          ...more,
        }),
      );
    expect(
      (await refusal({ calendarSpan: 0, calendarUnit: 'days', calendarFrom: 'new' })).fields?.[0]?.field,
    ).toBe('calendarSpan');
    expect((await refusal({ cycles: 5, calendarUnit: 'days' })).fields?.[0]?.field).toBe('calendarUnit');
    const early = await office.administrator.post('/api/components', {
      ...{ kind: 'part', maker: 'M', partNumber: 'P', serialNumber: 'S', description: 'D', owner: 'O' },
      ...{ manufacturedOn: '2020-01-02', firstInstalledOn: '2020-01-01' },
    });
    expect(problemOf(early).fields?.[0]?.field).toBe('firstInstalledOn');
  });
});
