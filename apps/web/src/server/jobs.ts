import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions, useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { type ActHeaders, useAct } from './act.js';
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

type NewDocument = components['schemas']['NewDocumentDto'];

/** The documents prepared of a subject. */
export const documentsQuery = (subjectId: string) =>
  queryOptions({
    queryKey: ['documents', subjectId],
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/documents', { params: { query: { subjectId } }, signal })),
  });

async function prepareDocument(body: NewDocument, headers: ActHeaders) {
  return dataOrThrow(await api.POST('/api/documents', { body, headers }));
}

/** A document from the wish to the file: begun as a job, asked after until it ends. */
export function useDocument(subjectId: string, onReady: () => void) {
  const queries = useQueryClient();
  const [jobId, setJobId] = useState<string | null>(null);
  const preparing = useAct({ perform: prepareDocument, onDone: (begun) => setJobId(begun.jobId) });
  const stopping = useAct({ perform: cancelJob, refresh: [['job', jobId]] });
  const job = useQuery(jobQuery(jobId));
  const state = job.data?.state;
  const documentId = job.data?.result?.documentId;
  // biome-ignore lint/correctness/useExhaustiveDependencies: told once, when the file is there
  useEffect(() => {
    if (documentId === undefined) return;
    onReady();
    void queries.invalidateQueries({ queryKey: ['documents', subjectId] });
  }, [documentId, subjectId, queries]);
  const working = jobId !== null && (state === undefined || isRunning(state));
  return { jobId, preparing, stopping, job, state, documentId, working };
}
