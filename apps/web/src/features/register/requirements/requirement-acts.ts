import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import type { Voiding } from '../void-dialog.js';

type Shapes = components['schemas'];
export type NewRequirement = Shapes['NewRequirementDto'];
export type NewAccomplishment = Shapes['NewAccomplishmentDto'];
export type CorrectedAccomplishment = Shapes['CorrectedAccomplishmentDto'];
export type NewAssessment = Shapes['NewAssessmentDto'];
export type NewVariation = Shapes['NewVariationDto'];

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

/** An accomplishment and what it should have said. */
export interface Correcting {
  readonly id: string;
  readonly body: CorrectedAccomplishment;
}

export const correctAccomplishment = async ({ id, body }: Correcting, headers: ActHeaders) =>
  dataOrThrow(
    await api.POST('/api/accomplishments/{id}/correct', { params: { path: { id } }, body, headers }),
  );

export const addAssessment = async (body: NewAssessment, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/assessments', { body, headers }));

export const voidAssessment = async ({ id, reason }: Voiding, headers: ActHeaders): Promise<unknown> =>
  dataOrThrow(
    await api.POST('/api/assessments/{id}/void', { params: { path: { id } }, body: { reason }, headers }),
  );

export const addVariation = async (body: NewVariation, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/variations', { body, headers }));

export const voidVariation = async ({ id, reason }: Voiding, headers: ActHeaders): Promise<unknown> =>
  dataOrThrow(
    await api.POST('/api/variations/{id}/void', { params: { path: { id } }, body: { reason }, headers }),
  );
