import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { api } from '../../server/api.js';
import { COMPONENTS_KEY } from '../../server/components.js';
import { FLEET_KEY } from '../../server/fleet.js';

type Shapes = components['schemas'];
export type ExplainedCounters = Shapes['ExplainedCountersDto'];
export type ExplainedCounter = Shapes['ExplainedCounterDto'];
export type Addend = Shapes['CounterAddendDto'];
export type AirframeCounters = Shapes['AirframeCountersDto'];
export type ClockAddend = Shapes['ClockAddendDto'];
export type ToldMoment = Shapes['ToldMomentDto'];
export type Basis = ExplainedCounter['basis'];

/** As of when, as the records tell it; nothing of it: now. */
export interface AskedMoment {
  readonly at?: string;
  readonly page?: string;
  readonly beforeFirst?: string;
  readonly afterLast?: string;
  readonly airframeId?: string;
}

/** The counters of a component with how each comes about. */
export const explainedQuery = (id: string, moment: AskedMoment) =>
  queryOptions({
    queryKey: [...COMPONENTS_KEY, 'counters', id, moment],
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/components/{id}/counters', {
          params: { path: { id }, query: { ...moment } },
          signal,
        }),
      ),
  });

/** The same of an airframe and its positions. */
export const airframeCountersQuery = (id: string, moment: AskedMoment) =>
  queryOptions({
    queryKey: [...FLEET_KEY, 'counters', id, moment],
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/airframes/{id}/counters', {
          params: { path: { id }, query: { ...moment } },
          signal,
        }),
      ),
  });

/** A span of one clock. */
export interface LineSpan {
  readonly carrierId: string;
  readonly from: string;
  readonly to: string | null;
}

/** The flights of one line, a page at a time. */
export const lineFlightsQuery = ({ carrierId, from, to }: LineSpan) =>
  infiniteQueryOptions({
    queryKey: ['counter-flights', carrierId, from, to],
    initialPageParam: null as string | null,
    queryFn: async ({ signal, pageParam }) =>
      dataOrThrow(
        await api.GET('/api/counter-flights', {
          params: {
            query: {
              ...{ carrierId, from },
              ...(to === null ? {} : { to }),
              ...(pageParam === null ? {} : { after: pageParam }),
            },
          },
          signal,
        }),
      ),
    getNextPageParam: (page) => page.next,
  });
