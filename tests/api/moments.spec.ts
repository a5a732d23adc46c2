import { beforeAll, describe, expect, it } from '@jest/globals';
import { withClient } from '../support/database.js';
import { fleetDesk } from '../support/logbook/fleet-desk.js';
import {
  asRequest,
  atMinute,
  type ChangeToRecord,
  previewChange,
  recordChange,
} from '../support/scenario/acts.js';
import { buildEngine } from '../support/scenario/fleet.js';
import { instantAt } from '../support/scenario/instants.js';
import { done, problemOf } from '../support/scenario/problem.js';

const UNKNOWN = { minutes: null, cycles: null };
const LATER = '2100-01-01T00:00Z';

const desk = fleetDesk({ engines: 1, airframes: 2 });

const airframeId = (index: number) => desk.fleet.airframes[index]?.id ?? '';
const post = <T>(path: string, body: object) => desk.office.administrator.post<T>(path, body);
const counted = (minutes: number, cycles: number) => ({ minutes, cycles: { units: cycles, denominator: 1 } });
const rows = (sql: string, values: readonly unknown[]) =>
  withClient(desk.office.database.adminUrl, async (client) => (await client.query(sql, [...values])).rows);

async function countersOf(id: string, at = ''): Promise<Record<string, unknown>> {
  const query = at === '' ? '' : `?at=${at}`;
  return done(
    await desk.office.administrator.get<{ counters: Record<string, unknown> }>(
      `/api/components/${id}${query}`,
    ),
  ).counters;
}

async function part(serialNumber: string): Promise<string> {
  return (await desk.register.component({ kind: 'part', serialNumber, engineModelId: desk.fleet.modelId }))
    .id;
}

const install = (incomingSerial: string, more: Partial<ChangeToRecord> = {}): ChangeToRecord => ({
  airframeId: airframeId(0),
  positionNumber: 1,
  slot: 'engine',
  outgoingSerial: null,
  incomingSerial,
  boundary: atMinute(1000),
  ...more,
});

describe('a moment that has not come', () => {
  it('is refused for a change, in its preview already', async () => {
    const answer = await previewChange(
      desk.office.administrator,
      install('ZZ-E1', { boundary: { kind: 'instant', at: LATER } }),
    );
    expect(problemOf(answer)).toMatchObject({
      code: 'IN_THE_FUTURE',
      fields: [expect.objectContaining({ field: 'boundary' })],
    });
  });

  it('is refused for a placement, at its beginning and at its end', async () => {
    const componentId = await part('FUT-1');
    const later = { kind: 'instant', at: LATER };
    const place = { componentId, locationName: 'Store' };
    const begins = await post('/api/placements', { ...place, boundary: later });
    const ends = await post('/api/placements', { ...place, boundary: atMinute(5), until: later });
    expect(problemOf(begins)).toMatchObject({ code: 'IN_THE_FUTURE', fields: [{ field: 'boundary' }] });
    expect(problemOf(ends)).toMatchObject({ code: 'IN_THE_FUTURE', fields: [{ field: 'until' }] });
  });

  it('does not forbid to tell a change after the last flight of the day that still lasts', async () => {
    const today = new Date().toISOString().slice(0, 10);
    const answer = await previewChange(
      desk.office.administrator,
      install('ZZ-E1', { boundary: { kind: 'after-last', on: today } }),
    );
    expect(answer.status).toBe(200);
  });
});

describe('the rating of an incoming engine', () => {
  it('is recorded from a change entered late, though a later change of rating already names it', async () => {
    const engine = await buildEngine(desk.register, desk.fleet.modelId, 'RAT-1');
    await desk.register.rating(engine.id, 'B', 50_000);
    done(
      await recordChange(desk.office.administrator, install('RAT-1', { positionNumber: 2, ratingCode: 'B' })),
    );
    const ran = await rows(
      'SELECT DISTINCT r.code FROM exposure x JOIN rating r ON r.id = x.rating_id WHERE x.component_id = $1',
      [engine.id],
    );
    expect(ran).toEqual([{ code: 'B' }]);
  });

  it('is the one its parts are judged at', async () => {
    await buildEngine(desk.register, desk.fleet.modelId, 'RAT-2');
    const revision = { document: 'Manual, chapter 05', revision: '2', effectiveOn: '2020-02-01' };
    const disk = { ...revision, partNumber: 'K-DISK', engineModelId: desk.fleet.modelId };
    done(
      await post('/api/life-limits', { ...disk, ratingCode: 'A', authorisation: 'limited', cycles: 20_000 }),
    );
    done(await post('/api/life-limits', { ...disk, ratingCode: 'B', authorisation: 'not-authorised' }));
    const change = (ratingCode: string) =>
      previewChange(desk.office.administrator, install('RAT-2', { airframeId: airframeId(1), ratingCode }));
    expect((await change('A')).body).toMatchObject({ objections: [] });
    expect((await change('B')).body).toMatchObject({ objections: [{ code: 'NOT_AUTHORISED' }] });
  });
});

