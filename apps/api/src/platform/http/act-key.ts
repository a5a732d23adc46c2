import { createHash } from 'node:crypto';
import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import { ApiHeader } from '@nestjs/swagger';
import { canonical, type Json, NotCanonicalError } from '@strutbook/journal/canonical.js';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { refuse } from '../problems/refusal.error.js';

/** One act of a person, as its request names it. */
export interface ActRequest {
  /** The Idempotency-Key: one for each act, the same when it is repeated. */
  readonly key: string;
  /** SHA-256 of method, address and canonical body: two requests with one key must agree in it. */
  readonly fingerprint: Uint8Array<ArrayBuffer>;
  /** Called with what the act answered, first or again, so that status and ETag follow it. */
  readonly answered: (answer: { readonly status: number; readonly version: number | null }) => void;
}

/** The act's key from its header, with the fingerprint of the request. Refuses: MISSING_KEY, KEY_MALFORMED. */
export const ActKey = createParamDecorator<unknown>(
  (_: unknown, context: ExecutionContext): ActRequest => {
    const http = context.switchToHttp();
    return actRequest(http.getRequest<FastifyRequest>(), http.getResponse<FastifyReply>());
  },
  [
    (target, property) => {
      if (property === undefined) return;
      const descriptor = Object.getOwnPropertyDescriptor(target, property);
      if (descriptor === undefined) return;
      ApiHeader({
        name: 'idempotency-key',
        required: false,
        description:
          'A key for this act, new for each act and the same when it is repeated. Refused (400) when missing.',
        schema: { type: 'string', minLength: 8, maxLength: 255 },
      })(target, property, descriptor);
    },
  ],
);

function actRequest(request: FastifyRequest, reply: FastifyReply): ActRequest {
  const key = request.headers['idempotency-key'];
  if (key === undefined || key === '') refuse({ code: 'MISSING_KEY' });
  if (typeof key !== 'string' || !/^[\x21-\x7e]{8,255}$/.test(key)) refuse({ code: 'KEY_MALFORMED' });
  return {
    key,
    fingerprint: fingerprintOf(request),
    answered: ({ status, version }) => {
      request.answer = { status };
      if (version !== null) void reply.header('etag', etagOf(version));
    },
  };
}

function fingerprintOf({ method, url, body }: FastifyRequest): Uint8Array<ArrayBuffer> {
  try {
    // A file comes as its bytes; they are their own canonical form.
    const content = Buffer.isBuffer(body) ? body : canonical(withoutSecrets(body ?? null) as Json);
    return new Uint8Array(createHash('sha256').update(`${method} ${url}\n`).update(content).digest());
  } catch (error) {
    if (!(error instanceof NotCanonicalError)) throw error;
    return refuse({
      code: 'MALFORMED',
      reason: 'The body holds text that is not Unicode.',
      fix: 'Send it in UTF-8.',
    });
  }
}

const SECRETS: readonly string[] = ['password', 'secret', 'pin'];

// A plain hash of a password or a PIN must not be kept; the one who repeats an act proves who they are again.
function withoutSecrets(body: unknown): unknown {
  if (typeof body !== 'object' || body === null) return body;
  if (Array.isArray(body)) return body.map(withoutSecrets);
  const kept = Object.entries(body).filter(([name]) => !SECRETS.includes(name));
  return Object.fromEntries(kept.map(([name, value]) => [name, withoutSecrets(value)]));
}

/** The strong entity tag of a version of a resource. Total. */
export function etagOf(version: number): string {
  return `"v${version}"`;
}
