import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../../../server/api.js';
import { REQUIREMENTS_KEY } from '../../../server/requirements.js';

type Shapes = components['schemas'];
export type Requirement = Shapes['RequirementDto'];
export type RequirementView = Shapes['RequirementViewDto'];
export type DimensionStatus = Shapes['DimensionStatusDto'];
export type Accomplishment = Shapes['AccomplishmentDto'];
export type Assessment = Shapes['AssessmentDto'];
export type Variation = Shapes['VariationDto'];

/** What is read again once a requirement or an accomplishment is recorded or voided. */
export const WHAT_IS_DUE = [REQUIREMENTS_KEY, ['due']] as const;

/** Every requirement, voided ones too. */
export const requirementsQuery = queryOptions({
  queryKey: [...REQUIREMENTS_KEY, 'all'],
  queryFn: async ({ signal }) => dataOrThrow(await api.GET('/api/requirements', { signal })),
});

/** One requirement with all it is held against, and when it was met. */
export const requirementQuery = (id: string) =>
  queryOptions({
    queryKey: [...REQUIREMENTS_KEY, 'one', id],
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/requirements/{id}', { params: { path: { id } }, signal })),
  });
