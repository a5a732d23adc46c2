import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Answer, HttpClient } from '../../support/http-client.js';
import { slotOf } from '../../support/scenario/fleet.js';
import { faultsOfRefusal } from '../../support/scenario/impossible.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { openShop, type Shop } from '../../support/work/shop.js';
import { recordProcedure, type ShownPackage } from '../../support/work/work-desk.js';

let shop: Shop;
let airframeId: string;

beforeAll(async () => {
  shop = await openShop();
  airframeId = shop.fleet.airframe.id;
}, 120_000);

afterAll(() => shop?.close(), 30_000);

const open = (body: object, client: HttpClient = shop.planner): Promise<Answer<ShownPackage>> =>
  client.post<ShownPackage>('/api/packages', body);

const typeOfAirframe = async (): Promise<{ readonly designation: string }> => {
  const types = done(
    await shop.planner.get<readonly { readonly id: string; readonly designation: string }[]>(
      '/api/airframe-types',
    ),
  );
  const found = types.find(({ id }) => id === shop.fleet.typeId);
  if (found === undefined) throw new Error('no such type');
  return found;
};

const own = { title: 'Look at the harness.', inspection: 'none' };
const engineOrder = (words: object) => ({
  positionNumber: 1,
  slot: 'engine',
  outgoingSerial: 'ZZ-E1',
  incomingSerial: 'ZZ-E3',
  removedToLocation: 'Store',
  reason: 'Planned',
  ...words,
});

describe('an order that cannot be', () => {
  const faults = (body: object, status: number, code: string, field: string) =>
    faultsOfRefusal(shop.office.database.adminUrl, { body, status, code, field }, (sent) => open(sent));
  const change = (order: object, more: object = {}) => ({
    kind: 'engine-change',
    title: 'Change',
    airframeId,
    procedureId: shop.procedureId,
    order: engineOrder(order),
    ...more,
  });

  it('names what is installed there when another is to come off', async () => {
    const answer = await open(change({ outgoingSerial: 'ZZ-E2' }));
    expect(problemOf(answer)).toMatchObject({ status: 409, code: 'NOT_INSTALLED_THERE' });
    expect(problemOf(answer).detail).toContain('ZZ-E1 is installed there');
    expect(
      await faults(change({ outgoingSerial: 'ZZ-E2' }), 409, 'NOT_INSTALLED_THERE', 'order.outgoingSerial'),
    ).toEqual([]);
  });

  it('is refused when the place is taken and nothing comes off', async () => {
    const answer = await open(change({ outgoingSerial: null }));
    expect(problemOf(answer).fields?.[0]).toMatchObject({
      field: 'order.outgoingSerial',
      reason: 'ZZ-E1 is installed there.',
    });
  });

  it('is refused when what goes on is of a model that no rule counts on this type of airframe', async () => {
    const { register } = shop.fleet;
    const typeId = await register.airframeType('Another type', 2);
    const engineModelId = await register.engineModel('K-other', {
      ratings: ['1'],
      rules: [{ perFlight: 1, airframeTypeId: typeId }],
    });
    await register.component({ kind: 'engine', serialNumber: 'ZZ-OTHER', engineModelId });
    expect(
      await faults(change({ incomingSerial: 'ZZ-OTHER' }), 422, 'REFUSED_BY_FACTS', 'order.incomingSerial'),
    ).toEqual([]);
  });

  it('is refused when the procedure is for another type of airframe or another model', async () => {
    const { register } = shop.fleet;
    const typeId = await register.airframeType('Third type', 2);
    await register.engineModel('K-third', {
      ratings: ['1'],
      rules: [{ perFlight: 1, airframeTypeId: typeId }],
    });
    const { designation } = await typeOfAirframe();
    const recorded = (code: string, madeFor: object) => recordProcedure(shop.planner, { code, madeFor });
    for (const procedureId of [
      await recorded('THIRD-TYPE', { airframeType: 'Third type' }),
      await recorded('THIRD-MODEL', { engineModel: 'K-third' }),
    ])
      expect(await faults(change({}, { procedureId }), 422, 'REFUSED_BY_FACTS', 'procedureId')).toEqual([]);
    const procedureId = await recorded('OWN-TYPE', { airframeType: designation });
    expect((await open(change({}, { procedureId }))).status).toBe(201);
  });

  it('is refused when what goes on is installed elsewhere, of another kind, or in no register', async () => {
    expect(
      await faults(change({ incomingSerial: 'ZZ-E2' }), 409, 'ALREADY_INSTALLED', 'order.incomingSerial'),
    ).toEqual([]);
    expect(
      await faults(change({ incomingSerial: 'ZZ-E3-M' }), 422, 'WRONG_KIND', 'order.incomingSerial'),
    ).toEqual([]);
    expect(
      await faults(change({ incomingSerial: 'ZZ-E99' }), 404, 'NOT_FOUND', 'order.incomingSerial'),
    ).toEqual([]);
  });

  it('is refused when nothing changes, or what comes off goes nowhere', async () => {
    expect(
      await faults(change({ incomingSerial: 'ZZ-E1' }), 422, 'NOTHING_TO_CHANGE', 'order.incomingSerial'),
    ).toEqual([]);
    expect(
      await faults(change({ removedToLocation: 'Nowhere' }), 404, 'NOT_FOUND', 'order.removedToLocation'),
    ).toEqual([]);
    expect(await faults(change({ ratingCode: 'Q' }), 404, 'NOT_FOUND', 'order.ratingCode')).toEqual([]);
  });

  it('is refused when no step of the procedure makes it', async () => {
    const onlyOn = change({ positionNumber: 1, incomingSerial: undefined });
    const answer = await open(onlyOn);
    expect(problemOf(answer).fields?.[0]).toMatchObject({ field: 'procedureId' });
    expect(problemOf(answer).detail).toContain('nothing that goes on');
  });

  it('is refused at a place that is not on what the package is on', async () => {
    const [second] = shop.fleet.airframes.slice(1);
    const [, , third] = shop.fleet.engines;
    if (second === undefined) throw new Error('no second airframe');
    const order = { slotId: slotOf(second, 1, 'engine'), incomingSerial: 'ZZ-E4', reason: 'Planned' };
    const body = {
      kind: 'component-change',
      title: 'Change',
      componentId: third?.id,
      ruleSet: 'eu-145',
      order,
    };
    expect(await faults(body, 422, 'REFUSED_BY_FACTS', 'order.slotId')).toEqual([]);
  });
});

