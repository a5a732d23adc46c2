import type { Dimension, Mark, Present } from '@strutbook/domain/due/requirement.js';

const NOTHING_FROM: Readonly<Record<string, string>> = {
  'shop-visit': 'NO_SHOP_VISIT',
  accomplishment: 'NEVER_DONE',
};

/** Codes of why these dimensions of a requirement cannot be told, each once. They do not change by flying. Total. */
export function reasonsNotKnown(
  unknown: readonly Dimension[],
  {
    from,
    now,
    isUncounted,
    countedFrom,
  }: {
    readonly from: Mark | null;
    readonly now: Present;
    readonly isUncounted: boolean;
    readonly countedFrom: string;
  },
): string[] {
  if (unknown.length > 0 && from === null) return [NOTHING_FROM[countedFrom] ?? 'NO_OVERHAUL'];
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
