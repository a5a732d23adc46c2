import { LIFE_WINDOWS } from '@strutbook/domain/life/life-status.js';
import { lifeDimension, statusOfDue } from '../../records/due-points/windows.js';

/** Something that limits an engine: a part with what remains, or with why that can't be told. */
export interface Limiting {
  readonly engineId: string;
  readonly componentId: string;
  readonly description: string;
  readonly serialNumber: string;
  readonly verdict: string;
  readonly dimension: string;
  readonly remaining: number | null;
  readonly reason: string | null;
  readonly flagged: boolean;
  /** By which rule its cycles count; null where they are not what is counted. */
  readonly ruleId: string | null;
  /** The last day it is good through. */
  readonly dueOn: string | null;
}

/**
 * The tightest of what limits an engine: not authorised, over its limit, not verified, then the least share of the
 * planning window left, so that cycles and hours can be held beside each other. Null of none. Total.
 */
export function tightestOf(limiting: readonly Limiting[]): Limiting | null {
  return limiting.reduce<Limiting | null>(
    (found, next) => (found === null || isTighter(next, found) ? next : found),
    null,
  );
}

/** The status of an engine: that of its tightest part. One in which nothing limited is recorded is not verified. Total. */
export function statusOfEngine(tightest: Limiting | null) {
  return tightest === null
    ? 'not-verified'
    : statusOfDue(tightest.verdict, tightest.dimension, tightest.remaining);
}

function isTighter(a: Limiting, b: Limiting): boolean {
  const [rankA, rankB] = [rankOf(a), rankOf(b)];
  return rankA === rankB ? shareOf(a) < shareOf(b) : rankA < rankB;
}

function rankOf({ verdict, remaining }: Limiting): number {
  if (verdict === 'not-authorised') return 0;
  if (verdict !== 'limited' || remaining === null) return 2;
  return remaining < 0 ? 1 : 3;
}

function shareOf({ dimension, remaining }: Limiting): number {
  return (remaining ?? 0) / LIFE_WINDOWS[lifeDimension(dimension) ?? 'cycles'].planning;
}