describe('a package that cannot be', () => {
  it.each([
    ['on nothing', { kind: 'inspection', title: 'X', steps: [own] }, 'airframeId'],
    ['without work', { kind: 'inspection', title: 'X', airframeId: 'own' }, 'steps'],
    [
      'an engine change without an order',
      { kind: 'engine-change', title: 'X', airframeId: 'own', steps: [own] },
      'order',
    ],
    [
      'of a procedure for other work',
      { kind: 'directive', title: 'X', airframeId: 'own', procedureId: 'own' },
      'procedureId',
    ],
    ['of a kind unknown', { kind: 'repair', title: 'X', airframeId: 'own', steps: [own] }, 'kind'],
    [
      'with a step without a title',
      { kind: 'inspection', title: 'X', airframeId: 'own', steps: [{ inspection: 'none' }] },
      'steps[0].title',
    ],
  ])('is refused %s', async (_, body: object, field) => {
    const filled: object = {
      ...body,
      ...('airframeId' in body ? { airframeId } : {}),
      ...('procedureId' in body ? { procedureId: shop.procedureId } : {}),
    };
    const answer = await open(filled);
    expect(answer.status).toBeGreaterThanOrEqual(400);
    expect(problemOf(answer).fields?.map((each) => each.field)).toContain(field);
  });

  it('names the step whose range is none', async () => {
    const captures = [
      {
        kind: 'torque',
        key: 'bolts',
        label: 'Bolts',
        points: ['1'],
        low: '20',
        high: '10',
        unit: 'N·m',
        thread: 'dry',
        runOn: { rule: 'none', low: null, high: null },
        binds: 'range',
      },
    ];
    const answer = await open({
      kind: 'inspection',
      title: 'X',
      airframeId,
      steps: [own, { ...own, captures }],
    });
    expect(problemOf(answer)).toMatchObject({ status: 400, fields: [{ field: 'steps[1].captures[0]' }] });
  });

  it('is opened by planners, records, certifying staff and administrators only', async () => {
    const body = { kind: 'inspection', title: 'X', airframeId, steps: [own] };
    expect(problemOf(await open(body, shop.technician)).status).toBe(403);
    expect(problemOf(await open(body, shop.inspector)).status).toBe(403);
    done(await open(body, shop.office.administrator));
  });
});
