import type { CalendarDate } from '../units/calendar.js';
import type { Counts } from '../usage/counts.js';
import { type CycleRule, cycleUnits } from '../usage/cycle-rule.js';

/** A flight to come: what it adds to every counter it runs, and the day of its landing where the airframe's is counted. */
export interface FlightToCome {
  readonly adds: Counts;
  readonly landsOn: CalendarDate;
}

/** How a counter runs: minutes, flights, or cycles of a rule in units of 1 / its denominator. */
export type CounterUnit =
  | { readonly kind: 'minutes' }
  | { readonly kind: 'flights' }
  | { readonly kind: 'cycles'; readonly rule: CycleRule }
  /** A counter that flights do not run. */
  | { readonly kind: 'still' };

/** What is left of one dimension of a duty, before the first flight to come. */
export type DutyDimension =
  | {
      readonly kind: 'counter';
      readonly unit: CounterUnit;
      /** Units of the counter left until it is due, and until the end of what is granted past that. */
      readonly left: number;
      readonly latestLeft: number;
      readonly isBound: boolean;
    }
  | {
      readonly kind: 'day';
      /** The last day it is good through, and the last of what is granted past that. */
      readonly goodThrough: CalendarDate;
      readonly latestThrough: CalendarDate;
      readonly isBound: boolean;
    }
  /** Due at an event: past since it happened. */
  | { readonly kind: 'past'; readonly isBound: boolean };

/** A life or a requirement of one subject, as far as flights use it up. */
export interface DutyToCome {
  readonly combine: 'first' | 'last';
  readonly dimensions: readonly DutyDimension[];
  /** Whether something it needs is not known. */
  readonly hasUnknown: boolean;
}

/** What planned flights do to one duty. Flights are told by their place in the plan, from 0; null: none. */
export interface DutyReadiness {
  /** The first flight in which it goes past its due, inside what is granted or not. */
  readonly dueOnFlight: number | null;
  /** The first flight that must not be made: it would be over, all that is granted used up, at or before its landing. */
  readonly breaksOnFlight: number | null;
  /** Nothing can be stated of it, unless it breaks by what is known. */
  readonly notVerified: boolean;
}

/**
 * What the flights to come, in order, do to a duty. A counter allows flights until it is used up exactly: with nothing
 * left it may have been flown, below nothing it may not. A day is good through its end, so a flight that lands after it
 * must not be made. Whichever comes first, or last, as the duty says; an outer bound breaks it as soon as it comes.
 * Total.
 *
 * Source: common practice, no source.
 */
export function dutyReadiness(duty: DutyToCome, flights: readonly FlightToCome[]): DutyReadiness {
  return {
    dueOnFlight: combined(duty, (dimension) => firstPast(dimension, flights, 'due')),
    breaksOnFlight: combined(duty, (dimension) => firstPast(dimension, flights, 'latest')),
    notVerified: duty.hasUnknown,
  };
}

/**
 * The place of the last flight that may be made, of the duties' first flights that must not be: −1 when none may.
 * Without one that breaks, the last of all `count` flights. Total.
 */
export function lastFlightAllowed(breaks: readonly (number | null)[], count: number): number {
  return breaks.reduce<number>((last, at) => (at === null ? last : Math.min(last, at - 1)), count - 1);
}

function combined(
  { combine, dimensions, hasUnknown }: DutyToCome,
  pastOn: (dimension: DutyDimension) => number | null,
): number | null {
  const own = dimensions.filter(({ isBound }) => !isBound).map(pastOn);
  const bounds = dimensions.filter(({ isBound }) => isBound).map(pastOn);
  // Whichever comes last is past when all are: with one not known, it cannot be told.
  const byOwn = combine === 'first' ? first(own) : hasUnknown ? null : last(own);
  return first([byOwn, ...bounds]);
}

function first(places: readonly (number | null)[]): number | null {
  return places.reduce((found, at) => (at === null || (found !== null && found <= at) ? found : at), null);
}

function last(places: readonly (number | null)[]): number | null {
  if (places.length === 0 || places.includes(null)) return null;
  return places.reduce((found, at) => (found === null || (at !== null && at > found) ? at : found), null);
}

function firstPast(
  dimension: DutyDimension,
  flights: readonly FlightToCome[],
  until: 'due' | 'latest',
): number | null {
  if (flights.length === 0) return null;
  if (dimension.kind === 'past') return 0;
  if (dimension.kind === 'day') {
    const through = until === 'due' ? dimension.goodThrough : dimension.latestThrough;
    return placeOf(flights, ({ landsOn }) => landsOn > through);
  }
  let left = until === 'due' ? dimension.left : dimension.latestLeft;
  return placeOf(flights, ({ adds }) => {
    left -= unitsOf(adds, dimension.unit);
    return left < 0;
  });
}

function placeOf(flights: readonly FlightToCome[], isPast: (flight: FlightToCome) => boolean): number | null {
  const place = flights.findIndex(isPast);
  return place < 0 ? null : place;
}

/** What a flight uses of a counter, in the counter's units. Total. */
export function unitsOf(adds: Counts, unit: CounterUnit): number {
  switch (unit.kind) {
    case 'minutes':
      return adds.minutes;
    case 'flights':
      return adds.flights;
    case 'cycles':
      return cycleUnits(adds, unit.rule);
    case 'still':
      return 0;
  }
}
