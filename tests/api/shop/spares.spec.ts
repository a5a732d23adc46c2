import { beforeAll, describe, expect, it } from '@jest/globals';
import { fleetDesk } from '../../support/logbook/fleet-desk.js';
import { atMinute, recordChange } from '../../support/scenario/acts.js';
import { slotOf } from '../../support/scenario/fleet.js';
import { instantAt } from '../../support/scenario/instants.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { recordRequirement } from '../../support/scenario/requirements.js';
import { send } from '../../support/shop/shop-desk.js';

interface Spare {
  readonly componentId: string;
  readonly serialNumber: string;
  readonly fit: boolean;
  readonly reasons: readonly { readonly code: string; readonly text: string }[];
  readonly left: { readonly cycles: number | null; readonly cyclesPart: string | null };
  readonly location: string | null;
  readonly nextRequirement: { readonly code: string; readonly remaining: number | null } | null;
  readonly preservation: { readonly goodUntil: string; readonly over: boolean } | null;
  readonly tag: { readonly status: string } | null;
}

const desk = fleetDesk();
const client = () => desk.office.administrator;
const page = async (query = '') =>
  done(
    await client().get<{ rows: readonly Spare[]; total: number; next: string | null }>(`/api/spares${query}`),
  );
const spare = async (serialNumber: string) => {
  const { rows } = await page(`?search=${serialNumber}&kind=engine`);
  return rows.find((row) => row.serialNumber === serialNumber);
};
const tag = (componentId: string, more: object) =>
  client().post('/api/serviceability-tags', {
    ...{ componentId, status: 'unserviceable', tagNumber: 'T-1', reason: 'Oil leak', at: instantAt(50) },
    ...more,
  });
const idOf = (index: number) => desk.fleet.engines[index]?.id ?? '';

beforeAll(async () => {
  await desk.register.location('Engine shop', 'shop');
  await recordRequirement(client(), 'REQ-1', { repeat: { cycles: 500 }, threshold: { cycles: 1_200 } });
}, 60_000);

