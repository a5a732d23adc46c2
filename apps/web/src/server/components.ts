import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { api } from './api.js';

type Shapes = components['schemas'];
export type Component = Shapes['ComponentDto'];
export type ComponentRow = Shapes['ComponentRowDto'];
export type ComponentKind = ComponentRow['kind'];
export type Slot = Shapes['SlotDto'];
export type Stay = Shapes['StayDto'];
export type ComponentFacts = Shapes['ComponentFactsDto'];

export const COMPONENTS_KEY = ['components'] as const;

export interface ComponentsAsked {
  readonly kind?: ComponentKind | undefined;
  readonly search?: string | undefined;
  readonly limit?: number | undefined;
}

const asked = ({ kind, search, limit }: ComponentsAsked) => ({
  ...(kind === undefined ? {} : { kind }),
  ...(search === undefined || search.trim() === '' ? {} : { search: search.trim() }),
  ...(limit === undefined ? {} : { limit }),
});

/** Components by serial number, a page at a time. */
export const componentsQuery = (query: ComponentsAsked) =>
  infiniteQueryOptions({
    queryKey: [...COMPONENTS_KEY, 'list', asked(query)],
    initialPageParam: null as string | null,
    queryFn: async ({ signal, pageParam }) =>
      dataOrThrow(
        await api.GET('/api/components', {
          params: { query: { ...asked(query), ...(pageParam === null ? {} : { after: pageParam }) } },
          signal,
        }),
      ),
    getNextPageParam: (page) => page.next,
  });

/** The first components that match, for choosing one. */
export const componentChoiceQuery = (query: ComponentsAsked) =>
  queryOptions({
    queryKey: [...COMPONENTS_KEY, 'choice', asked({ limit: 20, ...query })],
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/components', { params: { query: asked({ limit: 20, ...query }) }, signal }),
      ),
  });

/** One component with its counters, its life and what is in it. */
export const componentQuery = (id: string) =>
  queryOptions({
    queryKey: [...COMPONENTS_KEY, 'one', id],
    enabled: id !== '',
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/components/{id}', { params: { path: { id } }, signal })),
  });

/** Everywhere a component was; voided stays are marked. */
export const placesQuery = (id: string) =>
  queryOptions({
    queryKey: [...COMPONENTS_KEY, 'places', id],
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/components/{id}/places', { params: { path: { id } }, signal })),
  });

/** What a component came with: opening balances, ratings, overhauls, gaps. */
export const factsQuery = (id: string) =>
  queryOptions({
    queryKey: [...COMPONENTS_KEY, 'facts', id],
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/components/{id}/facts', { params: { path: { id } }, signal })),
  });
