import type { Refusal } from '../refusals.js';
import { accepted, type Result, refused } from '../result.js';
import { addDays, type CalendarDate, dateOf, startOfDay } from '../units/calendar.js';
import type { Instant } from '../units/minutes.js';

/** How a boundary is told: old records often have a log page or a date, and no minute. */
export type Boundary =
  | { readonly kind: 'instant'; readonly at: Instant }
  | { readonly kind: 'after-page'; readonly page: string }
  | { readonly kind: 'before-first'; readonly on: CalendarDate }
  | { readonly kind: 'after-last'; readonly on: CalendarDate };

/** How exactly a boundary is known; kept and shown with it. */
export type Precision = 'minute' | 'page' | 'day';

/** A boundary as an instant, with what it rests on. */
export interface ResolvedBoundary {
  readonly at: Instant;
  readonly precision: Precision;
}

/** A flight of the airframe near a boundary. */
export interface LoggedFlight {
  readonly id: string;
  readonly page: string | null;
  readonly takeOffAt: Instant;
  readonly landingAt: Instant;
}

/** What resolving a boundary needs: the airframe's flights around it, and the rule set's offset from UTC in minutes. */
export interface BoundaryFacts {
  readonly flights: readonly LoggedFlight[];
  readonly offsetMinutes: number;
}

/**
 * The instant a boundary means.
 *
 * - an instant is itself;
 * - after a page: the last landing of that page;
 * - before the first flight of a date: the start of that day, unless a flight spans it: then its landing;
 * - after the last flight of a date: the start of the next day, unless a flight that took off on the date
 *   spans it: then its landing.
 *
 * Refuses: NO_SUCH_LOG_PAGE. Whether an instant lies inside a flight is asked where a stay is planned.
 */
export function resolveBoundary(boundary: Boundary, facts: BoundaryFacts): Result<ResolvedBoundary, Refusal> {
  switch (boundary.kind) {
    case 'instant':
      return accepted({ at: boundary.at, precision: 'minute' });
    case 'after-page':
      return afterPage(boundary.page, facts.flights);
    case 'before-first':
      return accepted({
        at: pastSpanning(startOfDay(boundary.on, facts.offsetMinutes), facts.flights),
        precision: 'day',
      });
    case 'after-last': {
      const tookOffThen = facts.flights.filter(
        (flight) => dateOf(flight.takeOffAt, facts.offsetMinutes) === boundary.on,
      );
      const nextDay = startOfDay(addDays(boundary.on, 1), facts.offsetMinutes);
      return accepted({ at: pastSpanning(nextDay, tookOffThen), precision: 'day' });
    }
  }
}

function afterPage(page: string, flights: readonly LoggedFlight[]): Result<ResolvedBoundary, Refusal> {
  const landings = flights.filter((flight) => flight.page === page).map((flight) => flight.landingAt);
  const [first, ...rest] = landings;
  if (first === undefined) return refused({ code: 'NO_SUCH_LOG_PAGE', page });
  return accepted({
    at: rest.reduce((last, landing) => (landing > last ? landing : last), first),
    precision: 'page',
  });
}

function pastSpanning(at: Instant, flights: readonly LoggedFlight[]): Instant {
  return flightAround(at, flights)?.landingAt ?? at;
}

/** The flight that is in the air at an instant: after its take-off and before its landing; equal instants are neither. Total. */
export function flightAround(at: Instant, flights: readonly LoggedFlight[]): LoggedFlight | null {
  return flights.find((flight) => flight.takeOffAt < at && at < flight.landingAt) ?? null;
}
