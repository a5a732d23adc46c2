import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../server/act.js';
import { api } from '../../server/api.js';

type Shapes = components['schemas'];
export type Readiness = Shapes['ReadinessDto'];
export type ReadinessItem = Shapes['ReadinessItemDto'];
export type ReadinessFlight = Shapes['ReadinessFlightDto'];
export type AskedReadiness = Shapes['AskedReadinessDto'];
export type PlannedRate = Shapes['PlannedRateDto'];
export type NewPlannedRate = Shapes['NewPlannedRateDto'];
export type FlightsPlanned = Shapes['FlightsPlannedDto'];

const READINESS_KEY = ['readiness'] as const;
const RATES_KEY = ['planned-rates'] as const;

/** What is otherwise once flying is planned otherwise. */
export const PLANNING_KEYS = [READINESS_KEY, RATES_KEY, ['due']] as const;

/** Which of the flights asked about may be made. */
export const readinessQuery = (airframeId: string, asked: AskedReadiness) =>
  queryOptions({
    queryKey: [...READINESS_KEY, airframeId, asked],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.POST('/api/airframes/{id}/readiness', {
          params: { path: { id: airframeId } },
          body: asked,
          signal,
        }),
      ),
  });

/** What an airframe is planned to fly from a day on. */
export const plannedRatesQuery = (airframeId: string) =>
  queryOptions({
    queryKey: [...RATES_KEY, airframeId],
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/airframes/{id}/planned-rates', { params: { path: { id: airframeId } }, signal }),
      ),
  });

/** Plans flights in the place of those before. Throws: ProblemError. */
export async function planFlights(
  { airframeId, flights }: { readonly airframeId: string; readonly flights: Shapes['NewPlannedFlightDto'][] },
  headers: ActHeaders,
): Promise<FlightsPlanned> {
  return dataOrThrow(
    await api.POST('/api/airframes/{id}/planned-flights', {
      params: { path: { id: airframeId } },
      body: { flights, replace: true },
      headers,
    }),
  );
}

/** Records a planned rate. Throws: ProblemError. */
export async function planRate(
  { airframeId, ...body }: NewPlannedRate & { readonly airframeId: string },
  headers: ActHeaders,
): Promise<PlannedRate> {
  return dataOrThrow(
    await api.POST('/api/airframes/{id}/planned-rates', {
      params: { path: { id: airframeId } },
      body,
      headers,
    }),
  );
}
