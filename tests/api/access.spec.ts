import { spawnSync } from 'node:child_process';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { foundOperator, type RunningApi, startApi } from '../support/api.js';
import { startDatabase, type TestDatabase, withClient } from '../support/database.js';
import { HttpClient } from '../support/http-client.js';

interface Problem {
  readonly code: string;
  readonly detail: string;
  readonly holders: readonly string[];
}

interface Operation {
  readonly 'x-authority': string | readonly string[];
}

interface Contract {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
}

interface Route {
  readonly method: string;
  readonly path: string;
  readonly authority: string | readonly string[];
}

const roles = [
  'technician',
  'inspector',
  'certifying-staff',
  'planner',
  'records',
  'auditor',
  'administrator',
];
const password = 'a first password 123';

let database: TestDatabase;
let api: RunningApi;
let routes: readonly Route[];
const people = new Map<string, HttpClient>();

/** What the built API says of itself, with neither a port nor a database. */
function inventory(): Record<'served' | 'described' | 'authorised', string[]> {
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    ['apps/api/dist/write-openapi.js', '--routes'],
    {
      encoding: 'utf8',
      env: { PATH: process.env['PATH'] ?? '' },
    },
  );
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout);
}

beforeAll(async () => {
  database = await startDatabase();
  const founded = await foundOperator(database);
  api = await startApi({ database });
  const admin = new HttpClient(api.baseUrl);
  await admin.signIn({ signInName: founded.signInName, password: founded.password });
  for (const role of roles) {
    const person = {
      signInName: role,
      fullName: `One ${role}`,
      roles: [role],
      password,
      mustChangePassword: false,
    };
    await admin.post('/api/people', person);
    const client = new HttpClient(api.baseUrl);
    await client.signIn({ signInName: role, password });
    people.set(role, client);
  }
  const contract = (await admin.get<Contract>('/api/docs-json')).body;
  routes = Object.entries(contract.paths).flatMap(([path, item]) =>
    Object.entries(item).map(([method, operation]) => ({
      method: method.toUpperCase(),
      path: path.replaceAll(/\{\w+\}/g, '01a20000-0000-7000-8000-000000000000'),
      authority: operation['x-authority'],
    })),
  );
}, 60_000);

afterAll(async () => {
  await api?.stop();
  await database?.drop();
}, 30_000);

/** Pictures alone are taken there: anything else is turned away before anyone is asked who they are. */
const TAKES_PICTURES = /^\/api\/steps\/[^/]+\/photos$/;

const ask = ({ method, path }: Route, client: HttpClient) =>
  client.send<Problem>(method, path, method === 'GET' ? undefined : {}, {
    ifMatch: '"v1"',
    ...(TAKES_PICTURES.test(path) ? { headers: { 'content-type': 'image/png' } } : {}),
  });

describe('the routes', () => {
  it('are served, described and authorised alike, each of them', () => {
    const { served, described, authorised } = inventory();

    expect(served).toEqual(described);
    expect(served).toEqual(authorised);
  }, 20_000);

  it('answer nobody without a session, but for those open to anyone', async () => {
    const open: string[] = [];
    for (const route of routes) {
      const { status, body } = await ask(route, new HttpClient(api.baseUrl));
      if (status === 401 && body.code === 'NOT_SIGNED_IN') continue;
      open.push(`${route.method} ${route.path}`);
    }

    expect(open.sort()).toEqual([
      'DELETE /api/session',
      'GET /health/live',
      'GET /health/ready',
      'POST /api/session',
    ]);
  }, 60_000);

  it.each(roles)(
    'let %s through exactly where the role is named',
    async (role) => {
      const client = people.get(role)!;
      const wrong: string[] = [];
      for (const route of routes) {
        const { authority } = route;
        if (authority === 'anyone') continue;
        const { status, body } = await ask(route, client);
        const isRefused = status === 403 && body.code === 'NOT_ALLOWED';
        const isNamed = authority === 'signed-in' || authority.includes(role);
        if (isRefused === isNamed || status === 401 || status >= 500) {
          wrong.push(`${route.method} ${route.path}: ${status} ${body.code ?? ''}`);
        }
        if (isRefused) expect(body.holders).toEqual(authority);
      }

      expect(wrong).toEqual([]);
    },
    60_000,
  );

  it('answer HEAD to whom they answer GET, and to no one else', async () => {
    expect((await people.get('auditor')!.send('HEAD', '/api/people', undefined)).status).toBe(200);
    expect((await people.get('planner')!.send('HEAD', '/api/people', undefined)).status).toBe(403);
    expect((await new HttpClient(api.baseUrl).send('HEAD', '/api/people', undefined)).status).toBe(401);
  });
});

describe('a refusal for want of a role', () => {
  it('says which role is needed and who holds it', async () => {
    const { body } = await people.get('planner')!.post<Problem>('/api/people', {});

    expect(body.detail).toContain('the role administrator');
    expect(body.detail).toContain('Ada Minister, One administrator');
  });

  it('comes before anything in the request is looked at', async () => {
    const answer = await people.get('planner')!.post<Problem>('/api/people', { nonsense: true });

    expect(answer.body.code).toBe('NOT_ALLOWED');
  });
});

describe('another operator', () => {
  const strangersId = '01a20000-0000-7000-8000-00000000000a';

  beforeAll(async () => {
    await withClient(database.adminUrl, async (client) => {
      const { rows } = await client.query(
        `INSERT INTO operator (code, name) VALUES ('OTHER', 'Other operator') RETURNING id`,
      );
      await client.query(
        `INSERT INTO person (operator_id, id, sign_in_name, full_name, roles, password_hash)
         SELECT $1, $2, 'stranger', 'A Stranger', '{administrator}', password_hash FROM person WHERE sign_in_name = 'auditor'`,
        [rows[0].id, strangersId],
      );
    });
  });

  it('is not seen: its people are not listed, and its ids name nothing', async () => {
    const list = await people.get('administrator')!.get<{ rows: { id: string }[] }>('/api/people');
    const disable = await people
      .get('administrator')!
      .post<Problem>(`/api/people/${strangersId}/disable`, undefined, { ifMatch: '"v1"' });

    expect(list.body.rows.map(({ id }) => id)).not.toContain(strangersId);
    expect([disable.status, disable.body.code]).toEqual([404, 'NOT_FOUND']);
  });

  it('has its own sign-in, by its code', async () => {
    const client = new HttpClient(api.baseUrl);
    const sign = (operatorCode?: string) =>
      client.post('/api/session', {
        signInName: 'stranger',
        password,
        ...(operatorCode === undefined ? {} : { operatorCode }),
      });

    expect((await sign('TEST')).status).toBe(401);
    expect((await sign()).status).toBe(401);
    expect((await sign('OTHER')).status).toBe(201);
    const seen = await client.get<{ rows: { fullName: string }[] }>('/api/people');
    expect(seen.body.rows.map(({ fullName }) => fullName)).toEqual(['A Stranger']);
  });

  it('is hidden by the database itself, whatever is asked as the server’s role', async () => {
    const seen = await withClient(database.appUrl, async (client) => {
      await client.query('BEGIN');
      await client.query(`SELECT set_config('app.operator_id', '1', true)`);
      return (await client.query('SELECT full_name FROM person WHERE id = $1', [strangersId])).rows;
    });
    const without = withClient(database.appUrl, (client) => client.query('SELECT full_name FROM person'));

    expect(seen).toEqual([]);
    await expect(without).rejects.toThrow(/app\.operator_id/);
  });
});
