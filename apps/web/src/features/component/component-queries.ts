import { dataOrThrow } from '@strutbook/api-client/index.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../../server/api.js';
import { COMPONENTS_KEY } from '../../server/components.js';

/** One component with all that is computed of it, now or as it was at an instant of the wire. */
export const componentAtQuery = (id: string, at: string | undefined) =>
  queryOptions({
    queryKey: [...COMPONENTS_KEY, 'at', id, at ?? 'now'],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/components/{id}', {
          params: { path: { id }, query: at === undefined ? {} : { at } },
          signal,
        }),
      ),
  });
