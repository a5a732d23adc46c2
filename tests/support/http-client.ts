import { randomUUID } from 'node:crypto';

/** What an answer carried. `body` is parsed JSON, or text where the answer is none. */
export interface Answer<T = unknown> {
  readonly status: number;
  readonly headers: Headers;
  readonly etag: string | null;
  readonly body: T;
  readonly bytes: Uint8Array;
}

export interface RequestOptions {
  /** The version the change rests on: sent as If-Match. */
  readonly ifMatch?: string;
  /** Sent instead of a new one; null sends none. */
  readonly idempotencyKey?: string | null;
  readonly headers?: Readonly<Record<string, string>>;
  readonly signal?: AbortSignal;
}

/** A fault of the client or the test server would otherwise read as a fault of the product. */
const patience = 60_000;
const reading = new Set(['GET', 'HEAD', 'OPTIONS']);

function parsed(bytes: Uint8Array, contentType: string): unknown {
  const text = new TextDecoder().decode(bytes);
  return /\bjson\b/.test(contentType) && text !== '' ? JSON.parse(text) : text;
}

function encoded(body: unknown): { body?: NonNullable<RequestInit['body']>; contentType?: string } {
  if (body === undefined) return {};
  if (body instanceof FormData || body instanceof URLSearchParams) return { body };
  if (body instanceof Uint8Array) return { body: new Uint8Array(body) }; // bytes: the caller says of what kind
  if (typeof body === 'string') return { body, contentType: 'text/plain; charset=utf-8' };
  return { body: JSON.stringify(body), contentType: 'application/json' };
}

/**
 * One person's browser without the browser: keeps cookies, sends the CSRF token of its session, and an
 * Idempotency-Key of its own with every change.
 */
export class HttpClient {
  private readonly cookies = new Map<string, string>();
  private csrfToken: string | null = null;

  constructor(readonly baseUrl: string) {}

  get<T = unknown>(path: string, options?: RequestOptions): Promise<Answer<T>> {
    return this.send<T>('GET', path, undefined, options);
  }

  post<T = unknown>(path: string, body?: unknown, options?: RequestOptions): Promise<Answer<T>> {
    return this.send<T>('POST', path, body, options);
  }

  put<T = unknown>(path: string, body?: unknown, options?: RequestOptions): Promise<Answer<T>> {
    return this.send<T>('PUT', path, body, options);
  }

  patch<T = unknown>(path: string, body?: unknown, options?: RequestOptions): Promise<Answer<T>> {
    return this.send<T>('PATCH', path, body, options);
  }

  delete<T = unknown>(path: string, body?: unknown, options?: RequestOptions): Promise<Answer<T>> {
    return this.send<T>('DELETE', path, body, options);
  }

  /** Signs in with what the session's route takes. Throws with the answer when it is refused. */
  async signIn(credentials: object): Promise<Answer> {
    const answer = await this.post('/api/session', credentials);
    if (answer.status >= 300)
      throw new Error(`sign-in refused: ${answer.status} ${JSON.stringify(answer.body)}`);
    return answer;
  }

  /** Sends the request as it stands and takes over the cookies and the CSRF token of the answer. */
  async send<T>(
    method: string,
    path: string,
    body: unknown,
    options: RequestOptions = {},
  ): Promise<Answer<T>> {
    const content = encoded(body);
    const response = await fetch(new URL(path, this.baseUrl), {
      method,
      headers: { ...this.headersFor(method, options, content.contentType), ...options.headers },
      ...(content.body === undefined ? {} : { body: content.body }),
      redirect: 'manual',
      signal: options.signal ?? AbortSignal.timeout(patience),
    });
    this.keepCookies(response.headers);
    const bytes = new Uint8Array(await response.arrayBuffer());
    const answer = parsed(bytes, response.headers.get('content-type') ?? '') as T;
    this.keepCsrfToken(path, answer);
    return {
      status: response.status,
      headers: response.headers,
      etag: response.headers.get('etag'),
      body: answer,
      bytes,
    };
  }

  private headersFor(
    method: string,
    options: RequestOptions,
    contentType: string | undefined,
  ): Record<string, string> {
    const headers: Record<string, string> = { accept: 'application/json' };
    if (contentType !== undefined) headers['content-type'] = contentType;
    if (this.cookies.size > 0)
      headers['cookie'] = [...this.cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    if (reading.has(method)) return headers;
    if (this.csrfToken !== null) headers['x-csrf-token'] = this.csrfToken;
    if (options.idempotencyKey !== null) headers['idempotency-key'] = options.idempotencyKey ?? randomUUID();
    if (options.ifMatch !== undefined) headers['if-match'] = options.ifMatch;
    return headers;
  }

  private keepCookies(headers: Headers): void {
    for (const cookie of headers.getSetCookie()) {
      const [pair = '', ...attributes] = cookie.split(';');
      const name = pair.slice(0, pair.indexOf('=')).trim();
      const value = pair.slice(pair.indexOf('=') + 1).trim();
      const expired = attributes.some(
        (attribute) => /^\s*max-age=0$/i.test(attribute) || /^\s*expires=.*1970/i.test(attribute),
      );
      if (expired || value === '') this.cookies.delete(name);
      else this.cookies.set(name, value);
    }
  }

  private keepCsrfToken(path: string, body: unknown): void {
    if (!path.startsWith('/api/session') || typeof body !== 'object' || body === null) return;
    if ('csrfToken' in body && typeof body.csrfToken === 'string') this.csrfToken = body.csrfToken;
  }
}
