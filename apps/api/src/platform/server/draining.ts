import { setTimeout as sleep } from 'node:timers/promises';
import type { FastifyInstance } from 'fastify';

/** Time for requests already on their way: they are told to come back (503), not cut off. */
const ON_THEIR_WAY_MS = 200;
const LOOK_EVERY_MS = 50;
const LONGEST_MS = 10_000;

/**
 * Lets requests under way be answered when the server stops, and closes each connection as it falls idle: a browser
 * would keep it for a minute otherwise. What is still under way after ten seconds is cut off.
 */
export function drainOnClose(server: FastifyInstance): void {
  server.addHook('preClose', async () => {
    await sleep(ON_THEIR_WAY_MS);
    const began = Date.now();
    const look = setInterval(() => {
      if (Date.now() - began > LONGEST_MS) server.server.closeAllConnections();
      else server.server.closeIdleConnections();
    }, LOOK_EVERY_MS);
    look.unref();
    server.server.once('close', () => clearInterval(look));
  });
}
