import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { ActHeaders } from '../../server/act.js';
import { api } from '../../server/api.js';
import type { ChangeRequest } from '../../server/wire.js';

/** What a change would record; nothing is written. Throws: ProblemError. */
export async function previewChange(request: ChangeRequest) {
  return dataOrThrow(await api.POST('/api/changes/preview', { body: request }));
}

export interface Confirmed {
  readonly request: ChangeRequest;
  readonly digest: string;
}

/** Records the change as the preview showed it. Throws: ProblemError. */
export async function recordChange({ request, digest }: Confirmed, headers: ActHeaders) {
  return dataOrThrow(
    await api.POST('/api/changes', { body: { ...request, confirmDigest: digest }, headers }),
  );
}
