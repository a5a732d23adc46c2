import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../../server/act.js';
import { readLoose, writeLoose } from '../../../server/loose.js';
import type { Blocker, Meaning, Missing } from '../work/work-shapes.js';

/** The words to be signed as the server builds them, and their digest. */
export interface Statement {
  readonly statement: string;
  readonly digest: string;
  readonly contentHash: string;
  readonly missing: readonly Missing[];
  readonly blockers: readonly Blocker[];
}

export interface StatementAsked {
  readonly stepId: string;
  readonly meaning: Meaning;
  /** An instant of the wire. */
  readonly performedAt: string | null;
  /** Whose words they are when another person signs here. */
  readonly signInName?: string | undefined;
}

/** Never kept: what is signed is what the record holds now. */
export const statementQuery = ({ stepId, meaning, performedAt }: StatementAsked) =>
  queryOptions({
    queryKey: ['statement', stepId, meaning, performedAt],
    enabled: performedAt !== null,
    staleTime: 0,
    gcTime: 0,
    refetchOnWindowFocus: false,
    queryFn: ({ signal }) =>
      readLoose<Statement>('/api/steps/{id}/statement', {
        params: { path: { id: stepId }, query: { meaning, performedAt: performedAt ?? '' } },
        signal,
      }),
  });

export type Method = 'password' | 'pin';

export interface SigningWords {
  readonly stepId: string;
  readonly meaning: Meaning;
  readonly performedAt: string;
  readonly digest: string;
  readonly method: Method;
  readonly secret: string;
  readonly signInName?: string;
  readonly reinspectionReason?: string;
}

/** Signs exactly the words shown. Throws: ProblemError. */
export const signStep = ({ stepId, ...body }: SigningWords, headers: ActHeaders): Promise<unknown> =>
  writeLoose('/api/steps/{id}/signatures', { params: { path: { id: stepId } }, body, headers });

export interface UndoWords {
  readonly signatureId: string;
  readonly reason: string;
  readonly method: Method;
  readonly secret: string;
}

/** Undoes a signature; it stays in sight with the reason. Throws: ProblemError. */
export const undoSignature = ({ signatureId, ...body }: UndoWords, headers: ActHeaders): Promise<unknown> =>
  writeLoose('/api/step-signatures/{id}/undo', { params: { path: { id: signatureId } }, body, headers });
