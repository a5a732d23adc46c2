import type { DueEvent } from '@strutbook/domain/due/requirement.js';
import type { Status } from '@strutbook/domain/life/status.js';

/** What a requirement is held against: exactly one of the three is given. */
export interface RequirementSubject {
  readonly airframeId: string | null;
  readonly positionId: string | null;
  readonly componentId: string | null;
}

/** A requirement with what it is held against. */
export interface HeldRequirement extends RequirementSubject {
  readonly requirementId: string;
  readonly code: string;
  readonly title: string;
  readonly kind: string;
  readonly document: string;
  readonly revision: string;
  /** 'ZZ-101', 'ZZ-101 position 1', 'Engine E1' or 'Disk D77': what it is held against, in words. */
  readonly subject: string;
}

/** One counter or calendar of a requirement: what is due, what remains, and when that is reached at present use. */
export interface DimensionStatus {
  readonly dimension: 'minutes' | 'cycles' | 'days' | 'months';
  /** What is granted: minutes, cycles, days or months. */
  readonly interval: number;
  /** Counter since new at which it is due: whole minutes or cycles, rounded down; null for days and months. */
  readonly dueAt: number | null;
  /** The last day it is good through, 'YYYY-MM-DD'; null for minutes and cycles. */
  readonly dueOn: string | null;
  /** Whole minutes, cycles or days left; below zero it is past. */
  readonly remaining: number;
  /** Days until nothing is left at the daily use of the last 90 days, rounded down; null when nothing is used. */
  readonly days: number | null;
  /** The same with one decimal, rounded down, such as '2.5'. */
  readonly daysText: string | null;
  readonly status: Status;
  /** Whether it is of an outer bound, which governs as soon as it comes. */
  readonly isBound: boolean;
  /** Whether it is the one that governs. */
  readonly governs: boolean;
  /** From here on it may be met without planned times shifting: whole minutes or cycles; null for days and months. */
  readonly earliestAt: number | null;
  readonly earliestOn: string | null;
  /** The end of what is granted past it, by its window or an approved variation. */
  readonly latestAt: number | null;
  readonly latestOn: string | null;
  /** The farthest that a variation may be approved for; the due itself where none may. */
  readonly variableAt: number | null;
  readonly variableOn: string | null;
}

/** That it is due at an event; until that happens nothing is due by it. */
export interface EventStatus {
  readonly kind: DueEvent;
  /** The day on which it happened and it was not met; null: it did not happen. */
  readonly happenedOn: string | null;
}

/** How it was found whether a requirement applies. */
export interface AssessmentStatus {
  readonly id: string;
  readonly applicable: boolean;
  readonly reason: string | null;
  readonly method: string | null;
  readonly assessedBy: string;
  readonly reference: string;
  readonly on: string;
}

/** The variation approved for what is due now. */
export interface VariationStatus {
  readonly id: string;
  readonly minutes: number | null;
  readonly cycles: number | null;
  readonly days: number | null;
  readonly approvedBy: string;
  readonly reference: string;
  readonly on: string;
}

/** A requirement for one subject at an instant. */
export interface RequirementStatus extends HeldRequirement {
  readonly combine: 'first' | 'last';
  readonly status: Status;
  /** Why it is not verified, not applicable or closed by another, in words; null otherwise. */
  readonly reason: string | null;
  /** The codes of those reasons. */
  readonly reasonCodes: readonly string[];
  /** Whether the threshold counts still or a repeat; null where nothing is due. */
  readonly counting: 'threshold' | 'repeat' | null;
  readonly dues: readonly DimensionStatus[];
  /** The event at which it is due; null where it is at none, or nothing is due. */
  readonly event: EventStatus | null;
  /** Whether its applicability must be assessed. */
  readonly needsAssessment: boolean;
  readonly assessment: AssessmentStatus | null;
  readonly variation: VariationStatus | null;
  /** What closed it: what took its place, or ended it by being accomplished. */
  readonly closedBy: { readonly id: string; readonly code: string } | null;
  /** The dimension that governs; null where none can be told, or its event does. */
  readonly governing: DimensionStatus['dimension'] | null;
  /** The day on which the governing dimension is reached at present use; a forecast, never a limit. */
  readonly projectedOn: string | null;
  /** The last accomplishment that counts. */
  readonly lastDone: {
    readonly id: string;
    readonly on: string;
    readonly evidence: string;
    readonly method: string | null;
    /** Counters since new as its papers say; null: as flown here. */
    readonly minutes: number | null;
    readonly cycles: { readonly units: number; readonly denominator: number } | null;
  } | null;
}

/** A requirement that a package's work is to meet, with what it is held against. */
export interface PackageRequirementRow extends HeldRequirement {
  readonly id: string;
}
