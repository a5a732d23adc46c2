import { dataOrThrow } from '@strutbook/api-client/index.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../../server/api.js';
import { COMPONENTS_KEY } from '../../server/components.js';
import { FLEET_KEY } from '../../server/fleet.js';

/** Whose overruns: a component's with what is in it, or those flown on an airframe. */
export interface OverrunsOf {
  readonly kind: 'component' | 'airframe';
  readonly id: string;
}

/** Spans flown over a limit, the latest first. */
export const overrunsQuery = ({ kind, id }: OverrunsOf) =>
  queryOptions({
    queryKey: [...(kind === 'component' ? COMPONENTS_KEY : FLEET_KEY), 'overruns', id],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(
        kind === 'component'
          ? await api.GET('/api/components/{id}/overruns', { params: { path: { id } }, signal })
          : await api.GET('/api/airframes/{id}/overruns', { params: { path: { id } }, signal }),
      ),
  });
