import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { api } from './api.js';

type Shapes = components['schemas'];

export type WorkRow = Shapes['PackageRowDto'];
export type WorkPackage = Shapes['PackageDto'];
export type PackageKind = WorkRow['kind'];
export type PackageStatus = WorkRow['status'];
/** What a package is to change at a place, as the order stands. */
export type Order = Shapes['OrderDto'];
export type OrderedComponent = Shapes['OrderedComponentDto'];
export type OrderRequest = Shapes['NewOrderDto'];

export const PACKAGES_KEY = ['packages'] as const;

export interface PackagesAsked {
  readonly airframe?: string | undefined;
  readonly kind?: PackageKind | undefined;
  readonly status?: PackageStatus | undefined;
}

/** Packages, the newest first, a page at a time. */
export const packagesQuery = ({ airframe, kind, status }: PackagesAsked) =>
  infiniteQueryOptions({
    queryKey: [...PACKAGES_KEY, 'list', airframe ?? 'all', kind ?? 'all', status ?? 'all'],
    staleTime: 0,
    initialPageParam: null as string | null,
    queryFn: async ({ signal, pageParam }) =>
      dataOrThrow(
        await api.GET('/api/packages', {
          params: {
            query: {
              ...(airframe === undefined ? {} : { airframeId: airframe }),
              ...(kind === undefined ? {} : { kind }),
              ...(status === undefined ? {} : { status }),
              ...(pageParam === null ? {} : { after: pageParam }),
            },
          },
          signal,
        }),
      ),
    getNextPageParam: ({ next }) => next,
  });

/** One package: what it is, its order, what was changed, and its release. */
export const packageQuery = (id: string) =>
  queryOptions({
    queryKey: [...PACKAGES_KEY, 'one', id],
    enabled: id !== '',
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/packages/{id}', { params: { path: { id } }, signal })),
  });

/** Whether it is worked by steps, and not a change logged as one act. */
export const hasSteps = ({ steps }: Pick<WorkRow, 'steps'>): boolean => steps.total > 0;
