import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../../server/api.js';

type Shapes = components['schemas'];
export type Counts = Shapes['CountsDto'];
export type BalanceRow = Shapes['BalanceRowDto'];
export type FleetBalance = Shapes['TrialBalanceDto'];
export type AirframeBalance = Shapes['AirframeBalanceDto'];
export type PositionBalance = Shapes['PositionBalanceDto'];
export type BalanceSpan = Shapes['BalanceSpanDto'];

/** The balance of every position of every airframe, now. Computed anew each time: it is a check. */
export const fleetBalanceQuery = queryOptions({
  queryKey: ['trial-balance', 'fleet'],
  staleTime: 0,
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/trial-balance', { signal })),
});

/** The balance of one airframe up to an instant of the wire, or now, span by span. */
export const airframeBalanceQuery = (id: string, upTo: string | undefined) =>
  queryOptions({
    queryKey: ['trial-balance', 'airframe', id, upTo ?? 'now'],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/trial-balance/airframes/{id}', {
          params: { path: { id }, query: upTo === undefined ? {} : { upTo } },
          signal,
        }),
      ),
  });
