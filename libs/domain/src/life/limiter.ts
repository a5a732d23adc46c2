import type { Life } from './life.js';

/** A part of an engine with its life. */
export interface PartLife {
  readonly componentId: string;
  readonly life: Life;
}

/** The tightest part of an engine, by each measure; null when no part is limited by it. */
export interface Limiters {
  /** The limiter: a part not authorised or not substantiated before any number, then the fewest cycles left. */
  readonly byCycles: PartLife | null;
  readonly byMinutes: PartLife | null;
}

/**
 * The tightest parts of an engine: by cycles and by minutes.
 *
 * A part not authorised, then one not substantiated, ranks above any number, in both. A part without a limit
 * never limits. Of equals the one named first. Total.
 */
export function limiterOf(parts: readonly PartLife[]): Limiters {
  return {
    byCycles: tightest(parts, (life) => (life.kind === 'limited' ? life.remaining : null)),
    byMinutes: tightest(parts, (life) => (life.kind === 'limited' ? life.remainingMinutes : null)),
  };
}

function tightest(parts: readonly PartLife[], remaining: (life: Life) => number | null): PartLife | null {
  let found: { readonly part: PartLife; readonly rank: number } | null = null;
  for (const part of parts) {
    const rank = rankOf(part.life, remaining(part.life));
    if (rank !== null && (found === null || rank < found.rank)) found = { part, rank };
  }
  return found?.part ?? null;
}

function rankOf(life: Life, remaining: number | null): number | null {
  if (life.kind === 'not-authorised') return Number.NEGATIVE_INFINITY;
  return life.kind === 'unsubstantiated' ? -Number.MAX_VALUE : remaining;
}
