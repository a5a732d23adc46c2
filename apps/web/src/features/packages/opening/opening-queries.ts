import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import type { PackageKind } from '../../../server/work.js';
import type { OrderOn } from '../order/order-draft.js';
import type { OpeningRequest } from './opening-draft.js';

export type ProcedureRow = components['schemas']['ProcedureRowDto'];

/** The procedures for one kind of work. */
export const proceduresQuery = (kind: PackageKind | '') =>
  queryOptions({
    queryKey: ['procedures', 'of-kind', kind],
    enabled: kind !== '',
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/procedures', { params: { query: kind === '' ? {} : { kind } }, signal }),
      ),
  });

/** How a requirement stands on one subject. */
export type Duty = components['schemas']['RequirementStatusDto'];

/** The requirements of an airframe and what is on it, or of a component. */
export const dutiesQuery = ({ kind, id }: OrderOn) =>
  queryOptions({
    queryKey: ['requirements', 'of', kind, id],
    enabled: id !== '',
    queryFn: async ({ signal }) => {
      const params = { path: { id } };
      return dataOrThrow(
        kind === 'airframe'
          ? await api.GET('/api/airframes/{id}/requirements', { params, signal })
          : await api.GET('/api/components/{id}/requirements', { params, signal }),
      );
    },
  });

/** Opens a package. Throws: ProblemError. */
export async function openPackage(body: OpeningRequest, headers: ActHeaders) {
  return dataOrThrow(await api.POST('/api/packages', { body, headers }));
}
