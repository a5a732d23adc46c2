import type { Actor } from '../access/actor.js';
import type { SessionView } from '../access/sessions.js';

declare module 'fastify' {
  interface FastifyRequest {
    /** Whose session the cookie names; set by the access guard. */
    session: SessionView | null;
    actor: Actor | null;
    /** What the act answered, when the route performed one. */
    answer: { readonly status: number } | null;
  }
}
