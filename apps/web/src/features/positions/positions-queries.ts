import { dataOrThrow } from '@strutbook/api-client/index.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../../server/api.js';
import { FLEET_KEY } from '../../server/fleet.js';

/** Every airframe with what stands at its positions. */
export const boardQuery = queryOptions({
  queryKey: [...FLEET_KEY, 'board'],
  staleTime: 0,
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/board', { signal })),
});

/** One airframe's positions, now or as they were at an instant of the wire. */
export const positionsAtQuery = (id: string, at: string | undefined) =>
  queryOptions({
    queryKey: [...FLEET_KEY, 'positions', id, at ?? 'now'],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/airframes/{id}/positions', {
          params: { path: { id }, query: at === undefined ? {} : { at } },
          signal,
        }),
      ),
  });
