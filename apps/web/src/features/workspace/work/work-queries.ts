import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import type { Typed } from '@strutbook/domain/work/entry.js';
import { type QueryClient, queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import type { Step, Work } from './work-shapes.js';

const ASK_EVERY_MS = 20_000;

export const WORK_KEY = ['packages', 'steps'] as const;

/** The steps of a package as they stand; several people work in them at once. */
export const workQuery = (packageId: string) =>
  queryOptions({
    queryKey: [...WORK_KEY, packageId],
    staleTime: 0,
    queryFn: async ({ signal }): Promise<Work> =>
      dataOrThrow(
        await api.GET('/api/packages/{id}/steps', { params: { path: { id: packageId } }, signal }),
      ) as Work,
    refetchInterval: ({ state }) => (state.data?.package.status === 'open' ? ASK_EVERY_MS : false),
  });

/** Puts the server's answer about one step where it is shown; what hangs on it is read again. */
export function holdStep(queries: QueryClient, packageId: string, step: Step): void {
  queries.setQueryData(workQuery(packageId).queryKey, (before: Work | undefined) =>
    before === undefined
      ? before
      : { ...before, steps: before.steps.map((each) => (each.id === step.id ? step : each)) },
  );
}

export interface EntryWords {
  readonly stepId: string;
  readonly capture: string;
  readonly typed: Typed;
  readonly toolId?: string;
}

/** Records what was captured, exactly as typed. Throws: ProblemError. */
export async function recordEntry({ stepId, ...words }: EntryWords, headers: ActHeaders): Promise<Step> {
  const params = { path: { id: stepId } };
  // The core's words and the wire's are the same; the core's cannot be changed.
  const body = words as components['schemas']['NewEntryDto'];
  return dataOrThrow(await api.POST('/api/steps/{id}/entries', { params, body, headers })) as Step;
}

export interface VoidWords {
  readonly entryId: string;
  readonly reason: string;
}

/** Strikes an entry out; it stays in sight with the reason. Throws: ProblemError. */
export async function voidEntry({ entryId, reason }: VoidWords, headers: ActHeaders): Promise<Step> {
  const params = { path: { id: entryId } };
  return dataOrThrow(
    await api.POST('/api/step-entries/{id}/void', { params, body: { reason }, headers }),
  ) as Step;
}

export interface PhotoWords {
  readonly stepId: string;
  readonly capture: string;
  readonly file: File;
  /** These name the picture in the act's key: a File itself has no text. */
  readonly name: string;
  readonly size: number;
}

/** Sends a picture as it is. Throws: ProblemError. */
export async function sendPhoto(
  { stepId, capture, file, name }: PhotoWords,
  headers: ActHeaders,
): Promise<Step> {
  return dataOrThrow(
    await api.POST('/api/steps/{id}/photos', {
      params: { path: { id: stepId }, query: { capture, fileName: name } },
      body: '',
      bodySerializer: () => file,
      headers: { ...headers, 'content-type': file.type },
    }),
  ) as Step;
}
