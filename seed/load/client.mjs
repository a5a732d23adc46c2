import { createHash } from 'node:crypto';

/** What the server refused, in its own words. */
export class RefusedError extends Error {
  constructor(method, path, status, problem) {
    const fields = (problem.fields ?? [])
      .map(({ field, reason, fix }) => `\n  ${field}: ${reason} ${fix ?? ''}`)
      .join('');
    super(
      `${method} ${path} was refused (${status} ${problem.code ?? ''}): ${problem.detail ?? problem.title ?? ''}${fields}`,
    );
    this.status = status;
    this.code = problem.code;
  }
}

/** How often a busy server is asked again before its refusal counts. */
const BUSY_TRIES = 30;

/** One signed-in person at the API. */
export class Client {
  #base;
  #cookie = '';
  #csrfToken = '';

  constructor(base) {
    this.#base = base.replace(/\/$/, '');
  }

  /** Signs in and answers the session. Errors: RefusedError, or the network's own. */
  async signIn(signInName, password, operatorCode = process.env.SEED_OPERATOR) {
    const answer = await this.#send('POST', '/api/session', {
      signInName,
      password,
      ...(operatorCode ? { operatorCode } : {}),
    });
    this.#cookie = answer.headers
      .getSetCookie()
      .map((cookie) => cookie.split(';')[0])
      .join('; ');
    const session = await answer.json();
    this.#csrfToken = session.csrfToken;
    return session;
  }

  async get(path) {
    return (await this.#send('GET', path)).json();
  }

  /** What is at the path, with its entity tag. */
  async getTagged(path) {
    const answer = await this.#send('GET', path);
    return { body: await answer.json(), tag: answer.headers.get('etag') };
  }

  /**
   * Posts one act. Its key comes from its content: the same record sent again is answered from the first time
   * and changes nothing.
   */
  async post(path, body, { ifMatch = null } = {}) {
    const text = JSON.stringify(body);
    const key = `seed-${createHash('sha256').update(`${path}\n${text}`).digest('hex').slice(0, 40)}`;
    const headers = { 'idempotency-key': key, ...(ifMatch === null ? {} : { 'if-match': ifMatch }) };
    const answer = await this.#send('POST', path, body, headers);
    const sent = await answer.text();
    return sent === '' ? null : JSON.parse(sent);
  }

  /** Sends; a busy server changed nothing and is asked again with the same key when it said so. */
  async #send(method, path, body, more = {}) {
    for (let tries = 1; ; tries += 1) {
      const answer = await this.#once(method, path, body, more);
      if (answer.ok) return answer;
      const problem = asProblem(await answer.text());
      if (problem.code !== 'BUSY' || tries === BUSY_TRIES) {
        throw new RefusedError(method, path, answer.status, problem);
      }
      const seconds = Number(answer.headers.get('retry-after')) || 1;
      await new Promise((resolve) => setTimeout(resolve, seconds * 1000));
    }
  }

  #once(method, path, body, more) {
    const headers = { accept: 'application/json', ...more };
    if (this.#cookie !== '') headers.cookie = this.#cookie;
    if (body !== undefined) headers['content-type'] = 'application/json';
    if (method !== 'GET' && this.#csrfToken !== '') headers['x-csrf-token'] = this.#csrfToken;
    return fetch(this.#base + path, {
      method,
      headers,
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
  }
}

function asProblem(text) {
  try {
    return JSON.parse(text);
  } catch {
    return { detail: text.slice(0, 300) };
  }
}
