import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HttpClient } from '../../support/http-client.js';
import { logFlights } from '../../support/scenario/acts.js';
import { DAY } from '../../support/scenario/in-service.js';
import { instantAt } from '../../support/scenario/instants.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { type Hangar, openChange, openHangar } from '../../support/signing/hangar.js';
import {
  asOrder,
  capture,
  openPackage,
  type ShownStep,
  sign,
  stepsOf,
  typed,
} from '../../support/signing/work-desk.js';

let hangar: Hangar;

beforeAll(async () => {
  hangar = await openHangar();
}, 120_000);

afterAll(() => hangar?.close(), 30_000);

type Steps = Readonly<Record<string, ShownStep>>;

const idOf = (steps: Steps, key: string): string => {
  const step = steps[key];
  if (step === undefined) throw new Error(`no step ${key}`);
  return step.id;
};

/** Makes safe and removes. */
async function remove(
  steps: Steps,
  serial: string,
  { at, position = '1' }: { at: number; position?: string },
) {
  const { technician, password: secret } = hangar;
  done(await capture(technician, idOf(steps, 'make-safe'), typed.safe));
  done(await sign(technician, idOf(steps, 'make-safe'), { at, secret }));
  done(await capture(technician, idOf(steps, 'remove'), typed.off(serial, position)));
  return sign(technician, idOf(steps, 'remove'), { at, secret });
}

/** Reads papers and plate, and installs. */
async function install(
  steps: Steps,
  serial: string,
  { at, position = '1' }: { at: number; position?: string },
) {
  const { technician, password: secret } = hangar;
  done(await capture(technician, idOf(steps, 'accept'), typed.papers(serial)));
  done(await capture(technician, idOf(steps, 'install'), typed.on(serial, position)));
  return sign(technician, idOf(steps, 'install'), { at, secret });
}

interface ShownChange {
  readonly at: string;
  readonly outgoing: Moved | null;
  readonly incoming: Moved | null;
}
interface Moved {
  readonly serialNumber: string;
  readonly sinceNew: { readonly minutes: number; readonly cycles: { readonly units: number } };
  readonly sinceInstalled: { readonly minutes: number } | null;
}

const changesOf = async (id: string): Promise<readonly ShownChange[]> =>
  done(await hangar.planner.get<{ changes: readonly ShownChange[] }>(`/api/packages/${id}`)).changes;

const trialBalance = async (client: HttpClient) =>
  done(await client.get<{ differences?: readonly unknown[] }>('/api/trial-balance'));

