import { add, type Fraction, floor, ZERO } from '../units/fraction.js';
import type { Life, LifeFacts } from './life.js';
import { type LifeShare, shareOfLife } from './share-of-life.js';
import { limitAt, reasonsAgainst } from './substantiation.js';

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
 * flagged.
 *
 * Units: cycles and minutes. Throws on a limit of zero.
 * Source: linear damage accumulation; formula from memory, consistent with published life-limit pages.
 */
export function lifeOf(facts: LifeFacts): Life {
  const now = limitAt(facts.limits, facts.ratingNow);
  if (now?.kind === 'not-authorised') return { kind: 'not-authorised' };
  if (now?.kind === 'not-limited') return { kind: 'not-limited' };
  const reasons = reasonsAgainst(facts, now);
  if (now === null || reasons.length > 0) return { kind: 'unsubstantiated', reasons };
  const inCycles = now.cycles === null ? null : shareOfLife('cycles', facts, now.cycles);
  const inMinutes = now.minutes === null ? null : shareOfLife('minutes', facts, now.minutes);
  const share = inCycles ?? inMinutes;
  if (share === null) return { kind: 'not-limited' };
  return {
    kind: 'limited',
    used: share.used,
    cyclesUsed: cyclesUsed(facts),
    minutesUsed: minutesUsed(facts),
    limit: inCycles?.limit ?? null,
    ...remainingIn(inCycles),
    minutesLimit: inMinutes?.limit ?? null,
    remainingMinutes: inMinutes === null ? null : floor(inMinutes.remaining),
    flagged: share.worstCase || inMinutes?.worstCase === true,
  };
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
