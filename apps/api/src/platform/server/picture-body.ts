import type { FastifyInstance } from 'fastify';
import { sessionToken } from '../access/session-cookie.js';
import type { Config } from '../config/config.js';
import { RefusalError } from '../problems/refusal.error.js';

const PICTURES = ['image/jpeg', 'image/png', 'image/webp'];
/** The largest picture kept. */
export const PICTURE_LIMIT_BYTES = 8 * 1_048_576;
// More is read than is kept: a camera's larger picture is answered, where a connection cut in its middle is not.
const READ_LIMIT_BYTES = 32 * 1_048_576;
const TAKES_PICTURES = 'POST /api/steps/:id/photos';

/** Takes a picture as the body of a step's photo, as the bytes it was sent as (a Buffer); nothing else there, and pictures nowhere else. */
export function acceptPictures(server: FastifyInstance, config: Config): void {
  server.addHook('onRoute', (route) => {
    if (`${String(route.method)} ${route.url}` === TAKES_PICTURES) route.bodyLimit = READ_LIMIT_BYTES;
  });
  server.addHook('onRequest', async (request) => {
    const takesPictures = `${request.method} ${request.routeOptions.url}` === TAKES_PICTURES;
    const [type = ''] = (request.headers['content-type'] ?? '').toLowerCase().split(';', 1);
    const isPicture = PICTURES.includes(type.trim());
    if (takesPictures !== isPicture)
      throw new RefusalError({
        code: 'UNSUPPORTED_MEDIA_TYPE',
        accepted: takesPictures ? PICTURES : ['application/json'],
      });
    // Before the body is read: who has no session does not fill our memory.
    if (takesPictures && sessionToken(request, config) === null)
      throw new RefusalError({ code: 'NOT_SIGNED_IN' });
  });
  server.addContentTypeParser(PICTURES, { parseAs: 'buffer', bodyLimit: READ_LIMIT_BYTES }, (_, body, done) =>
    done(null, body),
  );
}
