import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import type { ProcedureContent } from '@strutbook/domain/work/step.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from './api.js';
import type { PackageKind } from './work.js';

type Shapes = components['schemas'];
export type ProcedureRow = Shapes['ProcedureRowDto'];
/** With its content as the core has it. */
export type Procedure = Omit<Shapes['ProcedureDto'], 'content'> & { readonly content: ProcedureContent };

export const PROCEDURES_KEY = ['procedures'] as const;

/** Every revision of every procedure, the latest of each first. */
export const proceduresQuery = queryOptions({
  queryKey: [...PROCEDURES_KEY, 'all'],
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/procedures', { signal })),
});

/** Those for one kind of work. */
export const proceduresForQuery = (kind: PackageKind | '') =>
  queryOptions({ ...proceduresQuery, select: (rows) => rows.filter((row) => row.kind === kind) });

/** One revision with its steps. It is never changed. */
export const procedureQuery = (id: string) =>
  queryOptions({
    queryKey: [...PROCEDURES_KEY, 'one', id],
    queryFn: async ({ signal }): Promise<Procedure> =>
      dataOrThrow(await api.GET('/api/procedures/{id}', { params: { path: { id } }, signal })),
  });
