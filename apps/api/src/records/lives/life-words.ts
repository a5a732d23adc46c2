import type { Life, UnsubstantiatedReason } from '@strutbook/domain/life/life.js';

/** The codes of ratings by their ids. */
export type RatingCodes = ReadonlyMap<string, string>;

const EVENTS = {
  new: 'The day it was made is not recorded.',
  'first-installation': 'The day it was first installed is not known.',
  overhaul: 'No overhaul of it is recorded to count from.',
} as const;

/** A reason why a life can't be told, in a sentence. Total. */
export function reasonInFull(reason: UnsubstantiatedReason, ratings: RatingCodes): string {
  switch (reason.code) {
    case 'TRACE_GAP':
      return `The records have a gap: ${reason.gap.description}`;
    case 'RATING_UNKNOWN':
      return 'It is not known at which rating some of its cycles were flown.';
    case 'CYCLES_UNKNOWN':
      return 'Its cycles since new are not known.';
    case 'MINUTES_UNKNOWN':
      return 'Its hours since new are not known.';
    case 'DAY_UNKNOWN':
      return EVENTS[reason.from];
    case 'NO_LIMIT_RECORDED': {
      const rating = reason.ratingId === null ? '' : ` at rating ${ratings.get(reason.ratingId) ?? ''}`;
      return `No life limit is recorded for it${rating}.`;
    }
  }
}

/** Why a life gives no number; null when it gives one, or is not limited. Total. */
export function whyNoNumber(life: Life, ratings: RatingCodes): string | null {
  if (life.kind === 'not-authorised') return 'Not authorised at the rating of this engine.';
  if (life.kind !== 'unsubstantiated') return null;
  return life.reasons.map((reason) => reasonInFull(reason, ratings)).join(' ');
}