describe('spares', () => {
  it('are told with what is left in their tightest part, what comes next, and where they are', async () => {
    expect(await spare('ZZ-E1')).toMatchObject({
      fit: true,
      reasons: [],
      location: 'Store',
      left: { cycles: 19_000 },
      nextRequirement: { code: 'REQ-1', remaining: 200 },
      preservation: null,
      tag: null,
    });
  });

  it('are fit as parts that are told at the rating of the engine they go into', async () => {
    const { id } = await desk.register.component({
      ...{ kind: 'part', partNumber: 'K-DISK', serialNumber: 'NEW-D1', lifeLimited: true },
      engineModelId: desk.fleet.modelId,
    });
    await desk.register.opening({ componentId: id }, [{ ratingCode: 'A', minutes: 0, cycles: 0 }]);
    await desk.register.place(id, { locationName: 'Store' });
    expect((await page('?search=NEW-D1')).rows).toMatchObject([
      { fit: true, reasons: [], left: { ratingOpen: true, cycles: null } },
    ]);
  });

  it('are not fit by a tag, by a tag of what is in them, by a shop without return: each reason told', async () => {
    done(await tag(idOf(0), {}));
    done(await tag(desk.fleet.engines[1]?.partIds[0] ?? '', { status: 'quarantine', tagNumber: 'Q-1' }));
    done(await send(client(), idOf(2), 60));

    expect((await spare('ZZ-E1'))?.reasons.map(({ code }) => code)).toEqual(['unserviceable']);
    expect((await spare('ZZ-E2'))?.reasons).toEqual([
      { code: 'quarantine', text: 'ZZ-E2-H is tagged for quarantine (Q-1).' },
    ]);
    expect((await spare('ZZ-E3'))?.reasons.map(({ code }) => code)).toEqual(['in-shop']);
    const fit = (await page('?kind=engine&fit=true')).rows.map(({ serialNumber }) => serialNumber);
    expect(fit).toEqual(['ZZ-E4', 'ZZ-E5']);
    expect((await page('?kind=engine&fit=false')).total).toBe(3);
  });

  it('are fit again by a newer serviceable tag, which rests on a certificate', async () => {
    const serviceable = { status: 'serviceable', tagNumber: 'S-1', reason: 'Repaired', at: instantAt(70) };
    expect(problemOf(await tag(idOf(0), serviceable)).fields?.map(({ field }) => field)).toEqual([
      'certificate',
    ]);
    done(await tag(idOf(0), { ...serviceable, certificate: 'C-1' }));
    expect(await spare('ZZ-E1')).toMatchObject({ fit: true, tag: { status: 'serviceable' } });
  });

  it('tell when a preservation is over', async () => {
    const preserve = (more: object) =>
      client().post('/api/preservations', {
        ...{ componentId: idOf(0), at: instantAt(50), method: 'Bag', document: 'Manual' },
        ...more,
      });
    expect(problemOf(await preserve({ goodUntil: '2024-12-01' })).fields?.map(({ field }) => field)).toEqual([
      'goodUntil',
    ]);
    done(await preserve({ goodUntil: '2025-02-01' }));
    expect((await spare('ZZ-E1'))?.preservation).toEqual({ goodUntil: '2025-02-01', over: true });
    const { id } = done(await preserve({ goodUntil: '2999-01-01' })) as { id: string };
    expect((await spare('ZZ-E1'))?.preservation?.over).toBe(false);
    done(await client().post(`/api/preservations/${id}/void`, { reason: 'Wrong engine' }));
    expect((await spare('ZZ-E1'))?.preservation?.over).toBe(true);
    expect(problemOf(await client().post(`/api/preservations/${id}/void`, { reason: 'R' })).code).toBe(
      'ALREADY_VOIDED',
    );
  });

  it('are told for a place: by kind and model at a position, by part numbers in a component', async () => {
    const [airframe] = desk.fleet.airframes;
    if (airframe === undefined) throw new Error('no airframe');
    const atPosition = await page(`?slotId=${slotOf(airframe, 1, 'engine')}`);
    expect(atPosition.rows.every(({ serialNumber }) => /^ZZ-E\d$/.test(serialNumber))).toBe(true);
    const disks = await page(`?slotId=${desk.fleet.engines[0]?.slotIds.disk}`);
    expect(disks.rows.map(({ serialNumber }) => serialNumber)).toEqual(['NEW-D1']);
    expect(problemOf(await client().get(`/api/spares?slotId=${idOf(0)}`)).code).toBe('NOT_FOUND');
  });

  it('come a page at a time in the order asked, and what is installed is none', async () => {
    const first = await page('?limit=2&sort=cycles');
    const second = await page(`?limit=2&sort=cycles&after=${first.next}`);
    const ids = [...first.rows, ...second.rows].map(({ componentId }) => componentId);
    expect(new Set(ids).size).toBe(4);
    expect(problemOf(await client().get('/api/spares?after=x')).fields?.[0]?.field).toBe('after');
    expect(problemOf(await client().get('/api/spares?sort=price')).status).toBe(400);

    const [airframe] = desk.fleet.airframes;
    const at = { airframeId: airframe?.id ?? '', positionNumber: 1, slot: 'engine' } as const;
    done(
      await recordChange(client(), {
        ...{ ...at, outgoingSerial: null, incomingSerial: 'ZZ-E5', boundary: atMinute(400) },
      }),
    );
    expect(await spare('ZZ-E5')).toBeUndefined();
  });
});

describe('what is fitted though its tag forbids it', () => {
  it('is recorded with an objection, and blocks the release', async () => {
    const [airframe] = desk.fleet.airframes;
    const at = { airframeId: airframe?.id ?? '', positionNumber: 2, slot: 'engine' } as const;
    done(await tag(idOf(3), { tagNumber: 'T-9' }));
    const change = done(
      await recordChange(client(), {
        ...{ ...at, outgoingSerial: null, incomingSerial: 'ZZ-E4', boundary: atMinute(500) },
      }),
    );
    const check = done(
      await client().get<{ objections: { code: string; reason: string }[] }>(
        `/api/packages/${change.id}/release-check`,
      ),
    );
    expect(check.objections).toContainEqual(
      expect.objectContaining({
        code: 'PART_UNSERVICEABLE',
        severity: 'blocking',
        reason: 'Tag T-9 says it is unserviceable.',
      }),
    );
  });
});
