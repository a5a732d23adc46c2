import type { Refusal } from '../refusals.js';
import { accepted, type Result, refused } from '../result.js';
import type { Instant } from '../units/minutes.js';
import type { Posting } from '../usage/clock.js';
import { type Counts, zeroCounts } from '../usage/counts.js';
import { LONGEST_FLIGHT_MINUTES } from '../usage/flight.js';

/** An engine that ran at a position on the ground, or in a test cell. Instants in UTC minutes. */
export interface GroundRun {
  readonly startedAt: Instant;
  readonly endedAt: Instant;
  /** Whole minutes it ran, at most from start to end. */
  readonly runMinutes: number;
  /** Of them, what counts as time in service by the engine's approved data; on the ground usually none. */
  readonly countedMinutes: number;
  readonly starts: number;
  readonly abortedTakeOffs: number;
}

/** What a run adds to its position's or cell's clock: no flight, no landing. Total. */
export function groundRunCounts({
  countedMinutes,
  starts,
  abortedTakeOffs,
}: Pick<GroundRun, 'countedMinutes' | 'starts' | 'abortedTakeOffs'>): Counts {
  return { ...zeroCounts, minutes: countedMinutes, starts, abortedTakeOffs };
}

/** The posting of a run: to its own carrier alone, at its end. Total. */
export function groundRunPosting(run: GroundRun, carrierId: string): Posting {
  return { carrierId, at: run.endedAt, counts: groundRunCounts(run) };
}

/**
 * Checks a run as it is told.
 *
 * Refuses: RUN_NOT_AFTER_START, RUN_TOO_LONG, NOT_A_COUNT, RUN_BEYOND_SPAN (it ran for longer than from start to
 * end), COUNTED_BEYOND_RUN (more is counted than ran).
 */
export function planGroundRun(run: GroundRun): Result<GroundRun, Refusal> {
  const span = run.endedAt - run.startedAt;
  if (!(span > 0))
    return refused({ code: 'RUN_NOT_AFTER_START', startedAt: run.startedAt, endedAt: run.endedAt });
  if (span > LONGEST_FLIGHT_MINUTES)
    return refused({ code: 'RUN_TOO_LONG', minutes: span, longest: LONGEST_FLIGHT_MINUTES });
  for (const field of ['runMinutes', 'countedMinutes', 'starts', 'abortedTakeOffs'] as const) {
    const value = run[field];
    if (!Number.isSafeInteger(value) || value < 0) return refused({ code: 'NOT_A_COUNT', field, value });
  }
  if (run.runMinutes > span) return refused({ code: 'RUN_BEYOND_SPAN', minutes: run.runMinutes, span });
  if (run.countedMinutes > run.runMinutes)
    return refused({ code: 'COUNTED_BEYOND_RUN', minutes: run.countedMinutes, runMinutes: run.runMinutes });
  return accepted(run);
}
