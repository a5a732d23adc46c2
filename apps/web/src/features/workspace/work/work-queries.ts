import type { Typed } from '@strutbook/domain/work/entry.js';
import { type QueryClient, queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../../server/act.js';
import { readLoose, writeLoose } from '../../../server/loose.js';
import type { Step, Work } from './work-shapes.js';

export const WORK_KEY = ['packages', 'steps'] as const;

/** The steps of a package as they stand; several people work in them at once. */
export const workQuery = (packageId: string) =>
  queryOptions({
    queryKey: [...WORK_KEY, packageId],
    staleTime: 0,
    refetchInterval: 20_000,
    queryFn: ({ signal }) =>
      readLoose<Work>('/api/packages/{id}/steps', { params: { path: { id: packageId } }, signal }),
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
export const recordEntry = ({ stepId, ...body }: EntryWords, headers: ActHeaders): Promise<Step> =>
  writeLoose<Step>('/api/steps/{id}/entries', { params: { path: { id: stepId } }, body, headers });

export interface VoidWords {
  readonly entryId: string;
  readonly reason: string;
}

/** Strikes an entry out; it stays in sight with the reason. Throws: ProblemError. */
export const voidEntry = ({ entryId, reason }: VoidWords, headers: ActHeaders): Promise<Step> =>
  writeLoose<Step>('/api/step-entries/{id}/void', {
    params: { path: { id: entryId } },
    body: { reason },
    headers,
  });

export interface PhotoWords {
  readonly stepId: string;
  readonly capture: string;
  readonly file: File;
  /** These name the picture in the act's key: a File itself has no text. */
  readonly name: string;
  readonly size: number;
}

/** Sends a picture as it is. Throws: ProblemError. */
export const sendPhoto = ({ stepId, capture, file, name }: PhotoWords, headers: ActHeaders): Promise<Step> =>
  writeLoose<Step>('/api/steps/{id}/photos', {
    params: { path: { id: stepId }, query: { capture, fileName: name } },
    body: file,
    bodySerializer: () => file,
    headers: { ...headers, 'content-type': file.type },
  });
