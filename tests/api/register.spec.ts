import { describe, expect, it } from '@jest/globals';
import type { ComponentView } from '../support/logbook/component-view.js';
import { fleetDesk } from '../support/logbook/fleet-desk.js';
import { employ } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';

const desk = fleetDesk();
const { refusalOf, fieldsOf } = desk;

describe('the fleet', () => {
  it('lists the rule sets an airframe can be under', async () => {
    const rules = done(await desk.office.administrator.get<{ code: string }[]>('/api/rule-sets'));

    expect(rules.map(({ code }) => code)).toEqual(expect.arrayContaining(['us-121', 'eu-145']));
  });

  it('gives an airframe its positions, each with its slots', async () => {
    const [first] = desk.fleet.airframes;

    const airframe = done(await desk.office.administrator.get<typeof first>(`/api/airframes/${first?.id}`));

    expect(airframe?.positions.map(({ number, slots }) => [number, slots.map(({ kind }) => kind)])).toEqual([
      [1, ['engine', 'pod']],
      [2, ['engine', 'pod']],
    ]);
    expect(airframe).toMatchObject({ minutes: 600_000, flights: 5_000, lastLandingAt: null, version: 1 });
  });

  it('gives an auxiliary power unit a slot of its own kind, at position 0', async () => {
    const { id: typeId } = await desk.register.post<{ id: string }>('/api/airframe-types', {
      maker: 'Veldt Aircraft',
      designation: 'With APU',
      positions: [
        { number: 1, kind: 'engine', mount: 'tail', label: 'Engine' },
        { number: 0, kind: 'apu', mount: 'tail', label: 'APU' },
      ],
    });

    const { positions } = await desk.register.airframe('ZZ-APU', typeId);

    expect(positions.map(({ number, slots }) => [number, slots.map(({ kind }) => kind)])).toEqual([
      [0, ['apu']],
      [1, ['engine', 'pod']],
    ]);
  });

  it('does not know what an airframe has flown before its opening is entered', async () => {
    const airframe = await desk.register.airframe('ZZ-NEW', desk.fleet.typeId);

    expect(airframe).toMatchObject({ minutes: null, flights: null });
  });

  it('refuses the registration of another airframe', async () => {
    const problem = await refusalOf('/api/airframes', {
      registration: 'ZZ-101',
      airframeTypeId: desk.fleet.typeId,
      serialNumber: 'another',
      ruleSet: 'eu-145',
      owner: 'Test operator',
    });

    expect(problem).toMatchObject({
      status: 409,
      code: 'ALREADY_EXISTS',
      fields: [{ field: 'registration' }],
    });
  });

  it('names the rule set and the zone that nobody knows', async () => {
    const airframe = {
      registration: 'ZZ-X',
      airframeTypeId: desk.fleet.typeId,
      serialNumber: 'x',
      ruleSet: 'moon',
      dayZone: 'Moon/Sea',
      owner: 'O',
    };

    expect(await fieldsOf('/api/airframes', airframe)).toEqual(['ruleSet', 'dayZone']);
  });

  it('refuses a type with two positions of one number, or an engine in place of the auxiliary power unit', async () => {
    const at = (number: number, kind: string) => ({ number, kind, mount: 'tail', label: `P${number}` });
    const type = (positions: object[]) => ({ maker: 'M', designation: 'D', positions });

    expect(await fieldsOf('/api/airframe-types', type([at(1, 'engine'), at(1, 'engine')]))).toEqual([
      'positions[1].number',
    ]);
    expect(await fieldsOf('/api/airframe-types', type([at(0, 'engine')]))).toEqual(['positions[0].number']);
    expect(await fieldsOf('/api/airframe-types', type([]))).toEqual(['positions']);
  });
});

