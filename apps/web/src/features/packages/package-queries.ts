import { dataOrThrow, ifMatch } from '@strutbook/api-client/index.js';
import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../server/act.js';
import { api } from '../../server/api.js';

const KEY = ['packages'] as const;

export const packageQuery = (id: string) =>
  queryOptions({
    queryKey: [...KEY, 'one', id],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/packages/{id}', { params: { path: { id } }, signal })),
  });

/** What stands against releasing. Never kept: each look is a fresh check. */
export const releaseCheckQuery = (id: string) =>
  queryOptions({
    queryKey: [...KEY, 'release-check', id],
    staleTime: 0,
    gcTime: 0,
    refetchOnMount: 'always',
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/packages/{id}/release-check', { params: { path: { id } }, signal })),
  });

/** A release as it was signed. It never changes. */
export const releaseNoteQuery = (id: string) =>
  queryOptions({
    queryKey: [...KEY, 'release', id],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/releases/{id}', { params: { path: { id } }, signal })),
  });

export interface Signing {
  readonly packageId: string;
  readonly version: number;
  readonly digest: string;
  readonly password: string;
}

/** Signs the release of exactly what the check showed. Throws: ProblemError. */
export async function signRelease({ packageId, version, digest, password }: Signing, headers: ActHeaders) {
  return dataOrThrow(
    await api.POST('/api/packages/{id}/release', {
      params: { path: { id: packageId } },
      headers: { ...headers, ...ifMatch(`"v${version}"`) },
      body: { digest, password },
    }),
  );
}
