import type { CalendarDate } from '../units/calendar.js';
import { add, compare, type Fraction, fraction, negate, subtract, ZERO } from '../units/fraction.js';
import type { Instant } from '../units/minutes.js';
import { overlapOf } from '../usage/carried-by.js';
import { type Counts, equalCounts, zeroCounts } from '../usage/counts.js';
import type { CycleRule } from '../usage/cycle-rule.js';
import type { RanSpan } from '../usage/pieces-of-use.js';
import { type Opening, totals } from '../usage/totals.js';
import type { LifeDays } from './calendar-life.js';
import type { LifeMethod, TraceAcceptance, TraceGap } from './life.js';
import { lifeOf } from './limited-life.js';
import { type LifeLimit, limitsInForce } from './limits-in-force.js';
import { limitAt } from './substantiation.js';

/** What was flown by one clock while one limit stood, with what was left of it before and after; below zero is over. */
export interface LimitSegment {
  readonly clock: string;
  readonly cycleRuleId: string | null;
  readonly from: Instant;
  /** Null while it goes on. */
  readonly to: Instant | null;
  readonly leftBefore: Fraction;
  readonly leftAfter: Fraction;
}

/** A part of an overrun on one clock; flights count as over once more than `allowance` was flown from its beginning. */
export interface OverrunPart {
  readonly clock: string;
  readonly cycleRuleId: string | null;
  readonly from: Instant;
  readonly to: Instant | null;
  readonly allowance: Fraction;
}

/** A time over which something was flown beyond a limit that stood then. */
export interface Overrun {
  readonly parts: readonly OverrunPart[];
  /** By how much at its worst, exact: minutes or cycles. */
  readonly by: Fraction;
  /** Whether it goes on: nothing has ended it. */
  readonly isOpen: boolean;
}

/**
 * The overruns among segments of one limit in order of time: each run of segments that ended beyond it and in which
 * something was flown. A segment in which nothing was flown neither begins nor ends one: what stood in store over its
 * limit was not flown over it. Total.
 */
export function overrunsIn(segments: readonly LimitSegment[]): readonly Overrun[] {
  const found: Overrun[] = [];
  let run: Overrun | null = null;
  for (const segment of segments) {
    if (compare(segment.leftBefore, segment.leftAfter) === 0) continue;
    if (compare(segment.leftAfter, ZERO) >= 0) {
      if (run !== null) found.push(run);
      run = null;
      continue;
    }
    run = grown(run, segment);
  }
  return run === null ? found : [...found, run];
}

function grown(run: Overrun | null, { leftBefore, leftAfter, ...segment }: LimitSegment): Overrun {
  const by = negate(leftAfter);
  const allowance = compare(leftBefore, ZERO) > 0 ? leftBefore : ZERO;
  return {
    parts: [...(run?.parts ?? []), { ...segment, allowance }],
    by: run !== null && compare(run.by, by) > 0 ? run.by : by,
    isOpen: segment.to === null,
  };
}

/** What a limited part ran by one clock, in one engine model, while its limits stood unchanged. */
export interface LifePiece extends RanSpan {
  readonly modelId: string | null;
  readonly counts: Counts;
}

/** What the overruns of a life are found from; the pieces in order of time. */
export interface LifeHistory<Limit extends LifeLimit> {
  readonly partNumber: string;
  readonly openings: readonly Opening[];
  readonly pieces: readonly LifePiece[];
  readonly limits: readonly Limit[];
  readonly cycleRules: ReadonlyMap<string, CycleRule>;
  readonly methodOf: (modelId: string) => LifeMethod;
  readonly gaps: readonly (TraceGap & { readonly from: Instant })[];
  readonly acceptance: TraceAcceptance | null;
  /** The days calendar lives count from as known at an instant (null: now), which is its `today`. */
  readonly daysAt: (at: Instant | null) => LifeDays | undefined;
  /** The instant at which a day has ended where the part is. */
  readonly dayEnds: (on: CalendarDate) => Instant;
}

/** An overrun of a life limit: in cycles, in minutes, or beyond the last day, by days that its flights tell. */
export interface LifeOverrun<Limit extends LifeLimit> extends Omit<Overrun, 'by'> {
  readonly dimension: 'cycles' | 'minutes' | 'days';
  readonly by: Fraction | null;
  /** The last day it was good through; null for counters. */
  readonly goodThrough: CalendarDate | null;
  /** The row whose figure or day governed where it began. */
  readonly row: Limit | null;
}

/**
 * The times over which a limited part was flown beyond its life as the limits in force then had it.
 *
 * Where the life cannot be told (a gap without an acceptance, an unknown counter, no limit) nothing is said: that is
 * 'not verified', which is not 'within'. Units: cycles and minutes.
 */
