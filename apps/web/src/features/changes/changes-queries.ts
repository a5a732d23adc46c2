import { dataOrThrow } from '@strutbook/api-client/index.js';
import { infiniteQueryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../server/act.js';
import { api } from '../../server/api.js';
import type { ChangeRequest } from '../../server/wire.js';

export interface PackagesAsked {
  readonly airframeId: string | undefined;
  readonly status: 'open' | 'released' | undefined;
}

/** Packages, the newest first, a page at a time. */
export const packagesQuery = ({ airframeId, status }: PackagesAsked) =>
  infiniteQueryOptions({
    queryKey: ['packages', 'list', airframeId ?? 'all', status ?? 'all'],
    staleTime: 0,
    initialPageParam: null as string | null,
    queryFn: async ({ signal, pageParam }) =>
      dataOrThrow(
        await api.GET('/api/packages', {
          params: {
            query: {
              ...(airframeId === undefined ? {} : { airframeId }),
              ...(status === undefined ? {} : { status }),
              ...(pageParam === null ? {} : { after: pageParam }),
            },
          },
          signal,
        }),
      ),
    getNextPageParam: ({ next }) => next,
  });

/** What a change would record; nothing is written. Throws: ProblemError. */
export async function previewChange(request: ChangeRequest) {
  return dataOrThrow(await api.POST('/api/changes/preview', { body: request }));
}

export interface Confirmed {
  readonly request: ChangeRequest;
  readonly digest: string;
}

/** Records the change as the preview showed it. Throws: ProblemError. */
export async function recordChange({ request, digest }: Confirmed, headers: ActHeaders) {
  return dataOrThrow(
    await api.POST('/api/changes', { body: { ...request, confirmDigest: digest }, headers }),
  );
}
