import { dataOrThrow, ifMatch } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../server/act.js';
import { api } from '../../server/api.js';

type Shapes = components['schemas'];
export type ImportFile = Shapes['ImportDto'];
export type ImportRow = Shapes['ImportRowDto'];
export type ImportError = Shapes['ImportErrorDto'];
export type ImportState = ImportRow['state'];
type ImportBegun = Shapes['ImportBegunDto'];

export const IMPORTS_KEY = ['imports'] as const;

const ASK_EVERY_MS = 700;

const AT_WORK: ReadonlySet<string> = new Set(['checking', 'applying']);

/** Whether the server is still at work on the file. */
export const isAtWork = (state: ImportState): boolean => AT_WORK.has(state);

/** Files, the newest first. Asked again while the server is at work on one. */
export const importsQuery = infiniteQueryOptions({
  queryKey: [...IMPORTS_KEY, 'list'],
  initialPageParam: null as string | null,
  queryFn: async ({ signal, pageParam }) =>
    dataOrThrow(
      await api.GET('/api/imports', {
        params: { query: pageParam === null ? {} : { after: pageParam } },
        signal,
      }),
    ),
  getNextPageParam: (page) => page.next,
});

/** One file with what its check found. Asked again until the work on it has ended. */
export const importQuery = (id: string) =>
  queryOptions({
    queryKey: [...IMPORTS_KEY, 'one', id],
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/imports/{id}', { params: { path: { id } }, signal })),
    refetchInterval: ({ state }) =>
      state.data !== undefined && isAtWork(state.data.state) ? ASK_EVERY_MS : false,
  });

export interface ChosenFile {
  readonly file: File;
  /** These three name the file in the act's key: a File itself has no text. */
  readonly name: string;
  readonly size: number;
  readonly modified: number;
}

/** Sends a file to be checked; nothing is recorded yet. Throws: ProblemError. */
export async function takeFile({ file, name }: ChosenFile, headers: ActHeaders): Promise<ImportBegun> {
  return dataOrThrow(
    await api.POST('/api/imports', {
      params: { query: { kind: 'flights', fileName: name } },
      body: { kind: 'flights', fileName: name, content: '' },
      // The file goes as it is, byte by byte, so that it can be recognised again.
      bodySerializer: () => file,
      headers: { ...headers, 'content-type': 'text/csv' },
    }),
  );
}

/** Begins to record a checked file, all of it or nothing. Throws: ProblemError, 412 when it changed since. */
export async function applyFile(
  { id, version }: Pick<ImportFile, 'id' | 'version'>,
  headers: ActHeaders,
): Promise<ImportBegun> {
  return dataOrThrow(
    await api.POST('/api/imports/{id}/apply', {
      params: { path: { id } },
      headers: { ...headers, ...ifMatch(`"v${version}"`) },
    }),
  );
}

/** Ends the work on a file; nothing of it stays. Throws: ProblemError. */
export async function cancelFile({ id }: Pick<ImportFile, 'id'>, headers: ActHeaders): Promise<ImportFile> {
  return dataOrThrow(await api.POST('/api/imports/{id}/cancel', { params: { path: { id } }, headers }));
}
