import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../../server/api.js';

type Shapes = components['schemas'];
export type History = Shapes['HistoryDto'];
export type HistoryLine = Shapes['HistoryLineDto'];

export interface Subject {
  readonly kind: 'airframe' | 'component';
  readonly id: string;
}

export const HISTORY_KEY = ['history'] as const;

/** Where the server gives the history as data. */
export const dataAddress = ({ kind, id }: Subject): string => `/api/${kind}s/${id}/history`;

/** Everything that happened to an airframe or a component, in order. */
export const historyQuery = ({ kind, id }: Subject) =>
  queryOptions({
    queryKey: [...HISTORY_KEY, kind, id],
    queryFn: async ({ signal }): Promise<History> => {
      const params = { path: { id } };
      return dataOrThrow(
        kind === 'airframe'
          ? await api.GET('/api/airframes/{id}/history', { params, signal })
          : await api.GET('/api/components/{id}/history', { params, signal }),
      );
    },
  });
