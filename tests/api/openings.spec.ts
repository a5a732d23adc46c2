import { describe, expect, it } from '@jest/globals';
import { componentDesk, type Recorded } from '../support/logbook/component-desk.js';
import { logFlights } from '../support/scenario/acts.js';
import { instantAt } from '../support/scenario/instants.js';
import { done } from '../support/scenario/problem.js';

const { desk, refusalOf, componentOf, bare } = componentDesk();

const balance = {
  at: instantAt(0),
  basis: 'new',
  rows: [{ ratingCode: null, minutes: 100, cycles: 2 }],
  source: 'Log 1',
};

describe('an opening balance', () => {
  it('is kept by rating, and adds up', async () => {
    const componentId = await bare();

    const opening = await desk.register.post<object>('/api/openings', {
      ...balance,
      componentId,
      rows: [
        { ratingCode: 'A', minutes: 100, cycles: 2 },
        { ratingCode: 'B', minutes: 50, cycles: 3, cycleDenominator: 2 },
      ],
    });

    expect(opening).toMatchObject({
      componentId,
      basis: 'new',
      rows: [{ ratingCode: 'A' }, { ratingCode: 'B', cycleDenominator: 2 }],
      voided: false,
    });
    expect((await componentOf(componentId)).counters.sinceNew).toEqual({
      minutes: 150,
      cycles: { units: 7, denominator: 2 },
    });
  });

  it('keeps what is not known unknown', async () => {
    const componentId = await bare();

    await desk.register.post('/api/openings', {
      ...balance,
      componentId,
      rows: [{ minutes: 100, cycles: null }],
    });

    expect(await componentOf(componentId)).toMatchObject({
      verified: false,
      counters: { sinceNew: { minutes: 100, cycles: null } },
    });
  });

  it('is refused a second time for the same basis until the first is voided', async () => {
    const componentId = await bare();
    const first = await desk.register.post<Recorded>('/api/openings', { ...balance, componentId });

    expect(await refusalOf('/api/openings', { ...balance, componentId })).toMatchObject({
      status: 409,
      code: 'ALREADY_EXISTS',
      fields: [{ field: 'basis' }],
    });
    await desk.register.post(`/api/openings/${first.id}/void`, { reason: 'Another log' });
    await desk.register.post('/api/openings', { ...balance, componentId, rows: [{ minutes: 7, cycles: 1 }] });

    expect((await componentOf(componentId)).counters.sinceNew.minutes).toBe(7);
    expect(await refusalOf(`/api/openings/${first.id}/void`, { reason: 'again' })).toMatchObject({
      status: 409,
      code: 'ALREADY_VOIDED',
    });
    const { openings } = done(
      await desk.office.administrator.get<{ openings: object[] }>(`/api/components/${componentId}/facts`),
    );
    expect(openings).toMatchObject([{ voided: false }, { voided: true, voidReason: 'Another log' }]);
  });

  it('is refused when a stay begins before it, naming the place', async () => {
    const componentId = await bare();
    await desk.register.place(componentId, { locationName: 'Store' }, 10);

    const problem = await refusalOf('/api/openings', { ...balance, componentId, at: instantAt(11) });

    expect(problem).toMatchObject({ status: 422, code: 'REFUSED_BY_FACTS', fields: [{ field: 'at' }] });
    expect(problem.detail).toContain('Store');
    await desk.register.post('/api/openings', { ...balance, componentId, at: instantAt(10) });
  });

  it('of an airframe is refused when a flight took off before it, naming its page', async () => {
    const { id: airframeId } = await desk.register.airframe('ZZ-OPEN', desk.fleet.typeId);
    done(
      await logFlights(desk.office.administrator, airframeId, [{ page: 'F1', takeOff: 100, landing: 160 }]),
    );

    const problem = await refusalOf('/api/openings', { ...balance, airframeId, at: instantAt(101) });

    expect(problem).toMatchObject({ status: 422, code: 'REFUSED_BY_FACTS' });
    expect(problem.detail).toContain('log page F1');
    await desk.register.post('/api/openings', { ...balance, airframeId, at: instantAt(100) });
    expect(done(await desk.office.administrator.get<object>(`/api/airframes/${airframeId}`))).toMatchObject({
      minutes: 160,
      flights: 3,
    });
  });

  it('is refused for nothing, for two things, for a rating twice and for a rating the model lacks', async () => {
    const componentId = await bare();
    const fields = async (body: object) =>
      (await refusalOf('/api/openings', { ...balance, ...body })).fields?.map(({ field }) => field);

    expect(await fields({})).toEqual(['componentId']);
    expect(await fields({ componentId, airframeId: desk.fleet.airframes[0]?.id })).toEqual(['componentId']);
    expect(await fields({ componentId, rows: [{ minutes: 1 }, { minutes: 2 }] })).toEqual([
      'rows[1].ratingCode',
    ]);
    expect(await fields({ componentId, rows: [{ ratingCode: 'Z', minutes: 1 }] })).toEqual([
      'rows[0].ratingCode',
    ]);
    expect(await fields({ componentId, rows: [{ minutes: -1 }] })).toEqual(['rows[0].minutes']);
    expect(await fields({ airframeId: desk.fleet.airframes[0]?.id, basis: 'overhaul' })).toEqual(['basis']);
  });

  it('is refused for the future, and with more since overhaul than since new', async () => {
    const componentId = await bare();
    await desk.register.post('/api/openings', { ...balance, componentId });

    expect(
      await refusalOf('/api/openings', { ...balance, componentId, at: '2200-01-01T00:00Z' }),
    ).toMatchObject({ status: 422, code: 'IN_THE_FUTURE' });
    const since = (minutes: number) => ({
      ...balance,
      componentId,
      basis: 'overhaul',
      rows: [{ minutes, cycles: 1 }],
    });
    expect(await refusalOf('/api/openings', since(101))).toMatchObject({
      code: 'REFUSED_BY_FACTS',
      fields: [{ field: 'rows' }],
    });
    expect(await refusalOf('/api/openings', { ...since(10), at: instantAt(5) })).toMatchObject({
      fields: [{ field: 'at' }],
    });
    await desk.register.post('/api/openings', since(100));
    expect((await componentOf(componentId)).counters).toMatchObject({ sinceOverhaul: { minutes: 100 } });
  });

  it('of several sent at once is recorded once', async () => {
    const componentId = await bare();

    const answers = await Promise.all(
      [1, 2, 3, 4].map(() => desk.office.administrator.post('/api/openings', { ...balance, componentId })),
    );

    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409, 409, 409]);
  });
});

describe('the journal of these facts', () => {
  it('has one entry for each act, in the stream of the component', async () => {
    const componentId = await bare();
    const { id } = await desk.register.post<Recorded>('/api/openings', { ...balance, componentId });
    await desk.register.post(`/api/openings/${id}/void`, { reason: 'Wrong' });

    const { rows } = done(
      await desk.office.administrator.get<{ rows: { kind: string }[] }>(
        `/api/journal?subject=${componentId}`,
      ),
    );

    expect(rows.map(({ kind }) => kind).sort()).toEqual([
      'component-added',
      'opening-recorded',
      'opening-voided',
    ]);
  });
});
