import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type Founded, foundOperator, type RunningApi, startApi } from '../support/api.js';
import { startDatabase, type TestDatabase, withClient } from '../support/database.js';
import { HttpClient } from '../support/http-client.js';

interface Person {
  readonly id: string;
  readonly version: number;
  readonly code?: string;
}

let database: TestDatabase;
let api: RunningApi;
let founded: Founded;
let admin: HttpClient;

beforeAll(async () => {
  database = await startDatabase();
  founded = await foundOperator(database);
  api = await startApi({ database });
  admin = await signedIn();
}, 60_000);

afterAll(async () => {
  await api?.stop();
  await database?.drop();
}, 30_000);

async function signedIn(): Promise<HttpClient> {
  const client = new HttpClient(api.baseUrl);
  await client.signIn({ signInName: founded.signInName, password: founded.password });
  return client;
}

const someone = (signInName: string) => ({
  signInName,
  fullName: 'Some One',
  roles: ['records'],
  password: 'a first password 123',
});

const count = (sql: string, values: unknown[]): Promise<number> =>
  withClient(database.adminUrl, async (client) => Number((await client.query(sql, values)).rows[0]?.count));

const peopleNamed = (name: string) => count('SELECT count(*) FROM person WHERE sign_in_name = $1', [name]);
const entriesWith = (key: string) => count('SELECT count(*) FROM journal_entry WHERE act_key = $1', [key]);

describe('an act with a key', () => {
  it('happens once when fifty of its requests arrive together, and each gets the one answer', async () => {
    const idempotencyKey = randomUUID();

    const answers = await Promise.all(
      Array.from({ length: 50 }, () =>
        admin.post<Person>('/api/people', someone('once'), { idempotencyKey }),
      ),
    );

    const told = new Set(answers.map(({ status, etag, body }) => JSON.stringify([status, etag, body])));
    expect(told.size).toBe(1);
    expect([answers[0]?.status, answers[0]?.etag]).toEqual([201, '"v1"']);
    expect([await peopleNamed('once'), await entriesWith(idempotencyKey)]).toEqual([1, 1]);
  }, 30_000);

  it('is answered as before by a server that was killed and started again', async () => {
    const idempotencyKey = randomUUID();
    const first = await admin.post('/api/people', someone('restart'), { idempotencyKey });

    await api.kill();
    api = await startApi({ database });
    admin = await signedIn();
    const again = await admin.post('/api/people', someone('restart'), { idempotencyKey });

    expect([again.status, again.etag, again.body]).toEqual([first.status, first.etag, first.body]);
    expect(await peopleNamed('restart')).toBe(1);
  }, 30_000);

  it('is answered as before although what it made has changed since', async () => {
    const idempotencyKey = randomUUID();
    const first = await admin.post<Person>('/api/people', someone('later'), { idempotencyKey });
    await admin.post(`/api/people/${first.body.id}/disable`, undefined, { ifMatch: '"v1"' });

    const again = await admin.post<Person>('/api/people', someone('later'), { idempotencyKey });

    expect([again.status, again.etag, again.body]).toEqual([201, '"v1"', first.body]);
  });

  it('does not lend its key to another act', async () => {
    const idempotencyKey = randomUUID();
    await admin.post('/api/people', someone('keyed'), { idempotencyKey });

    const other = await admin.post<Person>('/api/people', someone('keyed.too'), { idempotencyKey });

    expect([other.status, other.body.code]).toEqual([422, 'KEY_REUSED']);
    expect(await peopleNamed('keyed.too')).toBe(0);
  });

  it('is the same act whatever the order of its members', async () => {
    const idempotencyKey = randomUUID();
    const { signInName, ...rest } = someone('ordered');
    await admin.post('/api/people', { signInName, ...rest }, { idempotencyKey });

    expect((await admin.post('/api/people', { ...rest, signInName }, { idempotencyKey })).status).toBe(201);
  });

  it('keeps no trace of a password from which it could be guessed', async () => {
    const idempotencyKey = randomUUID();
    const person = someone('secretive');
    await admin.post('/api/people', person, { idempotencyKey });

    const again = await admin.post(
      '/api/people',
      { ...person, password: 'another password 123' },
      { idempotencyKey },
    );
    expect(again.status).toBe(201); // the password is no part of what the act is known by
  });

  it('keeps no refusal: corrected, it is taken under the same key', async () => {
    const idempotencyKey = randomUUID();
    await admin.post('/api/people', someone('taken'), {});

    const refused = await admin.post<Person>('/api/people', someone('taken'), { idempotencyKey });
    const corrected = await admin.post('/api/people', someone('not.taken'), { idempotencyKey });

    expect([refused.status, refused.body.code]).toEqual([409, 'ALREADY_EXISTS']);
    expect(corrected.status).toBe(201);
  });

  it('of another person is another act', async () => {
    const idempotencyKey = randomUUID();
    const second = { ...someone('second.admin'), roles: ['administrator'], mustChangePassword: false };
    await admin.post('/api/people', second);
    const other = new HttpClient(api.baseUrl);
    await other.signIn({ signInName: 'second.admin', password: second.password });

    await admin.post('/api/people', someone('theirs.1'), { idempotencyKey });
    expect((await other.post('/api/people', someone('theirs.2'), { idempotencyKey })).status).toBe(201);
  });

  it.each([
    ['no key', null, 'MISSING_KEY'],
    ['a short key', '1234567', 'KEY_MALFORMED'],
    ['a key with a space', 'one two three', 'KEY_MALFORMED'],
    ['a long key', 'k'.repeat(256), 'KEY_MALFORMED'],
  ])('with %s is refused', async (_, idempotencyKey, code) => {
    const answer = await admin.post<Person>('/api/people', someone('keyless'), { idempotencyKey });

    expect([answer.status, answer.body.code]).toEqual([400, code]);
    expect(await peopleNamed('keyless')).toBe(0);
  });
});

