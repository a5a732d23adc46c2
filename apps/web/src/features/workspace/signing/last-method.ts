import { useSession } from '../../../server/session.js';
import type { Method } from './signing-queries.js';

let last: Method | null = null;

/** What was signed with last on this device, else the PIN where one is set. Forgotten with the page. */
export function useFirstMethod(): Method {
  const session = useSession();
  return last ?? (session?.hasPin === true ? 'pin' : 'password');
}

export function keepMethod(method: Method): void {
  last = method;
}
