import type { Refusal } from '../refusals.js';
import { accepted, type Result, refused } from '../result.js';
import type { Instant } from '../units/minutes.js';
import type { Posting } from './clock.js';
import { type Counts, negateCounts, zeroCounts } from './counts.js';

/** The longest flight taken as one: 24 hours. Common practice, no source; a longer one is a wrong date. */
export const LONGEST_FLIGHT_MINUTES = 1440;

/**
 * What one position did not run during a flight of its airframe.
 *
 * 'shut-down': the engine flew its take-off, then stood still for `missed.minutes`; its events count.
 * 'not-running': it was dead for the whole flight (a ferry); nothing of the flight counts for it.
 */
export interface FlightException {
  readonly positionCarrierId: string;
  readonly kind: 'shut-down' | 'not-running';
  readonly missed: Counts;
}

/** One take-off to one landing. Instants in UTC minutes. */
export interface Flight {
  readonly id: string;
  readonly takeOffAt: Instant;
  readonly landingAt: Instant;
  readonly touchAndGoes: number;
  readonly starts: number;
  readonly abortedTakeOffs: number;
  readonly exceptions: readonly FlightException[];
}

/** An exception as it is told: minutes are asked only of an engine shut down in flight. */
export interface DraftException {
  readonly positionCarrierId: string;
  readonly kind: FlightException['kind'];
  readonly minutes?: number;
}

/** A flight as it is told, before it is checked. */
export type FlightDraft = Omit<Flight, 'exceptions'> & { readonly exceptions: readonly DraftException[] };

/**
 * What a flight adds to its airframe's clock: the time in service in whole minutes, one flight, and
 * a landing more than its touch-and-goes.
 *
 * Source: time in service runs from leaving the surface to touching it at landing (14 CFR 1.1).
 * Total.
 */
export function flightCounts(
  flight: Pick<Flight, 'takeOffAt' | 'landingAt' | 'touchAndGoes' | 'starts' | 'abortedTakeOffs'>,
): Counts {
  return {
    minutes: flight.landingAt - flight.takeOffAt,
    flights: 1,
    landings: 1 + flight.touchAndGoes,
    touchAndGoes: flight.touchAndGoes,
    starts: flight.starts,
    abortedTakeOffs: flight.abortedTakeOffs,
  };
}

/**
 * The postings of a flight: what it flew, to its airframe, and less what did not run, to each position
 * with an exception. All stand at the landing: a flight counts when it lands. Total.
 */
export function flightPostings(flight: Flight, airframeCarrierId: string): readonly Posting[] {
  const at = flight.landingAt;
  return [
    { carrierId: airframeCarrierId, at, counts: flightCounts(flight) },
    ...flight.exceptions.map(({ positionCarrierId, missed }) => ({
      carrierId: positionCarrierId,
      at,
      counts: negateCounts(missed),
    })),
  ];
}

/**
 * Checks a flight as told and completes it.
 *
 * Refuses: LANDING_NOT_AFTER_TAKE_OFF, FLIGHT_TOO_LONG, NOT_A_COUNT (a count that is not whole or is
 * negative), EXCEPTION_TWICE, EXCEPTION_BEYOND_FLIGHT (shut down for longer than it flew).
 */
export function planFlight(draft: FlightDraft): Result<Flight, Refusal> {
  const refusal = refusalOfTimes(draft) ?? refusalOfCounts(draft) ?? refusalOfExceptions(draft);
  if (refusal !== null) return refused(refusal);
  const { id, takeOffAt, landingAt, touchAndGoes, starts, abortedTakeOffs } = draft;
  const exceptions = draft.exceptions.map(
    ({ positionCarrierId, kind, minutes }): FlightException => ({
      positionCarrierId,
      kind,
      missed: kind === 'not-running' ? flightCounts(draft) : { ...zeroCounts, minutes: minutes ?? 0 },
    }),
  );
  return accepted({ id, takeOffAt, landingAt, touchAndGoes, starts, abortedTakeOffs, exceptions });
}

function refusalOfTimes({ takeOffAt, landingAt }: FlightDraft): Refusal | null {
  const flown = landingAt - takeOffAt;
  if (!(flown > 0)) return { code: 'LANDING_NOT_AFTER_TAKE_OFF', takeOffAt, landingAt };
  if (flown > LONGEST_FLIGHT_MINUTES)
    return { code: 'FLIGHT_TOO_LONG', minutes: flown, longest: LONGEST_FLIGHT_MINUTES };
  return null;
}

function refusalOfCounts(draft: FlightDraft): Refusal | null {
  for (const field of ['touchAndGoes', 'starts', 'abortedTakeOffs'] as const) {
    const value = draft[field];
    if (!Number.isSafeInteger(value) || value < 0) return { code: 'NOT_A_COUNT', field, value };
  }
  return null;
}

function refusalOfExceptions({ takeOffAt, landingAt, exceptions }: FlightDraft): Refusal | null {
  const seen = new Set<string>();
  for (const { positionCarrierId, kind, minutes } of exceptions) {
    if (seen.has(positionCarrierId)) return { code: 'EXCEPTION_TWICE', positionCarrierId };
    seen.add(positionCarrierId);
    if (kind === 'not-running') continue;
    const missed = minutes ?? Number.NaN;
    if (!Number.isSafeInteger(missed) || missed < 1)
      return { code: 'NOT_A_COUNT', field: 'exceptions.minutes', value: missed };
    if (missed > landingAt - takeOffAt)
      return {
        code: 'EXCEPTION_BEYOND_FLIGHT',
        positionCarrierId,
        minutes: missed,
        flightMinutes: landingAt - takeOffAt,
      };
  }
  return null;
}
