import { useSession } from '../../../server/session.js';
import type { Secret } from '../../../ui/fields/secret-field.js';

type Method = Secret['method'];

let last: Method | null = null;

/** What was signed with last on this device, else the PIN where one is set. Forgotten with the page. */
export function useFirstMethod(): Method {
  const session = useSession();
  return last ?? (session?.hasPin === true ? 'pin' : 'password');
}

export function keepMethod(method: Method): void {
  last = method;
}
