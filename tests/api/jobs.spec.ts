import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type Founded, foundOperator, type RunningApi, startApi } from '../support/api.js';
import { startDatabase, type TestDatabase, withClient } from '../support/database.js';
import { HttpClient } from '../support/http-client.js';

interface Job {
  readonly state: string;
  readonly result: { readonly documentId: string } | null;
}

let database: TestDatabase;
let api: RunningApi;
let founded: Founded;
let admin: HttpClient;
let airframeId: string;

beforeAll(async () => {
  database = await startDatabase();
  founded = await foundOperator(database);
  api = await startApi({ database });
  admin = await signedIn(founded);
  const type = await admin.post<{ id: string }>('/api/airframe-types', {
    maker: 'Example Aircraft',
    designation: 'Two 1',
    positions: [{ number: 1, kind: 'engine', mount: 'left-wing', label: 'Left' }],
  });
  const rules = await admin.get<{ rows: { code: string }[] } | { code: string }[]>('/api/rule-sets');
  const [first] = Array.isArray(rules.body) ? rules.body : rules.body.rows;
  const airframe = await admin.post<{ id: string }>('/api/airframes', {
    registration: 'ZZ-JOB',
    serialNumber: '1',
    airframeTypeId: type.body.id,
    ruleSet: first?.code,
    owner: 'Test operator',
  });
  airframeId = airframe.body.id;
}, 60_000);

afterAll(async () => {
  await api?.stop();
  await database?.drop();
}, 30_000);

async function signedIn({
  signInName,
  password,
}: Pick<Founded, 'signInName' | 'password'>): Promise<HttpClient> {
  const client = new HttpClient(api.baseUrl);
  await client.signIn({ signInName, password });
  return client;
}

async function begun(): Promise<string> {
  const wanted = { kind: 'history', subjectKind: 'airframe', subjectId: airframeId };
  const answer = await admin.post<{ jobId: string }>('/api/documents', wanted);
  expect(answer.status).toBe(202);
  return answer.body.jobId;
}

async function ended(id: string): Promise<Job> {
  for (const deadline = Date.now() + 30_000; ; await new Promise((resolve) => setTimeout(resolve, 100))) {
    const { body } = await admin.get<Job>(`/api/jobs/${id}`);
    if (!['queued', 'running'].includes(body.state) || Date.now() > deadline) return body;
  }
}

const query = <Row extends object>(sql: string, values: unknown[] = []): Promise<Row[]> =>
  withClient(database.adminUrl, async (client) => (await client.query<Row>(sql, values)).rows);

describe('a job', () => {
  it('runs to its end and names what it made', async () => {
    const job = await ended(await begun());

    expect(job).toMatchObject({ state: 'done', result: { documentId: expect.any(String) } });
    expect((await admin.get(`/api/documents/${job.result?.documentId}`)).status).toBe(200);
  }, 40_000);

  it('is begun again when its server was killed, and is done once', async () => {
    const before = await query('SELECT id FROM document');
    const ids = await Promise.all(Array.from({ length: 6 }, begun));
    await api.kill();
    api = await startApi({ database });
    admin = await signedIn(founded);

    const jobs = await Promise.all(ids.map(ended));

    expect(jobs.map(({ state }) => state)).toEqual(ids.map(() => 'done'));
    const after = await query('SELECT id FROM document');
    expect(after.length - before.length).toBe(ids.length);
  }, 60_000);

  it('is not begun when the act that wanted it was undone', async () => {
    const rows = () => query('SELECT id FROM job UNION ALL SELECT NULL FROM jobs_queue.jobs');
    const before = await rows();
    const unknown = {
      kind: 'history',
      subjectKind: 'airframe',
      subjectId: '01a20000-0000-7000-8000-000000000000',
    };

    expect((await admin.post('/api/documents', unknown)).status).toBe(404);

    expect(await rows()).toHaveLength(before.length);
  });

  it('is ended early by who began it or an administrator, and by nobody else', async () => {
    const [{ id }] = (await query<{ id: string }>(
      `INSERT INTO job (operator_id, id, kind, state, created_by_id)
       SELECT operator_id, gen_random_uuid(), 'history-document', 'running', id FROM person WHERE sign_in_name = $1 RETURNING id`,
      [founded.signInName],
    )) as [{ id: string }];
    const password = 'a first password 123';
    const other = {
      signInName: 'other',
      fullName: 'Other',
      roles: ['planner'],
      password,
      mustChangePassword: false,
    };
    await admin.post('/api/people', other);
    const planner = await signedIn(other);

    expect((await planner.post(`/api/jobs/${id}/cancel`)).status).toBe(403);
    const cancelled = await admin.post(`/api/jobs/${id}/cancel`);

    expect(cancelled.status).toBeLessThan(300);
    const [row] = await query<{ asked: boolean }>(
      'SELECT cancel_requested_at IS NOT NULL AS asked FROM job WHERE id = $1',
      [id],
    );
    expect(row?.asked).toBe(true);
  });
});
