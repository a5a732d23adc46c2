import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';

type Shapes = components['schemas'];
export type Authorisation = Shapes['AuthorisationDto'];
export type NewAuthorisation = Shapes['NewAuthorisationDto'];
export type Scope = Authorisation['scope'];

export const AUTHORISATIONS_KEY = ['authorisations'] as const;

/** Who may sign what, ended and voided ones too. */
export const authorisationsQuery = queryOptions({
  queryKey: [...AUTHORISATIONS_KEY, 'all'],
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/authorisations', { signal })),
});

/** What one person may sign. */
export const authorisationsOfQuery = (personId: string) =>
  queryOptions({
    queryKey: [...AUTHORISATIONS_KEY, 'of', personId],
    enabled: personId !== '',
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/authorisations', { params: { query: { personId } }, signal })),
  });

/** Lets a person sign. Throws: ProblemError. */
export async function addAuthorisation(body: NewAuthorisation, headers: ActHeaders): Promise<Authorisation> {
  return dataOrThrow(await api.POST('/api/authorisations', { body, headers }));
}

export interface Ending {
  readonly id: string;
  readonly reason: string;
  /** The last day; null where it was recorded wrongly. */
  readonly lastOn: string | null;
}

/** Ends an authorisation with a day, or voids it. Throws: ProblemError. */
export async function endAuthorisation(
  { id, reason, lastOn }: Ending,
  headers: ActHeaders,
): Promise<Authorisation> {
  const params = { path: { id } };
  return dataOrThrow(
    lastOn === null
      ? await api.POST('/api/authorisations/{id}/void', { params, body: { reason }, headers })
      : await api.POST('/api/authorisations/{id}/end', { params, body: { reason, lastOn }, headers }),
  );
}
