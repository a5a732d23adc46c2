import { type ArgumentsHost, Catch, type ExceptionFilter, HttpException, Logger } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { ApiRefusal } from './api-refusals.js';
import { problemOf, rowOf } from './problem-of.js';
import { RefusalError } from './refusal.error.js';

/** Turns whatever was thrown into a problem; a fault of ours tells its request id alone and is logged whole. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  private readonly log = new Logger('Request');

  catch(thrown: unknown, host: ArgumentsHost): void {
    const request = host.switchToHttp().getRequest<FastifyRequest>();
    const reply = host.switchToHttp().getResponse<FastifyReply>();
    if (reply.sent) return;
    const error = asRefusal(thrown);
    const row = rowOf(error.refusal);
    if (row.status >= 500) {
      const { method, id } = request;
      // The route's pattern and not the address: an address may carry what does not belong in a log.
      this.log.error({
        requestId: id,
        method,
        route: request.routeOptions?.url ?? null,
        error: inWords(thrown),
      });
    }
    if (row.retryAfterSeconds !== undefined) void reply.header('retry-after', String(row.retryAfterSeconds));
    void reply.removeHeader('etag').removeHeader('content-disposition');
    void reply
      .status(row.status)
      .header('cache-control', 'no-store')
      .type('application/problem+json; charset=utf-8')
      .send(JSON.stringify(problemOf(error, request.id)));
  }
}

function inWords(thrown: unknown): string {
  return thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
}

/** What was thrown, as a refusal. */
export function asRefusal(thrown: unknown): RefusalError {
  if (thrown instanceof RefusalError) return thrown;
  return new RefusalError(refusalOfFramework(thrown), { cause: thrown });
}

/** Fastify's and Nest's own errors, which carry a status and for some a code. */
function refusalOfFramework(thrown: unknown): ApiRefusal {
  // Nest wraps Fastify's errors and keeps the original as the cause.
  const error = thrown instanceof HttpException && thrown.cause instanceof Error ? thrown.cause : thrown;
  if (!(error instanceof Error)) return { code: 'INTERNAL' };
  const { statusCode, code } = error as { statusCode?: unknown; code?: unknown };
  const status = error instanceof HttpException ? error.getStatus() : statusCode;
  return refusalOfStatus(status, code, error);
}

/** The refusal that an HTTP status means when nothing more is known. Total. */
export function refusalOfStatus(status: unknown, code?: unknown, error?: Error): ApiRefusal {
  switch (status) {
    case 404:
      return { code: 'NO_SUCH_ROUTE' };
    case 413:
      return { code: 'BODY_TOO_LARGE' };
    case 415:
      return { code: 'UNSUPPORTED_MEDIA_TYPE', accepted: ['application/json'] };
    case 503:
      return { code: 'UNAVAILABLE', retryAfterSeconds: 2 };
    default:
      return typeof status === 'number' && status >= 400 && status < 500
        ? malformed(code, error)
        : { code: 'INTERNAL' };
  }
}

function malformed(code: unknown, error?: Error): ApiRefusal {
  if (code === 'FST_ERR_CTP_EMPTY_JSON_BODY') {
    return {
      code: 'MALFORMED',
      reason: 'The body is empty.',
      fix: 'Send a JSON object, or leave out content-type.',
    };
  }
  if (error instanceof SyntaxError || code === 'FST_ERR_CTP_INVALID_JSON_BODY') {
    return { code: 'MALFORMED', reason: 'The body is not JSON.', fix: 'Send one JSON object.' };
  }
  return {
    code: 'MALFORMED',
    reason: 'The request is not well formed.',
    fix: 'Check the address, the headers and the body.',
  };
}
