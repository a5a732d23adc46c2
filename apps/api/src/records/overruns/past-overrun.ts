import type { OverrunPart } from '@strutbook/domain/life/overruns.js';
import type { RequirementSubject } from '../requirements/requirement-status.js';

/** The document a limit stands in. */
export interface LimitBehind {
  readonly kind: 'life-limit' | 'requirement';
  /** The life limit or the requirement; null where a limit has no row. */
  readonly id: string | null;
  readonly document: string;
  readonly revision: string;
  /** Code and title of a requirement; null for a life limit. */
  readonly requirement: string | null;
  /**
   * The limit in cycles or minutes, or the counter since new up to which the duty was granted, its window and an approved
   * variation included; null for a day.
   */
  readonly amount: number | null;
  /** The last day it was good through; null for counters. */
  readonly dueOn: string | null;
}

/** An overrun as it is computed, before its flights are known. */
export interface FoundOverrun extends RequirementSubject {
  readonly limit: LimitBehind;
  readonly dimension: 'cycles' | 'minutes' | 'days';
  readonly parts: readonly OverrunPart[];
  /** Whole minutes, cycles or days beyond it at the worst, rounded up; for days it is counted from the flights. */
  readonly by: number | null;
  readonly isOpen: boolean;
  /** Of several with one name all must be passed: only the one that was passed last is an overrun. */
  readonly lastOf?: string;
}

/** A flight at an end of an overrun. */
export interface FlightAtEnd {
  readonly id: string;
  readonly airframeId: string;
  readonly registration: string;
  readonly logPage: string;
  readonly takeOffAt: Date;
  readonly landingAt: Date;
}

/** A span over which something was flown beyond a limit or a duty that stood then. */
export interface PastOverrun extends RequirementSubject {
  readonly limit: LimitBehind;
  readonly dimension: 'cycles' | 'minutes' | 'days';
  readonly by: number;
  readonly isOpen: boolean;
  readonly first: FlightAtEnd;
  readonly last: FlightAtEnd;
  readonly flights: number;
}
