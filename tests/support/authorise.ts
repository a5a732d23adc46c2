import type { HttpClient } from './http-client.js';
import { done } from './scenario/problem.js';

type Scope = 'work' | 'inspection' | 'release';

/** What each role may sign, once the person is authorised. */
const SCOPES: Readonly<Record<string, readonly Scope[]>> = {
  technician: ['work'],
  inspector: ['work', 'inspection'],
  'certifying-staff': ['work', 'inspection', 'release'],
};

/** Authorises a person for all that the roles may sign, on every type, long since and without an end. */
export async function authorise(
  administrator: HttpClient,
  { id, roles }: { readonly id: string; readonly roles: readonly string[] },
): Promise<void> {
  for (const scope of new Set(roles.flatMap((role) => SCOPES[role] ?? [])))
    done(
      await administrator.post('/api/authorisations', {
        ...{ personId: id, scope, fromOn: '2020-01-01', reference: 'Authorisation list 1' },
      }),
    );
}
