import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../../server/api.js';
import { PACKAGES_KEY } from '../../server/work.js';

type Shapes = components['schemas'];

export type WaitingStep = Shapes['WaitingStepDto'];
export type WaitingPackage = Shapes['WaitingPackageDto'];
export type Why = WaitingStep['why'];

/** The steps that wait for whoever is signed in, by package. */
export const myWorkQuery = queryOptions({
  queryKey: [...PACKAGES_KEY, 'my-work'],
  staleTime: 0,
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/my-work', { signal })),
});
