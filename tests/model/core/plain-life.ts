import type { PlainModel, Used } from './plain-model.js';
import { AIRFRAMES, countsByLowest, LIMITS, RULES, TWELFTHS } from './world.js';

/** The life of a part as the plain lists have it. */
export type PlainLife =
  | { readonly kind: 'unsubstantiated' }
  | { readonly kind: 'limited'; readonly remaining: number; readonly dueAt: number | null };

/** The rating a part counts at now: its engine's, or 'low' while it is on no position. */
export function ratingNow(model: PlainModel, part: string, now: number): string | null {
  const place = model.placeOf(part, now);
  return place === null ? 'low' : model.ratingAt(place.top, now);
}

function hasRun(used: Used | undefined): boolean {
  return used !== undefined && (used.minutes !== 0 || used.twelfths !== 0);
}

/** Whole units rounded down, for a numerator of either sign. */
function wholeUnits(numerator: bigint, denominator: bigint): number {
  const quotient = numerator / denominator;
  return Number(numerator % denominator < 0n ? quotient - 1n : quotient);
}

/**
 * What remains of a part, in integers over one common denominator: used is
 * `low ÷ (12 × limit low) + high ÷ (12 × limit high)`.
 */
export function plainLife(model: PlainModel, part: string, now: number): PlainLife {
  const used = model.used(part, now);
  const rating = ratingNow(model, part, now);
  if (rating === null || hasRun(used.get(null))) return { kind: 'unsubstantiated' };
  const [low, high] = [used.get('low'), used.get('high')];
  if (low?.twelfths === null || high?.twelfths === null) return { kind: 'unsubstantiated' };
  const [lowUsed, highUsed] = [BigInt(low?.twelfths ?? 0), BigInt(high?.twelfths ?? 0)];
  const [lowLimit, highLimit, twelve] = [BigInt(LIMITS.low), BigInt(LIMITS.high), BigInt(TWELFTHS)];
  // What remains is `left ÷ over` cycles.
  let left: bigint;
  let over: bigint;
  if (countsByLowest(part)) {
    const limit = rating === 'high' || hasRun(high) ? highLimit : lowLimit;
    left = limit * twelve - lowUsed - highUsed;
    over = twelve;
  } else {
    const limit = rating === 'high' ? highLimit : lowLimit;
    left = (twelve * lowLimit * highLimit - lowUsed * highLimit - highUsed * lowLimit) * limit;
    over = twelve * lowLimit * highLimit;
  }
  return { kind: 'limited', remaining: wholeUnits(left, over), dueAt: dueAt(model, part, now, left, over) };
}

function dueAt(model: PlainModel, part: string, now: number, left: bigint, over: bigint): number | null {
  const place = model.placeOf(part, now);
  if (place === null) return null;
  const type = AIRFRAMES.find((airframe) => airframe.positions.includes(place.position))?.type ?? '';
  const rule = model.ruleAt(place.top, type, now);
  const found = RULES.find((each) => each.id === rule?.id);
  if (found === undefined) return null;
  return model.reading(place.position, found.id) + wholeUnits(left * BigInt(found.denominator), over);
}
