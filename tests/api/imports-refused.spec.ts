import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from '@jest/globals';
import { file, HEADING } from '../support/logbook/flight-file.js';
import { importDesk } from '../support/logbook/import-desk.js';
import { logFlights } from '../support/scenario/acts.js';
import { buildEngine, slotOf } from '../support/scenario/fleet.js';
import { done, problemOf } from '../support/scenario/problem.js';

const { desk, line, read, settled, check, apply, applied, flown } = importDesk();

describe('a file that errs', () => {
  it('is told line by line, and can not be applied', async () => {
    await applied(file(line('R1', 5_000, 5_060)));
    const engine = await buildEngine(desk.register, desk.fleet.modelId, `ZZ-X${desk.marks}`);
    await desk.register.place(engine.id, { slotId: slotOf(desk.airframe, 1, 'engine') }, 3_000);

    const checked = await check(
      file(
        line('P1', 100, 160),
        line('P1', 200, 260),
        line('P3', 150, 180),
        line('P4', 5_030, 5_090),
        line('R1', 5_000, 5_061),
        line('P6', -10, 20),
        line('P7', 2_990, 3_010),
        line('P8', 50_000_000, 50_000_060),
        line('P9', 300, 360, 'ZZ-NONE'),
        line('P10', 400, 460).replace(',1,0', ',1.5,0'),
      ),
    );

    expect(checked).toMatchObject({ state: 'checked', rows: 10, ready: 1, failed: 9 });
    expect(checked.errors.map(({ line: at, column }) => [at, column])).toEqual([
      [3, 'log_page'],
      [4, 'take_off_utc'],
      [5, 'take_off_utc'],
      [6, 'log_page'],
      [7, 'take_off_utc'],
      [8, 'landing_utc'],
      [9, 'landing_utc'],
      [10, 'registration'],
      [11, 'starts'],
    ]);
    const reasons = checked.errors.map(({ reason }) => reason);
    expect(reasons[1]).toContain('line 2');
    expect(reasons[2]).toContain('log page R1');
    expect(reasons[5]).toContain(engine.serialNumber);
    const problem = problemOf(await apply(checked));
    expect(problem).toMatchObject({ status: 422, code: 'REFUSED_BY_FACTS' });
    expect(problem.detail).toContain('9 lines');
    expect(await flown()).toMatchObject({ flights: 5_001 });
  });

  it('gives its errors as CSV, with formulas made harmless', async () => {
    const checked = await check(
      file(line('P1', 100, 160).replace('VDL', '=cmd|A1'), line('P2', 200, 260).replace('KRN', '"@x,y"')),
    );

    const answer = await desk.office.administrator.get<string>(`/api/imports/${checked.id}/errors.csv`);

    expect(answer.headers.get('content-type')).toBe('text/csv; charset=utf-8');
    expect(answer.headers.get('content-disposition')).toContain('attachment');
    const [heading, first = '', second = ''] = answer.body.split('\r\n');
    expect(heading).toBe('line,column,value,reason,fix');
    expect(first).toMatch(/^2,from,'=cmd\|A1,/);
    expect(second).toMatch(/^3,to,"'@x,y",/);
  });

  it.each([
    ['no heading', 'ZZ-1,P1,VDL,KRN,2025-01-01 00:00,2025-01-01 01:00,0,1,0\n'],
    ['nothing', ''],
    ['a NUL', `${HEADING}\nZZ\u0000-1\n`],
    ['carriage returns alone', `${HEADING}\rZZ-1\r`],
    ['quotes that run away', `${HEADING}\n"ZZ-1,P1\nZZ-2\n`],
    ['one hundred thousand columns', `${HEADING}\n${','.repeat(100_000)}\n`],
    ['one endless cell', `${HEADING}\n${'x'.repeat(500_000)}\n`],
  ])('with %s is told on its line, and nothing breaks', async (_, content) => {
    const checked = await check(content);

    expect(checked).toMatchObject({ state: 'checked', ready: 0, failed: 1, job: { state: 'done' } });
    expect(checked.errors[0]?.line).toBeGreaterThan(0);
    expect(problemOf(await apply(checked))).toMatchObject({ status: 422 });
  });

  it('found only when it is applied is told then, and nothing is recorded', async () => {
    const checked = await check(file(line('P1', 100, 160), line('P2', 200, 260)));
    done(
      await logFlights(desk.office.administrator, desk.airframe.id, [
        { page: 'OTHER', takeOff: 250, landing: 270 },
      ]),
    );

    done(await apply(checked));

    expect(await settled(checked.id)).toMatchObject({
      state: 'checked',
      ready: 1,
      failed: 1,
      errors: [{ line: 3, column: 'take_off_utc' }],
    });
    expect(await flown()).toMatchObject({ flights: 5_001 });
  });
});

describe('asking for it', () => {
  it('needs the version that was seen', async () => {
    const checked = await check(file(line('P1', 100, 160)));

    expect(
      problemOf(await desk.office.administrator.post(`/api/imports/${checked.id}/apply`, {})),
    ).toMatchObject({
      status: 428,
    });
    expect(problemOf(await apply({ ...checked, version: checked.version - 1 }))).toMatchObject({
      status: 412,
      code: 'STALE',
    });
  });

  it('refuses a name or a kind that is none, and text that is no file', async () => {
    const fields = async (body: object) =>
      problemOf(await desk.office.administrator.post('/api/imports', body)).fields?.map(({ field }) => field);

    expect(await fields({ kind: 'engines', fileName: 'f.csv', content: '' })).toEqual(['kind']);
    expect(await fields({ kind: 'flights', fileName: '', content: '' })).toEqual(['fileName']);
    expect(await fields({ kind: 'flights', fileName: 'f.csv' })).toEqual(['content']);
  });

  it('lists files, the newest first', async () => {
    const { id } = await check(file(line('P1', 100, 160)), 'newest.csv');

    const { rows, next } = done(
      await desk.office.administrator.get<{ rows: { id: string; fileName: string }[]; next: string }>(
        '/api/imports?limit=1',
      ),
    );

    expect(rows).toMatchObject([{ id, fileName: 'newest.csv' }]);
    expect(next).toBe(id);
  });

  it('applies one of two files with the same flights that are applied at once', async () => {
    const contents = [file(line('P1', 100, 160)), file('', line('P1', 100, 160))];
    const checked = await Promise.all(contents.map((content) => check(content)));

    await Promise.all(checked.map((view) => apply(view)));
    const views = await Promise.all(checked.map(({ id }) => settled(id)));

    expect(views.map(({ ready }) => ready).sort()).toEqual([0, 1]);
    expect(await flown()).toMatchObject({ flights: 5_001 });
  });
});

describe('a large file', () => {
  const rows = 15_000;
  const big = () =>
    file(
      ...Array.from({ length: rows }, (_, index) => line(`B${index}`, index * 40 + 100, index * 40 + 130)),
    );

  it('cancelled in the middle leaves nothing behind, and can be applied afterwards, fast', async () => {
    const engine = await buildEngine(desk.register, desk.fleet.modelId, `ZZ-BIG${desk.marks}`);
    await desk.register.place(engine.id, { slotId: slotOf(desk.airframe, 1, 'engine') }, 400_015);
    const checked = await check(big());
    expect(checked).toMatchObject({ ready: rows, failed: 0 });

    done(await apply(checked));
    for (
      let view = await read(checked.id);
      (view.job?.done ?? 0) === 0 && view.state === 'applying';
      view = await read(checked.id)
    )
      await sleep(10);
    const cancelled = await desk.office.administrator.post(`/api/imports/${checked.id}/cancel`, {});

    expect(cancelled.status).toBe(202);
    const after = await settled(checked.id);
    expect(after).toMatchObject({ state: 'checked', job: { state: 'cancelled' } });
    expect(await flown()).toMatchObject({ flights: 5_000, lastLandingAt: null });

    const began = Date.now();
    done(await apply(after));
    expect(await settled(checked.id)).toMatchObject({ state: 'applied', job: { state: 'done', done: rows } });
    expect(Date.now() - began).toBeLessThan(20_000);
    expect(await flown()).toMatchObject({ minutes: 600_000 + rows * 30, flights: 5_000 + rows });
    expect(
      done(await desk.office.administrator.get<{ counters: object }>(`/api/components/${engine.id}`))
        .counters,
    ).toMatchObject({
      // Row 9 998 is the first that takes off after the installation.
      sinceInstalled: { minutes: (rows - 9_998) * 30, cycles: { units: rows - 9_998 } },
    });
  }, 90_000);
});
