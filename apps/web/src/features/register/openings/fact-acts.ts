import { dataOrThrow } from '@strutbook/api-client/index.js';
import type { components } from '@strutbook/api-client/schema.gen.js';
import type { ActHeaders } from '../../../server/act.js';
import { api } from '../../../server/api.js';
import type { Voiding } from '../void-dialog.js';

type Shapes = components['schemas'];
export type NewTraceGap = Shapes['NewTraceGapDto'];
export type NewGapAcceptance = Shapes['NewGapAcceptanceDto'];

/** What every act on such facts answers beside the fact. */
export interface RecordedFact {
  readonly consequences: Shapes['ConsequencesDto'];
}

/** The facts of a component that are voided one by one. */
export type FactKind = 'opening' | 'rating-change' | 'reset' | 'trace-gap' | 'gap-acceptance';

// Each sends one act. Throws: ProblemError.

export const addTraceGap = async (body: NewTraceGap, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/trace-gaps', { body, headers }));

export const acceptGap = async (body: NewGapAcceptance, headers: ActHeaders) =>
  dataOrThrow(await api.POST('/api/gap-acceptances', { body, headers }));

/** Voids one fact with its reason. */
export const voidFact =
  (kind: FactKind) =>
  async ({ id, reason }: Voiding, headers: ActHeaders): Promise<RecordedFact> => {
    const asked = { params: { path: { id } }, body: { reason }, headers };
    switch (kind) {
      case 'opening':
        return dataOrThrow(await api.POST('/api/openings/{id}/void', asked));
      case 'rating-change':
        return dataOrThrow(await api.POST('/api/rating-changes/{id}/void', asked));
      case 'reset':
        return dataOrThrow(await api.POST('/api/resets/{id}/void', asked));
      case 'trace-gap':
        return dataOrThrow(await api.POST('/api/trace-gaps/{id}/void', asked));
      case 'gap-acceptance':
        return dataOrThrow(await api.POST('/api/gap-acceptances/{id}/void', asked));
    }
  };
