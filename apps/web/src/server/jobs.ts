import { dataOrThrow } from '@strutbook/api-client/index.js';
import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from './act.js';
import { api } from './api.js';

const ASK_EVERY_MS = 700;

const RUNNING: ReadonlySet<string> = new Set(['queued', 'running']);

/** Whether a job may still change. */
export const isRunning = (state: string): boolean => RUNNING.has(state);

/** How far a job is; asked again until it ends. */
export const jobQuery = (id: string | null) =>
  queryOptions({
    queryKey: ['job', id],
    enabled: id !== null,
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/jobs/{id}', { params: { path: { id: id ?? '' } }, signal })),
    refetchInterval: ({ state }) =>
      state.data === undefined || isRunning(state.data.state) ? ASK_EVERY_MS : false,
  });

/** Asks the server to stop a job. What it has not finished is not recorded. Throws: ProblemError. */
export async function cancelJob(id: string, headers: ActHeaders) {
  return dataOrThrow(await api.POST('/api/jobs/{id}/cancel', { params: { path: { id } }, headers }));
}
