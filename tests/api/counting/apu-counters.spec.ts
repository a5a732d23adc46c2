import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import { CounterDesk, type UnitFleet, unitFleet } from '../../support/counting/units.js';
import { instantAt } from '../../support/scenario/instants.js';
import { brokenInvariants } from '../../support/scenario/invariants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { Register } from '../../support/scenario/register.js';

const DAY = 1440;
let office: Office;
let desk: CounterDesk;
let fleet: UnitFleet;
let mark: string;
let made = 0;

beforeAll(async () => {
  office = await openOffice();
  desk = new CounterDesk(office.administrator);
  await new Register(office.administrator).location('Store');
}, 60_000);
beforeEach(async () => {
  made += 1;
  mark = `Z${made}`;
  fleet = await unitFleet(office.administrator, mark);
}, 60_000);
afterAll(() => office?.close(), 30_000);

const install = (minute = DAY, reading = { minutes: 5_000, starts: 100 }) =>
  desk.change(fleet.airframe.id, minute, { on: { serial: `${mark}-U1`, reading } });

describe('an auxiliary power unit', () => {
  it('is as old as its opening balance and what its counter counted since, and so is what hangs in it', async () => {
    const [{ id }] = fleet.units;
    done(await install());
    expect(await desk.sinceNew(id)).toEqual([60_000, 2_000]);
    done(await desk.read(id, 3 * DAY, { minutes: 5_600, starts: 104 }));

    expect(await desk.sinceNew(id)).toEqual([60_600, 2_004]);
    expect(await desk.sinceNew(fleet.wheel.id)).toEqual([30_600, 804]);
    expect((await desk.counters(id)).counters.sinceInstalled).toMatchObject({
      minutes: 600,
      cycles: { units: 4 },
    });
    // A counter is read at instants: between them it stands where it was last read.
    expect(await desk.sinceNew(id, 2 * DAY)).toEqual([60_000, 2_000]);
    expect(await desk.list(id)).toMatchObject({
      counted: { minutes: 600, starts: 4 },
      readAt: instantAt(3 * DAY),
      readings: [
        { kind: 'read', minutes: 5_600, ran: { minutes: 600, starts: 4 } },
        { kind: 'installed', minutes: 5_000, ran: null },
      ],
    });
    expect(await brokenInvariants(office.database.adminUrl)).toEqual({});
  });

  it('runs on over a counter that was replaced', async () => {
    const [{ id }] = fleet.units;
    done(await install());
    const replaced = { last: { minutes: 5_300, starts: 102 }, first: { minutes: 10, starts: 1 } };
    done(await desk.replace(id, 2 * DAY, replaced));
    expect(await desk.sinceNew(id)).toEqual([60_300, 2_002]);
    done(await desk.read(id, 3 * DAY, { minutes: 70, starts: 3 }));

    expect(await desk.sinceNew(id)).toEqual([60_360, 2_004]);
    const { readings } = await desk.list(id);
    expect(readings[1]).toMatchObject({ kind: 'replaced', first: { minutes: 10, starts: 1 } });
    // Without the replacement the later reading would have run back.
    expect(problemOf(await desk.void(readings[1]?.id ?? ''))).toMatchObject({
      status: 422,
      code: 'COUNTER_RUNS_BACK',
    });
    expect(await desk.sinceNew(id)).toEqual([60_360, 2_004]);
  });

  it('takes along to another airframe what it counted, also what it ran in between', async () => {
    const [{ id }] = fleet.units;
    done(await install());
    done(
      await desk.change(fleet.airframe.id, 3 * DAY, {
        off: { serial: `${mark}-U1`, reading: { minutes: 5_900, starts: 109 } },
        on: { serial: `${mark}-U2`, reading: { minutes: 0, starts: 0 } },
      }),
    );
    done(await desk.read(fleet.units[1].id, 4 * DAY, { minutes: 300, starts: 2 }));
    done(
      await desk.change(fleet.airframe.id, 5 * DAY, {
        off: { serial: `${mark}-U2`, reading: { minutes: 320, starts: 3 } },
        on: { serial: `${mark}-U1`, reading: { minutes: 5_930, starts: 110 } },
      }),
    );

    expect(await desk.sinceNew(id)).toEqual([60_930, 2_010]);
    expect((await desk.counters(id)).counters.sinceInstalled).toMatchObject({
      minutes: 0,
      cycles: { units: 0 },
    });
    expect(await desk.sinceNew(fleet.units[1].id)).toEqual([60_320, 2_003]);
    expect(await brokenInvariants(office.database.adminUrl)).toEqual({});
  });

  it('neither goes on nor comes off without its reading, and nothing is stored', async () => {
    expect(
      problemOf(await desk.change(fleet.airframe.id, DAY, { on: { serial: `${mark}-U1` } })),
    ).toMatchObject({
      status: 422,
      code: 'READING_MISSING',
      fields: [{ field: 'incomingReading', fix: expect.stringContaining('Read hours and starts') }],
    });
    done(await install());
    expect(
      problemOf(await desk.change(fleet.airframe.id, 2 * DAY, { off: { serial: `${mark}-U1` } })),
    ).toMatchObject({ code: 'READING_MISSING', fields: [{ field: 'outgoingReading' }] });
    const place = {
      ...{ componentId: fleet.units[1].id, slotId: fleet.apuSlotId },
      boundary: { kind: 'instant', at: instantAt(100) },
      until: { kind: 'instant', at: instantAt(200) },
    };
    const placed = (more: object) => office.administrator.post('/api/placements', { ...place, ...more });
    const reading = { minutes: 1, starts: 1 };
    for (const [more, field] of [
      [{}, 'counterReading'],
      [{ counterReading: reading }, 'untilCounterReading'],
    ] as const) {
      const answer = await placed(more);
      expect(problemOf(answer)).toMatchObject({ code: 'READING_MISSING', fields: [{ field }] });
    }
    expect((await desk.list(fleet.units[1].id)).readings).toEqual([]);
    const answer = await placed({ counterReading: reading, untilCounterReading: { minutes: 61, starts: 2 } });
    expect(answer.status).toBe(201);
    expect(await desk.sinceNew(fleet.units[1].id)).toEqual([60_060, 2_001]);
  });

  it('has no reading that runs back, outruns the time, lies in the future or is no count', async () => {
    const [{ id }] = fleet.units;
    done(await install());
    done(await desk.read(id, 3 * DAY, { minutes: 5_600, starts: 104 }));
    const before = await desk.list(id);
    const refused = async (minute: number, minutes: number, starts: number) => {
      const { status, code, fields } = problemOf(await desk.read(id, minute, { minutes, starts }));
      return [status, code, fields?.[0]?.field];
    };

    expect(await refused(4 * DAY, 5_599, 104)).toEqual([422, 'COUNTER_RUNS_BACK', 'minutes']);
    expect(await refused(4 * DAY, 5_600, 103)).toEqual([422, 'COUNTER_RUNS_BACK', 'starts']);
    expect(await refused(2 * DAY, 5_601, 104)).toEqual([422, 'COUNTER_RUNS_BACK', 'minutes']);
    expect(await refused(3 * DAY + 60, 5_661, 105)).toEqual([422, 'COUNTER_BEYOND_TIME', 'minutes']);
    expect(await refused(4_000 * DAY, 5_700, 105)).toEqual([422, 'IN_THE_FUTURE', 'at']);
    expect(await refused(4 * DAY, -1, 105)).toEqual([400, 'INVALID_FIELDS', 'minutes']);
    expect(await refused(3 * DAY, 5_600, 104)).toEqual([409, 'ALREADY_EXISTS', 'at']);
    expect(await desk.list(id)).toEqual(before);
    done(await desk.read(id, 3 * DAY + 60, { minutes: 5_660, starts: 105 }));
  });

  it('counts again when a reading is entered late, corrected or voided', async () => {
    const [{ id }] = fleet.units;
    done(await install());
    done(await desk.read(id, 4 * DAY, { minutes: 5_600, starts: 104 }));
    const late = done(await desk.read(id, 2 * DAY, { minutes: 5_100, starts: 101 }));
    expect(await desk.sinceNew(id, 3 * DAY)).toEqual([60_100, 2_001]);

    const between = late.readings.find(({ at }) => at === instantAt(2 * DAY));
    const corrected = done(await desk.correct(between?.id ?? '', { minutes: 5_200, starts: 102 }));
    expect(await desk.sinceNew(id, 3 * DAY)).toEqual([60_200, 2_002]);
    expect(corrected.readings.find(({ voided }) => voided)).toMatchObject({ voidReason: 'Read wrongly' });
    const now = corrected.readings.find(({ at, voided }) => at === instantAt(2 * DAY) && !voided);
    done(await desk.void(now?.id ?? ''));
    expect(await desk.sinceNew(id, 3 * DAY)).toEqual([60_000, 2_000]);
    expect(await desk.sinceNew(id)).toEqual([60_600, 2_004]);
    const [installed] = (await desk.list(id)).readings.filter(({ kind }) => kind === 'installed');
    expect(problemOf(await desk.void(installed?.id ?? ''))).toMatchObject({ code: 'REFUSED_BY_FACTS' });
    expect(problemOf(await desk.void(now?.id ?? ''))).toMatchObject({ status: 409, code: 'ALREADY_VOIDED' });
    expect(await brokenInvariants(office.database.adminUrl)).toEqual({});
  });

  it('reaches the limit of a part in it by its counter, and says so with the reading', async () => {
    const [{ id }] = fleet.units;
    await fleet.register.lifeLimit({
      ...{ partNumber: `${mark}-WHEEL`, engineModelId: fleet.apuModelId, ratingCode: null, cycles: 803 },
    });
    done(await install());
    const due = async () =>
      done(
        await desk.client.get<{ rows: { serialNumber: string; remainingCycles: number | null }[] }>(
          `/api/due-points?airframeId=${fleet.airframe.id}`,
        ),
      ).rows.find((row) => row.serialNumber === `${mark}-W1`);
    expect(await due()).toMatchObject({ remainingCycles: 3 });

    const read = done(await desk.read(id, 2 * DAY, { minutes: 5_200, starts: 104 }));
    expect(read.consequences?.newlyOver).toMatchObject([{ serialNumber: `${mark}-W1`, remaining: -1 }]);
    expect(await due()).toMatchObject({ remainingCycles: -1 });
  });

  it('loses the readings of an installation that is voided', async () => {
    const [{ id }] = fleet.units;
    const placed = done(
      await desk.client.post<{ id: string }>('/api/placements', {
        ...{ componentId: id, slotId: fleet.apuSlotId, counterReading: { minutes: 5_000, starts: 100 } },
        boundary: { kind: 'instant', at: instantAt(DAY) },
      }),
    );
    done(await desk.client.post(`/api/placements/${placed.id}/void`, { reason: 'Wrong unit' }));
    expect(await desk.list(id)).toMatchObject({
      readAt: null,
      readings: [{ voided: true, voidReason: 'Wrong unit' }],
    });
    expect(await desk.sinceNew(id)).toEqual([60_000, 2_000]);
  });

  it('is the only one that has a counter', async () => {
    expect(problemOf(await desk.read(fleet.wheel.id, DAY, { minutes: 1, starts: 1 }))).toMatchObject({
      status: 422,
      code: 'REFUSED_BY_FACTS',
    });
  });
});
