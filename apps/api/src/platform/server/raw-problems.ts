import { randomUUID } from 'node:crypto';
import type { Socket } from 'node:net';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { asRefusal, refusalOfStatus } from '../problems/problem.filter.js';
import { problemOf } from '../problems/problem-of.js';
import { RefusalError } from '../problems/refusal.error.js';

const TYPE = 'application/problem+json; charset=utf-8';

/** Answers what fails before any route is looked for, such as an address that is not well formed. */
export function answerFrameworkError(error: Error, request: FastifyRequest, reply: FastifyReply): void {
  const problem = problemOf(asRefusal(error), request.id);
  void reply
    .status(problem.status)
    .header('x-content-type-options', 'nosniff')
    .type(TYPE)
    .send(JSON.stringify(problem));
}

/** Answers bytes that are no HTTP request at all, where there is neither request nor reply. */
export function answerClientError(error: Error & { code?: string }, socket: Socket): void {
  if (error.code === 'ECONNRESET' || !socket.writable) {
    socket.destroy();
    return;
  }
  const reason =
    error.code === 'ERR_HTTP_REQUEST_TIMEOUT' ? 'The request came too slowly.' : 'This is no HTTP request.';
  const fix = 'Send it again.';
  const problem = problemOf(new RefusalError({ code: 'MALFORMED', reason, fix }), randomUUID());
  const body = JSON.stringify(problem);
  const head = `HTTP/1.1 400 Bad Request\r\ncontent-type: ${TYPE}\r\ncontent-length: ${Buffer.byteLength(body)}\r\nconnection: close\r\n\r\n`;
  socket.end(head + body);
}

/** Makes a problem of every failure that a layer below answered in a form of its own, as while the server stops. */
export function makeProblems(server: FastifyInstance): void {
  server.addHook('onSend', async (request, reply, payload) => {
    const type = String(reply.getHeader('content-type') ?? '');
    if (reply.statusCode < 400 || type.startsWith('application/problem+json')) return payload;
    const refusal = refusalOfStatus(reply.statusCode);
    const problem = problemOf(new RefusalError(refusal), request.id);
    if ('retryAfterSeconds' in refusal) void reply.header('retry-after', String(refusal.retryAfterSeconds));
    void reply.status(problem.status).type(TYPE).removeHeader('content-length');
    return JSON.stringify(problem);
  });
}