describe('models and limits', () => {
  it('lists a model with its ratings and rules', async () => {
    const models = done(
      await desk.office.administrator.get<
        { id: string; ratings: { code: string }[]; cycleRules: object[] }[]
      >('/api/engine-models'),
    );

    const model = models.find(({ id }) => id === desk.fleet.modelId);
    expect(model?.ratings.map(({ code }) => code)).toEqual(['A', 'B']);
    expect(model?.cycleRules).toMatchObject([{ perFlight: 1, denominator: 1, airframeTypeId: null }]);
  });

  it('refuses a rule that counts nothing, and a rating named twice', async () => {
    const model = {
      kind: 'engine',
      maker: 'M',
      designation: 'D',
      lifeMethod: 'pro-rata',
      lifeSource: 'S',
      ratings: [{ code: 'A' }, { code: 'A' }],
      cycleRules: [] as object[],
    };
    const rule = {
      perFlight: 0,
      perLanding: 0,
      perTouchAndGo: 0,
      perStart: 0,
      perAbortedTakeOff: 0,
      denominator: 1,
      source: 'S',
      revision: '1',
    };

    expect(await fieldsOf('/api/engine-models', { ...model, cycleRules: [rule] })).toEqual([
      'ratings[1].code',
    ]);
    expect(await fieldsOf('/api/engine-models', { ...model, ratings: [], cycleRules: [rule] })).toEqual([
      'cycleRules[0].perFlight',
    ]);
  });

  it('computes lives again when a newer revision of the document is recorded, and when it is voided', async () => {
    const [engine] = desk.fleet.engines;
    const limiter = async () =>
      done(await desk.office.administrator.get<ComponentView>(`/api/components/${engine?.id}`)).limiter;
    expect(await limiter()).toMatchObject({ remainingCycles: 19_000 });

    const { id } = await desk.register.post<{ id: string }>('/api/life-limits', {
      partNumber: 'K-HUB',
      engineModelId: desk.fleet.modelId,
      ratingCode: 'A',
      authorisation: 'limited',
      cycles: 1_500,
      document: 'Manual, chapter 05',
      revision: '2',
      effectiveOn: '2024-01-01',
    });

    expect(await limiter()).toMatchObject({
      serialNumber: `${engine?.serialNumber}-H`,
      remainingCycles: 500,
    });
    await desk.register.post(`/api/life-limits/${id}/void`, { reason: 'Belongs to another part' });
    expect(await limiter()).toMatchObject({ remainingCycles: 19_000 });
    expect(await refusalOf(`/api/life-limits/${id}/void`, { reason: 'again' })).toMatchObject({
      status: 409,
      code: 'ALREADY_VOIDED',
    });
  });

  it('refuses a limit without an amount, one recorded already, and a rating the model does not have', async () => {
    const limit = {
      partNumber: 'K-HUB',
      engineModelId: desk.fleet.modelId,
      ratingCode: 'A',
      authorisation: 'limited',
      document: 'Manual, chapter 05',
      revision: '1',
      effectiveOn: '2020-01-01',
    };

    expect(await fieldsOf('/api/life-limits', limit)).toEqual(['cycles']);
    expect(await refusalOf('/api/life-limits', { ...limit, cycles: 10 })).toMatchObject({
      status: 409,
      code: 'ALREADY_EXISTS',
    });
    expect(await refusalOf('/api/life-limits', { ...limit, ratingCode: 'Z', cycles: 10 })).toMatchObject({
      status: 404,
      fields: [{ field: 'ratingCode' }],
    });
  });
});

describe('who may enter the register', () => {
  it('refuses the technician, who may read it', async () => {
    const technician = await employ(desk.office, {
      signInName: 'tec',
      fullName: 'Tec Nician',
      roles: ['technician'],
    });

    expect((await technician.get('/api/airframes')).status).toBe(200);
    expect(
      problemOf(await technician.post('/api/locations', { name: 'Elsewhere', kind: 'store' })),
    ).toMatchObject({ status: 403, code: 'NOT_ALLOWED' });
  });
});