describe('a step that moves a component', () => {
  it('moves it at the moment it was performed, and a flight in between counts for neither', async () => {
    const { office, fleet } = hangar;
    const { id, steps } = await openChange(hangar, {
      ...{ positionNumber: 1, outgoingSerial: 'ZZ-E1', incomingSerial: 'ZZ-E3', ratingCode: 'B' },
    });

    const removed = done(await remove(steps, 'ZZ-E1', { at: 3 * DAY }));
    done(
      await logFlights(office.administrator, fleet.airframe.id, [
        { page: 'P-FERRY', takeOff: 3 * DAY + 600, landing: 3 * DAY + 720 },
      ]),
    );
    const installed = done(await install(steps, 'ZZ-E3', { at: 4 * DAY }));
    done(
      await logFlights(office.administrator, fleet.airframe.id, [
        { page: 'P-AFTER', takeOff: 4 * DAY + 600, landing: 4 * DAY + 690 },
      ]),
    );

    expect([removed.moved[0], installed.moved[0]]).toMatchObject([
      { serialNumber: 'ZZ-E1', at: instantAt(3 * DAY) },
      { serialNumber: 'ZZ-E3', at: instantAt(4 * DAY) },
    ]);
    const [off, on] = await changesOf(id);
    // Three flights of two hours since it was put on; 1,000 cycles and 60,000 minutes before.
    expect([off?.at, off?.incoming, off?.outgoing?.sinceNew, off?.outgoing?.sinceInstalled?.minutes]).toEqual(
      [instantAt(3 * DAY), null, { minutes: 60_360, cycles: { units: 1_003, denominator: 1 } }, 360],
    );
    expect([on?.at, on?.outgoing, on?.incoming?.sinceNew.minutes]).toEqual([
      instantAt(4 * DAY),
      null,
      60_000,
    ]);
    const [e1, e3] = await Promise.all(
      [0, 2].map(async (index) =>
        done(
          await office.administrator.get<{ counters: { sinceNew: { minutes: number } }; rating: unknown }>(
            `/api/components/${fleet.engines[index]?.id}`,
          ),
        ),
      ),
    );
    expect([e1?.counters.sinceNew.minutes, e3?.counters.sinceNew.minutes]).toEqual([60_360, 60_090]);
    expect(await trialBalance(office.administrator)).toMatchObject({ balanced: true });
  });

  it('leaves the move when its signature is undone, and is signed again with the same moment alone', async () => {
    const { technician, password: secret } = hangar;
    const { id, steps } = await openChange(hangar, {
      ...{ positionNumber: 2, outgoingSerial: 'ZZ-E2', incomingSerial: 'ZZ-E4' },
    });
    const removed = done(await remove(steps, 'ZZ-E2', { at: 5 * DAY, position: '2' }));
    done(
      await technician.post(`/api/step-signatures/${removed.id}/undo`, {
        ...{ reason: 'The wrong serial was read', method: 'password', secret },
      }),
    );
    const step = idOf(steps, 'remove');

    const another = await sign(technician, step, { at: 5 * DAY + 10, secret });
    expect(problemOf(another)).toMatchObject({
      code: 'MOVE_RECORDED',
      fields: [{ field: 'performedAt', fix: expect.stringContaining('voids the stay') }],
    });
    const again = done(await sign(technician, step, { at: 5 * DAY, secret }));

    expect(again.moved).toEqual([]);
    expect(await changesOf(id)).toHaveLength(1);
    const early = await install(steps, 'ZZ-E4', { at: 5 * DAY - 10, position: '2' });
    expect(problemOf(early)).toMatchObject({ fields: [{ field: 'performedAt' }] });
    done(await install(steps, 'ZZ-E4', { at: 5 * DAY, position: '2' }));
    expect(await changesOf(id)).toHaveLength(2);
  });

  it('moves nothing when what was read differs from the order, or lies inside a flight', async () => {
    const { technician, password: secret } = hangar;
    const { id, steps } = await openChange(hangar, {
      ...{ positionNumber: 1, outgoingSerial: 'ZZ-E3', incomingSerial: 'ZZ-E1' },
    });

    const wrongPlace = await remove(steps, 'ZZ-E3', { at: 6 * DAY, position: '2' });
    expect(problemOf(wrongPlace).code).toBe('CAPTURES_MISSING');
    const step = idOf(steps, 'remove');
    done(await capture(technician, step, typed.off('ZZ-E1', '1')));
    expect(problemOf(await sign(technician, step, { at: 6 * DAY, secret })).code).toBe('CAPTURES_MISSING');
    done(await capture(technician, step, typed.off('ZZ-E3', '1')));
    done(
      await logFlights(hangar.office.administrator, hangar.fleet.airframe.id, [
        { page: 'P-LATE', takeOff: 6 * DAY + 600, landing: 6 * DAY + 720 },
      ]),
    );
    const airborne = await sign(technician, step, { at: 6 * DAY + 660, secret });
    expect(problemOf(airborne)).toMatchObject({
      code: 'INSIDE_A_FLIGHT',
      fields: [{ field: 'performedAt' }],
    });
    expect(await changesOf(id)).toEqual([]);
    done(
      await hangar.planner.post(
        `/api/packages/${id}/withdraw`,
        { reason: 'Not needed' },
        { ifMatch: '"v1"' },
      ),
    );
    expect(problemOf(await sign(technician, step, { at: 7 * DAY, secret })).code).toBe('WRONG_STATE');
  });
});

