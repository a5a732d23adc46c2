import { CyclesDto } from '../../platform/http/counters.dto.js';
import { LinkedRequirementDto } from './requirement-view.dto.js';

/** One dimension of a requirement: what is due, what remains, and when that is reached at present use. */
export class DimensionStatusDto {
  dimension!: 'minutes' | 'cycles' | 'days' | 'months';
  /** What is granted: minutes, cycles, days or months. */
  interval!: number;
  /** Counter since new at which it is due, in whole minutes or cycles; null for days and months. */
  dueAt!: number | null;
  /** The last day it is good through; null for minutes and cycles. */
  dueOn!: string | null;
  /** Whole minutes, cycles or days left; below zero it is past. */
  remaining!: number;
  /** Days until nothing is left at the average use of the last 90 days, rounded down; null when nothing is used. */
  days!: number | null;
  /** The same with one decimal, rounded down. */
  daysText!: string | null;
  status!:
    | 'over'
    | 'in-tolerance'
    | 'soon'
    | 'planned'
    | 'later'
    | 'not-verified'
    | 'not-applicable'
    | 'closed';
  /** Whether it is of an outer bound, which governs as soon as it comes. */
  isBound!: boolean;
  /** Whether it is the one that governs. */
  governs!: boolean;
  /** From here on it may be met without planned times shifting: minutes or cycles since new; null for days and months. */
  earliestAt!: number | null;
  earliestOn!: string | null;
  /** The end of what is granted past it, by its window or an approved variation; the due itself where nothing is. */
  latestAt!: number | null;
  latestOn!: string | null;
  /** The farthest that a variation may be approved for; the due itself where none may. */
  variableAt!: number | null;
  variableOn!: string | null;
}

/** That it is due at an event. */
export class EventStatusDto {
  kind!: 'shop-visit' | 'installation' | 'removal' | 'main-base-return';
  /** The day on which it happened and it was not met: it is over. Null: it did not happen yet. */
  happenedOn!: string | null;
}

/** How it was found whether it applies. */
export class AssessmentStatusDto {
  id!: string;
  applicable!: boolean;
  reason!: string | null;
  method!: string | null;
  assessedBy!: string;
  reference!: string;
  on!: string;
}

/** The variation approved for what is due now. */
export class VariationStatusDto {
  id!: string;
  minutes!: number | null;
  cycles!: number | null;
  /** Days past the day it is due on. */
  days!: number | null;
  approvedBy!: string;
  reference!: string;
  on!: string;
}

/** The last accomplishment that counts. */
export class LastDoneDto {
  id!: string;
  on!: string;
  evidence!: string;
  method!: string | null;
  /** Counters since new as its papers say; null: as flown here. */
  minutes!: number | null;
  cycles!: CyclesDto | null;
}

/** A requirement held against one airframe, position or component. */
export class RequirementStatusDto {
  requirementId!: string;
  code!: string;
  title!: string;
  kind!: string;
  document!: string;
  revision!: string;
  combine!: 'first' | 'last';
  airframeId!: string | null;
  positionId!: string | null;
  componentId!: string | null;
  /** What it is held against, in words. */
  subject!: string;
  status!:
    | 'over'
    | 'in-tolerance'
    | 'soon'
    | 'planned'
    | 'later'
    | 'not-verified'
    | 'not-applicable'
    | 'closed';
  /** Why it is not verified, not applicable or closed by another. */
  reason!: string | null;
  /** The codes of those reasons, such as NEVER_ASSESSED, SERIAL_OUTSIDE or SUPERSEDED. */
  reasonCodes!: string[];
  /** Whether the threshold counts still, or a repeat; null where nothing is due. */
  counting!: 'threshold' | 'repeat' | null;
  dues!: DimensionStatusDto[];
  /** The event at which it is due; null where it is at none, or nothing is due. */
  event!: EventStatusDto | null;
  /** Whether its applicability must be assessed. */
  needsAssessment!: boolean;
  /** The assessment that holds here; null: it was never assessed. */
  assessment!: AssessmentStatusDto | null;
  variation!: VariationStatusDto | null;
  /** What closed it: what took its place, or ended it by being accomplished. */
  closedBy!: LinkedRequirementDto | null;
  /** The dimension that governs; null where none can be told, or its event does. */
  governing!: 'minutes' | 'cycles' | 'days' | 'months' | null;
  /** The day on which it is reached at the average use of the last 90 days; a forecast, never a limit. */
  projectedOn!: string | null;
  lastDone!: LastDoneDto | null;
}
