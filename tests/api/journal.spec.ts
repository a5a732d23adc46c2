import { createHash } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from '@jest/globals';
import { type Founded, foundOperator, type RunningApi, startApi } from '../support/api.js';
import { startDatabase, type TestDatabase, withClient } from '../support/database.js';
import { HttpClient } from '../support/http-client.js';

interface Entry {
  readonly operator_id: number;
  readonly number: string;
  readonly stream: string;
  readonly seq: string;
  readonly kind: string;
  readonly at_us: string;
  readonly person_id: string;
  readonly act_key: string | null;
  readonly body: string;
  readonly prev: Buffer;
  readonly hash: Buffer;
}

let database: TestDatabase;
let api: RunningApi;
let founded: Founded;
let admin: HttpClient;
let personId: string;

beforeAll(async () => {
  database = await startDatabase();
  founded = await foundOperator(database);
  api = await startApi({ database });
  admin = new HttpClient(api.baseUrl);
  await admin.signIn({ signInName: founded.signInName, password: founded.password });
  const person = {
    signInName: 'écrivain'.normalize('NFD').replace(/\W/g, ''),
    fullName: 'Zoë “Ω” Ünal',
    roles: ['records'],
  };
  const made = await admin.post<{ id: string }>('/api/people', {
    ...person,
    password: 'a first password 123',
  });
  personId = made.body.id;
  await admin.post(`/api/people/${personId}/disable`, undefined, { ifMatch: '"v1"' });
}, 60_000);

afterAll(async () => {
  await api?.stop();
  await database?.drop();
}, 30_000);

const entries = (): Promise<Entry[]> =>
  withClient(database.adminUrl, async (client) => {
    const { rows } = await client.query<Entry>(
      `SELECT *, ((extract(epoch FROM recorded_at) * 1000000)::bigint)::text AS at_us FROM journal_entry ORDER BY stream, seq`,
    );
    return rows;
  });

/** The entry's hash, written here once more from its description alone. */
function hashOf(entry: Entry): Buffer {
  const head = Buffer.alloc(1 + 4 + 16 + 8 + 8 + 8);
  head.writeInt32BE(entry.operator_id, 1);
  Buffer.from(entry.stream.replaceAll('-', ''), 'hex').copy(head, 5);
  head.writeBigInt64BE(BigInt(entry.seq), 21);
  head.writeBigInt64BE(BigInt(entry.number), 29);
  head.writeBigInt64BE(BigInt(entry.at_us), 37);
  return createHash('sha256').update(head).update(entry.prev).update(entry.body, 'utf8').digest();
}

it('chains the entries of a stream, each by the hash of the one before', async () => {
  const found = (await entries()).filter(({ stream }) => stream === personId);

  expect(found.map(({ kind, seq }) => [kind, seq])).toEqual([
    ['person-added', '1'],
    ['person-disabled', '2'],
  ]);
  expect(found[0]?.prev).toEqual(Buffer.alloc(32));
  expect(found[1]?.prev).toEqual(found[0]?.hash);
  for (const entry of found) expect(hashOf(entry)).toEqual(entry.hash);
});

it('says in each entry who acted, with which key and about what, in canonical form', async () => {
  const [added] = (await entries()).filter(({ stream }) => stream === personId);
  const body = JSON.parse(added?.body ?? '{}');

  expect(body).toMatchObject({
    kind: 'person-added',
    by: { personId: added?.person_id, fullName: founded.fullName, licence: null },
    key: added?.act_key,
    about: [],
    done: { fullName: 'Zoë “Ω” Ünal', roles: ['records'] },
  });
  expect(added?.body).toMatch(/^\{"about":\[\],"by":\{"fullName"/);
  expect(added?.body).not.toContain('password');
});

it('lets nobody change, remove or empty it: neither the server nor the owner', async () => {
  const attempts = [
    `UPDATE journal_entry SET body = '{}'`,
    'DELETE FROM journal_entry',
    'TRUNCATE journal_entry CASCADE',
    'DELETE FROM about',
    'UPDATE act SET body = body',
  ];
  const refusals: string[] = [];
  for (const [url, enter] of [
    [database.appUrl, `SELECT set_config('app.operator_id', '1', false)`],
    [database.adminUrl, 'SET ROLE owner'],
    [database.adminUrl, 'SET session_replication_role = replica'],
  ] as const) {
    await withClient(url, async (client) => {
      await client.query(enter);
      for (const attempt of attempts) {
        const said = await client.query(attempt).then(
          () => 'done',
          (error: { code: string }) => error.code,
        );
        refusals.push(said);
      }
    });
  }

  expect(refusals).toHaveLength(15);
  // 42501: not granted; SB005: the records' own guard
  expect(new Set(refusals)).toEqual(new Set(['42501', 'SB005']));
});
