import { type Instant, instant } from '../units/minutes.js';
import type { Counts } from '../usage/counts.js';

/** A flight that is planned; instants in whole minutes. */
export interface PlannedLeg {
  readonly takeOffAt: Instant;
  readonly landingAt: Instant;
}

/** What an airframe is planned to fly: so many minutes and flights in so many days. */
export interface PlannedRate {
  readonly minutes: number;
  readonly flights: number;
  readonly days: number;
}

/** What is wrong with planned flights; `at` and `with` are their places in the list, from 0. */
export type PlanFault =
  | { readonly code: 'ENDS_BEFORE_IT_BEGINS'; readonly at: number }
  | { readonly code: 'IN_THE_PAST'; readonly at: number }
  | { readonly code: 'OVERLAP'; readonly at: number; readonly with: number };

const MINUTES_A_DAY = 1440;

/** What a planned flight adds: its minutes, one landing and one start. Total. */
export function plannedCounts({ takeOffAt, landingAt }: PlannedLeg): Counts {
  return {
    minutes: landingAt - takeOffAt,
    flights: 1,
    landings: 1,
    touchAndGoes: 0,
    starts: 1,
    abortedTakeOffs: 0,
  };
}

/** Every fault of a plan that begins now: flights that end before they begin, are past, or overlap. Total. */
export function planFaults(legs: readonly PlannedLeg[], now: Instant): readonly PlanFault[] {
  const faults: PlanFault[] = [];
  const ordered = legs
    .map((leg, at) => ({ ...leg, at }))
    .sort((a, b) => a.takeOffAt - b.takeOffAt || a.at - b.at);
  let before: (PlannedLeg & { readonly at: number }) | null = null;
  for (const leg of ordered) {
    if (leg.landingAt <= leg.takeOffAt) faults.push({ code: 'ENDS_BEFORE_IT_BEGINS', at: leg.at });
    else if (leg.takeOffAt < now) faults.push({ code: 'IN_THE_PAST', at: leg.at });
    if (before !== null && leg.takeOffAt < before.landingAt)
      faults.push({ code: 'OVERLAP', at: leg.at, with: before.at });
    if (before === null || leg.landingAt > before.landingAt) before = leg;
  }
  return faults.sort((a, b) => a.at - b.at);
}

/**
 * The flights of a rate over so many days from an instant on, evenly spread, the first at once: whole flights whose
 * minutes add up to those of the rate, rounded up, so that no use is left out. None overlaps another as long as the
 * rate flies no more minutes than its days have. Total.
 *
 * Source: common practice, no source.
 */
export function flightsAtRate(rate: PlannedRate, from: Instant, horizonDays: number): readonly PlannedLeg[] {
  const count = Math.ceil((rate.flights * horizonDays) / rate.days);
  const minutesTo = (flight: number) => Math.ceil((flight * rate.minutes) / rate.flights);
  return Array.from({ length: count }, (_, index) => {
    const takeOffAt = instant(from + Math.ceil((index * rate.days * MINUTES_A_DAY) / rate.flights));
    const minutes = Math.max(1, minutesTo(index + 1) - minutesTo(index));
    return { takeOffAt, landingAt: instant(takeOffAt + minutes) };
  });
}
