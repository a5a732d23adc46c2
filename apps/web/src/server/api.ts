import { createApiClient } from '@strutbook/api-client/index.js';

let csrfToken: string | null = null;

/** Keeps the token that the server gave with the session, for the writes to come. Never stored. */
export function holdCsrfToken(token: string | null): void {
  csrfToken = token;
}

/** The server's routes, from this page's own origin. */
export const api = createApiClient({
  baseUrl: '',
  csrf: () => csrfToken,
  // Looked up at each request: the gallery puts answers of its own in its place.
  fetch: (request) => globalThis.fetch(request),
});
