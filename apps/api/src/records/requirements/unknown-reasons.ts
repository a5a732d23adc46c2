import type { Dimension, Mark, Present } from '@strutbook/domain/due/requirement.js';

/** Codes of why these dimensions of a requirement cannot be told, each once. They do not change by flying. Total. */
export function reasonsNotKnown(
  unknown: readonly Dimension[],
  {
    from,
    now,
    isUncounted,
  }: { readonly from: Mark | null; readonly now: Present; readonly isUncounted: boolean },
): string[] {
  if (unknown.length > 0 && from === null) return ['NO_OVERHAUL'];
  return [
    ...new Set(
      unknown.map((dimension) => {
        if (dimension === 'days' || dimension === 'months') return 'DAY_UNKNOWN';
        if (dimension === 'minutes') return now.minutes === null ? 'MINUTES_UNKNOWN' : 'MINUTES_UNKNOWN_THEN';
        if (isUncounted) return 'NO_CYCLE_RULE';
        return now.cycles === null ? 'CYCLES_UNKNOWN' : 'CYCLES_UNKNOWN_THEN';
      }),
    ),
  ];
}
