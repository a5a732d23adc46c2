import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type Founded, foundOperator, type RunningApi, startApi } from '../support/api.js';
import { startDatabase, type TestDatabase, withClient } from '../support/database.js';
import { HttpClient } from '../support/http-client.js';

interface Problem {
  readonly code: string;
  readonly detail: string;
}

interface Session {
  readonly person: { readonly id: string };
  readonly csrfToken: string;
  readonly mustChangePassword: boolean;
}

let database: TestDatabase;
let api: RunningApi;
let founded: Founded;

beforeAll(async () => {
  database = await startDatabase();
  founded = await foundOperator(database);
  api = await startApi({ database });
}, 60_000);

afterAll(async () => {
  await api?.stop();
  await database?.drop();
}, 30_000);

const credentials = () => ({ signInName: founded.signInName, password: founded.password });

async function signedIn(): Promise<HttpClient> {
  const client = new HttpClient(api.baseUrl);
  await client.signIn(credentials());
  return client;
}

async function personAdded(by: HttpClient, signInName: string): Promise<{ id: string; etag: string }> {
  const person = {
    signInName,
    fullName: 'Someone Else',
    roles: ['records'],
    password: 'a first password 123',
  };
  const answer = await by.post<{ id: string }>('/api/people', person);
  expect(answer.status).toBe(201);
  return { id: answer.body.id, etag: answer.etag ?? '' };
}

/** Runs one statement as the database's own superuser, whom nothing hides. */
const asSuperuser = (sql: string, values: unknown[] = []) =>
  withClient(database.adminUrl, async (client) => (await client.query(sql, values)).rows);

describe('signing in', () => {
  it('answers who it is, and puts the token where no script reads it', async () => {
    const answer = await new HttpClient(api.baseUrl).post<Session>('/api/session', credentials());

    expect(answer.status).toBe(201);
    expect(answer.body).toEqual({
      person: {
        id: expect.any(String),
        fullName: founded.fullName,
        signInName: 'admin',
        licence: null,
        roles: ['administrator'],
      },
      operator: { code: founded.operatorCode, name: founded.operatorName },
      csrfToken: expect.stringMatching(/^[\w-]{43}$/),
      mustChangePassword: false,
      hasPin: false,
    });
    const [cookie = ''] = answer.headers.getSetCookie();
    expect(cookie).toMatch(/^session=[\w-]{43}; Path=\/; Expires=[^;]+; HttpOnly; SameSite=Strict$/);
  });

  it('keeps the hash of the token and never the token', async () => {
    const answer = await new HttpClient(api.baseUrl).post('/api/session', credentials());
    const token = /^session=([\w-]+)/.exec(answer.headers.getSetCookie()[0] ?? '')?.[1] ?? '';

    const rows = await asSuperuser('SELECT id FROM session WHERE token_hash = $1', [
      createHash('sha256').update(token).digest(),
    ]);

    expect(rows).toHaveLength(1);
  });

  it('tells an unknown name and a wrong password alike', async () => {
    const client = new HttpClient(api.baseUrl);

    const unknown = await client.post<Problem>('/api/session', { signInName: 'nobody', password: 'x' });
    const wrong = await client.post<Problem>('/api/session', { signInName: 'admin', password: 'x' });

    expect([unknown.status, wrong.status]).toEqual([401, 401]);
    expect({ ...unknown.body, requestId: '' }).toEqual({ ...wrong.body, requestId: '' });
    await signedIn(); // clears the count of wrong passwords
  });

  it('works as long on an unknown name as on a wrong password', async () => {
    const client = new HttpClient(api.baseUrl);
    const quickest = async (names: readonly string[]): Promise<number> => {
      const times: number[] = [];
      for (const signInName of names) {
        const before = performance.now();
        await client.post('/api/session', { signInName, password: 'not this one' });
        times.push(performance.now() - before);
      }
      return Math.min(...times);
    };

    const wrong = await quickest(['admin', 'admin', 'admin', 'admin']);
    const unknown = await quickest(['nobody.1', 'nobody.2', 'nobody.3', 'nobody.4']);

    // The password's hash takes nearly all of the time; without it the answer comes in a fraction.
    expect(unknown).toBeGreaterThan(wrong / 3);
    await signedIn();
  });

  it('makes a name wait after five wrong passwords, also with the right one', async () => {
    await personAdded(await signedIn(), 'guessed');
    const client = new HttpClient(api.baseUrl);
    const guess = (password: string) =>
      client.post<Problem>('/api/session', { signInName: 'guessed', password });

    const guesses = await Promise.all(Array.from({ length: 12 }, (_, each) => guess(`guess ${each}`)));
    const right = await guess('a first password 123');

    expect(guesses.filter(({ status }) => status === 401)).toHaveLength(5);
    expect(guesses.filter(({ status }) => status === 429)).toHaveLength(7);
    expect(right.status).toBe(429);
    expect(right.body.code).toBe('TOO_MANY_ATTEMPTS');
    expect(Number(right.headers.get('retry-after'))).toBeGreaterThan(0);
  });
});

