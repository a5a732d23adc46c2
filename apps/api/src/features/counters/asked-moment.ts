import type { Boundary } from '@strutbook/domain/stays/boundary.js';
import { momentOf, toInstant } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import type { CounterMomentDto } from './counter-moment.dto.js';

/** The moment a query asks for; null for now. Refuses: INVALID_FIELDS (more than one is told). */
export function askedMoment({ at, page, beforeFirst, afterLast }: CounterMomentDto): Boundary | null {
  const told: Boundary[] = [
    ...(at === undefined ? [] : [{ kind: 'instant', at: toInstant(momentOf(at)) } as const]),
    ...(page === undefined ? [] : [{ kind: 'after-page', page } as const]),
    ...(beforeFirst === undefined ? [] : [{ kind: 'before-first', on: beforeFirst } as const]),
    ...(afterLast === undefined ? [] : [{ kind: 'after-last', on: afterLast } as const]),
  ];
  if (told.length > 1)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'at',
          reason: 'Counters are asked for at one moment.',
          fix: 'Send one of at, page, beforeFirst and afterLast.',
        },
      ],
    });
  return told[0] ?? null;
}
