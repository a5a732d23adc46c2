import { planChange } from '@strutbook/domain/changes/plan-change.js';
import { duePoint } from '@strutbook/domain/due/due-point.js';
import { lifeOf } from '@strutbook/domain/life/limited-life.js';
import { planEnd, planPlacement } from '@strutbook/domain/stays/plan-stay.js';
import { positionClock, readClock } from '@strutbook/domain/usage/clock.js';
import { cycleUnits } from '@strutbook/domain/usage/cycle-rule.js';
import { emptySpans } from '@strutbook/domain/usage/empty-spans.js';
import { flattenExposures } from '@strutbook/domain/usage/flatten-exposures.js';
import { flightPostings, planFlight } from '@strutbook/domain/usage/flight.js';
import { hangingBeneath } from '@strutbook/domain/usage/hanging-beneath.js';
import { adjustExposures } from '@strutbook/domain/usage/late-flight.js';
import { totals } from '@strutbook/domain/usage/totals.js';
import { trialBalance } from '@strutbook/domain/usage/trial-balance.js';

/** The rules of the core, by name: a broken one can stand in for any of them. */
export const core = {
  planFlight,
  flightPostings,
  readClock,
  positionClock,
  cycleUnits,
  adjustExposures,
  flattenExposures,
  hangingBeneath,
  totals,
  emptySpans,
  trialBalance,
  planChange,
  planPlacement,
  planEnd,
  lifeOf,
  duePoint,
};

export type Core = typeof core;