export function lifeOverruns<Limit extends LifeLimit>(
  history: LifeHistory<Limit>,
): readonly LifeOverrun<Limit>[] {
  const segments = history.pieces.map((_, index) => segmentsOf(history, index));
  const counted = (['cycles', 'minutes'] as const).flatMap((dimension) => {
    const own = segments.flatMap((each) => each[dimension] ?? []);
    return overrunsIn(own).map((overrun) => {
      const begins = own.find((segment) => segment.from === overrun.parts[0]?.from);
      return { ...overrun, dimension, goodThrough: null, row: begins?.row ?? null };
    });
  });
  return [...counted, ...calendarOverruns(history, segments)];
}

interface InDimensions<Limit extends LifeLimit> {
  readonly cycles?: LimitSegment & { readonly row: Limit | null };
  readonly minutes?: LimitSegment & { readonly row: Limit | null };
  /** The last day it was good through while this piece ran. */
  readonly days?: { readonly goodThrough: CalendarDate; readonly row: Limit | null };
}

/** What flew on after the last day of a calendar life; each last day is an overrun of its own. */
function calendarOverruns<Limit extends LifeLimit>(
  history: LifeHistory<Limit>,
  segments: readonly InDimensions<Limit>[],
): readonly LifeOverrun<Limit>[] {
  const found = new Map<CalendarDate, LifeOverrun<Limit>>();
  for (const [index, { days }] of segments.entries()) {
    const piece = history.pieces[index];
    if (days === undefined || piece === undefined) continue;
    const { goodThrough, row } = days;
    const { carrierId: clock, cycleRuleId, ...span } = piece;
    const beyond = overlapOf({ from: history.dayEnds(goodThrough), to: null }, span);
    if (beyond === null) continue;
    const known = found.get(goodThrough);
    found.set(goodThrough, {
      ...{ dimension: 'days', goodThrough, by: null, row: known?.row ?? row },
      parts: [...(known?.parts ?? []), { clock, cycleRuleId, ...beyond, allowance: ZERO }],
      isOpen: piece.to === null,
    });
  }
  return [...found.values()];
}

function segmentsOf<Limit extends LifeLimit>(
  history: LifeHistory<Limit>,
  index: number,
): InDimensions<Limit> {
  const piece = history.pieces[index];
  if (piece === undefined || piece.modelId === null || equalCounts(piece.counts, zeroCounts)) return {};
  const { modelId, from, to, ratingId, carrierId: clock, cycleRuleId } = piece;
  const limits = limitsInForce(history.limits, { partNumber: history.partNumber, modelId, at: from });
  const lifeAfter = (pieces: readonly LifePiece[], until: Instant | null) => {
    const days = history.daysAt(until);
    return lifeOf({
      ...(days === undefined ? {} : { days }),
      used: totals({ ...history, exposures: pieces }).byRating,
      limits,
      method: history.methodOf(modelId),
      ratingNow: ratingId,
      traceGaps: history.gaps.filter((gap) => until === null || gap.from < until),
      acceptance: history.acceptance,
    });
  };
  const before = lifeAfter(history.pieces.slice(0, index), from);
  const after = lifeAfter(history.pieces.slice(0, index + 1), to);
  if (before.kind !== 'limited' || after.kind !== 'limited') return {};
  const standing = limitAt(limits, ratingId);
  const governs = limits.find((limit) => limit === standing)?.governs;
  const calendarId = after.calendar?.limitId;
  const segment = { clock, cycleRuleId, from, to };
  return {
    ...(after.goodThrough === null
      ? {}
      : {
          days: {
            goodThrough: after.goodThrough,
            row: history.limits.find((row) => row.id === calendarId) ?? null,
          },
        }),
    ...(before.remainingExact === null || after.remainingExact === null
      ? {}
      : {
          cycles: {
            ...{ ...segment, row: governs?.cycles ?? null },
            ...{ leftBefore: before.remainingExact, leftAfter: after.remainingExact },
          },
        }),
    ...(before.remainingMinutes === null || after.remainingMinutes === null
      ? {}
      : {
          minutes: {
            ...{ ...segment, row: governs?.minutes ?? null },
            leftBefore: fraction(before.remainingMinutes),
            leftAfter: fraction(after.remainingMinutes),
          },
        }),
  };
}

/** What something ran by one clock, in minutes or cycles. */
export interface AmountRun {
  readonly clock: string;
  readonly cycleRuleId: string | null;
  readonly from: Instant;
  readonly to: Instant | null;
  readonly amount: Fraction;
}

/** Segments of a duty that was due at a counter: `left` is what was granted still before the first of these. Total. */
export function segmentsOfDuty(left: Fraction, runs: readonly AmountRun[]): readonly LimitSegment[] {
  let leftBefore = left;
  return runs.map(({ amount, ...run }) => {
    const leftAfter = subtract(leftBefore, amount);
    const segment = { ...run, leftBefore, leftAfter };
    leftBefore = leftAfter;
    return segment;
  });
}

/** The sum of amounts. Total. */
export function sumOfRuns(runs: readonly AmountRun[]): Fraction {
  return runs.reduce((sum, { amount }) => add(sum, amount), ZERO);
}
