import type { ScreenState, StateAnswer } from './screen-state.js';

/** The mark in the address that asks for a state of the gallery. */
export const STATE_MARK = 'gallery';

/** The address of a screen in a state. */
export const addressOf = ({ path, name }: ScreenState): string =>
  `${path}${path.includes('?') ? '&' : '?'}${STATE_MARK}=${name}`;

async function answer(request: Request, name: string): Promise<Response> {
  const [{ SCREEN_STATES }, { MISSING, sessionOf }] = await Promise.all([
    import('./screen-states.js'),
    import('./screen-state.js'),
  ]);
  const state = SCREEN_STATES.find((entry) => entry.name === name);
  const { pathname } = new URL(request.url);
  const said: StateAnswer =
    pathname === '/api/session'
      ? { body: sessionOf(state?.roles ?? ['administrator', 'certifying-staff']) }
      : (state?.answers[`${request.method} ${pathname}`] ?? MISSING);
  // The connection is lost once it is known who is signed in.
  if (state?.offline === true) window.dispatchEvent(new Event('offline'));
  if (state?.lostAfter === `${request.method} ${pathname}`)
    setTimeout(() => window.dispatchEvent(new Event('offline')), 400);
  if (said === 'never') return new Promise(() => undefined);
  if (said === 'lost') throw new TypeError('No connection');
  const { status = 200, body } = said;
  const type = status < 400 ? 'application/json' : 'application/problem+json';
  return new Response(JSON.stringify(body), { status, headers: { 'content-type': type } });
}

/** With the mark in the address, the state's answers stand in place of the server. */
export function stubServer(): void {
  const name = new URLSearchParams(window.location.search).get(STATE_MARK);
  if (name === null) return;
  window.fetch = (input, init) => answer(new Request(input, init), name);
}
