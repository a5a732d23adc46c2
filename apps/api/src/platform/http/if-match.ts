import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import { ApiHeader } from '@nestjs/swagger';
import type { FastifyRequest } from 'fastify';
import { refuse } from '../problems/refusal.error.js';

/** The version the sender saw, from If-Match. Refuses: MISSING_IF_MATCH, IF_MATCH_MALFORMED. */
export const IfMatch = createParamDecorator<unknown>(
  (_: unknown, context: ExecutionContext): number =>
    versionIn(context.switchToHttp().getRequest<FastifyRequest>().headers['if-match']),
  [
    (target, property) => {
      if (property === undefined) return;
      const descriptor = Object.getOwnPropertyDescriptor(target, property);
      if (descriptor === undefined) return;
      ApiHeader({
        name: 'if-match',
        required: false,
        description:
          'The etag of the version that was seen. Refused when missing (428) or no longer the present one (412).',
        schema: { type: 'string' },
      })(target, property, descriptor);
    },
  ],
);

/** The version an If-Match header names. Refuses: MISSING_IF_MATCH, IF_MATCH_MALFORMED. */
export function versionIn(header: string | undefined): number {
  if (header === undefined || header === '') return refuse({ code: 'MISSING_IF_MATCH' });
  const digits = /^"v(\d{1,9})"$/.exec(header)?.[1];
  return digits === undefined ? refuse({ code: 'IF_MATCH_MALFORMED' }) : Number(digits);
}

/** Refuses: STALE when the record is no longer at the version that was seen. Lock its row before. */
export function requireVersion(present: number, seen: number, what: string): void {
  if (present !== seen) refuse({ code: 'STALE', what });
}
