import { beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { componentDesk, type Recorded } from '../support/logbook/component-desk.js';
import { logFlights } from '../support/scenario/acts.js';
import { type BuiltEngine, buildEngine, type Fleet, slotOf } from '../support/scenario/fleet.js';
import { instantAt } from '../support/scenario/instants.js';
import { done } from '../support/scenario/problem.js';

const { desk, refusalOf, componentOf, bare } = componentDesk();

describe('an engine on wing', () => {
  let engine: BuiltEngine;
  const airframe = () => desk.fleet.airframes[0] as Fleet['airframes'][number];

  beforeAll(async () => {
    engine = await buildEngine(desk.register, desk.fleet.modelId, 'ZZ-WING');
    await desk.register.place(engine.id, { slotId: slotOf(airframe(), 1, 'engine') }, 1_000);
    done(
      await logFlights(desk.office.administrator, airframe().id, [
        { page: 'W1', takeOff: 2_000, landing: 2_060 },
      ]),
    );
    done(
      await logFlights(desk.office.administrator, airframe().id, [
        { page: 'W2', takeOff: 3_000, landing: 3_060 },
      ]),
    );
  });

  it('counts since a shop visit recorded between two flights, and no more once that is voided', async () => {
    const { id } = await desk.register.post<Recorded>('/api/resets', {
      componentId: engine.id,
      kind: 'shop-visit',
      at: instantAt(2_500),
      evidence: 'Shop report 7',
    });

    expect((await componentOf(engine.id)).counters).toMatchObject({
      sinceNew: { minutes: 60_120, cycles: { units: 1_002 } },
      sinceShopVisit: { minutes: 60, cycles: { units: 1 } },
      sinceOverhaul: null,
    });
    await desk.register.post(`/api/resets/${id}/void`, { reason: 'Another engine' });
    expect((await componentOf(engine.id)).counters.sinceShopVisit).toBeNull();
  });

  it('is refused a shop visit inside a flight, before its opening, or in the future', async () => {
    const reset = { componentId: engine.id, kind: 'overhaul', evidence: 'Shop report 7' };

    expect(await refusalOf('/api/resets', { ...reset, at: instantAt(2_030) })).toMatchObject({
      code: 'INSIDE_A_FLIGHT',
      fields: [{ field: 'at' }],
    });
    expect(await refusalOf('/api/resets', { ...reset, at: instantAt(-5) })).toMatchObject({
      code: 'BEFORE_OPENING',
    });
    expect(await refusalOf('/api/resets', { ...reset, at: '2200-01-01T00:00Z' })).toMatchObject({
      code: 'IN_THE_FUTURE',
    });
  });

  it('has its parts used at the rating it ran at: a change moves the cycles flown after it', async () => {
    const [, disk = ''] = engine.partIds;
    // 1000 cycles at A (limit 20 000) and two flights at A.
    expect((await componentOf(disk)).life).toMatchObject({ remainingCycles: 18_998 });

    await desk.register.post('/api/rating-changes', {
      componentId: engine.id,
      at: instantAt(2_500),
      ratingCode: 'B',
      source: 'Plate',
    });

    // used = 1001/20000 + 1/15000; remaining at B = floor((1 - used) * 15000) = floor(15000 - 750.75 - 1).
    expect((await componentOf(disk)).life).toMatchObject({ remainingCycles: 14_248 });
    expect((await componentOf(engine.id)).ratingCode).toBe('B');
  });

  it('is refused a rating its model lacks, one at the same instant, and one for a part', async () => {
    const change = { componentId: engine.id, at: instantAt(2_700), ratingCode: 'A', source: 'Plate' };

    expect(await refusalOf('/api/rating-changes', { ...change, ratingCode: 'Z' })).toMatchObject({
      status: 404,
      fields: [{ field: 'ratingCode' }],
    });
    expect(await refusalOf('/api/rating-changes', { ...change, at: instantAt(2_500) })).toMatchObject({
      status: 409,
    });
    expect(
      await refusalOf('/api/rating-changes', { ...change, componentId: engine.partIds[0] }),
    ).toMatchObject({ status: 422, fields: [{ field: 'componentId' }] });
  });
});

describe('a gap in the records of a part', () => {
  let partId: string;
  let gaps = 0;

  beforeEach(async () => {
    gaps += 1;
    const engine = await buildEngine(desk.register, desk.fleet.modelId, `ZZ-GAP${gaps}`);
    partId = engine.partIds[1] ?? '';
  });

  const gap = () => ({
    componentId: partId,
    from: instantAt(-500),
    to: instantAt(-400),
    note: 'No log for July',
  });

  it('leaves no remaining life, until the worst case is accepted, flagged', async () => {
    expect((await componentOf(partId)).life).toMatchObject({ kind: 'limited', remainingCycles: 19_000 });

    const { id } = await desk.register.post<Recorded>('/api/trace-gaps', gap());

    const untraced = await componentOf(partId);
    expect(untraced.verified).toBe(false);
    expect(untraced.life).toMatchObject({
      kind: 'unsubstantiated',
      remainingCycles: null,
      reasons: [{ code: 'TRACE_GAP' }],
    });
    const acceptance = {
      componentId: partId,
      traceGapId: id,
      acceptedBy: 'Chief engineer',
      reference: 'Letter 12',
      cycles: 500,
      minutes: 60_000,
    };
    await desk.register.post('/api/gap-acceptances', acceptance);
    // The 500 count at the lowest limit: floor(20000 · (1 − 1000/20000 − 500/15000)).
    expect((await componentOf(partId)).life).toMatchObject({
      kind: 'limited',
      remainingCycles: 18_333,
      flagged: true,
    });
    expect(await refusalOf('/api/gap-acceptances', acceptance)).toMatchObject({
      status: 409,
      code: 'ALREADY_EXISTS',
    });
  });

  it('goes when it is voided', async () => {
    const { id } = await desk.register.post<Recorded>('/api/trace-gaps', gap());

    await desk.register.post(`/api/trace-gaps/${id}/void`, { reason: 'The log was found' });

    expect((await componentOf(partId)).life).toMatchObject({
      kind: 'limited',
      remainingCycles: 19_000,
      flagged: false,
    });
  });

  it('is refused when it ends before it begins, and its acceptance for a gap of another part', async () => {
    expect(await refusalOf('/api/trace-gaps', { ...gap(), to: instantAt(-500) })).toMatchObject({
      status: 400,
      fields: [{ field: 'to' }],
    });
    const { id: traceGapId } = await desk.register.post<Recorded>('/api/trace-gaps', gap());
    const acceptance = {
      componentId: await bare(),
      traceGapId,
      acceptedBy: 'Chief engineer',
      reference: 'Letter 12',
    };
    expect(await refusalOf('/api/gap-acceptances', acceptance)).toMatchObject({
      status: 404,
      fields: [{ field: 'traceGapId' }],
    });
  });
});