describe('what may not be fitted is not fitted', () => {
  const fitting = async (incomingSerial: string, day: number) => {
    const change = await openChange(hangar, {
      ...{ positionNumber: 1, outgoingSerial: 'ZZ-E3', incomingSerial },
    });
    return { ...change, at: day * DAY };
  };
  const refusedWith = (answer: Awaited<ReturnType<typeof install>>) => [
    problemOf(answer).code,
    ...((answer.body as unknown as { objections?: { code: string }[] }).objections ?? []).map(
      (objection) => objection.code,
    ),
  ];

  it('while its place is taken, in quarantine, by papers that differ, or with a part at its limit', async () => {
    const { office, fleet, technician, password: secret } = hangar;
    const { id, steps, at } = await fitting('ZZ-E5', 8);
    const [step, papers] = [idOf(steps, 'install'), idOf(steps, 'accept')];
    const e5 = fleet.engines[4];
    if (e5 === undefined) throw new Error('no engine');
    done(await remove(steps, 'ZZ-E3', { at }));

    done(await capture(technician, papers, typed.papers('ZZ-E5')));
    done(await capture(technician, step, typed.on('ZZ-E5', '1')));
    await fleet.register.location('Quarantine', 'quarantine');
    const dropped = await fleet.register.client.post('/api/placements', {
      ...{ componentId: e5.id, locationName: 'Quarantine', reason: 'Dropped' },
      boundary: { kind: 'instant', at: instantAt(at + 10) },
    });
    done(dropped);
    const inQuarantine = await sign(technician, step, { at: at + 60, secret });
    expect(refusedWith(inQuarantine)).toEqual(['INSTALLATION_REFUSED', 'PART_UNSERVICEABLE']);
    const cleared = await fleet.register.client.post('/api/placements', {
      ...{ componentId: e5.id, locationName: 'Store', reason: 'Found good' },
      boundary: { kind: 'instant', at: instantAt(at + 30) },
    });
    done(cleared);

    done(await capture(technician, papers, typed.papers('ZZ-E5', 'ZZ-E55')));
    expect(refusedWith(await sign(technician, step, { at: at + 60, secret }))).toEqual([
      ...['INSTALLATION_REFUSED', 'PAPERS_REJECTED'],
    ]);
    done(await capture(technician, papers, typed.papers('ZZ-E5')));

    const limit = done(
      await office.administrator.post<{ id: string }>('/api/life-limits', {
        ...{ partNumber: 'K-DISK', engineModelId: fleet.modelId, ratingCode: 'A', cycles: 1_000 },
        ...{
          authorisation: 'limited',
          document: 'Manual, chapter 05',
          revision: '2',
          effectiveOn: '2024-01-01',
        },
      }),
    );
    expect(refusedWith(await sign(technician, step, { at: at + 60, secret }))).toEqual([
      ...['INSTALLATION_REFUSED', 'AT_LIMIT'],
    ]);
    done(await office.administrator.post(`/api/life-limits/${limit.id}/void`, { reason: 'A wrong line' }));

    expect(await changesOf(id)).toHaveLength(1);
    done(await sign(technician, step, { at: at + 60, secret }));
    expect((await changesOf(id))[1]?.incoming?.serialNumber).toBe('ZZ-E5');
  });
});

describe('a part inside an engine', () => {
  it('is changed by a package of its own, judged in the engine it goes into', async () => {
    const { fleet, planner, technician, password: secret } = hangar;
    const [e1] = fleet.engines;
    if (e1 === undefined) throw new Error('no engine');
    const spare = {
      kind: 'part',
      partNumber: 'K-DISK',
      lifeLimited: true,
      engineModelId: fleet.modelId,
    } as const;
    const good = await fleet.register.component({ ...spare, serialNumber: 'ZZ-D-NEW' });
    const untraced = await fleet.register.component({ ...spare, serialNumber: 'ZZ-D-OLD' });
    await fleet.register.opening({ componentId: good.id }, [{ ratingCode: 'A', minutes: 0, cycles: 0 }]);
    for (const { id } of [good, untraced]) await fleet.register.place(id, { locationName: 'Store' });
    const open = (incomingSerial: string) =>
      openPackage(planner, {
        ...{ kind: 'component-change', componentId: e1.id, ruleSet: 'eu-145' },
        order: asOrder({ slotId: e1.slotIds.disk, outgoingSerial: 'ZZ-E1-D', incomingSerial }),
      });
    const at = 10 * DAY;

    const first = await open('ZZ-D-OLD');
    const steps = await stepsOf(planner, first);
    done(await capture(technician, idOf(steps, '+1'), typed.off('ZZ-E1-D', null)));
    done(await sign(technician, idOf(steps, '+1'), { at, secret }));
    done(await capture(technician, idOf(steps, '+2'), typed.papers('ZZ-D-OLD')));
    done(await capture(technician, idOf(steps, '+2'), typed.on('ZZ-D-OLD', null)));
    const refused = await sign(technician, idOf(steps, '+2'), { at, secret });

    expect(problemOf(refused)).toMatchObject({
      code: 'INSTALLATION_REFUSED',
      objections: [{ code: 'LIMITED_PART_UNTRACED' }],
    });
    const [change, ...more] = await changesOf(first);
    expect([change?.outgoing?.serialNumber, more]).toEqual(['ZZ-E1-D', []]);
    const { place } = done(await planner.get<{ place: { label: string } }>(`/api/components/${untraced.id}`));
    expect(place.label).toContain('Store');
  });
});
