import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../../../server/api.js';

type Shapes = components['schemas'];
export type Requirement = Shapes['RequirementDto'];
export type RequirementView = Shapes['RequirementViewDto'];
export type RequirementStatus = Shapes['RequirementStatusDto'];
export type DimensionStatus = Shapes['DimensionStatusDto'];
export type Accomplishment = Shapes['AccomplishmentDto'];

export const REQUIREMENTS_KEY = ['requirements'] as const;
/** What is read again once a requirement or an accomplishment is voided. */
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

/** What is held against an airframe and all that hangs on it. */
export const airframeRequirementsQuery = (id: string) =>
  queryOptions({
    queryKey: [...REQUIREMENTS_KEY, 'airframe', id],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/airframes/{id}/requirements', { params: { path: { id } }, signal })),
  });

/** What is held against a component and all beneath it. */
export const componentRequirementsQuery = (id: string) =>
  queryOptions({
    queryKey: [...REQUIREMENTS_KEY, 'component', id],
    staleTime: 0,
    queryFn: async ({ signal }) =>
      dataOrThrow(await api.GET('/api/components/{id}/requirements', { params: { path: { id } }, signal })),
  });
