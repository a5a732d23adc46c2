import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HttpClient } from '../support/http-client.js';
import { employ, hire, type Office, openOffice } from '../support/scenario/office.js';
import { done, problemOf } from '../support/scenario/problem.js';
import { Register } from '../support/scenario/register.js';
import { storedRows } from '../support/scenario/stored-rows.js';

interface Authorisation {
  readonly id: string;
  readonly personId: string;
  readonly personName: string;
  readonly scope: string;
  readonly airframeType: string | null;
  readonly fromOn: string;
  readonly toOn: string | null;
  readonly standing: string;
  readonly voided: boolean;
  readonly voidReason: string | null;
}

let office: Office;
let admin: HttpClient;
let personId: string;
let typeId: string;

beforeAll(async () => {
  office = await openOffice();
  admin = office.administrator;
  const person = { signInName: 'tess', fullName: 'Tess Nichols', roles: ['technician'] };
  personId = (await hire(office, person, { authorised: false })).id;
  typeId = await new Register(admin).airframeType('ZZ-T2', 2);
}, 120_000);

afterAll(() => office?.close(), 30_000);

/** The day so many days from today, in UTC. */
const day = (fromToday: number): string =>
  new Date(Date.now() + fromToday * 86_400_000).toISOString().slice(0, 10);

const grant = (wanted: object) =>
  admin.post<Authorisation>('/api/authorisations', {
    ...{ personId, scope: 'work', fromOn: '2025-01-01', reference: 'List 7' },
    ...wanted,
  });

const listOf = async (id: string, by = admin) =>
  done(await by.get<readonly Authorisation[]>(`/api/authorisations?personId=${id}`));

const faultsOf = (answer: Parameters<typeof problemOf>[0]) =>
  (problemOf(answer).fields ?? []).map(({ field, reason, fix }) => `${field}: ${reason} ${fix}`);

describe('an authorisation', () => {
  it('says who may sign what, on which type, and until when', async () => {
    const made = done(await grant({ airframeTypeId: typeId, toOn: day(300) }));

    expect(made).toMatchObject({
      ...{
        personId,
        personName: 'Tess Nichols',
        scope: 'work',
        airframeType: expect.stringContaining('ZZ-T2'),
      },
      ...{ fromOn: '2025-01-01', toOn: day(300), standing: 'in-force', voided: false },
    });
    expect(await listOf(personId)).toContainEqual(made);
  });

  it.each([
    ['in force without an end', -10, null, 'in-force'],
    ['in force on its first day', 0, 90, 'in-force'],
    ['to come the day before', 1, 90, 'to-come'],
    ['ending soon thirty days before', -20, 30, 'ends-soon'],
    ['in force thirty-one days before', -21, 31, 'in-force'],
    ['good through its last day', -22, 0, 'ends-soon'],
    ['ended the day after', -23, -1, 'ended'],
  ])('is %s', async (_what, from, to, standing) => {
    const made = done(
      await grant({ scope: 'inspection', fromOn: day(from), toOn: to === null ? null : day(to) }),
    );
    expect(made.standing).toBe(standing);
  });

  it.each([
    [
      'that ends before it begins',
      { toOn: '2024-12-31' },
      'toOn: The last day, 2024-12-31, lies before the first, 2025-01-01. Enter 2025-01-01 or a later day.',
    ],
    [
      'for nothing that is signed',
      { scope: 'everything' },
      'scope: It must be work, inspection or release. Choose what the person may sign.',
    ],
    [
      'from no day',
      { fromOn: '1 May' },
      'fromOn: There is no such day. Enter it as YYYY-MM-DD, such as 2026-03-04.',
    ],
    [
      'resting on nothing',
      { reference: ' ' },
      'reference: Nothing is entered. Enter it without spaces around it and with characters that print.',
    ],
  ])('is refused %s, and nothing is kept', async (_what, wrong, told) => {
    const before = await storedRows(office.database.adminUrl);
    const answer = await grant(wrong);

    expect([answer.status, faultsOf(answer)]).toEqual([400, [told]]);
    expect(await storedRows(office.database.adminUrl)).toEqual(before);
  });

  it('is refused for nobody, for no type, and twice from one day', async () => {
    const nobody = '01a20000-0000-7000-8000-000000000000';
    done(await grant({ scope: 'release', fromOn: '2025-03-01' }));

    const answers = [
      await grant({ personId: nobody }),
      await grant({ airframeTypeId: nobody }),
      await grant({ scope: 'release', fromOn: '2025-03-01' }),
    ];

    expect(
      answers.map((answer) => [answer.status, problemOf(answer).code, problemOf(answer).fields?.[0]?.field]),
    ).toEqual([
      [404, 'NOT_FOUND', 'personId'],
      [404, 'NOT_FOUND', 'airframeTypeId'],
      [409, 'ALREADY_EXISTS', 'fromOn'],
    ]);
  });

  it('is refused to who is shut out', async () => {
    const { id } = await hire(office, { signInName: 'gone', fullName: 'Gus One', roles: ['technician'] });
    done(await admin.post(`/api/people/${id}/disable`, {}, { ifMatch: '"v1"' }));
    const answer = await grant({ personId: id, fromOn: '2025-05-01' });

    expect([answer.status, problemOf(answer).detail]).toEqual([
      409,
      'Gus One is shut out; this needs it to be able to sign in.',
    ]);
  });
});

