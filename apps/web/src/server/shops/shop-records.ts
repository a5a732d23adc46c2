import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../act.js';
import { api } from '../api.js';

type Shapes = components['schemas'];
export type ShopVisit = Shapes['ShopVisitDto'];
export type ShopVisitRow = Shapes['ShopVisitRowDto'];
export type NewShopVisit = Shapes['NewShopVisitDto'];
export type NewShopReturn = Shapes['NewShopReturnDto'];
export type BuildStandard = Shapes['BuildStandardDto'];
export type BuiltComponent = Shapes['BuiltComponentDto'];
export type Spare = Shapes['SpareDto'];
export type Serviceability = Shapes['ServiceabilityDto'];
export type Tag = Shapes['TagDto'];
export type Preservation = Shapes['PreservationDto'];
export type NewTag = Shapes['NewTagDto'];
export type NewPreservation = Shapes['NewPreservationDto'];

export const SHOPS_KEY = ['shops'] as const;

export type VisitStatus = 'in-shop' | 'returned';

/** Shop visits, the last sent first, a page at a time. */
export const shopVisitsQuery = (status: VisitStatus | undefined) =>
  infiniteQueryOptions({
    queryKey: [...SHOPS_KEY, 'visits', status ?? 'all'],
    staleTime: 0,
    initialPageParam: null as string | null,
    queryFn: async ({ signal, pageParam }) =>
      dataOrThrow(
        await api.GET('/api/shop-visits', {
          params: {
            query: {
              ...(status === undefined ? {} : { status }),
              ...(pageParam === null ? {} : { after: pageParam }),
            },
          },
          signal,
        }),
      ),
    getNextPageParam: ({ next }) => next,
  });

/** One visit: what went, what came back, and what changed. */
export const shopVisitQuery = (id: string) =>
  queryOptions({
    queryKey: [...SHOPS_KEY, 'visit', id],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/shop-visits/{id}', { params: { path: { id } }, signal })),
  });

export type SpareSort = 'serial' | 'cycles' | 'hours' | 'since' | 'preservation';

/** Which spares are asked for. */
export interface SparesAsked {
  readonly kind?: Spare['kind'] | undefined;
  readonly location?: string | undefined;
  readonly fit?: boolean | undefined;
  readonly search?: string | undefined;
  readonly slot?: string | undefined;
  readonly sort?: SpareSort | undefined;
}

/** What is installed nowhere, a page at a time. */
export const sparesQuery = ({ kind, location, fit, search, slot, sort }: SparesAsked) =>
  infiniteQueryOptions({
    queryKey: [...SHOPS_KEY, 'spares', { kind, location, fit, search, slot, sort }],
    staleTime: 0,
    initialPageParam: null as string | null,
    queryFn: async ({ signal, pageParam }) =>
      dataOrThrow(
        await api.GET('/api/spares', {
          params: {
            query: {
              ...(kind === undefined ? {} : { kind }),
              ...(location === undefined ? {} : { locationId: location }),
              ...(fit === undefined ? {} : { fit }),
              ...(search === undefined || search.trim() === '' ? {} : { search: search.trim() }),
              ...(slot === undefined ? {} : { slotId: slot }),
              ...(sort === undefined ? {} : { sort }),
              ...(pageParam === null ? {} : { after: pageParam }),
            },
          },
          signal,
        }),
      ),
    getNextPageParam: ({ next }) => next,
  });

/** What tags, shop and place say of a component. */
export const serviceabilityQuery = (id: string) =>
  queryOptions({
    queryKey: [...SHOPS_KEY, 'serviceability', id],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/components/{id}/serviceability', { params: { path: { id } }, signal })),
  });

// Each sends one act. Throws: ProblemError.

export const sendToShop = async (body: NewShopVisit, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/shop-visits', { body, headers }));

export const returnFromShop = async (
  { id, ...body }: NewShopReturn & { readonly id: string },
  headers: ActHeaders,
) => dataOrThrow(await api.POST('/api/shop-visits/{id}/return', { params: { path: { id } }, body, headers }));

export const voidVisit = async (
  { id, reason }: { readonly id: string; readonly reason: string },
  headers: ActHeaders,
) =>
  dataOrThrow(
    await api.POST('/api/shop-visits/{id}/void', { params: { path: { id } }, body: { reason }, headers }),
  );

export const voidReturn = async (
  { id, reason }: { readonly id: string; readonly reason: string },
  headers: ActHeaders,
) =>
  dataOrThrow(
    await api.POST('/api/shop-visits/{id}/return/void', {
      params: { path: { id } },
      body: { reason },
      headers,
    }),
  );

export const recordTag = async (body: NewTag, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/serviceability-tags', { body, headers }));

export const recordPreservation = async (body: NewPreservation, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/preservations', { body, headers }));
