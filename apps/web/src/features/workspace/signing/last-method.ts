import type { Method } from './signing-queries.js';

let last: Method = 'password';

/** What was signed with last on this device, offered first. Forgotten with the page. */
export const lastMethod = (): Method => last;

export function keepMethod(method: Method): void {
  last = method;
}
