import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import { queryOptions } from '@tanstack/react-query';
import { api } from './api.js';

/** How a requirement stands on one thing it is held against. */
export type RequirementStatus = components['schemas']['RequirementStatusDto'];

export const REQUIREMENTS_KEY = ['requirements'] as const;

interface HeldOn {
  readonly kind: 'airframe' | 'component';
  readonly id: string;
  /** With all that does not apply, too. */
  readonly notApplicable?: boolean;
}

/** What is held against an airframe and all that hangs on it, or against a component and all beneath it. */
export const requirementsOnQuery = ({ kind, id, notApplicable = false }: HeldOn) =>
  queryOptions({
    queryKey: [...REQUIREMENTS_KEY, kind, id, notApplicable],
    enabled: id !== '',
    staleTime: 0,
    queryFn: async ({ signal }) => {
      const params = { path: { id }, query: notApplicable ? { notApplicable: 'true' as const } : {} };
      return dataOrThrow(
        kind === 'airframe'
          ? await api.GET('/api/airframes/{id}/requirements', { params, signal })
          : await api.GET('/api/components/{id}/requirements', { params, signal }),
      );
    },
  });

interface Held {
  readonly requirementId: string;
  readonly componentId?: string | null;
  readonly positionId?: string | null;
  readonly airframeId?: string | null;
}

/** One key for a requirement and what it is held against. */
export const heldKey = ({ requirementId, componentId, positionId, airframeId }: Held): string =>
  `${requirementId} ${componentId ?? positionId ?? airframeId ?? ''}`;
