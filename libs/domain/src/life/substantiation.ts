import type { RatingTotal } from '../usage/totals.js';
import { type CalendarLimit, unknownDays } from './calendar-life.js';
import type { LifeFacts, RatingLimit, TraceAcceptance, UnsubstantiatedReason } from './life.js';

type LimitedLimit = Extract<RatingLimit, { kind: 'limited' }>;

/**
 * The limit at a rating: the row of that rating, else the one for any rating. With an unknown rating a row
 * answers only when all rows say the same. Null when there is none. Total.
 */
export function limitAt(limits: readonly RatingLimit[], ratingId: string | null): RatingLimit | null {
  if (ratingId === null) {
    const [first, ...rest] = limits;
    return first !== undefined && rest.every((limit) => sameLimit(limit, first)) ? first : null;
  }
  return (
    limits.find((limit) => limit.ratingId === ratingId) ??
    limits.find((limit) => limit.ratingId === null) ??
    null
  );
}

function sameLimit(a: RatingLimit, b: RatingLimit): boolean {
  if (a.kind !== 'limited' || b.kind !== 'limited') return a.kind === b.kind;
  const calendar = (limit: LimitedLimit) => JSON.stringify(calendarOf(limit));
  return a.cycles === b.cycles && a.minutes === b.minutes && calendar(a) === calendar(b);
}

/** The calendar lives of a limit. Total. */
export function calendarOf(limit: RatingLimit): readonly CalendarLimit[] {
  return limit.kind === 'limited' ? (limit.calendar ?? []) : [];
}

/** Whether a part ran at that rating, or may have: an unknown amount counts as use. Total. */
export function wasUsed({ minutes, cycles }: RatingTotal): boolean {
  return minutes === null || minutes !== 0 || cycles === null || cycles.num !== 0n;
}

/**
 * Why the life can't be told, in the order trace, ratings, limits, counters; empty when it can.
 *
 * An acceptance of the worst case answers gaps and unknown ratings, not a missing limit or counter. Total.
 */
export function reasonsAgainst(facts: LifeFacts, now: RatingLimit | null): readonly UnsubstantiatedReason[] {
  const { used, limits, ratingNow, traceGaps, acceptance } = facts;
  const reasons: UnsubstantiatedReason[] = [];
  const open = traceGaps.filter((gap) => !isAccepted(gap.acceptance ?? acceptance, now));
  reasons.push(...open.map((gap) => ({ code: 'TRACE_GAP', gap }) as const));
  const ran = used.filter(wasUsed);
  const ranUnknown = ran.some((total) => total.ratingId === null && limitAt(limits, null) === null);
  if ((ranUnknown && acceptance === null) || (now === null && ratingNow === null && limits.length > 0))
    reasons.push({ code: 'RATING_UNKNOWN' });
  if (limits.length === 0) reasons.push({ code: 'NO_LIMIT_RECORDED', ratingId: ratingNow });
  else
    for (const ratingId of new Set([ratingNow, ...ran.map((total) => total.ratingId)]))
      if (ratingId !== null && !isCountable(limits, ratingId))
        reasons.push({ code: 'NO_LIMIT_RECORDED', ratingId });
  reasons.push(...unknownCounters(facts, now?.kind === 'limited' ? now : null));
  const unknown = now === null ? [] : unknownDays(calendarOf(now), facts.days);
  reasons.push(...unknown.map((from) => ({ code: 'DAY_UNKNOWN', from }) as const));
  return reasons;
}

/** Whether an acceptance says how much a gap may hide, in all that is limited. */
function isAccepted(acceptance: TraceAcceptance | null, now: RatingLimit | null): boolean {
  if (acceptance === null || now?.kind !== 'limited') return false;
  const inCycles = now.cycles === null || acceptance.worstCaseCycles !== null;
  return inCycles && (now.minutes === null || acceptance.worstCaseMinutes !== null);
}

function isCountable(limits: readonly RatingLimit[], ratingId: string): boolean {
  const limit = limitAt(limits, ratingId);
  return limit !== null && limit.kind !== 'not-authorised';
}

function unknownCounters({ used }: LifeFacts, now: LimitedLimit | null): readonly UnsubstantiatedReason[] {
  const noCycles = used.length === 0 || used.some((total) => total.cycles === null);
  const noMinutes = used.length === 0 || used.some((total) => total.minutes === null);
  const reasons: UnsubstantiatedReason[] = [];
  if (noCycles && (now === null || now.cycles !== null)) reasons.push({ code: 'CYCLES_UNKNOWN' });
  if (noMinutes && now !== null && now.minutes !== null) reasons.push({ code: 'MINUTES_UNKNOWN' });
  return reasons;
}
