import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../../support/database.js';
import { dayFromNow, limitRow, type Preview, revisionOf, type ToldLife } from '../../support/limits.js';
import { type InService, putInService } from '../../support/scenario/in-service.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';

let office: Office;
let fleet: InService;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 3 });
}, 120_000);

afterAll(() => office?.close(), 30_000);

const preview = async (body: object): Promise<Preview> =>
  done(await office.administrator.post<Preview>('/api/life-limits/preview', body));
const lifeOf = async (id: string): Promise<ToldLife> => {
  const { life } = done(await office.administrator.get<{ life: ToldLife }>(`/api/components/${id}`));
  return life;
};
const diskOf = (engine: number): string => fleet.engines[engine]?.partIds[1] ?? '';
const dueOf = async (serial: string) => {
  const { rows } = done(
    await office.administrator.get<{
      rows: { serialNumber: string; remainingCycles: number; status: string; document: string }[];
    }>('/api/due-points?limit=200'),
  );
  return rows.filter((row) => row.serialNumber === serial);
};
const limits = async () => done(await office.administrator.get<unknown[]>('/api/life-limits'));

describe('a directive that lowers a limit', () => {
  const directive = (cycles: number) =>
    revisionOf([limitRow('K-DISK', fleet.modelId, { cycles })], {
      basis: 'directive',
      document: 'ZZ-AD 2026-07',
      revision: '1',
    });

  it('shows before it is accepted what it puts over first, and stores nothing', async () => {
    const before = (await limits()).length;
    const seen = await preview(directive(1002));

    expect(seen).toMatchObject({ looked: 5, later: false, partNumbersNotHeld: [] });
    expect(seen.changes.map(({ serialNumber, effect }) => [serialNumber, effect])).toEqual([
      ['ZZ-E1-D', 'over'],
      ['ZZ-E2-D', 'over'],
      ['ZZ-E3-D', 'short'],
      ['ZZ-E4-D', 'short'],
      ['ZZ-E5-D', 'short'],
    ]);
    expect(seen.changes[0]).toMatchObject({
      engineSerial: 'ZZ-E1',
      airframe: 'ZZ-101',
      positionNumber: 1,
      before: { cycleLimit: 20_000, remainingCycles: 18_997, status: 'later', basis: 'manual' },
      after: {
        cycleLimit: 1002,
        remainingCycles: -1,
        status: 'over',
        document: 'ZZ-AD 2026-07',
        basis: 'directive',
      },
    });
    expect((await limits()).length).toBe(before);
    expect((await lifeOf(diskOf(0))).remainingCycles).toBe(18_997);
  });

  it('is refused when what was seen is no longer so', async () => {
    const { digest } = await preview(directive(1002));
    const answer = await office.administrator.post('/api/life-limits/accept', { ...directive(1001), digest });
    expect(problemOf(answer)).toMatchObject({ status: 409, code: 'CHECK_CHANGED' });
    expect((await lifeOf(diskOf(0))).remainingCycles).toBe(18_997);
  });

  it('accepted, governs at once in lives, the due list and the release check, and says so', async () => {
    const asked = directive(1002);
    const { digest } = await preview(asked);
    done(await office.administrator.post('/api/life-limits/accept', { ...asked, digest }));

    const life = await lifeOf(diskOf(0));
    expect(life).toMatchObject({
      status: 'over',
      cycleLimit: 1002,
      remainingCycles: -1,
      document: 'ZZ-AD 2026-07',
    });
    expect(life.sources).toMatchObject([
      { basis: 'manual', document: 'Manual, chapter 05', governs: [] },
      { basis: 'directive', document: 'ZZ-AD 2026-07', governs: ['cycles'] },
    ]);
    expect(await dueOf('ZZ-E1-D')).toMatchObject([
      { status: 'over', remainingCycles: -1, document: 'ZZ-AD 2026-07' },
    ]);
    const check = done(
      await office.administrator.get<{ objections: { code: string; reason: string }[] }>(
        `/api/packages/${fleet.packages[0]?.id}/release-check`,
      ),
    );
    expect(check.objections.filter(({ code }) => code === 'OVER_LIMIT')).toHaveLength(2);
  });

  it('stays below a later revision of the manual that raises the limit', async () => {
    const raised = revisionOf(
      ['A', 'B'].map((ratingCode) => limitRow('K-DISK', fleet.modelId, { ratingCode, cycles: 30_000 })),
    );
    const seen = await preview(raised);
    expect(seen.changes).toEqual([]);
  });

  it('does not lift a limit', async () => {
    const answer = await office.administrator.post(
      '/api/life-limits/preview',
      revisionOf([limitRow('K-DISK', fleet.modelId, { authorisation: 'not-limited' })], {
        basis: 'directive',
      }),
    );
    expect(problemOf(answer).fields?.[0]).toMatchObject({ field: 'rows[0].authorisation' });
  });
});

describe('the register of limits', () => {
  it('tells of each limit whether it governs', async () => {
    const rows = done(
      await office.administrator.get<{ document: string; ratingCode: string; standing: string }[]>(
        '/api/life-limits?partNumber=K-DISK',
      ),
    );
    expect(rows.map(({ document, standing }) => [document, standing]).sort()).toEqual([
      ['Manual, chapter 05', 'in-force'],
      ['Manual, chapter 05', 'in-force'],
      ['ZZ-AD 2026-07', 'in-force'],
    ]);
    const asked = { ...revisionOf([]), basis: 'directive', document: 'ZZ-AD 9', revision: '1' };
    const higher = {
      partNumber: 'K-DISK',
      engineModelId: fleet.modelId,
      authorisation: 'limited',
      cycles: 5000,
    };
    const { rows: _, ...from } = asked;
    const added = done(
      await office.administrator.post<{ id: string; standing: string }>('/api/life-limits', {
        ...from,
        ...higher,
      }),
    );
    expect(added.standing).toBe('not-governing');
    done(await office.administrator.post(`/api/life-limits/${added.id}/void`, { reason: 'Test' }));
  });
});

