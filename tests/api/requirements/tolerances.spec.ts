import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { DAY, type InService, putInService } from '../../support/scenario/in-service.js';
import { instantAt } from '../../support/scenario/instants.js';
import { type Office, openOffice } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { accomplish, recordRequirement } from '../../support/scenario/requirements.js';

interface Told {
  readonly code: string;
  readonly status: string;
  readonly reasonCodes: readonly string[];
  readonly event: { readonly kind: string; readonly happenedOn: string | null } | null;
  readonly variation: { readonly reference: string } | null;
  readonly dues: readonly {
    readonly dimension: string;
    readonly dueAt: number | null;
    readonly latestAt: number | null;
    readonly variableAt: number | null;
    readonly isBound: boolean;
    readonly governs: boolean;
  }[];
  readonly lastDone: { readonly id: string; readonly method: string | null } | null;
}

let office: Office;
let fleet: InService;
const AROUND = { early: { cycles: [{ atMost: 10 }] }, late: { cycles: [{ percent: 30, atMost: 40 }] } };

const engine = (index = 0) => fleet.engines[index]?.id ?? '';
const record = async (code: string, more: object) =>
  done(await recordRequirement(office.administrator, code, { repeat: { cycles: 100 }, ...more })).id;
const told = async (code: string, id = engine()): Promise<Told> => {
  const rows = done(await office.administrator.get<Told[]>(`/api/components/${id}/requirements`));
  const row = rows.find((each) => each.code === code);
  if (row === undefined) throw new Error(`${code} is not told`);
  return row;
};
const met = async (requirementId: string, cycles: number, on: string, more: object = {}) =>
  done(await accomplish(office.administrator, { requirementId, componentId: engine(), cycles, on, ...more }))
    .id;
const vary = (requirementId: string, more: object = {}) =>
  office.administrator.post<{ id: string }>('/api/variations', {
    ...{ requirementId, componentId: engine(), cycles: 10 },
    ...{ approvedBy: 'B. Roe', reference: 'Variation 1', reason: 'No tool', on: '2025-01-02' },
    ...more,
  });

beforeAll(async () => {
  office = await openOffice();
  // Every engine has 1,003 cycles since new.
  fleet = await putInService(office.administrator);
}, 240_000);

afterAll(() => office?.close(), 30_000);

describe('a window', () => {
  it('lets planned times stand inside it, shift early outside it, and shows its end', async () => {
    const id = await record('T-WINDOW', { countedFrom: 'accomplishment', window: AROUND });
    expect(await told('T-WINDOW')).toMatchObject({ status: 'not-verified', reasonCodes: ['NEVER_DONE'] });

    await met(id, 700, '2024-01-01');
    const second = await met(id, 795, '2024-06-01');
    // Inside 790 to 830: the next stays at 900, and was past by 103.
    expect((await told('T-WINDOW')).dues[0]).toMatchObject({ dueAt: 900, latestAt: 930 });
    await met(id, 895, '2024-10-01', { method: 'By eddy current' });
    // Inside 890 to 930: the next is due at 1,000.
    expect(await told('T-WINDOW')).toMatchObject({
      status: 'in-tolerance',
      lastDone: { method: 'By eddy current' },
      dues: [{ dueAt: 1000, latestAt: 1030, governs: true }],
    });

    // Without the one in June, October is past 800 and its window, and counts from what was done.
    done(
      await office.administrator.post(`/api/accomplishments/${second}/void`, { reason: 'Another engine' }),
    );
    expect((await told('T-WINDOW')).dues[0]?.dueAt).toBe(995);
    // Entered late, one in August moves it again: October is inside the window of 900 after all.
    await met(id, 820, '2024-08-01');
    expect((await told('T-WINDOW')).dues[0]?.dueAt).toBe(1000);
    // Early, before 990: from what was done.
    await met(id, 985, '2024-12-01');
    expect((await told('T-WINDOW')).dues[0]?.dueAt).toBe(1085);
  });

  it('is told on the due list as in tolerance', async () => {
    const { rows } = done(
      await office.administrator.get<{
        rows: { requirement: { code: string } | null; serialNumber: string; status: string }[];
      }>('/api/due-points?limit=200'),
    );
    await record('T-LIST', { repeat: { cycles: 1000 }, window: { late: { cycles: [{ atMost: 5 }] } } });
    const after = done(
      await office.administrator.get<{
        rows: { requirement: { code: string } | null; serialNumber: string; status: string }[];
      }>('/api/due-points?limit=200'),
    ).rows.filter((row) => row.requirement?.code === 'T-LIST' && row.serialNumber === 'ZZ-E1');
    expect(rows.length).toBeGreaterThan(0);
    expect(after.map(({ status }) => status)).toEqual(['in-tolerance']);
  });
});

