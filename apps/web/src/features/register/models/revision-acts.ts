import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';

type Shapes = components['schemas'];
export type LimitRevision = Shapes['LimitRevisionDto'];
export type LimitPreview = Shapes['LimitPreviewDto'];
export type LimitChange = Shapes['LimitChangeDto'];

/** What a revision would change; nothing is stored. Throws: ProblemError. */
export const previewLimits = async (body: LimitRevision): Promise<LimitPreview> =>
  dataOrThrow(await api.POST('/api/life-limits/preview', { body }));

/** Accepts a revision as it was seen. Throws: ProblemError. */
export const acceptLimits = async (body: Shapes['AcceptLimitsDto'], headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/life-limits/accept', { body, headers }));
