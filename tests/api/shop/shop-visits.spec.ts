import { beforeAll, describe, expect, it } from '@jest/globals';
import { fleetDesk } from '../../support/logbook/fleet-desk.js';
import { atMinute, recordChange } from '../../support/scenario/acts.js';
import { instantAt } from '../../support/scenario/instants.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { recordRequirement } from '../../support/scenario/requirements.js';
import { giveBack, send, type VisitAnswer } from '../../support/shop/shop-desk.js';

const desk = fleetDesk({ engines: 6 });
const engine = (index: number) => {
  const found = desk.fleet.engines[index];
  if (found === undefined) throw new Error(`no engine ${index}`);
  return found;
};
const client = () => desk.office.administrator;
const refusedOn = async (answer: Promise<{ readonly status: number }>) => {
  const problem = problemOf((await answer) as Parameters<typeof problemOf>[0]);
  return [problem.code, problem.fields?.[0]?.field];
};
/** A disk that lies in the store. */
const spareDisk = async (serialNumber: string) => {
  const { id } = await desk.register.component({
    ...{ kind: 'part', partNumber: 'K-DISK', serialNumber, lifeLimited: true },
    engineModelId: desk.fleet.modelId,
  });
  await desk.register.opening({ componentId: id }, [{ ratingCode: 'A', minutes: 0, cycles: 0 }]);
  await desk.register.place(id, { locationName: 'Store' });
  return id;
};

beforeAll(async () => {
  await desk.register.location('Engine shop', 'shop');
  await desk.register.location('Quarantine', 'quarantine');
}, 60_000);