describe('a session', () => {
  it('ends at signing out, and its cookie opens nothing afterwards', async () => {
    const answer = await new HttpClient(api.baseUrl).post<Session>('/api/session', credentials());
    const cookie = (answer.headers.getSetCookie()[0] ?? '').split(';')[0] ?? '';
    const headers = { cookie, 'x-csrf-token': answer.body.csrfToken };
    const bare = new HttpClient(api.baseUrl);

    expect((await bare.get('/api/session', { headers })).status).toBe(200);
    expect((await bare.delete('/api/session', undefined, { headers })).status).toBe(204);
    expect((await bare.get('/api/session', { headers })).status).toBe(401);
  });

  it('ends after an hour without a request', async () => {
    const client = await signedIn();
    await asSuperuser(`UPDATE session SET last_seen_at = now() - interval '59 minutes'`);
    expect((await client.get('/api/session')).status).toBe(200);

    await asSuperuser(`UPDATE session SET last_seen_at = now() - interval '61 minutes'`);
    expect((await client.get('/api/session')).status).toBe(401);
  });

  it('ends twelve hours after it began, however busy', async () => {
    const client = await signedIn();
    const [{ hours }] = (await asSuperuser(
      'SELECT extract(epoch FROM expires_at - created_at) / 3600 AS hours FROM session ORDER BY created_at DESC LIMIT 1',
    )) as [{ hours: string }];
    expect(Number(hours)).toBe(12);

    await asSuperuser('UPDATE session SET expires_at = now()');
    expect((await client.get('/api/session')).status).toBe(401);
  });

  it('ends when its person is shut out', async () => {
    const admin = await signedIn();
    const { id, etag } = await personAdded(admin, 'leaver');
    const leaver = new HttpClient(api.baseUrl);
    await leaver.signIn({ signInName: 'leaver', password: 'a first password 123' });

    const shut = await admin.post(`/api/people/${id}/disable`, undefined, { ifMatch: etag });

    expect(shut.status).toBe(200);
    expect((await leaver.get('/api/session')).status).toBe(401);
    const again = await leaver.post('/api/session', {
      signInName: 'leaver',
      password: 'a first password 123',
    });
    expect(again.status).toBe(401);
  });

  it('takes changes only with its own token', async () => {
    const client = await signedIn();
    const other = await new HttpClient(api.baseUrl).post<Session>('/api/session', credentials());
    const change = (token: string) =>
      client.post<Problem>('/api/people', {}, { headers: { 'x-csrf-token': token } });

    for (const token of ['', 'x', other.body.csrfToken]) {
      const answer = await change(token);
      expect([answer.status, answer.body.code]).toEqual([403, 'CSRF_TOKEN_WRONG']);
    }
  });

  it('takes no change from another site', async () => {
    const client = await signedIn();

    for (const site of ['cross-site', 'same-site']) {
      const answer = await client.post<Problem>('/api/people', {}, { headers: { 'sec-fetch-site': site } });
      expect([answer.status, answer.body.code]).toEqual([403, 'OTHER_SITE']);
    }
  });
});

describe('a password that someone else set', () => {
  it('opens nothing until it is changed, and ends the other sessions then', async () => {
    await personAdded(await signedIn(), 'newcomer');
    const sign = { signInName: 'newcomer', password: 'a first password 123' };
    const [client, elsewhere] = [new HttpClient(api.baseUrl), new HttpClient(api.baseUrl)];
    expect((await client.signIn(sign)).body).toMatchObject({ mustChangePassword: true });
    await elsewhere.signIn(sign);

    const before = await client.get<Problem>('/api/people');
    const change = { currentPassword: sign.password, newPassword: 'words of my own, four' };
    const changed = await client.post<Session>('/api/session/password', change);
    const after = await client.get<Problem>('/api/people');

    expect([before.status, before.body.code]).toEqual([403, 'PASSWORD_CHANGE_NEEDED']);
    expect([changed.status, changed.body.mustChangePassword]).toEqual([200, false]);
    expect([after.status, after.body.code]).toEqual([403, 'NOT_ALLOWED']); // the role's own refusal
    expect((await elsewhere.get('/api/session')).status).toBe(401);
  });

  it('is not replaced by a short or guessable one, nor without the present one', async () => {
    await personAdded(await signedIn(), 'hasty.person');
    const client = new HttpClient(api.baseUrl);
    await client.signIn({ signInName: 'hasty.person', password: 'a first password 123' });
    const change = async (currentPassword: string, newPassword: string) =>
      (await client.post<Problem>('/api/session/password', { currentPassword, newPassword })).body.code;

    expect(await change('a first password 123', 'fourteen signs')).toBe('PASSWORD_TOO_WEAK');
    expect(await change('a first password 123', 'hasty.person123')).toBe('PASSWORD_TOO_WEAK');
    expect(await change('a first password 123', 'aaaaaaaaaaaaaaaaaaaa')).toBe('PASSWORD_TOO_WEAK');
    expect(await change('a first password 123', 'a first password 123')).toBe('PASSWORD_TOO_WEAK');
    expect(await change('not the present one', 'words of my own, four')).toBe('WRONG_PASSWORD');
    expect(await change('a first password 123', 'fifteen signs..')).toBeUndefined();
  });
});

describe('over TLS', () => {
  it('binds the cookie to this host and asks browsers to stay with TLS', async () => {
    const secure = await startApi({ database, env: { PUBLIC_ORIGIN: 'https://records.example' } });
    try {
      const answer = await new HttpClient(secure.baseUrl).post('/api/session', credentials());

      expect(answer.headers.getSetCookie()[0]).toMatch(/^__Host-session=[\w-]{43}; Path=\/; .*; Secure/);
      expect(answer.headers.get('strict-transport-security')).toBe('max-age=31536000; includeSubDomains');
    } finally {
      await secure.stop();
    }
  }, 30_000);
});
