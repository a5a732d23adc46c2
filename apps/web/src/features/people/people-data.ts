import { dataOrThrow, ifMatch } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../server/act.js';
import { api } from '../../server/api.js';

export type Person = components['schemas']['PersonDto'];
export type NewPerson = components['schemas']['NewPersonDto'];

export const PEOPLE_KEY = ['people'] as const;

/** Everyone of the operator who may sign in, or might once. */
export const peopleQuery = queryOptions({
  queryKey: PEOPLE_KEY,
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/people', { signal })).rows,
});

/** Adds a person. Throws: ProblemError. */
export async function addPerson(body: NewPerson, headers: ActHeaders): Promise<Person> {
  return dataOrThrow(await api.POST('/api/people', { body, headers }));
}

/** Shuts a person out, as seen at the version given. Throws: ProblemError, 412 when it changed since. */
export async function disablePerson(
  { id, version }: Pick<Person, 'id' | 'version'>,
  headers: ActHeaders,
): Promise<Person> {
  return dataOrThrow(
    await api.POST('/api/people/{id}/disable', {
      params: { path: { id } },
      headers: { ...headers, ...ifMatch(`"v${version}"`) },
    }),
  );
}
