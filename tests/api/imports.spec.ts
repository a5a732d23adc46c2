import { createHash } from 'node:crypto';
import { describe, expect, it } from '@jest/globals';
import { canonical } from '@strutbook/journal/canonical.js';
import { merkleRoot } from '@strutbook/journal/merkle.js';
import { withClient } from '../support/database.js';
import type { Answer } from '../support/http-client.js';
import { asTyped, file } from '../support/logbook/flight-file.js';
import { importDesk } from '../support/logbook/import-desk.js';
import { logFlights } from '../support/scenario/acts.js';
import { buildEngine, slotOf } from '../support/scenario/fleet.js';
import { instantAt } from '../support/scenario/instants.js';
import { done, problemOf } from '../support/scenario/problem.js';

const { desk, line, settled, check, apply, applied, flown } = importDesk();

const sendCsv = (text: string): Promise<Answer<{ id: string }>> =>
  desk.office.administrator.send('POST', '/api/imports?kind=flights&fileName=november.csv', text, {
    headers: { 'content-type': 'text/csv' },
  });

describe('a file that is right', () => {
  it('says what it would do, does nothing before it is applied, and then does just that', async () => {
    const checked = await check(file(line('P1', 100, 160), line('P2', 200, 290)));

    expect(checked).toMatchObject({
      ...{ state: 'checked', rows: 2, ready: 2, failed: 0, already: 0, errors: [], root: null, sameAs: null },
      effect: [{ registration: desk.airframe.registration, flights: 2, minutes: 150 }],
    });
    expect(await flown()).toMatchObject({ minutes: 600_000, flights: 5_000, lastLandingAt: null });

    const answer = await apply(checked);

    expect(answer).toMatchObject({ status: 202, body: { state: 'applying' } });
    expect(await settled(checked.id)).toMatchObject({
      state: 'applied',
      job: { state: 'done', done: 2, total: 2 },
    });
    expect(await flown()).toMatchObject({ minutes: 600_150, flights: 5_002, lastLandingAt: instantAt(290) });
  });

  it('may be sent as text/csv, with a byte order mark and CRLF', async () => {
    const text = `\ufeff${file(line('P1', 100, 160)).replaceAll('\n', '\r\n')}`;

    const { id } = done(await sendCsv(text));

    expect(await settled(id)).toMatchObject({
      state: 'checked',
      fileName: 'november.csv',
      ready: 1,
      failed: 0,
    });
  });

  it('keeps each flight with its line, what was typed, and one journal entry with the root over its rows', async () => {
    const view = await applied(file(line('P2', 200, 290), '', line('P1', 100, 160)));

    const { flights, entries } = await withClient(desk.office.database.adminUrl, async (client) => ({
      flights: (
        await client.query(
          'SELECT *, take_off_at::text, landing_at::text FROM flight WHERE airframe_id = $1 ORDER BY entry_row',
          [desk.airframe.id],
        )
      ).rows,
      entries: (await client.query('SELECT * FROM journal_entry WHERE stream = $1 ORDER BY seq', [view.id]))
        .rows,
    }));
    expect(flights).toMatchObject([
      { log_page: 'P2', entry_row: 2, source: 'import' },
      { log_page: 'P1', entry_row: 4, source: 'import' },
    ]);
    expect(JSON.parse(flights[0]?.typed)).toMatchObject({
      log_page: 'P2',
      take_off_utc: asTyped(200),
      starts: '1',
    });
    const wire = (text: string) => `${new Date(text).toISOString().slice(0, 16)}Z`;
    const leaves = flights.map((row) =>
      Buffer.from(
        canonical({
          ...{ row: row.entry_row, id: row.id, airframeId: row.airframe_id, logPage: row.log_page },
          ...{
            fromStation: row.from_station,
            toStation: row.to_station,
            takeOffAt: wire(row.take_off_at),
            landingAt: wire(row.landing_at),
          },
          ...{ touchAndGoes: row.touch_and_goes, starts: row.starts, abortedTakeOffs: row.aborted_take_offs },
        }),
      ),
    );
    const root = Buffer.from(
      merkleRoot(leaves, (bytes) => createHash('sha256').update(bytes).digest()),
    ).toString('hex');
    expect(entries.map(({ kind }) => kind)).toEqual(['import-taken', 'flights-imported']);
    expect(JSON.parse(entries[1]?.body)).toMatchObject({ done: { rows: 2, root } });
    expect(view.root).toBe(root);
    expect(new Set(flights.map(({ recorded_seq: number }) => number))).toEqual(new Set([entries[1]?.number]));
  });

  it('brought in again has nothing new, and is recognised', async () => {
    const content = file(line('P1', 100, 160), line('P2', 200, 290));
    const first = await applied(content);

    const again = await check(content);

    expect(again).toMatchObject({
      state: 'checked',
      ready: 0,
      already: 2,
      failed: 0,
      effect: [],
      sameAs: { id: first.id },
    });
    expect(problemOf(await apply(again))).toMatchObject({ status: 409, code: 'ALREADY_EXISTS' });
    expect(await flown()).toMatchObject({ flights: 5_002 });
  });

  it('with some rows on record adds only the others', async () => {
    await applied(file(line('P1', 100, 160)));

    expect(await applied(file(line('P1', 100, 160), line('P2', 200, 290)))).toMatchObject({
      state: 'applied',
      ready: 1,
      already: 1,
    });
    expect(await flown()).toMatchObject({ minutes: 600_150, flights: 5_002 });
  });

  it('gives the same counters as logging its flights one by one', async () => {
    const twin = await desk.register.airframe(`ZZ-T${desk.marks}`, desk.fleet.typeId);
    await desk.register.opening({ airframeId: twin.id }, [
      { ratingCode: null, minutes: 600_000, cycles: 5_000 },
    ]);
    const flights = Array.from({ length: 30 }, (_, index) => ({
      page: `P${index}`,
      takeOff: index * 3_000 + 100,
      landing: index * 3_000 + 100 + 10 + index,
    }));
    const engines = [];
    for (const [each, mark] of [
      [desk.airframe, 'I'],
      [twin, 'T'],
    ] as const) {
      const engine = await buildEngine(desk.register, desk.fleet.modelId, `ZZ-${mark}${desk.marks}`);
      await desk.register.place(engine.id, { slotId: slotOf(each, 1, 'engine') }, 45_000);
      engines.push(engine);
    }

    await applied(file(...flights.map(({ page, takeOff, landing }) => line(page, takeOff, landing))));
    for (const flight of flights)
      done(await logFlights(desk.office.administrator, twin.id, [{ ...flight, starts: 1 }]));

    const rowsOf = (id: string) =>
      withClient(desk.office.database.adminUrl, async (client) => ({
        head: (
          await client.query(
            'SELECT minutes, flights, landings, starts, last_landing_at FROM carrier WHERE id = $1',
            [id],
          )
        ).rows,
        months: (
          await client.query(
            'SELECT month, minutes, flights, landings, starts FROM bucket WHERE carrier_id = $1 ORDER BY month',
            [id],
          )
        ).rows,
      }));
    expect(await rowsOf(desk.airframe.id)).toEqual(await rowsOf(twin.id));
    const countersOf = async (id: string | undefined) =>
      done(
        await desk.office.administrator.get<{ counters: object; limiter: { remainingCycles: number } }>(
          `/api/components/${id}`,
        ),
      );
    const [imported, logged] = [await countersOf(engines[0]?.id), await countersOf(engines[1]?.id)];
    expect(imported.counters).toEqual(logged.counters);
    expect(imported.limiter.remainingCycles).toBe(logged.limiter.remainingCycles);
    expect(done(await desk.office.administrator.get<object>('/api/trial-balance'))).toMatchObject({
      balanced: true,
    });
  });

  it('tells which limits its flights newly reached', async () => {
    const engine = await buildEngine(desk.register, desk.fleet.modelId, `ZZ-L${desk.marks}`);
    await desk.register.place(engine.id, { slotId: slotOf(desk.airframe, 1, 'engine') }, 50);
    const limit = {
      partNumber: 'K-DISK',
      engineModelId: desk.fleet.modelId,
      ratingCode: 'A',
      authorisation: 'limited',
      cycles: 1_001,
      document: 'Manual, chapter 05',
      revision: '9',
      effectiveOn: '2024-06-01',
    };
    const { id } = await desk.register.post<{ id: string }>('/api/life-limits', limit);

    const view = await applied(file(line('P1', 100, 160), line('P2', 200, 260)));

    expect(view.newlyOver).toMatchObject([
      { serialNumber: `${engine.serialNumber}-D`, dimension: 'cycles', remaining: -1 },
    ]);
    await desk.register.post(`/api/life-limits/${id}/void`, { reason: 'Only for this test' });
  });
});
