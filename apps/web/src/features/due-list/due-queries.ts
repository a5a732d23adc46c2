import { dataOrThrow } from '@strutbook/api-client/index.js';
import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { api } from '../../server/api.js';
import type { DueAsk } from './due-search.js';

/** What falls due, a page at a time. */
export const dueQuery = (ask: DueAsk) =>
  infiniteQueryOptions({
    queryKey: ['due', 'rows', ask],
    staleTime: 0,
    initialPageParam: null as string | null,
    queryFn: async ({ signal, pageParam }) =>
      dataOrThrow(
        await api.GET('/api/due-points', {
          params: { query: { ...ask, ...(pageParam === null ? {} : { after: pageParam }) } },
          signal,
        }),
      ),
    getNextPageParam: ({ next }) => next,
  });

/** How many there are of each status: in all, of what the list is of, and by its filters. */
export const dueTotalsQuery = ({ sort: _sort, direction: _direction, ...filter }: DueAsk) =>
  queryOptions({
    queryKey: ['due', 'totals', filter],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/due-points/totals', { params: { query: filter }, signal })),
  });

/** The most urgent alone. */
export const firstDueQuery = (ask: DueAsk) =>
  queryOptions({
    queryKey: ['due', 'first', ask],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/due-points', { params: { query: ask }, signal })),
  });
