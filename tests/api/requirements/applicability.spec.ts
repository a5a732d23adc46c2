import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { DAY } from '../../support/scenario/in-service.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { accomplish, recordRequirement } from '../../support/scenario/requirements.js';
import { type Hangar, openHangar } from '../../support/signing/hangar.js';
import { blocking, checkOf } from '../../support/signing/release-desk.js';
import { openPackage, sign, stepsOf } from '../../support/signing/work-desk.js';

interface Told {
  readonly code: string;
  readonly status: string;
  readonly reason: string | null;
  readonly reasonCodes: readonly string[];
  readonly closedBy: { readonly code: string } | null;
}

let hangar: Hangar;

const engine = (index: number) => hangar.fleet.engines[index]?.id ?? '';
const record = async (code: string, more: object) =>
  done(
    await recordRequirement(hangar.office.administrator, code, {
      threshold: { cycles: 5000 },
      repeat: null,
      ...more,
    }),
  ).id;
const listed = async (index: number, query = '') =>
  done(await hangar.certifier.get<Told[]>(`/api/components/${engine(index)}/requirements${query}`));
const told = async (code: string, index: number, query = '') => {
  const row = (await listed(index, query)).find((each) => each.code === code);
  return row === undefined ? null : { status: row.status, codes: row.reasonCodes, reason: row.reason };
};
const assess = (requirementId: string, more: object = {}) =>
  hangar.office.administrator.post<{ id: string }>('/api/assessments', {
    ...{ requirementId, applicable: true, assessedBy: 'B. Roe', reference: 'Sheet 1', on: '2025-01-02' },
    ...more,
  });

async function finished(): Promise<string> {
  const { planner, technician, password: secret, fleet } = hangar;
  const id = await openPackage(planner, {
    ...{ kind: 'inspection', airframeId: fleet.airframe.id, requirements: [] },
    steps: [{ title: 'Look at the inlet.', inspection: 'none' }],
  });
  const [step] = Object.values(await stepsOf(planner, id));
  done(await sign(technician, step?.id ?? '', { at: 3 * DAY, secret }));
  return id;
}

beforeAll(async () => {
  hangar = await openHangar();
}, 240_000);

afterAll(() => hangar?.close(), 30_000);

describe('a directive', () => {
  let id: string;
  let work: string;

  it('that was never assessed is not verified, and blocks the release', async () => {
    work = await finished();
    expect(blocking(await checkOf(hangar.certifier, work))).toEqual([]);
    id = await record('A-AD', { kind: 'directive' });
    expect(await told('A-AD', 0)).toMatchObject({ status: 'not-verified', codes: ['NEVER_ASSESSED'] });
    const check = await checkOf(hangar.certifier, work);
    expect(blocking(check)).toEqual(['REQUIREMENT_NOT_VERIFIED', 'REQUIREMENT_NOT_VERIFIED']);
    expect(check.objections[0]?.reason).toContain('Whether it applies was never assessed');
  });

  it('is told by its assessments: of one, of a model, of all; the nearest holds', async () => {
    done(await assess(id, { componentId: engine(0) }));
    expect(blocking(await checkOf(hangar.certifier, work))).toEqual(['REQUIREMENT_NOT_VERIFIED']);
    const whole = done(await assess(id, { applicable: false, reason: 'Another pump is fitted' }));
    expect(await told('A-AD', 0)).toMatchObject({ status: 'later', codes: [] });
    expect(await told('A-AD', 1)).toMatchObject({
      ...{ status: 'not-applicable', codes: ['ASSESSED_NOT_APPLICABLE'], reason: 'Another pump is fitted' },
    });
    expect(blocking(await checkOf(hangar.certifier, work))).toEqual([]);
    done(await hangar.office.administrator.post(`/api/assessments/${whole.id}/void`, { reason: 'Wrong' }));
    expect((await told('A-AD', 1))?.status).toBe('not-verified');
    done(await assess(id, { engineModelId: hangar.fleet.modelId }));
    expect((await told('A-AD', 1))?.status).toBe('later');
  });

  it('needs another assessment for another revision', async () => {
    await record('A-AD', { kind: 'directive', revision: '2', effectiveOn: '2021-01-01' });
    expect(await told('A-AD', 0)).toMatchObject({ status: 'not-verified', codes: ['NEVER_ASSESSED'] });
    const none = await assess(id, { componentId: hangar.fleet.airframe.id });
    expect(none.status).toBe(404);
  });

  it('closes where another takes its place, with that as the reason', async () => {
    const newer = await record('A-AD-NEW', { kind: 'directive', supersedesId: id });
    expect(await told('A-AD', 0)).toMatchObject({
      ...{ status: 'closed', codes: ['SUPERSEDED'], reason: 'Superseded by A-AD-NEW' },
    });
    done(
      await hangar.office.administrator.post(`/api/requirements/${newer}/void`, { reason: 'Typed wrongly' }),
    );
    expect((await told('A-AD', 0))?.status).toBe('not-verified');
  });

  it('is closed on one by the action that ends it, once that is accomplished there', async () => {
    const ending = await record('A-SB-END', { kind: 'bulletin', terminatesId: id });
    expect((await told('A-AD', 0))?.status).toBe('not-verified');
    done(
      await accomplish(hangar.office.administrator, {
        ...{ requirementId: ending, componentId: engine(0), on: '2025-01-02' },
      }),
    );
    expect(await told('A-AD', 0)).toMatchObject({ status: 'closed', codes: ['TERMINATED'] });
    expect((await told('A-AD', 1))?.status).toBe('not-verified');
  });

  it('is refused an assessment without a reason, of two things, or of a day to come', async () => {
    const answers = [
      await assess(id, { applicable: false }),
      await assess(id, { componentId: engine(0), engineModelId: hangar.fleet.modelId }),
      await assess(id, { on: '2999-01-01' }),
    ];
    expect(answers.map((answer) => [answer.status, problemOf(answer).fields?.[0]?.field])).toEqual([
      [400, 'reason'],
      [400, 'componentId'],
      [400, 'on'],
    ]);
  });
});

