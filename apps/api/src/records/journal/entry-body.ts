import { canonical, type Json } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import type { NewEntry } from './journal.js';

/**
 * The canonical text of an entry: who acted, with which key, about what, and what was done. It is kept and
 * hashed as this very text.
 */
export function entryBody(
  actor: Pick<Actor, 'personId' | 'fullName' | 'licence'>,
  { kind, body, about, key }: Pick<NewEntry, 'kind' | 'body' | 'about' | 'key'>,
): string {
  const whole: Readonly<Record<string, Json>> = {
    kind,
    by: { personId: actor.personId, fullName: actor.fullName, licence: actor.licence },
    key: key ?? null,
    about: [...about].sort(),
    done: body,
  };
  return canonical(whole);
}
