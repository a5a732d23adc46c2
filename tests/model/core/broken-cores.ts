import { planChange } from '@strutbook/domain/changes/plan-change.js';
import { duePoint } from '@strutbook/domain/due/due-point.js';
import { lifeOf } from '@strutbook/domain/life/limited-life.js';
import { floor, fraction } from '@strutbook/domain/units/fraction.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import { readClock } from '@strutbook/domain/usage/clock.js';
import { type Counts, subtractCounts } from '@strutbook/domain/usage/counts.js';
import { flattenExposures, type RatingChange } from '@strutbook/domain/usage/flatten-exposures.js';
import { flightPostings } from '@strutbook/domain/usage/flight.js';
import { hangingBeneath } from '@strutbook/domain/usage/hanging-beneath.js';
import { adjustExposures } from '@strutbook/domain/usage/late-flight.js';
import { type Core, core } from './core-under-test.js';

/** The last change of rating of each engine, as if it had always run at it. */
function lastRatings(changes: readonly RatingChange[]): readonly RatingChange[] {
  const last = new Map<string, RatingChange>();
  for (const change of changes) {
    const before = last.get(change.componentId);
    if (before === undefined || change.at >= before.at) last.set(change.componentId, change);
  }
  return [...last.values()].map((change) => ({ ...change, at: 0 as Instant }));
}

const withoutMinutes = (counts: Counts): Counts => subtractCounts(counts, { ...counts, minutes: 0 });

/** Cores with one rule each deliberately wrong: the comparison must find every one of them. */
export const brokenCores: Readonly<Record<string, Core>> = {
  'a flight counts when it takes off': {
    ...core,
    flightPostings: (flight, airframe) =>
      flightPostings(flight, airframe).map((posting) => ({ ...posting, at: flight.takeOffAt })),
  },
  'a clock leaves out what is posted at the instant it is read': {
    ...core,
    readClock: (postings, at) =>
      readClock(
        postings.filter((posting) => posting.at !== at),
        at,
      ),
  },
  'an exception is forgotten': {
    ...core,
    flightPostings: (flight, airframe) => flightPostings(flight, airframe).slice(0, 1),
  },
  'an engine that did not run still takes the flight’s events': {
    ...core,
    flightPostings: (flight, airframe) =>
      flightPostings(flight, airframe).map((posting, index) =>
        index === 0 ? posting : { ...posting, counts: withoutMinutes(posting.counts) },
      ),
  },
  'all was flown at the last rating': {
    ...core,
    flattenExposures: (facts) =>
      flattenExposures({ ...facts, ratingChanges: lastRatings(facts.ratingChanges) }),
  },
  'only what hangs there now is flattened again': {
    ...core,
    hangingBeneath: (facts) =>
      hangingBeneath({ ...facts, stays: facts.stays.filter((stay) => stay.to === null) }),
  },
  'a late flight moves no base': {
    ...core,
    adjustExposures: (posting, of) => adjustExposures(posting, of).filter((each) => each.change !== 'base'),
  },
  'a late flight that lands as an exposure ends is left out of it': {
    ...core,
    adjustExposures: (posting, { readBy, exposures }) =>
      adjustExposures(posting, {
        readBy,
        exposures: exposures.filter((exposure) => exposure.to !== posting.at),
      }),
  },
  'a late flight reaches only its airframe’s own exposures': {
    ...core,
    adjustExposures: (posting, { exposures }) =>
      adjustExposures(posting, { readBy: new Set([posting.carrierId]), exposures }),
  },
  'a cycle rule is never replaced by a later one': {
    ...core,
    flattenExposures: (facts) =>
      flattenExposures({ ...facts, cycleRules: facts.cycleRules.filter((rule) => rule.from === null) }),
  },
  'remaining is rounded before the due point is made': {
    ...core,
    duePoint: (facts) => duePoint({ ...facts, remainingExact: fraction(floor(facts.remainingExact)) }),
  },
  'every life counts pro rata': { ...core, lifeOf: (facts) => lifeOf({ ...facts, method: 'pro-rata' }) },
  'use at an unknown rating is not missed': {
    ...core,
    lifeOf: (facts) => lifeOf({ ...facts, used: facts.used.filter((total) => total.ratingId !== null) }),
  },
  'a change may lie inside a flight': {
    ...core,
    planChange: (request, facts) => planChange(request, { ...facts, flights: [] }),
  },
};