describe('what a requirement is not for', () => {
  it('is told with its reason of a directive or bulletin, and of others when asked', async () => {
    const range = { serialFrom: 'ZZ-E2', serialTo: 'ZZ-E3' };
    await record('A-SERIAL-SB', { kind: 'bulletin', ...range });
    await record('A-SERIAL', range);
    expect(await told('A-SERIAL-SB', 0)).toMatchObject({
      ...{ status: 'not-applicable', codes: ['SERIAL_OUTSIDE'] },
      reason: 'Its serial number lies outside ZZ-E2 to ZZ-E3',
    });
    expect((await told('A-SERIAL-SB', 1))?.status).toBe('later');
    expect(await told('A-SERIAL', 0)).toBeNull();
    expect(await told('A-SERIAL', 0, '?notApplicable=true')).toMatchObject({ codes: ['SERIAL_OUTSIDE'] });
  });

  it('hangs on what is accomplished on it', async () => {
    const change = await record('A-MOD', { kind: 'bulletin' });
    await record('A-ONLY', { kind: 'bulletin', onlyWith: ['A-MOD'] });
    await record('A-UNLESS', { kind: 'bulletin', unlessWith: ['A-MOD'] });
    expect([await told('A-ONLY', 0), await told('A-UNLESS', 0)]).toMatchObject([
      { status: 'not-applicable', codes: ['NOT_MODIFIED'] },
      { status: 'later' },
    ]);
    done(
      await accomplish(hangar.office.administrator, {
        ...{ requirementId: change, componentId: engine(0), on: '2025-01-02' },
      }),
    );
    expect([await told('A-ONLY', 0), await told('A-UNLESS', 0)]).toMatchObject([
      { status: 'later' },
      { status: 'not-applicable', codes: ['MODIFIED'] },
    ]);
  });
});

describe('what is past its due inside what it grants', () => {
  it('is told with the release, and does not block it', async () => {
    const id = await finished();
    const before = blocking(await checkOf(hangar.certifier, id));
    await record('A-TOLERANCE', {
      threshold: { cycles: 1000 },
      window: { late: { cycles: [{ atMost: 5 }] } },
    });
    const check = await checkOf(hangar.certifier, id);
    expect(blocking(check)).toEqual(before);
    expect(check.objections.filter(({ code }) => code === 'REQUIREMENT_IN_TOLERANCE')).toHaveLength(2);
  });
});

describe('what is kept of all this', () => {
  it('is what the records say, computed anew', async () => {
    const run = promisify(execFile)(process.execPath, ['apps/api/dist/rebuild.js'], {
      env: { ...process.env, DATABASE_URL: hangar.office.database.appUrl },
    });
    const { stdout } = await run.catch((error: { stdout: string; stderr: string }) => ({
      stdout: `failed: ${error.stdout}${error.stderr}`,
    }));
    expect(stdout).not.toMatch(/differ|failed/);
  });
});
