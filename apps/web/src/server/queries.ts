import { ProblemError } from '@strutbook/api-client/problem-error.js';
import { MutationCache, QueryCache, QueryClient } from '@tanstack/react-query';
import { sessionQuery } from './session.js';
import { markSessionEnded } from './session-end.js';

const MOST_RETRIES = 2;

/** Only what may pass by itself is asked again: no answer, or a failing server. Never a refusal. */
export function worthAskingAgain(failures: number, error: unknown): boolean {
  if (!(error instanceof ProblemError)) return false;
  return (error.status === 0 || error.status >= 500) && failures < MOST_RETRIES;
}

/** The store of what was read, with the rules for asking again. */
export function createQueries(): QueryClient {
  const queries: QueryClient = new QueryClient({
    queryCache: new QueryCache({ onError: noticeSessionEnd }),
    mutationCache: new MutationCache({ onError: noticeSessionEnd }),
    defaultOptions: {
      queries: { staleTime: 30_000, retry: worthAskingAgain },
      // A write is repeated by the person, under its own act key.
      mutations: { retry: false },
    },
  });
  function noticeSessionEnd(error: unknown): void {
    const signedIn = queries.getQueryData(sessionQuery.queryKey) != null;
    if (error instanceof ProblemError && error.status === 401 && signedIn) markSessionEnded(true);
  }
  return queries;
}
