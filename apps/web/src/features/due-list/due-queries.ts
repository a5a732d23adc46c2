import { dataOrThrow } from '@strutbook/api-client/index.js';
import { infiniteQueryOptions } from '@tanstack/react-query';
import { api } from '../../server/api.js';

/** What falls due, the most urgent first, a page at a time. */
export const dueQuery = (airframeId: string | undefined) =>
  infiniteQueryOptions({
    queryKey: ['due', airframeId ?? 'all'],
    staleTime: 0,
    initialPageParam: null as string | null,
    queryFn: async ({ signal, pageParam }) =>
      dataOrThrow(
        await api.GET('/api/due-points', {
          params: {
            query: {
              ...(pageParam === null ? {} : { after: pageParam }),
              ...(airframeId === undefined ? {} : { airframeId }),
            },
          },
          signal,
        }),
      ),
    getNextPageParam: ({ next }) => next,
  });
