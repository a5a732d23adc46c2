import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import { readLoose } from '../../../server/loose.js';
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
export interface Duty {
  readonly requirementId: string;
  readonly code: string;
  readonly title: string;
  readonly document: string;
  readonly revision: string;
  /** On what, in words. */
  readonly subject: string;
  readonly airframeId: string | null;
  readonly positionId: string | null;
  readonly componentId: string | null;
  readonly status: string;
  readonly reason: string | null;
  readonly projectedOn: string | null;
}

/** The requirements of an airframe and what is on it, or of a component. */
export const dutiesQuery = ({ kind, id }: OrderOn) =>
  queryOptions({
    queryKey: ['requirements', 'of', kind, id],
    enabled: id !== '',
    queryFn: async ({ signal }) => {
      const told = await readLoose<readonly Duty[] | { readonly rows: readonly Duty[] }>(
        `/api/${kind}s/{id}/requirements`,
        { params: { path: { id } }, signal },
      );
      return 'rows' in told ? told.rows : told;
    },
  });

/** Opens a package. Throws: ProblemError. */
export async function openPackage(body: OpeningRequest, headers: ActHeaders) {
  return dataOrThrow(await api.POST('/api/packages', { body, headers }));
}
