import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type InService, putInService } from '../../support/scenario/in-service.js';
import { employ, type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import {
  accomplish,
  type RequirementAnswer,
  recordRequirement,
  type StatusAnswer,
} from '../../support/scenario/requirements.js';

const NOBODY = '00000000-0000-7000-8000-000000000000';

let office: Office;
let fleet: InService;

beforeAll(async () => {
  office = await openOffice();
  fleet = await putInService(office.administrator);
}, 120_000);

afterAll(() => office?.close(), 30_000);

const add = (code: string, more: object = {}) => recordRequirement(office.administrator, code, more);
const onComponent = async (id: string) =>
  done(await office.administrator.get<StatusAnswer[]>(`/api/components/${id}/requirements`));
const onAirframe = async () =>
  done(await office.administrator.get<StatusAnswer[]>(`/api/airframes/${fleet.airframe.id}/requirements`));
const engine = () => fleet.engines[0]!;
const ofCode = async (code: string) => (await onAirframe()).filter((row) => row.code === code);

describe('a requirement', () => {
  it('is held against every engine of its model, counted from new, and follows it wherever it is', async () => {
    const made = done(await add('R-ENGINE', { engineModelId: fleet.modelId, repeat: { cycles: 1500 } }));

    expect(made).toMatchObject({ inForce: true, open: 5, voided: false });
    const [row] = (await onComponent(engine().id)).filter((each) => each.code === 'R-ENGINE');
    // 1,000 cycles since new at its opening and three flights since.
    expect(row).toMatchObject({
      status: 'later',
      counting: 'repeat',
      governing: 'cycles',
      dues: [{ dimension: 'cycles', dueAt: 1500, remaining: 497 }],
    });
    expect((await onComponent(fleet.engines[4]!.id))[0]?.dues[0]?.remaining).toBe(500);
  });

  it('is held against the airframe, whose cycles are its flights', async () => {
    done(
      await add('R-AIRFRAME', {
        anchor: 'airframe',
        airframeTypeId: fleet.typeId,
        repeat: { minutes: 601_000, cycles: 5_002 },
      }),
    );

    const [row] = await ofCode('R-AIRFRAME');
    // 10,000:00 hours and 5,000 flights at its opening, three of two hours since.
    expect(row).toMatchObject({
      subject: 'ZZ-101',
      airframeId: fleet.airframe.id,
      status: 'over',
      dues: [
        { dimension: 'minutes', dueAt: 601_000, remaining: 640 },
        { dimension: 'cycles', dueAt: 5_002, remaining: -1 },
      ],
      governing: 'cycles',
    });
  });

  it('counts from the installation at a position, and does not apply while nothing is there', async () => {
    done(
      await add('R-POSITION', { anchor: 'position', countedFrom: 'installation', repeat: { minutes: 3000 } }),
    );

    const rows = await ofCode('R-POSITION');
    expect(rows.map(({ subject, status }) => [subject, status])).toEqual([
      ['ZZ-101 position 1', 'later'],
      ['ZZ-101 position 2', 'later'],
    ]);
    expect(rows[0]?.dues[0]?.remaining).toBe(3000 - 360);
    const other = done(
      await office.administrator.get<StatusAnswer[]>(`/api/airframes/${fleet.airframes[1]?.id}/requirements`),
    );
    expect(other.filter((row) => row.code === 'R-POSITION').map((row) => [row.status, row.reason])).toEqual([
      ['not-applicable', 'It is not installed'],
      ['not-applicable', 'It is not installed'],
    ]);
  });

  it('is for the parts of one part number, shown with the engine they are in', async () => {
    done(await add('R-PART', { anchor: 'part', partNumber: 'K-DISK', repeat: { cycles: 2000 } }));

    const rows = (await onComponent(engine().id)).filter((row) => row.code === 'R-PART');
    expect(rows.map((row) => row.subject)).toEqual(['Test part ZZ-E1-D']);
  });

  it('is not verified without what it counts from: no overhaul, no day of manufacture', async () => {
    done(await add('R-OVERHAUL', { countedFrom: 'overhaul', threshold: { minutes: 3000 }, repeat: null }));
    done(await add('R-DAY', { repeat: { months: 12 } }));

    const rows = await onComponent(engine().id);
    expect(rows.find((row) => row.code === 'R-OVERHAUL')).toMatchObject({
      status: 'not-verified',
      reason: 'No overhaul of it is recorded to count from',
      governing: null,
    });
    expect(rows.find((row) => row.code === 'R-DAY')).toMatchObject({
      status: 'not-verified',
      reason: 'The day it counts from is not known',
    });
  });

  it('counts by its newest revision alone, and what was done by an earlier one counts on', async () => {
    const first = done(await add('R-REVISED', { repeat: { cycles: 100 } }));
    done(
      await accomplish(office.administrator, {
        requirementId: first.id,
        componentId: engine().id,
        on: '2025-01-02',
        cycles: 1001,
      }),
    );
    const second = done(
      await add('R-REVISED', { revision: '2', effectiveOn: '2021-01-01', repeat: { cycles: 300 } }),
    );

    const listed = done(await office.administrator.get<RequirementAnswer[]>('/api/requirements'));
    expect(
      listed
        .filter((row) => row.code === 'R-REVISED')
        .map((row) => [row.revision, row.inForce, row.open > 0]),
    ).toEqual([
      ['2', true, true],
      ['1', false, false],
    ]);
    expect((await onComponent(engine().id)).find((row) => row.code === 'R-REVISED')).toMatchObject({
      requirementId: second.id,
      dues: [{ dueAt: 1301, remaining: 298 }],
    });
  });

  it('is held against nothing once it is voided, and is voided once', async () => {
    const { id } = done(await add('R-VOID'));
    const reason = { reason: 'Typed wrongly' };
    expect(
      done(await office.administrator.post<RequirementAnswer>(`/api/requirements/${id}/void`, reason)),
    ).toMatchObject({
      voided: true,
      inForce: false,
      open: 0,
    });
    expect((await onComponent(engine().id)).filter((row) => row.code === 'R-VOID')).toEqual([]);
    const again = await office.administrator.post(`/api/requirements/${id}/void`, reason);
    expect([again.status, problemOf(again).code]).toEqual([409, 'ALREADY_VOIDED']);
    expect((await add('R-VOID')).status).toBe(201);
  });
});

describe('a requirement is refused', () => {
  const tomorrow = new Date(Date.now() + 2 * 86_400_000).toISOString().slice(0, 10);

  it.each([
    ['a negative interval', { repeat: { cycles: -5 } }, 400, 'repeat.cycles'],
    ['an interval of nothing', { threshold: { minutes: 0 } }, 400, 'threshold.minutes'],
    ['months past a hundred years', { repeat: { months: 1201 } }, 400, 'repeat.months'],
    ['half a month', { repeat: { months: 1.5 } }, 400, 'repeat.months'],
    ['a repeat that names nothing', { repeat: {} }, 400, 'repeat'],
    ['neither threshold nor repeat', { repeat: null }, 400, 'threshold'],
    ['a scope of another anchor', { partNumber: 'P' }, 400, 'partNumber'],
    ['a part without its number', { anchor: 'part' }, 400, 'partNumber'],
    ['an airframe’s overhaul', { anchor: 'airframe', countedFrom: 'overhaul' }, 400, 'countedFrom'],
    ['a date that is not given', { countedFrom: 'date' }, 400, 'fromOn'],
    ['a date where none counts', { fromOn: '2024-01-01' }, 400, 'fromOn'],
    ['a date to come', { countedFrom: 'date', fromOn: tomorrow }, 400, 'fromOn'],
    ['a revision to come', { effectiveOn: tomorrow }, 400, 'effectiveOn'],
    ['a day that is none', { effectiveOn: '2025-02-30' }, 400, 'effectiveOn'],
    ['a kind that is none', { kind: 'chore' }, 400, 'kind'],
    ['an unknown model', { engineModelId: NOBODY }, 404, 'engineModelId'],
    ['an unknown type', { anchor: 'airframe', airframeTypeId: NOBODY }, 404, 'airframeTypeId'],
    ['an unknown position', { anchor: 'position', positionNumber: 9 }, 404, 'positionNumber'],
  ])('with %s, naming the field and the fix', async (_, more, status, field) => {
    const answer = await add('R-REFUSED', more);

    const [named] = problemOf(answer).fields ?? [];
    expect([answer.status, named?.field]).toEqual([status, field]);
    expect(named?.fix).not.toBe('');
    expect(
      (await office.administrator.get<RequirementAnswer[]>('/api/requirements')).body.map((row) => row.code),
    ).not.toContain('R-REFUSED');
  });

  it('when this revision of the code is there already', async () => {
    done(await add('R-TWICE'));
    const answer = await add('R-TWICE');

    expect([answer.status, problemOf(answer).fields?.[0]?.field]).toEqual([409, 'revision']);
  });

  it('to those who do not keep the programme', async () => {
    const technician = await employ(office, {
      signInName: 'tech',
      fullName: 'T Echnician',
      roles: ['technician'],
    });
    const planner = await employ(office, { signInName: 'plan', fullName: 'P Lanner', roles: ['planner'] });

    expect((await recordRequirement(technician, 'R-RIGHT')).status).toBe(403);
    const { id } = done(await recordRequirement(planner, 'R-RIGHT'));
    const byHand = await accomplish(planner, {
      requirementId: id,
      componentId: engine().id,
      on: '2025-01-02',
    });
    expect(byHand.status).toBe(403);
    expect((await technician.get(`/api/requirements/${id}`)).status).toBe(200);
  });

  it('when there is none of that id', async () => {
    expect((await office.administrator.get(`/api/requirements/${NOBODY}`)).status).toBe(404);
    expect((await office.administrator.get(`/api/airframes/${NOBODY}/requirements`)).status).toBe(404);
    expect((await office.administrator.get(`/api/components/${NOBODY}/requirements`)).status).toBe(404);
  });
});
