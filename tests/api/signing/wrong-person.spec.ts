import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HttpClient } from '../../support/http-client.js';
import { employ } from '../../support/scenario/office.js';
import { done, problemOf } from '../../support/scenario/problem.js';
import { type Hangar, openHangar, openOneStep } from '../../support/signing/hangar.js';
import { sign } from '../../support/signing/work-desk.js';

type Meaning = 'done' | 'inspection';

const ROLES = [
  'technician',
  'inspector',
  'certifying-staff',
  'planner',
  'records',
  'auditor',
  'administrator',
];
const SCOPES = ['work', 'inspection', 'release', null];
const MAY: Readonly<Record<Meaning, readonly string[]>> = {
  done: ['technician', 'inspector', 'certifying-staff'],
  inspection: ['inspector', 'certifying-staff'],
};
const SCOPE_OF: Readonly<Record<Meaning, string>> = { done: 'work', inspection: 'inspection' };
const PERIODS = {
  'in force': { fromOn: '2020-01-01' },
  expired: { fromOn: '2020-01-01', toOn: '2020-12-31' },
  'to come': { fromOn: '2099-01-01' },
  voided: { fromOn: '2020-01-01' },
} as const;
type Period = keyof typeof PERIODS;
const TYPES = ['all', 'this', 'another'] as const;

interface Case {
  readonly role: string;
  readonly scope: string | null;
  readonly period: Period;
  readonly type: (typeof TYPES)[number];
}

let hangar: Hangar;
let otherTypeId: string;

beforeAll(async () => {
  hangar = await openHangar({ days: 0 });
  otherTypeId = await hangar.fleet.register.airframeType('Another', 2);
}, 120_000);

afterAll(() => hangar?.close(), 30_000);

/** Everything an authorisation can be, and none at all. */
const cases: readonly Case[] = ROLES.flatMap((role) =>
  SCOPES.flatMap((scope): Case[] =>
    scope === null
      ? [{ role, scope, period: 'in force', type: 'all' }]
      : (Object.keys(PERIODS) as Period[]).flatMap((period) =>
          TYPES.map((type) => ({ role, scope, period, type })),
        ),
  ),
);

interface Person {
  readonly id: string;
  readonly client: HttpClient;
}

/** Someone of one role, authorised for nothing. */
async function personOf(role: string): Promise<Person> {
  const person = { signInName: `p-${role}`, fullName: `Person ${role}`, roles: [role] };
  const client = await employ(hangar.office, person, { authorised: false });
  const { person: of } = done(await client.get<{ person: { id: string } }>('/api/session'));
  return { id: of.id, client };
}

/** Authorises as the case says; what it answers takes it away again. */
async function authorise(personId: string, { scope, period, type }: Case): Promise<() => Promise<void>> {
  if (scope === null) return async () => {};
  const { administrator } = hangar.office;
  const airframeTypeId = { all: undefined, this: hangar.fleet.typeId, another: otherTypeId }[type];
  const { id } = done(
    await administrator.post<{ id: string }>('/api/authorisations', {
      ...{ personId, scope, reference: 'List 1', ...PERIODS[period] },
      ...(airframeTypeId === undefined ? {} : { airframeTypeId }),
    }),
  );
  const takeAway = async () =>
    void done(await administrator.post(`/api/authorisations/${id}/void`, { reason: 'Left' }));
  if (period !== 'voided') return takeAway;
  await takeAway();
  return async () => {};
}

/** A step that waits for that signature. */
async function stepFor(meaning: Meaning): Promise<string> {
  const { step } = await openOneStep(hangar);
  if (meaning === 'inspection')
    done(await sign(hangar.technician, step.id, { at: 5000, secret: hangar.password }));
  return step.id;
}

function mayBe({ role, scope, period, type }: Case, meaning: Meaning): boolean {
  return (
    MAY[meaning].includes(role) && scope === SCOPE_OF[meaning] && period === 'in force' && type !== 'another'
  );
}

function expectedOf(each: Case, meaning: Meaning): string {
  if (!MAY[meaning].includes(each.role)) return 'NOT_ALLOWED';
  return mayBe(each, meaning) ? 'signed' : 'NOT_AUTHORISED_TODAY';
}

describe('the wrong person', () => {
  it(`signs nothing, and the right one does: ${ROLES.length} roles × scope × validity × type`, async () => {
    const { password: secret } = hangar;
    const people = new Map<string, Person>();
    for (const role of ROLES) people.set(role, await personOf(role));
    const waiting = { done: await stepFor('done'), inspection: await stepFor('inspection') };
    const wrong: string[] = [];
    const counts = { signed: 0, refused: 0 };
    for (const each of cases) {
      const person = people.get(each.role);
      if (person === undefined) throw new Error('nobody to sign');
      const takeAway = await authorise(person.id, each);
      for (const meaning of ['done', 'inspection'] as const) {
        const answer = await sign(person.client, waiting[meaning], { at: 5001, secret, meaning });
        const told = answer.status === 201 ? 'signed' : problemOf(answer).code;
        counts[told === 'signed' ? 'signed' : 'refused'] += 1;
        const expected = expectedOf(each, meaning);
        if (told !== expected) wrong.push(`${meaning} ${JSON.stringify(each)}: ${told}, not ${expected}`);
        if (told === 'signed') waiting[meaning] = await stepFor(meaning);
      }
      await takeAway();
    }

    expect(wrong).toEqual([]);
    // Three roles by two types for the work, two roles by two types for the inspection.
    expect(counts).toEqual({ signed: 10, refused: cases.length * 2 - 10 });
  }, 180_000);

  it('is the one who did the work, whatever else they hold, and whoever’s tablet it is', async () => {
    const { certifier, technician, inspector, password: secret } = hangar;
    const self: string[] = [];
    for (const [client, signInName] of [
      [certifier, undefined],
      [technician, 'cer'],
      [inspector, 'ins'],
    ] as const) {
      const { step } = await openOneStep(hangar);
      const who = signInName === undefined ? {} : { signInName };
      done(await sign(client, step.id, { at: 5000, secret, ...who }));
      self.push(
        problemOf(await sign(client, step.id, { at: 5001, secret, meaning: 'inspection', ...who })).code,
      );
    }

    expect(self).toEqual(['SAME_PERSON', 'SAME_PERSON', 'SAME_PERSON']);
  });

  it('is the second one at the tablet, when the session’s own roles would do', async () => {
    const { certifier, password: secret } = hangar;
    const { step } = await openOneStep(hangar);

    const answer = await sign(certifier, step.id, { at: 5000, secret, signInName: 'pla' });

    expect(problemOf(answer).code).toBe('NOT_ALLOWED');
  });

  it('is one who was shut out meanwhile', async () => {
    const { office, technician, password: secret } = hangar;
    await employ(office, { signInName: 'lea', fullName: 'Lea Ver', roles: ['technician'] });
    const { rows } = done(
      await office.administrator.get<{ rows: { id: string; signInName: string; version: number }[] }>(
        '/api/people',
      ),
    );
    const leaver = rows.find((each) => each.signInName === 'lea');
    const { step } = await openOneStep(hangar);
    done(
      await office.administrator.post(`/api/people/${leaver?.id}/disable`, undefined, {
        ifMatch: `"v${leaver?.version}"`,
      }),
    );

    const digest = '0'.repeat(64);
    const answer = await sign(technician, step.id, { at: 5000, secret, signInName: 'lea', digest });

    expect(problemOf(answer).code).toBe('SIGNER_NOT_PROVEN');
  });
});