describe('a variation', () => {
  it('lets one due be gone past, once, and the next counts from what was due', async () => {
    const id = await record('T-VARY', { variation: { cycles: [{ percent: 10, atMost: 500 }] } });
    await met(id, 900, '2024-12-01');
    expect((await told('T-VARY')).dues[0]).toMatchObject({ dueAt: 1000, latestAt: 1000, variableAt: 1010 });

    const first = done(await vary(id, { cycles: 10 }));
    expect(await told('T-VARY')).toMatchObject({
      status: 'in-tolerance',
      variation: { reference: 'Variation 1' },
      dues: [{ latestAt: 1010 }],
    });
    const again = await vary(id, { cycles: 5, reference: 'Variation 2' });
    expect([again.status, problemOf(again).code]).toEqual([409, 'ALREADY_EXISTS']);

    const last = await met(id, 1003, '2025-01-05');
    expect((await told('T-VARY')).dues[0]).toMatchObject({ dueAt: 1100, latestAt: 1100 });
    done(await office.administrator.post(`/api/variations/${first.id}/void`, { reason: 'Never approved' }));
    expect((await told('T-VARY')).dues[0]?.dueAt).toBe(1103);

    // Corrected in one act: voided with its reason, and the new one beside it.
    const corrected = done(
      await office.administrator.post<{ id: string; correctsId: string }>(
        `/api/accomplishments/${last}/correct`,
        { reason: 'Typed wrongly', on: '2025-01-05', cycles: 1002, evidence: 'Work card 2' },
      ),
    );
    expect(corrected.correctsId).toBe(last);
    expect((await told('T-VARY')).dues[0]?.dueAt).toBe(1102);
    expect((await told('T-VARY')).lastDone?.id).toBe(corrected.id);
  });

  it('goes with the accomplishment it follows when that is corrected', async () => {
    const id = await record('T-CORRECT', { variation: { cycles: [{ atMost: 50 }] } });
    const met1 = await met(id, 900, '2024-12-01');
    done(await vary(id));
    done(
      await office.administrator.post(`/api/accomplishments/${met1}/correct`, {
        ...{ reason: 'Typed wrongly', on: '2024-12-02', cycles: 899, evidence: 'Work card 1' },
      }),
    );
    expect(await told('T-CORRECT')).toMatchObject({
      variation: { reference: 'Variation 1' },
      dues: [{ dueAt: 999, latestAt: 1009 }],
    });
  });

  it.each([
    ['more than is permitted', { cycles: 60 }, 422, 'cycles'],
    ['in what it is not due by', { cycles: undefined, minutes: 60 }, 422, 'minutes'],
    ['by nothing', { cycles: undefined }, 400, 'minutes'],
    ['by less than nothing', { cycles: -1 }, 400, 'cycles'],
    ['approved on a day to come', { on: '2999-01-01' }, 400, 'on'],
    ['of a due that is no more', { accomplishmentId: null }, 422, 'accomplishmentId'],
  ])('is refused %s', async (_, more, status, field) => {
    const code = `T-REFUSED-${field}-${status}-${Object.keys(more).join('-')}`;
    const id = await record(code, { variation: { cycles: [{ atMost: 50 }] } });
    await met(id, 900, '2024-12-01');
    const answer = await vary(id, more);
    expect([answer.status, problemOf(answer).fields?.[0]?.field]).toEqual([status, field]);
    expect(problemOf(answer).fields?.[0]?.fix).toMatch(/\w/);
  });

  it('is refused of a directive that is silent, of what permits none, and of a life limit', async () => {
    const directive = await record('T-AD', { kind: 'directive' });
    const limitation = await record('T-AL', { kind: 'airworthiness-limitation' });
    const silent = await record('T-SILENT', {});
    const limits = done(await office.administrator.get<{ id: string }[]>('/api/life-limits'));
    const answers = await Promise.all(
      [directive, limitation, silent, limits[0]?.id ?? ''].map((id) => vary(id)),
    );
    expect(answers.map((answer) => [answer.status, problemOf(answer).fields?.[0]?.field])).toEqual(
      answers.map(() => [422, 'requirementId']),
    );
    expect(answers.map((answer) => problemOf(answer).fields?.[0]?.reason)).toEqual([
      'Its text grants no variation, and it has only what its own text grants.',
      'Its text grants no variation, and it has only what its own text grants.',
      'It permits no variation.',
      'It is a life limit: a mandatory life has no variation.',
    ]);
  });
});