describe('counters before an opening balance', () => {
  it('are not known', async () => {
    const id = await part('OPN-1');
    await desk.register.opening(
      { componentId: id },
      [{ ratingCode: null, minutes: 6000, cycles: 100 }],
      5000,
    );
    expect((await countersOf(id, instantAt(4999)))['sinceNew']).toEqual(UNKNOWN);
    expect((await countersOf(id, instantAt(5000)))['sinceNew']).toEqual(counted(6000, 100));
  });

  it('leave counters since an overhaul that lies before it unknown', async () => {
    const id = await part('OPN-2');
    const overhaul = { componentId: id, kind: 'overhaul', at: instantAt(100), evidence: 'Certificate 1' };
    done(await post('/api/resets', overhaul));
    await desk.register.opening(
      { componentId: id },
      [{ ratingCode: null, minutes: 6000, cycles: 100 }],
      5000,
    );
    expect((await countersOf(id))['sinceOverhaul']).toEqual(UNKNOWN);
  });
});

describe('gaps in the trace', () => {
  let id: string;
  const gapIds: string[] = [];

  async function gap(from: number, to: number): Promise<string> {
    const body = { componentId: id, from: instantAt(from), to: instantAt(to), note: 'Card lost' };
    return done(await post<{ id: string }>('/api/trace-gaps', body)).id;
  }

  const accept = async (traceGapId: string, cycles: number, minutes: number) =>
    done(
      await post('/api/gap-acceptances', {
        ...{ componentId: id, traceGapId, cycles, minutes },
        ...{ acceptedBy: 'A. Person', reference: 'L-1' },
      }),
    );

  beforeAll(async () => {
    id = await part('GAP-1');
    await desk.register.opening({ componentId: id }, [{ ratingCode: 'A', minutes: 6000, cycles: 100 }]);
    const overhaul = { componentId: id, at: instantAt(0), basis: 'overhaul', source: 'Records before' };
    done(await post('/api/openings', { ...overhaul, rows: [{ ratingCode: 'A', minutes: 60, cycles: 1 }] }));
  }, 30_000);

  it('leave every counter they may hide something from unknown', async () => {
    gapIds.push(await gap(1000, 2000));
    expect(await countersOf(id)).toMatchObject({ sinceNew: UNKNOWN, sinceOverhaul: UNKNOWN });
  });

  it('count at their worst once accepted, from their own beginning on', async () => {
    await accept(gapIds[0] ?? '', 10, 100);
    gapIds.push(await gap(3000, 4000));
    await accept(gapIds[1] ?? '', 5, 50);
    expect(await countersOf(id)).toMatchObject({
      sinceNew: counted(6150, 115),
      sinceOverhaul: counted(210, 16),
    });
    expect(await countersOf(id, instantAt(2500))).toMatchObject({ sinceNew: counted(6100, 110) });
  });

  it('count no more when they are voided, though their acceptance stands', async () => {
    done(await post(`/api/trace-gaps/${gapIds[0]}/void`, { reason: 'Card found' }));
    expect(await countersOf(id)).toMatchObject({ sinceNew: counted(6050, 105) });
  });

  it('stay unknown in the history where their acceptance does not say how much', async () => {
    done(await post(`/api/trace-gaps/${gapIds[1]}/void`, { reason: 'Card found' }));
    const body = { componentId: id, from: instantAt(3000), to: instantAt(4000), note: 'Hours lost' };
    const traceGapId = done(await post<{ id: string }>('/api/trace-gaps', body)).id;
    const acceptance = { componentId: id, traceGapId, cycles: 5, acceptedBy: 'A. Person', reference: 'L-2' };
    done(await post('/api/gap-acceptances', acceptance));
    const history = done(
      await desk.office.administrator.get<{ lines: { totals: object }[] }>(`/api/components/${id}/history`),
    );
    expect(await countersOf(id)).toMatchObject({ sinceNew: { minutes: null, cycles: { units: 105 } } });
    expect(history.lines.at(-1)?.totals).toMatchObject({ minutes: null });
  });
});

