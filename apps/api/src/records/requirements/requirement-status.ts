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
}

/** A requirement for one subject at an instant. */
export interface RequirementStatus extends HeldRequirement {
  readonly combine: 'first' | 'last';
  readonly status: Status;
  /** Why it is not verified or not applicable, in words; null otherwise. */
  readonly reason: string | null;
  /** Whether the threshold counts still or a repeat; null where nothing is due. */
  readonly counting: 'threshold' | 'repeat' | null;
  readonly dues: readonly DimensionStatus[];
  /** The dimension that governs; null where none can be told. */
  readonly governing: DimensionStatus['dimension'] | null;
  /** The day on which the governing dimension is reached at present use; a forecast, never a limit. */
  readonly projectedOn: string | null;
  /** The last accomplishment that counts. */
  readonly lastDone: { readonly id: string; readonly on: string; readonly evidence: string } | null;
}

/** A requirement that a package's work is to meet, with what it is held against. */
export interface PackageRequirementRow extends HeldRequirement {
  readonly id: string;
}
