import { dataOrThrow, ifMatch } from '@strutbook/api-client/index.js';
import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import type { ReleaseNote } from '../../../server/wire.js';
import { PACKAGES_KEY } from '../../../server/work.js';
import type { Secret } from '../../../ui/fields/secret-field.js';

/** What stands against releasing. Never kept: each look is a fresh check. */
export const releaseCheckQuery = (id: string) =>
  queryOptions({
    queryKey: [...PACKAGES_KEY, 'release-check', id],
    staleTime: 0,
    gcTime: 0,
    refetchOnMount: 'always',
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/packages/{id}/release-check', { params: { path: { id } }, signal })),
  });

const PRINTING_MS = 1500;

const isPrinted = (note: ReleaseNote | undefined): boolean => (note?.certificate ?? null) !== null;

/** A release as it was signed. It never changes; its certificate is printed some seconds later. */
export const releaseNoteQuery = (id: string) =>
  queryOptions({
    queryKey: [...PACKAGES_KEY, 'release', id],
    queryFn: async ({ signal }): Promise<ReleaseNote> =>
      dataOrThrow(await api.GET('/api/releases/{id}', { params: { path: { id } }, signal })),
    staleTime: ({ state }) => (isPrinted(state.data) ? Number.POSITIVE_INFINITY : 0),
    refetchInterval: ({ state }) => (state.data === undefined || isPrinted(state.data) ? false : PRINTING_MS),
  });

export interface Signing extends Secret {
  readonly packageId: string;
  readonly version: number;
  readonly digest: string;
}

/** Signs the release of exactly what the check showed. Throws: ProblemError. */
export async function signRelease(
  { packageId, version, digest, method, secret }: Signing,
  headers: ActHeaders,
) {
  return dataOrThrow(
    await api.POST('/api/packages/{id}/release', {
      params: { path: { id: packageId } },
      headers: { ...headers, ...ifMatch(`"v${version}"`) },
      body: { digest, ...(method === 'password' ? { password: secret } : { pin: secret }) },
    }),
  );
}