describe('a component that would hang in itself', () => {
  it('is refused in the past too', async () => {
    const module = (serialNumber: string) =>
      desk.register.component({
        kind: 'module',
        serialNumber,
        slots: [{ kind: 'module', name: 'Inner', lifeLimited: false }],
      });
    const [a, b] = [await module('CY-A'), await module('CY-B')];
    const past = (componentId: string, slotId = '') =>
      post('/api/placements', { componentId, slotId, boundary: atMinute(100), until: atMinute(200) });
    done(await past(a.id, b.slots[0]?.id));
    expect(problemOf(await past(b.id, a.slots[0]?.id)).code).toBe('INSIDE_ITSELF');
  });
});

describe('a part put into an engine at the moment the engine is put on', () => {
  it('runs with it, whichever of the two is first', async () => {
    const missing: string[] = [];
    for (let round = 0; round < 8; round += 1) {
      const serialNumber = `RC-${round}`;
      const engine = await desk.register.component({
        kind: 'engine',
        serialNumber,
        engineModelId: desk.fleet.modelId,
        slots: [{ kind: 'part', name: 'Disk', lifeLimited: true }],
      });
      await desk.register.place(engine.id, { locationName: 'Store' });
      const componentId = await part(`${serialNumber}-D`);
      const change = install(serialNumber, {
        airframeId: airframeId(1),
        positionNumber: 2,
        outgoingSerial: round === 0 ? null : `RC-${round - 1}`,
        boundary: atMinute(10_000 + round * 100),
      });
      const { digest } = done(await previewChange(desk.office.administrator, change));
      const answers = await Promise.all([
        post('/api/changes', { ...asRequest(change), confirmDigest: digest }),
        post('/api/placements', { componentId, slotId: engine.slots[0]?.id, boundary: atMinute(5) }),
      ]);
      answers.slice(1).map(done);
      // With the part in first, the engine is no longer what was confirmed: it is looked at again.
      if (answers[0]?.status !== 201) done(await recordChange(desk.office.administrator, change));
      const ran = await rows('SELECT from_at FROM exposure WHERE component_id = $1', [componentId]);
      if (ran.length !== 1) missing.push(serialNumber);
    }
    expect(missing).toEqual([]);
  }, 60_000);
});

describe('facts entered at once for components of one airframe', () => {
  it('wait for one another in one order, and none is turned away', async () => {
    const recorded = await Promise.all(
      Array.from({ length: 12 }, async (_, index) => {
        const serialNumber = `AT-${index}`;
        const componentId = await part(serialNumber);
        const engine = await desk.register.component({
          kind: 'engine',
          serialNumber: `${serialNumber}-E`,
          engineModelId: desk.fleet.modelId,
          slots: [{ kind: 'part', name: 'Disk', lifeLimited: true }],
        });
        await desk.register.place(componentId, { slotId: engine.slots[0]?.id ?? '' });
        return { componentId, slotOf: engine };
      }),
    );
    const [first] = desk.fleet.airframes;
    const slotId = first?.positions[0]?.slots.find((slot) => slot.kind === 'engine')?.id ?? '';
    for (const [index, { slotOf }] of recorded.entries())
      done(
        await post('/api/placements', {
          componentId: slotOf.id,
          slotId,
          boundary: atMinute(20_000 + index * 10),
          until: atMinute(20_005 + index * 10),
        }),
      );
    const answers = await Promise.all(
      recorded.map(({ componentId }) =>
        post('/api/trace-gaps', { componentId, from: instantAt(1), to: instantAt(2), note: 'Card lost' }),
      ),
    );
    expect(answers.map(({ status }) => status)).toEqual(recorded.map(() => 201));
  }, 60_000);
});
