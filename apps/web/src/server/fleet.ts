import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from './api.js';

type Shapes = components['schemas'];
export type Airframe = Shapes['AirframeDto'];
export type AirframeType = Shapes['AirframeTypeDto'];
export type EngineModel = Shapes['EngineModelDto'];
export type LifeLimit = Shapes['LifeLimitDto'];
export type Location = Shapes['LocationDto'];
export type RuleSet = Shapes['RuleSetDto'];

export const FLEET_KEY = ['fleet'] as const;

/** Every airframe of the operator. */
export const airframesQuery = queryOptions({
  queryKey: [...FLEET_KEY, 'airframes'],
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/airframes', { signal })),
});

/** One airframe with its positions and their slots. */
export const airframeQuery = (id: string) =>
  queryOptions({
    queryKey: [...FLEET_KEY, 'airframe', id],
    enabled: id !== '',
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/airframes/{id}', { params: { path: { id } }, signal })),
  });

export const airframeTypesQuery = queryOptions({
  queryKey: [...FLEET_KEY, 'airframe-types'],
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/airframe-types', { signal })),
});

export const engineModelsQuery = queryOptions({
  queryKey: [...FLEET_KEY, 'engine-models'],
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/engine-models', { signal })),
});

export const lifeLimitsQuery = queryOptions({
  queryKey: [...FLEET_KEY, 'life-limits'],
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/life-limits', { signal })),
});

export const locationsQuery = queryOptions({
  queryKey: [...FLEET_KEY, 'locations'],
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/locations', { signal })),
});

export const ruleSetsQuery = queryOptions({
  queryKey: [...FLEET_KEY, 'rule-sets'],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/rule-sets', { signal })),
});

/** What is installed on an airframe, position by position. */
export const positionsQuery = (id: string) =>
  queryOptions({
    queryKey: [...FLEET_KEY, 'positions', id],
    enabled: id !== '',
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/airframes/{id}/positions', { params: { path: { id } }, signal })),
  });
