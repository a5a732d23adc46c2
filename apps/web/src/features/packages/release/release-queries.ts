import { dataOrThrow, ifMatch } from '@strutbook/api-client/index.js';
import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import { writeLoose } from '../../../server/loose.js';
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

/** A release as it was signed. It never changes. */
export const releaseNoteQuery = (id: string) =>
  queryOptions({
    queryKey: [...PACKAGES_KEY, 'release', id],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/releases/{id}', { params: { path: { id } }, signal })),
  });

export interface Signing extends Secret {
  readonly packageId: string;
  readonly version: number;
  readonly digest: string;
}

/** Signs the release of exactly what the check showed. Throws: ProblemError. */
export const signRelease = (
  { packageId, version, digest, method, secret }: Signing,
  headers: ActHeaders,
): Promise<ReleaseNote> =>
  writeLoose<ReleaseNote>('/api/packages/{id}/release', {
    params: { path: { id: packageId } },
    headers: { ...headers, ...ifMatch(`"v${version}"`) },
    body: { digest, ...(method === 'password' ? { password: secret } : { pin: secret }) },
  });