describe('a shop visit', () => {
  it('keeps the build at dispatch, and tells after the return what changed', async () => {
    const one = engine(0);
    const disk = await spareDisk('NEW-D1');
    const bulletin = done(
      await recordRequirement(client(), 'SB-9', { kind: 'bulletin', engineModelId: desk.fleet.modelId }),
    );

    const sent = done(await send(client(), one.id, 100));
    expect(sent).toMatchObject({
      status: 'in-shop',
      returned: null,
      build: { ratingCode: 'A', sinceNew: { minutes: 60_000 }, sinceOverhaul: null },
    });

    const back = done(
      await giveBack(client(), sent.id, 5_000, {
        changes: [
          {
            ...{ slotId: one.slotIds.disk, outgoingSerial: 'ZZ-E1-D', removedToLocation: 'Quarantine' },
            ...{ incomingId: disk, at: instantAt(3_000), reason: 'Cycles low', certificate: 'C-D1' },
            disposition: { method: 'tag', text: 'Tag 44 with life status' },
          },
        ],
        resets: [
          { componentId: one.id, kind: 'overhaul' },
          { componentId: one.id, kind: 'shop-visit' },
          { componentId: one.moduleId, kind: 'repair' },
        ],
        accomplishments: [{ requirementId: bulletin.id, componentId: one.id }],
        ratingCode: 'B',
        preservation: { method: 'Vapour bag', goodUntil: '2026-02-01', document: 'Manual 72-00' },
        tag: { status: 'serviceable', tagNumber: 'C-7', reason: 'Released by the shop' },
      }),
    );

    expect(back.status).toBe('returned');
    expect(back.difference).toMatchObject({
      rating: { before: 'A', after: 'B' },
      slots: [{ name: 'Disk', before: { serialNumber: 'ZZ-E1-D' }, after: { serialNumber: 'NEW-D1' } }],
      counters: [{ counter: 'sinceOverhaul' }, { counter: 'sinceShopVisit' }],
      requirements: [{ code: 'SB-9' }],
      tightestCycles: { before: 19_000 },
    });
    expect(back.returned).toMatchObject({ changes: [{ disposition: 'tag' }] });
    expect(back.returned?.objections.map(({ code }) => code)).not.toContain('DISPOSITION_MISSING');
    // What it was at dispatch stays as it was kept.
    expect(back.build).toEqual(sent.build);
    expect(
      done(await client().get<{ place: { label: string }; ratingCode: string }>(`/api/components/${one.id}`)),
    ).toMatchObject({ place: { label: 'Store' }, ratingCode: 'B' });
  });

  it('sets counters since overhaul to zero and leaves since new, of the engine and of its limited parts', async () => {
    const two = engine(1);
    const sent = done(await send(client(), two.id, 100));
    const part = { componentId: two.partIds[1], kind: 'overhaul' };
    const { returned } = done(
      await giveBack(client(), sent.id, 200, { resets: [{ componentId: two.id, kind: 'overhaul' }, part] }),
    );

    const zero = { minutes: 0, cycles: { units: 0, denominator: 1 } };
    expect(returned?.build).toMatchObject({ sinceNew: sent.build.sinceNew, sinceOverhaul: zero });
    const diskOf = (build: VisitAnswer['build'] | undefined) =>
      build?.slots.find(({ name }) => name === 'Disk')?.component;
    expect(diskOf(returned?.build)?.sinceNew).toEqual(diskOf(sent.build)?.sinceNew);
    expect(diskOf(returned?.build)?.life).toEqual(diskOf(sent.build)?.life);
  });

  it('asks how a limited part that came off is controlled, unless it goes back to the same engine', async () => {
    const three = engine(2);
    const sent = done(await send(client(), three.id, 100));
    const off = { slotId: three.slotIds.disk, outgoingSerial: 'ZZ-E3-D', removedToLocation: 'Store' };
    const on = { slotId: three.slotIds.disk, incomingId: three.partIds[1] };
    const withCodes = async (changes: object[], minute: number) => {
      const { returned } = done(await giveBack(client(), sent.id, minute, { changes }));
      return returned?.objections.map(({ code }) => code);
    };
    expect(
      await withCodes(
        [
          { ...off, at: instantAt(150), reason: 'Access' },
          { ...on, at: instantAt(160), reason: 'Refitted' },
        ],
        200,
      ),
    ).not.toContain('DISPOSITION_MISSING');

    done(await client().post(`/api/shop-visits/${sent.id}/return/void`, { reason: 'Wrong report' }));
    expect(await withCodes([{ ...off, reason: 'To another engine' }], 210)).toEqual(
      expect.arrayContaining(['DISPOSITION_MISSING', 'LIMITED_PART_MISSING']),
    );
  });

  it('is voided with everything its return recorded, and the component is in the shop again', async () => {
    const four = engine(3);
    const sent = done(await send(client(), four.id, 100));
    const resets = [{ componentId: four.id, kind: 'shop-visit' }];
    const tag = { status: 'serviceable', tagNumber: 'C-8', reason: 'Released' };
    done(await giveBack(client(), sent.id, 200, { resets, tag }));

    expect(await refusedOn(client().post(`/api/shop-visits/${sent.id}/void`, { reason: 'Wrong' }))).toEqual([
      'REFUSED_BY_FACTS',
      undefined,
    ]);
    const again = done(
      await client().post<VisitAnswer>(`/api/shop-visits/${sent.id}/return/void`, { reason: 'Wrong' }),
    );
    expect(again).toMatchObject({ status: 'in-shop', returned: null });
    const component = () =>
      client().get<{ place: { label: string }; counters: object }>(`/api/components/${four.id}`);
    expect(done(await component())).toMatchObject({
      place: { label: 'Engine shop' },
      counters: { sinceShopVisit: null },
    });

    done(await client().post(`/api/shop-visits/${sent.id}/void`, { reason: 'Never sent' }));
    expect(done(await component())).toMatchObject({ place: { label: 'Store' } });
  });

  it('is refused where it is impossible, and nothing is stored', async () => {
    const five = engine(4);
    expect(await refusedOn(send(client(), five.id, 100, { locationName: 'Store' }))).toEqual([
      'REFUSED_BY_FACTS',
      'locationName',
    ]);
    expect(await refusedOn(send(client(), five.id, 100, { workscope: ' ' }))).toEqual([
      'INVALID_FIELDS',
      'workscope',
    ]);
    expect(await refusedOn(send(client(), five.id, 100, { sentAt: '2999-01-01T00:00Z' }))).toEqual([
      'IN_THE_FUTURE',
      'sentAt',
    ]);
    const sent = done(await send(client(), five.id, 100));
    expect(await refusedOn(send(client(), five.id, 150))).toEqual(['REFUSED_BY_FACTS', 'componentId']);
    expect(await refusedOn(giveBack(client(), sent.id, 100))).toEqual(['REFUSED_BY_FACTS', 'returnedAt']);
    const twice = {
      changes: [
        { slotId: five.slotIds.disk, incomingId: engine(0).partIds[0], reason: 'R' },
        {
          slotId: engine(5).slotIds.disk,
          outgoingSerial: 'ZZ-E6-D',
          removedToLocation: 'Store',
          reason: 'R',
        },
      ],
    };
    expect((await refusedOn(giveBack(client(), sent.id, 300, twice)))[1]).toMatch(/^changes\[0\]\./);
    const elsewhere = { changes: [twice.changes[1]] };
    expect(await refusedOn(giveBack(client(), sent.id, 300, elsewhere))).toEqual([
      'REFUSED_BY_FACTS',
      'changes[0].slotId',
    ]);
    const early = {
      changes: [{ slotId: five.slotIds.disk, incomingId: five.id, at: instantAt(50), reason: 'R' }],
    };
    expect(await refusedOn(giveBack(client(), sent.id, 300, early))).toEqual([
      'INVALID_FIELDS',
      'changes[0].at',
    ]);
    const stranger = { resets: [{ componentId: engine(5).id, kind: 'overhaul' }] };
    expect(await refusedOn(giveBack(client(), sent.id, 300, stranger))).toEqual([
      'REFUSED_BY_FACTS',
      'resets[0].componentId',
    ]);
    expect(done(await client().get<VisitAnswer>(`/api/shop-visits/${sent.id}`)).status).toBe('in-shop');

    done(await giveBack(client(), sent.id, 300));
    expect(await refusedOn(giveBack(client(), sent.id, 400))).toEqual(['REFUSED_BY_FACTS', 'returnedAt']);
  });

  it('is refused for what hangs on an airframe: it is removed first', async () => {
    const [airframe] = desk.fleet.airframes;
    const six = engine(5);
    const at = { airframeId: airframe?.id ?? '', positionNumber: 1, slot: 'engine' } as const;
    done(
      await recordChange(client(), {
        ...{ ...at, outgoingSerial: null, incomingSerial: six.serialNumber, boundary: atMinute(400) },
      }),
    );
    expect(await refusedOn(send(client(), six.id, 500))).toEqual(['REFUSED_BY_FACTS', 'componentId']);
    expect(await refusedOn(send(client(), six.moduleId, 500))).toEqual(['REFUSED_BY_FACTS', 'componentId']);
  });

  it('is listed, those in the shop apart from those returned', async () => {
    const list = async (query: string) =>
      done(
        await client().get<{ rows: { id: string; status: string }[]; next: string | null }>(
          `/api/shop-visits${query}`,
        ),
      );
    expect((await list('?status=returned')).rows.every(({ status }) => status === 'returned')).toBe(true);
    const first = await list('?limit=1');
    expect(first.rows).toHaveLength(1);
    const second = await list(`?limit=1&after=${first.next}`);
    expect(second.rows[0]?.id).not.toBe(first.rows[0]?.id);
    expect(await refusedOn(client().get('/api/shop-visits?after=x'))).toEqual(['INVALID_FIELDS', 'after']);
  });
});