describe('an event and an outer bound', () => {
  it('are told until they come; after its shop visit it is over, and being done then meets it', async () => {
    const id = await record('T-SHOP', {
      ...{ repeat: null, countedFrom: 'date', fromOn: '2025-01-02' },
      threshold: { cycles: 5000, event: 'shop-visit', notToExceed: { months: 1200 } },
    });
    const componentId = engine(4);
    expect(await told('T-SHOP', componentId)).toMatchObject({
      status: 'later',
      event: { kind: 'shop-visit', happenedOn: null },
      dues: [
        { dimension: 'cycles', isBound: false },
        { dimension: 'months', isBound: true },
      ],
    });
    done(
      await office.administrator.post('/api/resets', {
        ...{ componentId, kind: 'shop-visit', at: instantAt(3 * DAY), evidence: 'Shop report 9' },
      }),
    );
    expect(await told('T-SHOP', componentId)).toMatchObject({
      status: 'over',
      event: { happenedOn: '2025-01-04' },
    });
    done(await accomplish(office.administrator, { requirementId: id, componentId, at: instantAt(3 * DAY) }));
    expect((await told('T-SHOP', componentId)).status).toBe('closed');
  });

  it('ends at the first return to the main base', async () => {
    await record('T-BASE', {
      ...{ repeat: null, countedFrom: 'date', fromOn: '2025-01-02' },
      threshold: { minutes: 600_000, event: 'main-base-return' },
    });
    expect((await told('T-BASE')).status).toBe('later');
    const back = done(
      await office.administrator.post<{ id: string }>('/api/occurrences', {
        ...{ airframeId: fleet.airframe.id, kind: 'main-base-return' },
        ...{ at: instantAt(2 * DAY + 600), evidence: 'Log page 3' },
      }),
    );
    expect(await told('T-BASE')).toMatchObject({ status: 'over', event: { happenedOn: '2025-01-03' } });
    done(await office.administrator.post(`/api/occurrences/${back.id}/void`, { reason: 'Another airframe' }));
    expect((await told('T-BASE')).status).toBe('later');
  });
});

describe('a requirement is refused', () => {
  it.each([
    [
      'a directive with a window its text is not named for',
      { kind: 'directive', window: AROUND },
      'grantedBy',
    ],
    ['a tier that grants nothing', { variation: { cycles: [{}] } }, 'variation.cycles[0].percent'],
    [
      'tiers out of order',
      { variation: { cycles: [{ percent: 10 }, { upTo: 5, percent: 5 }] } },
      'variation.cycles[1].upTo',
    ],
    ['serial numbers reversed', { serialFrom: 'ZZ-E9', serialTo: 'ZZ-E1' }, 'serialTo'],
    ['serial numbers of two series', { serialFrom: 'ZZ-E1', serialTo: 'YY-E9' }, 'serialTo'],
    ['a code that is not there', { onlyWith: ['NOBODY'] }, 'onlyWith'],
    ['a code both asked and forbidden', { onlyWith: ['T-WINDOW'], unlessWith: ['T-WINDOW'] }, 'unlessWith'],
    ['more than a hundred years', { repeat: { months: 1201 } }, 'repeat.months'],
    ['an interval of nothing', { repeat: { cycles: 0 } }, 'repeat.cycles'],
    ['less than nothing', { repeat: { minutes: -5 } }, 'repeat.minutes'],
    ['an empty outer bound', { repeat: { cycles: 5, notToExceed: {} } }, 'repeat.notToExceed'],
    [
      'a threshold from the last accomplishment',
      { countedFrom: 'accomplishment', threshold: { cycles: 5 } },
      'threshold',
    ],
    ['a mandatory inspection', { mandatory: true }, 'mandatory'],
  ])('with %s', async (_, more, field) => {
    const answer = await recordRequirement(office.administrator, 'T-BAD', more);
    expect([answer.status, problemOf(answer).fields?.map((each) => each.field)]).toEqual([
      400,
      expect.arrayContaining([field]),
    ]);
  });
});
