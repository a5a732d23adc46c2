import { createServer, type IncomingHttpHeaders, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from '@jest/globals';
import { createApiClient, dataAndTag, dataOrThrow, ifMatch, underActKey } from './index.js';
import { NO_ANSWER, ProblemError } from './problem-error.js';

const UUID_4 = /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

interface Prepared {
  readonly status: number;
  readonly headers?: Record<string, string>;
  readonly body: string;
}

let server: Server;
let baseUrl = '';
let answer: Prepared = { status: 200, body: '{}' };
let seen: IncomingHttpHeaders[] = [];

beforeAll(async () => {
  server = createServer((request, response) => {
    seen.push(request.headers);
    request.resume();
    response.writeHead(answer.status, { 'content-type': 'application/json', ...answer.headers });
    response.end(answer.body);
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  baseUrl = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});

afterAll(async () => {
  await new Promise((closed) => server.close(closed));
});

beforeEach(() => {
  seen = [];
  answer = { status: 200, body: '{}' };
});

const client = (csrf: string | null = 'token-1') => createApiClient({ baseUrl, csrf: () => csrf });
const words = { signInName: 'r.kay', password: 'a long one' };

describe('a write', () => {
  test('carries the token of the session and a key of its own', async () => {
    await client().POST('/api/session', { body: words });
    await client().DELETE('/api/session');
    expect(seen.map((headers) => headers['x-csrf-token'])).toEqual(['token-1', 'token-1']);
    const keys = seen.map((headers) => headers['idempotency-key']);
    for (const key of keys) expect(key).toMatch(UUID_4);
    expect(new Set(keys).size).toBe(2);
  });

  test('keeps the key of the act that it repeats', async () => {
    await client().POST('/api/session', { body: words, headers: underActKey('act-7') });
    expect(seen[0]?.['idempotency-key']).toBe('act-7');
  });

  test('names the version it was made on', async () => {
    await client().POST('/api/session', { body: words, headers: ifMatch('"3"') });
    expect(seen[0]?.['if-match']).toBe('"3"');
  });

  test('has no token while nobody is signed in', async () => {
    await client(null).POST('/api/session', { body: words });
    expect(seen[0]?.['x-csrf-token']).toBeUndefined();
  });
});

describe('a read', () => {
  test('carries neither token nor key', async () => {
    await client().GET('/api/session');
    expect(seen[0]?.['x-csrf-token']).toBeUndefined();
    expect(seen[0]?.['idempotency-key']).toBeUndefined();
  });

  test('gives the tag of the version with the data', async () => {
    answer = { status: 200, headers: { etag: '"8"' }, body: '{"csrfToken":"t"}' };
    expect(dataAndTag(await client().GET('/api/session'))).toEqual({ data: { csrfToken: 't' }, tag: '"8"' });
  });
});

async function refusalOf(act: () => Promise<unknown>): Promise<ProblemError> {
  try {
    await act();
  } catch (error) {
    if (error instanceof ProblemError) return error;
    throw error;
  }
  throw new Error('The act was not refused');
}

describe('a refusal', () => {
  test('is thrown with what the server says of each field', async () => {
    const body = {
      type: 'about:blank',
      title: 'Refused',
      status: 422,
      detail: 'KT-377 is still there.',
      code: 'SLOT_OCCUPIED',
      fields: [{ field: 'slotId', reason: 'Occupied', fix: 'Remove KT-377 first' }],
      requestId: 'r-1',
    };
    answer = {
      status: 422,
      headers: { 'content-type': 'application/problem+json' },
      body: JSON.stringify(body),
    };
    const error = await refusalOf(async () =>
      dataOrThrow(await client().POST('/api/session', { body: words })),
    );
    expect(error.problem).toEqual(body);
    expect(error.message).toBe('KT-377 is still there.');
  });

  test('keeps its status when something before the server answers in another form', async () => {
    answer = { status: 502, headers: { 'content-type': 'text/html' }, body: '<h1>Bad gateway</h1>' };
    const error = await refusalOf(async () => dataOrThrow(await client().GET('/api/session')));
    expect([error.status, error.code, error.fields]).toEqual([502, 'HTTP_502', []]);
  });

  test('with an empty body is a refusal all the same', async () => {
    answer = { status: 500, headers: { 'content-length': '0', 'x-request-id': 'r-9' }, body: '' };
    const error = await refusalOf(async () => dataOrThrow(await client().GET('/api/session')));
    expect([error.status, error.problem.requestId]).toEqual([500, 'r-9']);
  });

  test('says so when no answer comes at all', async () => {
    const nowhere = createApiClient({ baseUrl: 'http://127.0.0.1:1', csrf: () => null });
    const error = await refusalOf(async () => dataOrThrow(await nowhere.GET('/api/session')));
    expect([error.status, error.code]).toEqual([0, NO_ANSWER]);
  });

  test('is not made of a question that was cancelled', async () => {
    const stop = new AbortController();
    stop.abort();
    await expect(client().GET('/api/session', { signal: stop.signal })).rejects.toMatchObject({
      name: 'AbortError',
    });
  });
});
