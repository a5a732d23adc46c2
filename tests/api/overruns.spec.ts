import { beforeEach, describe, expect, it } from '@jest/globals';
import { fleetDesk } from '../support/logbook/fleet-desk.js';
import { LONG_AGO, type OldRecords, oldRecords } from '../support/logbook/old-records.js';
import { type FlightToLog, logFlights, onTheWire, recordChange } from '../support/scenario/acts.js';
import { dateAt, instantAt } from '../support/scenario/instants.js';
import { done } from '../support/scenario/problem.js';
import { accomplish, recordRequirement } from '../support/scenario/requirements.js';

const desk = fleetDesk({ engines: 1, airframes: 1 });

interface Overrun {
  readonly componentId: string | null;
  readonly requirement: string | null;
  readonly dimension: string;
  readonly by: number;
  readonly isOpen: boolean;
  readonly flights: number;
  readonly limit: number | null;
  readonly dueOn: string | null;
  readonly document: string;
  readonly first: { readonly logPage: string };
  readonly last: { readonly logPage: string };
}

interface Broken {
  readonly newlyOver: readonly { readonly componentId: string | null; readonly remaining: number }[];
  readonly newlyUnknown: readonly {
    readonly componentId: string | null;
    readonly kind: string;
    readonly reason: string | null;
  }[];
  readonly overruns: readonly Overrun[];
}

let old: OldRecords;
let page = 0;

const flight = (name: string, after: number): FlightToLog => ({
  page: name,
  takeOff: LONG_AGO + after,
  landing: LONG_AGO + after + 60,
});
const log = async (...flights: FlightToLog[]) =>
  done(await logFlights(desk.office.administrator, old.airframe.id, flights)) as unknown as Broken & {
    readonly late: boolean;
    readonly flights: readonly { readonly id: string }[];
  };
const post = async <T>(path: string, body: object) =>
  done(await desk.office.administrator.post<T>(path, body));
const overrunsOf = async (id: string) =>
  done(await desk.office.administrator.get<Overrun[]>(`/api/components/${id}/overruns`));
const overrunsOn = async (id: string) =>
  done(await desk.office.administrator.get<Overrun[]>(`/api/airframes/${id}/overruns`));

const removed = async (after: number) =>
  done(
    await recordChange(desk.office.administrator, {
      ...{ airframeId: old.airframe.id, positionNumber: 1, slot: 'engine' },
      ...{ outgoingSerial: old.engineSerial, incomingSerial: null },
      boundary: { kind: 'instant', at: instantAt(LONG_AGO + after) },
    }),
  );

beforeEach(async () => {
  page += 1;
  old = await oldRecords(desk);
});

