import { LIFE_WINDOWS } from '@strutbook/domain/life/life-status.js';
import type { LifeDimension } from '@strutbook/domain/life/projected-end.js';
import { type Status, statusOf } from '@strutbook/domain/life/status.js';

/** The dimension of a life that a due point's is counted in; null of one that tells nothing. Total. */
export function lifeDimension(dimension: string): LifeDimension | null {
  if (dimension === 'cycles' || dimension === 'minutes') return dimension;
  return dimension === 'days' || dimension === 'months' ? 'days' : null;
}

/**
 * The status of a life's due point: of what remains, or of what forbids to count on it. What is not authorised where it
 * is stands with what is over its limit. Total.
 */
export function statusOfDue(verdict: string, dimension: string, remaining: number | null): Status {
  if (verdict === 'not-authorised') return 'over';
  const of = lifeDimension(dimension);
  if (verdict !== 'limited' || of === null) return 'not-verified';
  return statusOf(remaining, LIFE_WINDOWS[of]);
}

const REASONS: Readonly<Record<string, string>> = {
  TRACE_GAP: 'A gap in its trace',
  RATING_UNKNOWN: 'The rating it ran at is not known',
  CYCLES_UNKNOWN: 'Its cycles are not known',
  MINUTES_UNKNOWN: 'Its hours are not known',
  COUNTERS_UNKNOWN: 'Its counters are not known',
  NO_LIMIT_RECORDED: 'No limit is recorded for it here',
  NO_CYCLE_RULE: 'No rule says what a cycle is for its engine on this airframe',
  NOT_AUTHORISED: 'Not authorised in this model at this rating',
  MINUTES_UNKNOWN_THEN: 'The hours it counts from are not known',
  CYCLES_UNKNOWN_THEN: 'The cycles it counts from are not known',
  DAY_UNKNOWN: 'The day it counts from is not known',
  NO_OVERHAUL: 'No overhaul of it is recorded to count from',
  NO_SHOP_VISIT: 'No shop visit of it is recorded to count from',
  NEVER_DONE: 'No accomplishment is recorded to count from',
  NEVER_ASSESSED: 'Whether it applies was never assessed',
  SERIAL_NOT_COMPARED: 'Its serial number does not end in a number, and cannot be held against the range',
  OTHER_TYPE: 'It is for another type of airframe',
  OTHER_MODEL: 'It is for another engine model',
  OTHER_PART_NUMBER: 'It is for another part number',
  'EVENT:shop-visit': 'It was due at a shop visit that has been',
  'EVENT:installation': 'It was due at an installation that has been',
  'EVENT:removal': 'It was due at a removal that has been',
  'EVENT:main-base-return': 'It was due at a return to the main base that has been',
  NOT_INSTALLED: 'It is not installed',
  SCRAPPED: 'It is scrapped',
  TRANSFERRED_OUT: 'It was transferred out',
  LIMITED_PART_MISSING: 'No part is recorded there',
};

/** The codes of a due point's reason in words; null when it has none. Total. */
export function reasonInWords(codes: string | null): string | null {
  return codes === null
    ? null
    : codes
        .split(' ')
        .map((code) => REASONS[code] ?? code)
        .join('; ');
}