describe('a revision with several rows', () => {
  it('tells each row that does not fit, by its place, and stores nothing', async () => {
    const before = (await limits()).length;
    const refusal = async (rows: readonly object[]) =>
      problemOf(await office.administrator.post('/api/life-limits/preview', { ...revisionOf([]), rows }));
    const { modelId } = fleet;

    expect((await refusal([limitRow('K-HUB', modelId, { cycles: -5 })])).fields?.[0]).toMatchObject({
      field: 'rows[0].cycles',
    });
    expect((await refusal([limitRow('K-HUB', modelId, {})])).fields?.[0]).toMatchObject({
      field: 'rows[0].cycles',
    });
    expect(
      (await refusal([limitRow('K-HUB', modelId, { cycles: 5 }), limitRow('K-HUB', modelId, { cycles: 6 })]))
        .fields?.[0],
    ).toMatchObject({ field: 'rows[1].partNumber' });
    const unknown = await refusal([
      limitRow('K-HUB', modelId, { cycles: 5 }),
      limitRow('K-DISK', '00000000-0000-7000-8000-000000000000', { cycles: 5 }),
    ]);
    expect(unknown).toMatchObject({ status: 404, fields: [{ field: 'rows[1].engineModelId' }] });
    expect(unknown.fields?.[0]?.fix).not.toBe('');
    expect(
      (await refusal([limitRow('K-HUB', modelId, { ratingCode: 'Z', cycles: 5 })])).fields?.[0],
    ).toMatchObject({
      field: 'rows[0].ratingCode',
    });
    expect(
      (await refusal([limitRow('K-HUB', modelId, { calendarSpan: 6 })])).fields?.map(({ field }) => field),
    ).toEqual(['rows[0].calendarUnit', 'rows[0].calendarFrom']);
    expect((await limits()).length).toBe(before);
  });

  it('names the part numbers that nobody has', async () => {
    const seen = await preview(
      revisionOf([limitRow('K-NOWHERE', fleet.modelId, { cycles: 5 })], { revision: '9' }),
    );
    expect(seen).toMatchObject({ looked: 0, partNumbersNotHeld: ['K-NOWHERE'], changes: [] });
  });

  it('may forbid a part number in the model', async () => {
    const seen = await preview(
      revisionOf([limitRow('K-HUB', fleet.modelId, { authorisation: 'not-authorised' })], { revision: '9' }),
    );
    expect(seen.changes[0]).toMatchObject({
      effect: 'not-authorised',
      after: { kind: 'not-authorised', status: 'over' },
    });
  });
});

describe('a revision effective on a later day', () => {
  it('changes nothing until that day, and lives and the due list from that day on', async () => {
    const asked = revisionOf(
      ['A', 'B'].map((ratingCode) => limitRow('K-HUB', fleet.modelId, { ratingCode, cycles: 1100 })),
      { revision: '3', effectiveOn: dayFromNow(2) },
    );
    const seen = await preview(asked);
    expect(seen.later).toBe(true);
    expect(seen.changes[0]?.after).toMatchObject({ cycleLimit: 1100, remainingCycles: 97 });
    done(await office.administrator.post('/api/life-limits/accept', { ...asked, digest: seen.digest }));
    expect(await dueOf('ZZ-E1-H')).toMatchObject([{ remainingCycles: 18_997 }]);
    expect((await lifeOf(fleet.engines[0]?.partIds[0] ?? '')).remainingCycles).toBe(18_997);

    // The day comes: as nobody can wait for it, the day is put to today, and the job that waits is let go.
    await withClient(office.database.adminUrl, async (client) => {
      await client.query('ALTER TABLE life_limit DISABLE TRIGGER USER');
      await client.query("UPDATE life_limit SET effective_on = current_date WHERE revision = '3'");
      await client.query('ALTER TABLE life_limit ENABLE ALWAYS TRIGGER fact_guard');
      await client.query('ALTER TABLE life_limit ENABLE ALWAYS TRIGGER no_truncate');
      const waiting = await client.query(
        "SELECT not_before FROM job WHERE kind = 'limits-in-effect' AND state = 'queued'",
      );
      expect(waiting.rows).toHaveLength(1);
      expect(waiting.rows[0].not_before.toISOString()).toBe(`${dayFromNow(2)}T00:01:00.000Z`);
      await client.query('UPDATE job SET not_before = now()');
      await client.query('UPDATE jobs_queue._private_jobs SET run_at = now()');
    });
    for (const deadline = Date.now() + 20_000; Date.now() < deadline; await sleep(200))
      if ((await dueOf('ZZ-E1-H'))[0]?.remainingCycles === 97) break;
    expect(await dueOf('ZZ-E1-H')).toMatchObject([{ remainingCycles: 97, status: 'soon' }]);
    expect((await lifeOf(fleet.engines[0]?.partIds[0] ?? '')).remainingCycles).toBe(97);
  });
});
