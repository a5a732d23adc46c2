import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../../server/api.js';
import { COMPONENTS_KEY } from '../../server/components.js';

type Shapes = components['schemas'];
export type LifeSheet = Shapes['LifeSheetDto'];
export type SheetPart = Shapes['SheetPartDto'];

const asAt = (at: string | undefined): string => (at === undefined ? '' : `?at=${encodeURIComponent(at)}`);

/** Where the server gives the sheet as a file. */
export const csvAddress = (id: string, at: string | undefined): string =>
  `/api/components/${id}/life-status.csv${asAt(at)}`;

/** The status of the limited parts in a component, now or as at an instant of the wire. */
export const lifeSheetQuery = (id: string, at: string | undefined) =>
  queryOptions({
    queryKey: [...COMPONENTS_KEY, 'life-status', id, at ?? 'now'],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/components/{id}/life-status', {
          params: { path: { id }, query: at === undefined ? {} : { at } },
          signal,
        }),
      ),
  });