describe('the end of an authorisation', () => {
  it('is a voiding where it was recorded wrongly: at once, with a reason that stays, once', async () => {
    const { id } = done(await grant({ fromOn: '2025-06-01' }));
    const voided = done(
      await admin.post<Authorisation>(`/api/authorisations/${id}/void`, {
        reason: 'Granted to the wrong person',
      }),
    );
    const again = await admin.post(`/api/authorisations/${id}/void`, {
      reason: 'Granted to the wrong person',
    });

    expect(voided).toMatchObject({ id, standing: 'voided', voidReason: 'Granted to the wrong person' });
    expect([again.status, problemOf(again).code]).toEqual([409, 'ALREADY_VOIDED']);
    expect((await listOf(personId)).find((row) => row.id === id)?.voided).toBe(true);
  });

  it('with a day leaves one in its place that is good through that day', async () => {
    const { id } = done(await grant({ fromOn: '2025-07-01', airframeTypeId: typeId }));
    const after = done(
      await admin.post<Authorisation>(`/api/authorisations/${id}/end`, {
        lastOn: day(-1),
        reason: 'Course lapsed',
      }),
    );
    const before = (await listOf(personId)).find((row) => row.id === id);

    expect(after).toMatchObject({
      ...{ fromOn: '2025-07-01', toOn: day(-1), standing: 'ended', voided: false },
      airframeType: expect.stringContaining('ZZ-T2'),
    });
    expect(before).toMatchObject({
      standing: 'voided',
      voidReason: `Ends with ${day(-1)}: Course lapsed`,
    });
  });

  it('is refused before its first day, without a reason, and past the end it has', async () => {
    const { id } = done(await grant({ fromOn: '2025-08-01', toOn: '2025-12-31' }));
    const end = (body: object) => admin.post(`/api/authorisations/${id}/end`, body);
    const early = await end({ lastOn: '2025-07-31', reason: 'R' });
    const silent = await end({ lastOn: '2025-09-01' });
    const late = await end({ lastOn: '2026-01-31', reason: 'R' });

    expect(faultsOf(early)).toEqual([
      'lastOn: The last day, 2025-07-31, lies before the first, 2025-08-01. Enter 2025-08-01 or a later day.',
    ]);
    expect(faultsOf(silent)).toEqual([expect.stringMatching(/^reason: It is missing\./)]);
    expect(faultsOf(late)).toEqual([
      'lastOn: It ends on 2025-12-31 already. Enter an earlier day; a longer time needs an authorisation of its own.',
    ]);
  });
});

describe('who keeps authorisations', () => {
  it('is the administrator alone; everyone reads who may sign what', async () => {
    const { id } = done(await grant({ fromOn: '2025-09-01' }));
    const roles = ['technician', 'inspector', 'certifying-staff', 'planner', 'records', 'auditor'];
    for (const role of roles) {
      const one = await employ(office, {
        signInName: `only.${role}`,
        fullName: `Only ${role}`,
        roles: [role],
      });
      const acts = [
        await one.post('/api/authorisations', {
          ...{ personId, scope: 'work', fromOn: '2026-01-01', reference: 'R' },
        }),
        await one.post(`/api/authorisations/${id}/end`, { lastOn: day(0), reason: 'R' }),
        await one.post(`/api/authorisations/${id}/void`, { reason: 'R' }),
      ];
      expect([role, ...acts.map((answer) => problemOf(answer).code)]).toEqual([
        ...[role, 'NOT_ALLOWED', 'NOT_ALLOWED', 'NOT_ALLOWED'],
      ]);
      expect((await listOf(personId, one)).some((row) => row.id === id)).toBe(true);
    }
  });
});
