import createFetchClient, { type Client, type Middleware } from 'openapi-fetch';
import { newActKey } from './act-key.js';
import { noAnswer, ProblemError, problemFrom } from './problem-error.js';
import type { paths } from './schema.gen.js';

export type ApiClient = Client<paths>;

const WRITES = new Set(['POST', 'PUT', 'PATCH', 'DELETE']);

/** The headers of a write: the session's token and one key per act. A key already there is kept. */
function writeHeaders(csrf: () => string | null): Middleware {
  return {
    onRequest({ request }) {
      if (!WRITES.has(request.method)) return undefined;
      const token = csrf();
      if (token !== null) request.headers.set('x-csrf-token', token);
      if (!request.headers.has('idempotency-key')) request.headers.set('idempotency-key', newActKey());
      return request;
    },
    onError({ request }) {
      // A cancelled question is not a failure of the server: its own error goes on.
      return request.signal.aborted ? undefined : noAnswer();
    },
  };
}

export interface ApiClientOptions {
  /** The origin before `/api`; empty for the page's own. */
  readonly baseUrl: string;
  /** The token of the session, asked at each write; null when nobody is signed in. */
  readonly csrf: () => string | null;
  readonly fetch?: (request: Request) => Promise<Response>;
}

/** A client of the server's routes, typed by its own description of them. */
export function createApiClient({ baseUrl, csrf, fetch }: ApiClientOptions): ApiClient {
  const client = createFetchClient<paths>({
    baseUrl,
    credentials: 'same-origin',
    headers: { accept: 'application/json, application/problem+json' },
    ...(fetch === undefined ? {} : { fetch }),
  });
  client.use(writeHeaders(csrf));
  return client;
}

/** Headers for a write on a version seen before: the server refuses (412) if it has changed since. */
export function ifMatch(version: string): { 'if-match': string } {
  return { 'if-match': version };
}

/** Headers that repeat an act under the key it was first sent with. */
export function underActKey(key: string): { 'idempotency-key': string } {
  return { 'idempotency-key': key };
}

interface Answer<T> {
  readonly data?: T;
  readonly error?: unknown;
  readonly response: Response;
}

/** The data of an answer. Throws: ProblemError when the server refused or failed. */
export function dataOrThrow<T>(answer: Answer<T>): T {
  if (answer.error !== undefined || !answer.response.ok) throw problemFrom(answer.error, answer.response);
  // An answer without a body (204) has undefined data, and T says so.
  return answer.data as T;
}

/** The data and the version tag (ETag) it was read at; the tag is what ifMatch() sends back. */
export function dataAndTag<T>(answer: Answer<T>): { readonly data: T; readonly tag: string | null } {
  return { data: dataOrThrow(answer), tag: answer.response.headers.get('etag') };
}

export { ProblemError };
