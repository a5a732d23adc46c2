import fs from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type Founded, foundOperator, type RunningApi, startApi } from '../support/api.js';
import { startDatabase, type TestDatabase, withClient } from '../support/database.js';
import { type Answer, HttpClient } from '../support/http-client.js';

interface Problem {
  readonly code: string;
  readonly requestId: string;
  readonly fields: readonly { readonly field: string; readonly reason: string; readonly fix: string }[];
}

let database: TestDatabase;
let api: RunningApi;
let founded: Founded;
let admin: HttpClient;
let folder: string;

beforeAll(async () => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'strutbook-web-'));
  fs.mkdirSync(path.join(folder, 'assets'));
  fs.writeFileSync(path.join(folder, 'index.html'), '<!doctype html><title>The page</title>');
  fs.writeFileSync(path.join(folder, 'assets', 'index-AbCd1234.js'), 'export {};');
  database = await startDatabase();
  founded = await foundOperator(database);
  api = await startApi({ database, env: { WEB_DIST: folder } });
  admin = new HttpClient(api.baseUrl);
  await admin.signIn({ signInName: founded.signInName, password: founded.password });
}, 60_000);

afterAll(async () => {
  await api?.stop();
  await database?.drop();
  if (folder) fs.rmSync(folder, { recursive: true });
}, 30_000);

/** Every problem has the same members, and its request's id. */
function expectProblem(answer: Answer<unknown>, status: number, code: string): Problem {
  expect([answer.status, answer.headers.get('content-type')]).toEqual([
    status,
    'application/problem+json; charset=utf-8',
  ]);
  expect(answer.body).toEqual({
    type: `urn:strutbook:problem:${code.toLowerCase().replaceAll('_', '-')}`,
    title: expect.stringMatching(/\S/),
    status,
    detail: expect.stringMatching(/\S/),
    code,
    fields: expect.any(Array),
    requestId: answer.headers.get('x-request-id'),
  });
  return answer.body as Problem;
}

const person = {
  signInName: 'any.one',
  fullName: 'Any One',
  roles: ['records'],
  password: 'a first password 123',
};

const sent = (body: string, contentType: string) =>
  admin.send('POST', '/api/people', body, { headers: { 'content-type': contentType } });

describe('a request that cannot be read', () => {
  it.each([
    ['is not JSON', '{"signInName": ', 'application/json', 400, 'MALFORMED'],
    ['is empty', '', 'application/json', 400, 'MALFORMED'],
    ['reaches for a prototype', '{"__proto__": {"roles": []}}', 'application/json', 400, 'MALFORMED'],
    [
      'is nested without end',
      `{"roles": ${'['.repeat(200_000)}${']'.repeat(200_000)}}`,
      'application/json',
      400,
      'MALFORMED',
    ],
    [
      'holds a NUL',
      JSON.stringify({ ...person, fullName: 'A\u0000B' }),
      'application/json',
      400,
      'MALFORMED',
    ],
    [
      'holds half a character',
      JSON.stringify({ ...person, fullName: '\ud800' }),
      'application/json',
      400,
      'MALFORMED',
    ],
    ['is a form', 'signInName=x', 'application/x-www-form-urlencoded', 415, 'UNSUPPORTED_MEDIA_TYPE'],
    ['is plain text', 'signInName', 'text/plain', 415, 'UNSUPPORTED_MEDIA_TYPE'],
    ['is a file where none is taken', 'a,b', 'text/csv', 415, 'UNSUPPORTED_MEDIA_TYPE'],
    [
      'is too large',
      JSON.stringify({ fullName: 'x'.repeat(1_100_000) }),
      'application/json',
      413,
      'BODY_TOO_LARGE',
    ],
  ])('because it %s is a problem', async (_, body, contentType, status, code) => {
    expectProblem(await sent(body, contentType), status, code);
  });

  it.each(['/api/nope', '/api', '/health/nope', '/api/people/x/y/z'])(
    'at %s is a problem',
    async (address) => {
      const asked = { headers: { accept: 'text/html' } };
      expectProblem(await admin.get(address, asked), 404, 'NO_SUCH_ROUTE');
    },
  );

  it('with an address that is not well formed is a problem', async () => {
    const answer = await fetch(`${api.baseUrl}/api/%zz`);
    expect([answer.status, answer.headers.get('content-type')]).toEqual([
      400,
      'application/problem+json; charset=utf-8',
    ]);
  });

  it('is a problem even when it is no HTTP at all', async () => {
    const text = await new Promise<string>((resolve, reject) => {
      const socket = net.connect(Number(new URL(api.baseUrl).port), '127.0.0.1', () =>
        socket.end('THIS IS NOTHING\r\n\r\n'),
      );
      let received = '';
      socket.on('data', (bytes) => (received += bytes.toString()));
      socket.on('close', () => resolve(received));
      socket.on('error', reject);
    });

    expect(text).toMatch(/^HTTP\/1\.1 400 /);
    expect(text).toContain('content-type: application/problem+json');
    expect(text).toContain('"code":"MALFORMED"');
  });
});

