import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import type { OpeningRequest } from './opening-draft.js';

/** Opens a package. Throws: ProblemError. */
export async function openPackage(body: OpeningRequest, headers: ActHeaders) {
  return dataOrThrow(await api.POST('/api/packages', { body, headers }));
}
