import type { Instant } from '../units/minutes.js';
import { addCounts, type Counts, zeroCounts } from './counts.js';

/** One movement of a carrier's clock: a flight at its landing, a ground run at its end, an exception. */
export interface Posting {
  readonly carrierId: string;
  readonly at: Instant;
  readonly counts: Counts;
}

/**
 * A clock's reading at an instant: the sum of what was posted to it up to and including that instant,
 * so that an engine removed at the minute of a landing keeps the flight.
 *
 * The postings are those of one carrier, in any order. Total.
 */
export function readClock(postings: readonly Posting[], at: Instant): Counts {
  return postings.reduce(
    (sum, posting) => (posting.at <= at ? addCounts(sum, posting.counts) : sum),
    zeroCounts,
  );
}

/** A position's reading: its airframe's, and what was posted to the position itself (exceptions negative). Total. */
export function positionClock(airframe: Counts, own: Counts): Counts {
  return addCounts(airframe, own);
}
