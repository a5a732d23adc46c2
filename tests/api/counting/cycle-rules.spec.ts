import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { DAY, type InService, putInService } from '../../support/scenario/in-service.js';
import { dateAt } from '../../support/scenario/instants.js';
import { brokenInvariants } from '../../support/scenario/invariants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';

interface Revisions {
  readonly rows: readonly {
    readonly id: string;
    readonly revision: string;
    readonly effectiveOn: string | null;
    readonly inForce: boolean;
    readonly voided: boolean;
  }[];
}

let office: Office;
let fleet: InService;
const RULE = {
  perFlight: 3,
  perLanding: 0,
  perTouchAndGo: 0,
  perStart: 0,
  perAbortedTakeOff: 0,
  denominator: 2,
};

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator, { days: 6 });
}, 120_000);
afterAll(() => office?.close(), 30_000);

const path = () => `/api/engine-models/${fleet.modelId}/cycle-rules`;
const add = (effectiveOn: string, more: object = {}) =>
  office.administrator.post<Revisions>(path(), {
    ...{ ...RULE, airframeTypeId: fleet.typeId, source: 'Manual', revision: '2', effectiveOn },
    ...more,
  });

async function cyclesOf(componentId: string | undefined): Promise<number | null> {
  const { counters } = done(
    await office.administrator.get<{
      counters: { sinceInstalled: { cycles: { units: number; denominator: number } | null } };
    }>(`/api/components/${componentId}`),
  );
  const { cycles } = counters.sinceInstalled;
  return cycles === null ? null : cycles.units / cycles.denominator;
}

describe('a revision of a cycle rule', () => {
  it('counts what was flown from its day on, and leaves what was flown before', async () => {
    const engine = fleet.engines[0]?.id;
    expect(await cyclesOf(engine)).toBe(6);
    // A flight a day: three before the fourth day, three from it on, at one and a half cycles each.
    const { rows } = done(await add(dateAt(3)));
    expect(await cyclesOf(engine)).toBe(3 + 3 * 1.5);
    expect(rows[0]).toMatchObject({ revision: '2', effectiveOn: dateAt(3), inForce: true });
    expect(await brokenInvariants(office.database.adminUrl)).toEqual({});

    const voided = (id: string | undefined) =>
      office.administrator.post<Revisions>(`/api/cycle-rules/${id}/void`, { reason: 'Wrong day' });
    done(await voided(rows[0]?.id));
    expect(await cyclesOf(engine)).toBe(6);
    expect(problemOf(await voided(rows[0]?.id))).toMatchObject({ status: 409, code: 'ALREADY_VOIDED' });
    const listed = done(await office.administrator.get<Revisions>(path()));
    expect(listed.rows.map(({ revision, inForce, voided: gone }) => [revision, inForce, gone])).toEqual([
      ['2', false, true],
      ['1', true, false],
    ]);
  });

  it('says what is due in its own units', async () => {
    done(await add(dateAt(2), { denominator: 1, perFlight: 2, revision: '3' }));
    const due = done(
      await office.administrator.get<{ rows: { serialNumber: string; remainingCycles: number | null }[] }>(
        `/api/due-points?airframeId=${fleet.airframe.id}`,
      ),
    );
    const [hub] = fleet.engines[0]?.partIds ?? [];
    const part = done(
      await office.administrator.get<{ serialNumber: string; life: { remainingCycles: number } }>(
        `/api/components/${hub}`,
      ),
    );
    expect(due.rows.find((row) => row.serialNumber === part.serialNumber)?.remainingCycles).toBe(
      part.life.remainingCycles,
    );
  });

  it('is not of tomorrow, not of a day that has one, and counts something', async () => {
    const tomorrow = new Date(Date.now() + 2 * DAY * 60_000).toISOString().slice(0, 10);
    const refused = async (answer: ReturnType<typeof add>) => {
      const { status, code, fields } = problemOf(await answer);
      return [status, code, fields?.[0]?.field];
    };
    expect(await refused(add(tomorrow))).toEqual([422, 'IN_THE_FUTURE', 'effectiveOn']);
    expect(await refused(add(dateAt(2)))).toEqual([409, 'ALREADY_EXISTS', 'effectiveOn']);
    expect(await refused(add(dateAt(4), { perFlight: 0 }))).toEqual([400, 'INVALID_FIELDS', 'perFlight']);
    expect(await refused(add('2025-02-30'))).toEqual([400, 'INVALID_FIELDS', 'effectiveOn']);
    expect(await refused(add(dateAt(4), { airframeTypeId: fleet.modelId }))).toEqual([
      404,
      'NOT_FOUND',
      'airframeTypeId',
    ]);
  });
});
