import fs from 'node:fs';
import path from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { RefusalError } from '../problems/refusal.error.js';

/** Addresses that belong to the service and never answer a page. */
const OURS = /^\/(api|health)(\/|$)/;

/** A file whose name carries the hash of its content, as the client's build writes them. */
const HASHED = /-[A-Za-z0-9_-]{8,}\.[a-z0-9]+$/;

/**
 * Serves the built client: its files, and its page for every other address that a person may have opened.
 * An address of the service that does not exist stays a problem, and so does a missing file.
 */
export async function serveWebClient(server: FastifyInstance, folder: string | null): Promise<void> {
  if (folder === null || !fs.existsSync(path.join(folder, 'index.html'))) return;
  await server.register(fastifyStatic, {
    root: path.resolve(folder),
    serve: false,
    index: false,
    cacheControl: false,
  });
  server.get('/*', { exposeHeadRoute: true }, async (request, reply) => {
    const name = pathOf(request);
    if (OURS.test(name)) throw new RefusalError({ code: 'NO_SUCH_ROUTE' });
    if (isFile(folder, name)) return sendFile(reply, name);
    if (!acceptsPage(request) || path.extname(name) !== '') throw new RefusalError({ code: 'NO_SUCH_ROUTE' });
    return sendFile(reply, '/index.html');
  });
}

function sendFile(reply: FastifyReply, name: string): FastifyReply {
  const lasting = HASHED.test(name) ? 'public, max-age=31536000, immutable' : 'no-cache';
  return reply.header('cache-control', lasting).sendFile(name.slice(1));
}

function pathOf({ url }: FastifyRequest): string {
  const cut = url.split('?', 1)[0] ?? '/';
  try {
    return path.posix.normalize(decodeURIComponent(cut));
  } catch {
    return cut;
  }
}

function isFile(folder: string, name: string): boolean {
  if (name.includes('\0') || name.includes('\\') || name.endsWith('/')) return false;
  return fs.statSync(path.join(folder, name), { throwIfNoEntry: false })?.isFile() ?? false;
}

function acceptsPage({ headers }: FastifyRequest): boolean {
  return headers.accept === undefined || /text\/html|\*\/\*/.test(headers.accept);
}
