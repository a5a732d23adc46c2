import { add, type Fraction, ZERO } from '../units/fraction.js';
import type { Instant } from '../units/minutes.js';
import { type CarriedSpan, overlapOf } from './carried-by.js';
import type { Counters } from './since.js';

/** A span over which a component ran by one clock at one rating under one rule; open while `to` is null. */
export interface RanSpan {
  readonly carrierId: string;
  readonly ratingId: string | null;
  readonly cycleRuleId: string | null;
  readonly from: Instant;
  readonly to: Instant | null;
}

/** A part of such a span, carried by one engine (or pod, or itself); null where the stays don't say. */
export interface PieceOfUse extends RanSpan {
  readonly carriedBy: string | null;
}

/**
 * What a component's use between two instants is made of: its exposures, cut where another engine carried it.
 *
 * A piece counts what landed after its beginning up to and including its end, so the pieces of one span add up to it.
 * `since` null: from the beginning; `until` null: to now. In order of time; total.
 */
export function piecesOfUse({
  exposures,
  carried,
  since,
  until,
}: {
  readonly exposures: readonly RanSpan[];
  readonly carried: readonly CarriedSpan[];
  readonly since: Instant | null;
  readonly until: Instant | null;
}): readonly PieceOfUse[] {
  const asked = { from: since ?? (Number.NEGATIVE_INFINITY as Instant), to: until };
  return exposures.flatMap((exposure): readonly PieceOfUse[] => {
    const span = overlapOf(asked, exposure);
    if (span === null) return [];
    const cuts = carried
      .flatMap(({ from, to }) => [from, ...(to === null ? [] : [to])])
      .filter((at) => at > span.from && (span.to === null || at < span.to))
      .sort((a, b) => a - b);
    const starts = [...new Set([span.from, ...cuts])];
    const pieces = starts.map((from, index) => ({
      ...exposure,
      from,
      to: starts[index + 1] ?? span.to,
      carriedBy: topAt(carried, from),
    }));
    return joined(pieces);
  });
}

function topAt(carried: readonly CarriedSpan[], at: Instant): string | null {
  return carried.find(({ from, to }) => from <= at && (to === null || at < to))?.topId ?? null;
}

/** A module taken out of an engine and put into it again at one instant was carried on. */
function joined(pieces: readonly PieceOfUse[]): readonly PieceOfUse[] {
  const found: PieceOfUse[] = [];
  for (const piece of pieces) {
    const last = found.at(-1);
    if (last !== undefined && last.carriedBy === piece.carriedBy)
      found[found.length - 1] = { ...last, to: piece.to };
    else found.push(piece);
  }
  return found;
}

/** The sum after each of these amounts, as on paper; unknown from the first that is not known on. Total. */
export function runningSums(addends: readonly Counters[]): readonly Counters[] {
  let [minutes, cycles]: [number | null, Fraction | null] = [0, ZERO];
  return addends.map((addend) => {
    minutes = minutes === null || addend.minutes === null ? null : minutes + addend.minutes;
    cycles = cycles === null || addend.cycles === null ? null : add(cycles, addend.cycles);
    return { minutes, cycles };
  });
}
