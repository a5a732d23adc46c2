import { newActKey } from '@strutbook/api-client/act-key.js';
import { underActKey } from '@strutbook/api-client/index.js';
import { type QueryKey, type UseMutationResult, useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef } from 'react';

/** The headers an act is sent with. */
export type ActHeaders = Readonly<Record<string, string>>;

interface ActOptions<Words, Done> {
  /** Sends the act under the headers given. Throws: ProblemError. */
  readonly perform: (words: Words, headers: ActHeaders) => Promise<Done>;
  readonly onDone?: ((done: Done, words: Words) => void) | undefined;
  /** What was read and may be otherwise now. */
  readonly refresh?: readonly QueryKey[];
}

export type Act<Words, Done> = UseMutationResult<Done, Error, Words>;

/** The answers from before an act are of no use after it, also when another person's act got in first. */
const CONFLICTS = new Set([409, 412]);

const statusOf = (error: unknown): number =>
  error instanceof Error && 'status' in error && typeof error.status === 'number' ? error.status : 0;

/**
 * One act of a person. Its key is made once and sent again with the same words, so that an act whose
 * answer got lost is recorded once; other words are another act.
 */
export function useAct<Words, Done>({ perform, onDone, refresh }: ActOptions<Words, Done>): Act<Words, Done> {
  const queries = useQueryClient();
  const act = useRef<{ readonly words: string; readonly key: string } | null>(null);
  const keyOf = (words: Words): string => {
    const told = JSON.stringify(words) ?? '';
    if (act.current?.words !== told) act.current = { words: told, key: newActKey() };
    return act.current.key;
  };
  const readAgain = () => {
    for (const queryKey of refresh ?? []) void queries.invalidateQueries({ queryKey });
  };
  return useMutation<Done, Error, Words>({
    // Without a connection an act fails at once: it is never sent later behind the person's back.
    networkMode: 'always',
    mutationFn: (words) => perform(words, underActKey(keyOf(words))),
    onSuccess: (done, words) => {
      act.current = null;
      readAgain();
      onDone?.(done, words);
    },
    onError: (error) => {
      if (CONFLICTS.has(statusOf(error))) readAgain();
    },
  });
}
