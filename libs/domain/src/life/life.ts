import type { CalendarDate } from '../units/calendar.js';
import type { Fraction } from '../units/fraction.js';
import type { RatingTotal } from '../usage/totals.js';
import type { CalendarLimit, LifeDays } from './calendar-life.js';

/** A limit in force at one rating (null: at any). 'limited' has cycles, minutes, days on the calendar, or several. */
export type RatingLimit = { readonly ratingId: string | null } & (
  | {
      readonly kind: 'limited';
      readonly cycles: number | null;
      readonly minutes: number | null;
      /** Calendar lives; the first to end governs. None when left out. */
      readonly calendar?: readonly CalendarLimit[];
    }
  | { readonly kind: 'not-authorised' }
  | { readonly kind: 'not-limited' }
);

/** How lives at several ratings are joined: the model's own rule. */
export type LifeMethod = 'pro-rata' | 'lowest-limit';

/** A recorded acceptance that the worst case stands for what is unknown. */
export interface TraceAcceptance {
  readonly by: string;
  readonly reference: string;
  /** The most that may have been used in a gap, counted at the lowest limit; null when it doesn't say. */
  readonly worstCaseCycles: number | null;
  readonly worstCaseMinutes: number | null;
}

/** A span nobody can account for. */
export interface TraceGap {
  readonly id: string;
  readonly description: string;
  /** The acceptance of this gap alone. */
  readonly acceptance?: TraceAcceptance | null;
}

/** What a life is computed from. Amounts since new, per rating: openings and what was accrued since. */
export interface LifeFacts {
  readonly used: readonly RatingTotal[];
  /** The limits in force for the part number in the model; empty when none is recorded. */
  readonly limits: readonly RatingLimit[];
  readonly method: LifeMethod;
  /** The rating the engine runs at now; null when not known. */
  readonly ratingNow: string | null;
  readonly traceGaps: readonly TraceGap[];
  /** The acceptance for unknown ratings, and, as one figure, for all gaps without their own. */
  readonly acceptance: TraceAcceptance | null;
  /** The days a calendar life counts from, and today; needed where one is limited by the calendar. */
  readonly days?: LifeDays;
}

/** Why a life can't be told. */
export type UnsubstantiatedReason =
  | { readonly code: 'TRACE_GAP'; readonly gap: TraceGap }
  | { readonly code: 'RATING_UNKNOWN' }
  | { readonly code: 'CYCLES_UNKNOWN' }
  | { readonly code: 'MINUTES_UNKNOWN' }
  | { readonly code: 'DAY_UNKNOWN'; readonly from: CalendarLimit['countedFrom'] }
  | { readonly code: 'NO_LIMIT_RECORDED'; readonly ratingId: string | null };

/** The life of a limited part. */
export type Life =
  | { readonly kind: 'not-authorised' }
  | { readonly kind: 'not-limited' }
  | { readonly kind: 'unsubstantiated'; readonly reasons: readonly UnsubstantiatedReason[] }
  | {
      readonly kind: 'limited';
      /** Used share of the life in cycles (else in minutes, else in days: the first that is limited); 1 is all of it. */
      readonly used: Fraction;
      readonly cyclesUsed: Fraction | null;
      readonly minutesUsed: number | null;
      /** The cycle limit the remaining counts against; null where only minutes are limited. */
      readonly limit: number | null;
      /** Whole cycles left at the rating now, rounded down; 0 is the last; below 0 is an overrun. */
      readonly remaining: number | null;
      /** What is left before rounding: due points are made of it. */
      readonly remainingExact: Fraction | null;
      readonly minutesLimit: number | null;
      /** Whole minutes left at the rating now, rounded down. */
      readonly remainingMinutes: number | null;
      /** The calendar life that ends first; null where none is limited. */
      readonly calendar: CalendarLimit | null;
      /** The last day it is good through. */
      readonly goodThrough: CalendarDate | null;
      /** Days until then: 0 on the last day, below 0 past it. */
      readonly remainingDays: number | null;
      /** The worst case stands for something unknown, under a recorded acceptance. */
      readonly flagged: boolean;
    };
