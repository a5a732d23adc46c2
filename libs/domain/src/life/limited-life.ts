import { daysBetween } from '../units/calendar.js';
import { add, type Fraction, floor, fraction, ZERO } from '../units/fraction.js';
import { type CalendarEnd, firstToEnd } from './calendar-life.js';
import type { Life, LifeFacts, RatingLimit } from './life.js';
import { type LifeShare, shareOfLife } from './share-of-life.js';
import { calendarOf, limitAt, reasonsAgainst } from './substantiation.js';

export type {
  Life,
  LifeFacts,
  LifeMethod,
  RatingLimit,
  TraceAcceptance,
  TraceGap,
  UnsubstantiatedReason,
} from './life.js';

/**
 * The life of a limited part: not authorised, not limited, not substantiated, or what is used and remains.
 *
 * Pro-rata: `used = Σ cycles at a rating ÷ limit at that rating`, remaining at the rating now
 * `= floor((1 − used) × limit)`; or total use against the lowest limit of any rating used or running now.
 * Exact until it is rounded, and rounded down. An unknown rating, a gap in the trace, a missing counter or
 * a missing limit leaves no remaining; a recorded acceptance lets the worst case stand for the first two,
 * flagged. A calendar life runs on whether flown or stored, and is good through its last day.
 *
 * Units: cycles, minutes and days. Throws on a limit of zero.
 * Source: linear damage accumulation; formula from memory, consistent with published life-limit pages.
 */
export function lifeOf(facts: LifeFacts): Life {
  const now = limitAt(facts.limits, facts.ratingNow);
  if (now?.kind === 'not-authorised') return { kind: 'not-authorised' };
  if (now?.kind === 'not-limited') return { kind: 'not-limited' };
  const reasons = reasonsAgainst(facts, now);
  if (now === null || reasons.length > 0) return { kind: 'unsubstantiated', reasons };
  return limitedLife(facts, now);
}

function limitedLife(facts: LifeFacts, now: RatingLimit): Life {
  if (now.kind !== 'limited') return { kind: 'not-limited' };
  const inCycles = now.cycles === null ? null : shareOfLife('cycles', facts, now.cycles);
  const inMinutes = now.minutes === null ? null : shareOfLife('minutes', facts, now.minutes);
  const ends = firstToEnd(calendarOf(now), facts.days);
  const used = inCycles?.used ?? inMinutes?.used ?? usedByDays(now, ends);
  if (used === null) return { kind: 'not-limited' };
  const worstCase = inCycles?.worstCase === true || inMinutes?.worstCase === true;
  return {
    kind: 'limited',
    used,
    cyclesUsed: cyclesUsed(facts),
    minutesUsed: minutesUsed(facts),
    limit: inCycles?.limit ?? null,
    ...remainingIn(inCycles),
    minutesLimit: inMinutes?.limit ?? null,
    remainingMinutes: inMinutes === null ? null : floor(inMinutes.remaining),
    calendar: ends?.limit ?? null,
    goodThrough: ends?.goodThrough ?? null,
    remainingDays: ends?.remaining ?? null,
    flagged: worstCase || facts.traceGaps.length > 0,
  };
}

/** What the calendar alone has used; null where no calendar life is limited. One that has not begun is not used yet. */
function usedByDays(now: RatingLimit, ends: CalendarEnd | null): Fraction | null {
  if (calendarOf(now).length === 0) return null;
  return ends === null ? ZERO : shareOfDays(ends);
}

/** The share of a calendar life that has passed. A life of no day is all used. Total. */
function shareOfDays({ from, goodThrough, remaining }: CalendarEnd): Fraction {
  const whole = Math.max(daysBetween(from, goodThrough), 1);
  return fraction(whole - remaining, whole);
}

function remainingIn(share: LifeShare | null): { remaining: number | null; remainingExact: Fraction | null } {
  return share === null
    ? { remaining: null, remainingExact: null }
    : { remaining: floor(share.remaining), remainingExact: share.remaining };
}

function minutesUsed({ used }: LifeFacts): number | null {
  return used.reduce<number | null>(
    (sum, { minutes }) => (sum === null || minutes === null ? null : sum + minutes),
    0,
  );
}

function cyclesUsed({ used }: LifeFacts): Fraction | null {
  return used.reduce<Fraction | null>(
    (sum, { cycles }) => (sum === null || cycles === null ? null : add(sum, cycles)),
    ZERO,
  );
}
