import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import type { Voiding } from '../void-dialog.js';

type Shapes = components['schemas'];
export type NewRequirement = Shapes['NewRequirementDto'];
export type NewAccomplishment = Shapes['NewAccomplishmentDto'];

// Each sends one act. Throws: ProblemError.

export const addRequirement = async (body: NewRequirement, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/requirements', { body, headers }));

export const addAccomplishment = async (body: NewAccomplishment, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/accomplishments', { body, headers }));

export const voidRequirement = async ({ id, reason }: Voiding, headers: ActHeaders): Promise<unknown> =>
  dataOrThrow(
    await api.POST('/api/requirements/{id}/void', { params: { path: { id } }, body: { reason }, headers }),
  );

export const voidAccomplishment = async ({ id, reason }: Voiding, headers: ActHeaders): Promise<unknown> =>
  dataOrThrow(
    await api.POST('/api/accomplishments/{id}/void', { params: { path: { id } }, body: { reason }, headers }),
  );