describe('an act on a version that was seen', () => {
  it('is refused without the version, with another one, and with what is no version', async () => {
    const { body } = await admin.post<Person>('/api/people', someone('versioned'));
    const disable = async (headers: Record<string, string>) => {
      const answer = await admin.post<Person>(`/api/people/${body.id}/disable`, undefined, { headers });
      return [answer.status, answer.body.code];
    };

    expect(await disable({})).toEqual([428, 'MISSING_IF_MATCH']);
    expect(await disable({ 'if-match': '"v2"' })).toEqual([412, 'STALE']);
    expect(await disable({ 'if-match': 'W/"v1"' })).toEqual([400, 'IF_MATCH_MALFORMED']);
    expect(await disable({ 'if-match': '*' })).toEqual([400, 'IF_MATCH_MALFORMED']);
    expect(await disable({ 'if-match': '"v1"' })).toEqual([200, undefined]);
  });

  it('has one winner when ten are sent at once', async () => {
    const { body } = await admin.post<Person>('/api/people', someone('contested'));

    const answers = await Promise.all(
      Array.from({ length: 10 }, () =>
        admin.post<Person>(`/api/people/${body.id}/disable`, undefined, { ifMatch: '"v1"' }),
      ),
    );

    const statuses = answers.map(({ status }) => status).sort();
    expect(statuses).toEqual([200, ...Array.from({ length: 9 }, () => 412)]);
  });
});

describe('a failure between writing and answering', () => {
  it('leaves neither the person nor the entry nor the key', async () => {
    const idempotencyKey = randomUUID();
    await withClient(database.adminUrl, async (client) => {
      await client.query(`CREATE FUNCTION break_it() RETURNS trigger LANGUAGE plpgsql AS
        $$ BEGIN RAISE EXCEPTION 'broken on purpose'; END $$`);
      await client.query(
        'CREATE TRIGGER break_it AFTER INSERT ON about FOR EACH ROW EXECUTE FUNCTION break_it()',
      );
    });
    const broken = await admin.post<Person>('/api/people', someone('halfway'), { idempotencyKey });
    await withClient(database.adminUrl, (client) => client.query('DROP FUNCTION break_it CASCADE'));

    expect([broken.status, broken.body.code]).toEqual([500, 'INTERNAL']);
    expect([await peopleNamed('halfway'), await entriesWith(idempotencyKey)]).toEqual([0, 0]);
    expect((await admin.post('/api/people', someone('halfway'), { idempotencyKey })).status).toBe(201);
  });
});