describe('fields that cannot be taken', () => {
  it('are named one by one, each with its reason and its fix', async () => {
    const answer = await admin.post('/api/people', {
      signInName: 'A B',
      fullName: 7,
      roles: ['pilot'],
      rank: 1,
    });

    const { fields } = expectProblem(answer, 400, 'INVALID_FIELDS');
    expect(fields.map(({ field }) => field).sort()).toEqual([
      'fullName',
      'password',
      'rank',
      'roles',
      'signInName',
    ]);
    expect(fields).toContainEqual({
      field: 'rank',
      reason: 'This request has no such field.',
      fix: 'Leave it out.',
    });
    expect(fields).toContainEqual({ field: 'password', reason: 'It is missing.', fix: 'Fill it in.' });
    expect(fields).toContainEqual({ field: 'fullName', reason: 'It must be a string.', fix: 'Enter text.' });
    for (const { reason, fix } of fields)
      expect([reason, fix]).toEqual([expect.stringMatching(/\.$/), expect.stringMatching(/\.$/)]);
  });
});

describe('a fault of the server', () => {
  it('tells its request id and nothing of itself, and is logged under that id', async () => {
    await withClient(database.adminUrl, (client) =>
      client.query('ALTER TABLE person RENAME COLUMN licence TO licence_x'),
    );
    const answer = await admin.get('/api/people');
    await withClient(database.adminUrl, (client) =>
      client.query('ALTER TABLE person RENAME COLUMN licence_x TO licence'),
    );

    const { requestId } = expectProblem(answer, 500, 'INTERNAL');
    expect(JSON.stringify(answer.body)).not.toMatch(/licence|column|prisma|\.js/i);
    expect(api.log.filter((line) => line.includes(requestId)).join()).toMatch(/licence/);
  });
});

describe('every answer', () => {
  const policy =
    "default-src 'none';script-src 'self';style-src 'self';font-src 'self';connect-src 'self';img-src 'self' data: blob:;" +
    "manifest-src 'self';object-src 'none';base-uri 'none';form-action 'self';frame-ancestors 'none'";

  it.each([
    '/',
    '/airframes/1',
    '/assets/index-AbCd1234.js',
    '/health/live',
    '/api/people',
    '/api/nope',
    '/api/docs-jso',
  ])('at %s carries the security headers', async (address) => {
    const { headers } = await admin.get(address, { headers: { accept: 'text/html' } });

    expect(Object.fromEntries(headers)).toMatchObject({
      'content-security-policy': policy,
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'x-frame-options': 'DENY',
      'cross-origin-opener-policy': 'same-origin',
    });
    expect(headers.get('strict-transport-security')).toBeNull(); // plain http on this machine
    expect(headers.get('server') ?? headers.get('x-powered-by')).toBeNull();
  });

  it('of the records is kept by no cache', async () => {
    expect((await admin.get('/api/people')).headers.get('cache-control')).toBe('no-store');
    expect((await admin.get('/api/nope')).headers.get('cache-control')).toBe('no-store');
  });
});

describe('the documentation', () => {
  it('shows itself under a policy of its own, which still runs no script but the server’s', async () => {
    const page = await admin.get<string>('/api/docs');
    const scripts = [...page.body.matchAll(/<script[^>]*>/g)].map(([tag]) => tag);

    expect(page.status).toBe(200);
    expect(page.headers.get('content-security-policy')).toMatch(
      /script-src 'self';style-src 'self' 'unsafe-inline'/,
    );
    expect(scripts.length).toBeGreaterThan(0);
    for (const tag of scripts) expect(tag).toMatch(/src="\/api\/docs\//);
    for (const [, address] of page.body.matchAll(/(?:src|href)="([^"]+)"/g)) {
      expect([address, (await admin.get(address ?? '')).status]).toEqual([address, 200]);
    }
  });
});

describe('the client’s pages', () => {
  const page = { headers: { accept: 'text/html,application/xhtml+xml,*/*;q=0.8' } };

  it.each(['/', '/airframes/01a2', '/flights?airframe=1', '/a.b/deep'])('open at %s', async (address) => {
    const answer = await new HttpClient(api.baseUrl).get(address, page);

    expect([answer.status, answer.headers.get('cache-control')]).toEqual([200, 'no-cache']);
    expect(answer.body).toContain('<title>The page</title>');
  });

  it('have files that last, by their names', async () => {
    const answer = await new HttpClient(api.baseUrl).get('/assets/index-AbCd1234.js');

    expect(answer.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
  });

  it.each(['/assets/gone-AbCd1234.js', '/..%2f..%2fpackage.json', '/%2e%2e/%2e%2e/package.json', '/assets/'])(
    'are not answered for the missing file %s',
    async (address) => {
      const answer = await fetch(api.baseUrl + address, { headers: { accept: '*/*' } });

      expect(await answer.text()).not.toMatch(/workspaces/);
      if (address !== '/assets/') expect(answer.status).toBe(404);
    },
  );
});

describe('while the database is away', () => {
  it('a request is told to come back, and is answered again afterwards', async () => {
    const own = await startDatabase('away');
    const { signInName, password } = await foundOperator(own);
    const server = await startApi({ database: own });
    try {
      const client = new HttpClient(server.baseUrl);
      await client.signIn({ signInName, password });
      const limitTo = (connections: number) =>
        withClient(database.adminUrl, async (connection) => {
          await connection.query(`ALTER DATABASE ${own.name} CONNECTION LIMIT ${connections}`);
          await connection.query(
            'SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = $1',
            [own.name],
          );
        });

      await limitTo(0);
      const away = await client.get('/api/people');
      await limitTo(-1);
      const back = await client.get('/api/people');

      expectProblem(away, 503, 'UNAVAILABLE');
      expect(away.headers.get('retry-after')).toBe('2');
      expect(back.status).toBe(200);
    } finally {
      await server.stop();
      await own.drop();
    }
  }, 60_000);
});