describe('a flight entered nine years late, before the engine was removed', () => {
  beforeEach(async () => {
    // 1,002 of 1,002 cycles: the last one is used, none beyond.
    await log(flight('P1', 100), flight('P3', 500));
    await removed(1_000);
    await log({ page: 'N1', takeOff: 100, landing: 160 });
  });

  it('tells that a disk flew beyond its life then, though it is removed since', async () => {
    expect(await overrunsOf(old.engineId)).toEqual([]);

    const answer = await log(flight('P2', 300));

    const found = {
      ...{ componentId: old.diskId, requirement: null, dimension: 'cycles', by: 1, isOpen: false },
      ...{ flights: 1, limit: 1_002, document: 'Manual, chapter 05', first: { logPage: 'P3' } },
      last: { logPage: 'P3' },
    };
    expect(answer).toMatchObject({
      late: true,
      newlyOver: [{ componentId: old.diskId, remaining: -1 }],
      overruns: [found],
    });
    expect(await overrunsOf(old.diskId)).toMatchObject([found]);
    expect(await overrunsOf(old.engineId)).toMatchObject([found]);
    expect(await overrunsOn(old.airframe.id)).toMatchObject([found]);
  });

  it('tells it no more once that flight is voided', async () => {
    const { flights } = await log(flight('P2', 300));

    const voided = await post<Broken>(`/api/flights/${flights[0]?.id}/void`, { reason: 'Another airframe' });

    expect(voided.overruns).toEqual([]);
    expect(await overrunsOn(old.airframe.id)).toEqual([]);
  });

  it('is told by a correction that moves a flight before the removal', async () => {
    const now = await log({ page: 'N2', takeOff: 300, landing: 360 });
    expect(now.overruns).toEqual([]);

    const answer = await post<Broken>(`/api/flights/${now.flights[0]?.id}/correct`, {
      reason: 'The year was read wrongly',
      flight: onTheWire(flight('N2', 700)),
    });

    expect(answer.overruns).toMatchObject([{ componentId: old.diskId, first: { logPage: 'N2' }, by: 1 }]);
  });

  it('is told by the balance that is entered anew with what was told too little', async () => {
    const facts = done(
      await desk.office.administrator.get<{ openings: { id: string }[] }>(
        `/api/components/${old.diskId}/facts`,
      ),
    );
    await post(`/api/openings/${facts.openings[0]?.id}/void`, { reason: 'Typed wrongly' });

    const answer = await post<{ consequences: Broken }>('/api/openings', {
      ...{ componentId: old.diskId, at: instantAt(LONG_AGO), basis: 'new', source: 'Shop report 3' },
      rows: [{ ratingCode: 'A', minutes: 60_000, cycles: 1_001 }],
    });

    expect(answer.consequences.overruns).toMatchObject([
      { componentId: old.diskId, by: 1, first: { logPage: 'P3' } },
    ]);
  });
});

describe('a stay of the past', () => {
  it('that is voided takes what was flown in it off the part, and told again puts it back', async () => {
    await log(flight('P1', 100), flight('P2', 300), flight('P3', 500));
    expect(await overrunsOf(old.diskId)).toMatchObject([{ by: 1, isOpen: true, first: { logPage: 'P3' } }]);
    const places = done(
      await desk.office.administrator.get<{ id: string; kind: string; slotId: string }[]>(
        `/api/components/${old.diskId}/places`,
      ),
    );
    const [stay] = places;

    const voided = await post<{ consequences: Broken }>(`/api/placements/${stay?.id}/void`, {
      reason: 'Another disk',
    });

    expect(voided.consequences.overruns).toEqual([]);
    expect(await overrunsOf(old.diskId)).toEqual([]);
    const placed = await post<{ consequences: Broken }>('/api/placements', {
      componentId: old.diskId,
      slotId: stay?.slotId,
      boundary: { kind: 'instant', at: instantAt(LONG_AGO) },
      until: { kind: 'instant', at: instantAt(LONG_AGO + 2_000) },
    });
    expect(placed.consequences.overruns).toMatchObject([{ by: 1, isOpen: false, flights: 1 }]);
  });
});

describe('a duty that was done late', () => {
  it('shows by a late flight: the engine flew on beyond it until it was done', async () => {
    const { id } = done(
      await recordRequirement(desk.office.administrator, `D-${page}`, {
        ...{ anchor: 'part', partNumber: `K-SHORT-${page}`, repeat: { cycles: 2 }, countedFrom: 'new' },
        effectiveOn: '2010-01-01',
      }),
    );
    const meet = async (after: number) =>
      done(
        await accomplish(desk.office.administrator, {
          ...{ requirementId: id, componentId: old.diskId, at: instantAt(LONG_AGO + after) },
        }),
      );
    await meet(0);
    await log(flight('P1', 100), flight('P3', 500));
    await meet(900);
    await log(flight('P4', 1_000));
    const duty = async () => (await overrunsOf(old.diskId)).filter((each) => each.requirement !== null);
    // The first was never in time: 1,000 cycles since new, and 2 granted; but nothing was flown here beyond it.
    expect(await duty()).toEqual([]);

    const answer = await log(flight('P2', 300));

    expect(answer.overruns.filter((each) => each.requirement !== null)).toMatchObject([
      { componentId: old.diskId, dimension: 'cycles', by: 1, isOpen: false, first: { logPage: 'P3' } },
    ]);
    expect(await duty()).toHaveLength(1);
  });

  it('counts days: what took off after the last day was beyond it', async () => {
    const { id } = done(
      await recordRequirement(desk.office.administrator, `C-${page}`, {
        ...{ anchor: 'airframe', repeat: { days: 10 }, countedFrom: 'date', fromOn: dateAt(0) },
        airframeTypeId: desk.fleet.typeId,
      }),
    );
    const meet = async (day: number) =>
      done(
        await accomplish(desk.office.administrator, {
          ...{ requirementId: id, airframeId: old.airframe.id, at: instantAt(day * 1_440 + 600) },
        }),
      );
    const onDay = (name: string, day: number): FlightToLog => ({
      ...{ page: name, takeOff: day * 1_440 + 60, landing: day * 1_440 + 120 },
    });
    await meet(0);
    await log(onDay('D9', 9), onDay('D12', 12));
    await meet(13);

    const [found, ...more] = (await overrunsOn(old.airframe.id)).filter((each) => !each.isOpen);

    expect(more).toEqual([]);
    expect(found).toMatchObject({
      ...{ dimension: 'days', by: 2, flights: 1, dueOn: dateAt(10) },
      first: { logPage: 'D12' },
    });
  });
});

