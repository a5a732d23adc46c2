import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import type { Meaning } from '../work/work-shapes.js';

type Shapes = components['schemas'];

interface StatementAsked {
  readonly stepId: string;
  readonly meaning: Meaning;
  /** An instant of the wire; null while none can be read. */
  readonly performedAt: string | null;
  /** Whose words they are when another person signs here; null while nobody is named. */
  readonly signer: { readonly signInName?: string } | null;
  readonly reinspectionReason?: string;
}

/** The words to be signed as the server builds them. Never kept: what is signed is what the record holds now. */
export const statementQuery = ({
  stepId,
  meaning,
  performedAt,
  signer,
  reinspectionReason,
}: StatementAsked) =>
  queryOptions({
    queryKey: ['statement', stepId, meaning, performedAt, signer, reinspectionReason ?? ''],
    enabled: performedAt !== null && signer !== null,
    staleTime: 0,
    gcTime: 0,
    refetchOnWindowFocus: false,
    queryFn: async ({ signal }) =>
      dataOrThrow(
        await api.GET('/api/steps/{id}/statement', {
          params: {
            path: { id: stepId },
            query: {
              meaning,
              performedAt: performedAt ?? '',
              ...signer,
              ...(reinspectionReason === undefined ? {} : { reinspectionReason }),
            },
          },
          signal,
        }),
      ),
  });

/** Signs exactly the words shown. Throws: ProblemError. */
export async function signStep(
  { stepId, ...body }: Shapes['SignStepDto'] & { readonly stepId: string },
  headers: ActHeaders,
) {
  const params = { path: { id: stepId } };
  return dataOrThrow(await api.POST('/api/steps/{id}/signatures', { params, body, headers }));
}

/** Undoes a signature; it stays in sight with the reason. Throws: ProblemError. */
export async function undoSignature(
  { signatureId, ...body }: Shapes['UndoSignatureDto'] & { readonly signatureId: string },
  headers: ActHeaders,
) {
  const params = { path: { id: signatureId } };
  return dataOrThrow(await api.POST('/api/step-signatures/{id}/undo', { params, body, headers }));
}
