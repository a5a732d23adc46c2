import type { FastifyInstance } from 'fastify';
import { sessionToken } from '../access/session-cookie.js';
import type { Config } from '../config/config.js';
import { RefusalError } from '../problems/refusal.error.js';

/** The largest body taken, except for a file that is brought in. */
export const BODY_LIMIT_BYTES = 1_048_576;
/** The largest file taken. */
const FILE_LIMIT_BYTES = 32 * 1_048_576;
const TAKES_FILES = 'POST /api/imports';

/** Takes a file as the body of an import, as the bytes it was sent as (a Buffer); nowhere else, and only with a session. */
export function acceptCsv(server: FastifyInstance, config: Config): void {
  // A file may come inside JSON too, there alone.
  server.addHook('onRoute', (route) => {
    if (`${String(route.method)} ${route.url}` === TAKES_FILES) route.bodyLimit = FILE_LIMIT_BYTES;
  });
  server.addHook('onRequest', async (request) => {
    const takesFiles = `${request.method} ${request.routeOptions.url}` === TAKES_FILES;
    const isCsv = /^text\/csv\b/i.test(request.headers['content-type'] ?? '');
    if (!takesFiles && !isCsv) return;
    if (!takesFiles) {
      throw new RefusalError({ code: 'UNSUPPORTED_MEDIA_TYPE', accepted: ['application/json'] });
    }
    // Before the body is read: who has no session does not fill our memory.
    if (sessionToken(request, config) === null) throw new RefusalError({ code: 'NOT_SIGNED_IN' });
  });
  server.addContentTypeParser(
    'text/csv',
    { parseAs: 'buffer', bodyLimit: FILE_LIMIT_BYTES },
    (_, body, done) => done(null, body),
  );
}