describe('a balance whose trace is not shown', () => {
  it('leaves the life that rests on it not verified, until the worst case is accepted', async () => {
    const facts = done(
      await desk.office.administrator.get<{ openings: { id: string }[] }>(
        `/api/components/${old.diskId}/facts`,
      ),
    );
    await post(`/api/openings/${facts.openings[0]?.id}/void`, { reason: 'Its papers are not whole' });
    const opened = await post<{ id: string; trace: string; consequences: Broken }>('/api/openings', {
      ...{ componentId: old.diskId, at: instantAt(LONG_AGO), basis: 'new', source: 'Operator statement' },
      ...{ trace: 'not-shown', traceNote: 'Nothing from 2004 to 2007' },
      rows: [{ ratingCode: 'A', minutes: 60_000, cycles: 900 }],
    });
    const disk = async () =>
      done(
        await desk.office.administrator.get<{
          verified: boolean;
          life: { kind: string; remainingCycles: number | null; flagged: boolean };
        }>(`/api/components/${old.diskId}`),
      );

    expect(opened).toMatchObject({ trace: 'not-shown' });
    expect(await disk()).toMatchObject({ verified: false, life: { kind: 'unsubstantiated' } });
    const accepted = await post<{ consequences: Broken }>('/api/gap-acceptances', {
      ...{ componentId: old.diskId, openingId: opened.id, acceptedBy: 'Part maker', reference: 'L-7' },
      ...{ cycles: 90, minutes: 5_000 },
    });
    // 900 told and 90 at the worst, of 1,002.
    expect(await disk()).toMatchObject({
      verified: true,
      life: { kind: 'limited', remainingCycles: 12, flagged: true },
    });
    expect(accepted.consequences.newlyUnknown).toEqual([]);
  });

  it('is told by the entry that brings it, which needs to say what is missing', async () => {
    const body = {
      ...{ componentId: old.diskId, at: instantAt(LONG_AGO), basis: 'repair', source: 'Statement' },
      rows: [{ ratingCode: null, minutes: 60, cycles: 1 }],
    };
    expect(await desk.fieldsOf('/api/openings', { ...body, trace: 'not-shown' })).toEqual(['traceNote']);
    expect(await desk.fieldsOf('/api/openings', { ...body, trace: 'stated' })).toEqual(['traceNote']);
    expect(await desk.fieldsOf('/api/openings', { ...body, trace: 'lost' })).toEqual(['trace']);
    const gap = await post<{ consequences: Broken }>('/api/trace-gaps', {
      ...{ componentId: old.diskId, from: instantAt(LONG_AGO - 900), to: instantAt(LONG_AGO - 800) },
      note: 'No log',
    });
    expect(gap.consequences.newlyUnknown).toMatchObject([
      { componentId: old.diskId, kind: 'not-verified', reason: 'A gap in its trace' },
    ]);
  });
});
