import type { Life } from './life.js';
import { isSooner, type ProjectedEnd } from './projected-end.js';

/** A part of an engine with its life, and when it is projected to end. */
export interface PartLife {
  readonly componentId: string;
  readonly life: Life;
  readonly end?: ProjectedEnd | null;
}

/** The tightest part of an engine, by each measure; null when no part is limited by it. */
export interface Limiters<Part extends PartLife = PartLife> {
  /** The limiter: a part not authorised or not substantiated before any number, then the fewest cycles left. */
  readonly byCycles: Part | null;
  readonly byMinutes: Part | null;
  /** The same by date: then what is past, then what is projected to end first. */
  readonly byDate: Part | null;
}

/**
 * The tightest parts of an engine: by cycles, by minutes and by projected date.
 *
 * A part not authorised, then one not substantiated, ranks above any number, in all. A part without a limit
 * never limits. Of equals the one named first. Total.
 */
export function limiterOf<Part extends PartLife>(parts: readonly Part[]): Limiters<Part> {
  return {
    byCycles: tightest(parts, (life) => (life.kind === 'limited' ? life.remaining : null)),
    byMinutes: tightest(parts, (life) => (life.kind === 'limited' ? life.remainingMinutes : null)),
    byDate: soonest(parts),
  };
}

function tightest<Part extends PartLife>(
  parts: readonly Part[],
  remaining: (life: Life) => number | null,
): Part | null {
  let found: { readonly part: Part; readonly rank: number } | null = null;
  for (const part of parts) {
    const rank = rankOf(part.life, remaining(part.life));
    if (rank !== null && (found === null || rank < found.rank)) found = { part, rank };
  }
  return found?.part ?? null;
}

function soonest<Part extends PartLife>(parts: readonly Part[]): Part | null {
  const untold = tightest(parts, () => null);
  if (untold !== null) return untold;
  let found: { readonly part: Part; readonly end: ProjectedEnd } | null = null;
  for (const part of parts) {
    const { end = null } = part;
    if (end !== null && (found === null || isSooner(end, found.end))) found = { part, end };
  }
  return found?.part ?? null;
}

function rankOf(life: Life, remaining: number | null): number | null {
  if (life.kind === 'not-authorised') return Number.NEGATIVE_INFINITY;
  return life.kind === 'unsubstantiated' ? -Number.MAX_VALUE : remaining;
}
