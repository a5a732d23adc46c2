import { startOfDay } from '@strutbook/domain/units/calendar.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import { type Instant, later, parseHours } from '@strutbook/domain/units/minutes.js';
import { type Posting, readClock } from '@strutbook/domain/usage/clock.js';
import { subtractCounts } from '@strutbook/domain/usage/counts.js';
import type { CycleRule } from '@strutbook/domain/usage/cycle-rule.js';
import { flattenExposures, type SlotPlace, type Stay } from '@strutbook/domain/usage/flatten-exposures.js';
import { type Flight, flightPostings, planFlight } from '@strutbook/domain/usage/flight.js';
import { type Totals, totals } from '@strutbook/domain/usage/totals.js';

/** One cycle for each flight. */
export const ONE_PER_FLIGHT: CycleRule = {
  id: 'one per flight',
  perFlight: 1,
  perLanding: 0,
  perTouchAndGo: 0,
  perStart: 0,
  perAbortedTakeOff: 0,
  denominator: 1,
};

/** An instant written as date and time of day in UTC. */
export function utc(date: string, time: string): Instant {
  return later(startOfDay(date), hours(time));
}

/** Minutes written as hours. */
export function hours(text: string): number {
  const read = parseHours(text);
  if (!read.ok) throw new Error(`no hours: ${text}`);
  return read.value;
}

/** A flight with its number of touch-and-goes. */
export function flight(takeOffAt: Instant, landingAt: Instant, touchAndGoes = 0): Flight {
  const draft = { id: `${takeOffAt}`, takeOffAt, landingAt, touchAndGoes, starts: 1, abortedTakeOffs: 0 };
  const planned = planFlight({ ...draft, exceptions: [] });
  if (!planned.ok) throw new Error(planned.refusal.code);
  return planned.value;
}

/** A stay at position 1 of the airframe. */
export function atPositionOne(componentId: string, from: Instant, to: Instant | null): Stay {
  return { id: `${componentId} ${from}`, componentId, slotId: 'position 1', locationId: null, from, to };
}

const slots = new Map<string, SlotPlace>([
  ['position 1', { kind: 'position', positionCarrierId: 'p1', airframeId: 'a', airframeTypeId: 't' }],
]);

/** The totals of an engine at an instant: opened with hours and cycles, and flown at position 1 of one airframe. */
export function engineTotals(facts: {
  readonly componentId: string;
  readonly tsn: string;
  readonly csn: number;
  readonly stays: readonly Stay[];
  readonly flights: readonly Flight[];
  readonly at: Instant;
}): Totals {
  const postings: Posting[] = facts.flights.flatMap((each) => [...flightPostings(each, 'a')]);
  const spans = flattenExposures({
    ...facts,
    slots,
    ratingChanges: [],
    cycleRules: [{ cycleRuleId: ONE_PER_FLIGHT.id, modelId: 'm', airframeTypeId: 't', from: null }],
    modelOf: new Map([[facts.componentId, 'm']]),
  });
  const read = (at: Instant) => readClock(postings, at);
  return totals({
    openings: [
      {
        at: startOfDay('2000-01-01'),
        ratingId: null,
        minutes: hours(facts.tsn),
        cycles: fraction(facts.csn),
      },
    ],
    exposures: spans.map((span) => ({
      ratingId: span.ratingId,
      cycleRuleId: span.cycleRuleId,
      counts: subtractCounts(read(span.to ?? facts.at), read(span.from)),
    })),
    cycleRules: new Map([[ONE_PER_FLIGHT.id, ONE_PER_FLIGHT]]),
  });
}
