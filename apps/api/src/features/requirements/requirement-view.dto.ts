import { CyclesDto } from '../../platform/http/counters.dto.js';

/** What is granted; null where a dimension does not count. */
export class GrantedDto {
  minutes!: number | null;
  cycles!: number | null;
  days!: number | null;
  months!: number | null;
}

/** A recurring or one-time duty, one revision of it. */
export class RequirementDto {
  id!: string;
  code!: string;
  title!: string;
  kind!: 'inspection' | 'overhaul' | 'directive' | 'bulletin' | 'discard' | 'check';
  document!: string;
  revision!: string;
  anchor!: 'airframe' | 'position' | 'engine' | 'part';
  airframeTypeId!: string | null;
  /** Maker and designation of the type of airframe. */
  airframeType!: string | null;
  positionNumber!: number | null;
  engineModelId!: string | null;
  /** Maker and designation of the model. */
  engineModel!: string | null;
  partNumber!: string | null;
  /** Null: the first time is due after the repeat. */
  threshold!: GrantedDto | null;
  /** Null: it is met once. */
  repeat!: GrantedDto | null;
  combine!: 'first' | 'last';
  monthRule!: 'same-day' | 'month-end';
  countedFrom!: 'new' | 'overhaul' | 'installation' | 'date';
  fromOn!: string | null;
  effectiveOn!: string;
  /** Whether it is the newest revision of its code, and not voided. */
  inForce!: boolean;
  /** How many airframes, positions or components it is due on, or not verified. */
  open!: number;
  voided!: boolean;
  voidReason!: string | null;
}

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
}

/** The last accomplishment that counts. */
export class LastDoneDto {
  id!: string;
  on!: string;
  evidence!: string;
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
  /** Why it is not verified or not applicable. */
  reason!: string | null;
  /** Whether the threshold counts still, or a repeat; null where nothing is due. */
  counting!: 'threshold' | 'repeat' | null;
  dues!: DimensionStatusDto[];
  /** The dimension that governs; null where none can be told. */
  governing!: 'minutes' | 'cycles' | 'days' | 'months' | null;
  /** The day on which it is reached at the average use of the last 90 days; a forecast, never a limit. */
  projectedOn!: string | null;
  lastDone!: LastDoneDto | null;
}

/** The record that a requirement was met. */
export class AccomplishmentDto {
  id!: string;
  requirementId!: string;
  code!: string;
  title!: string;
  airframeId!: string | null;
  positionId!: string | null;
  componentId!: string | null;
  /** What it was met on, in words. */
  subject!: string;
  at!: string;
  /** The calendar day it counts from. */
  on!: string;
  /** Minutes since new as the papers say; null: what the records here say at that instant. */
  minutes!: number | null;
  cycles!: CyclesDto | null;
  evidence!: string;
  /** The package whose release met it; null when it was recorded by hand. */
  packageId!: string | null;
  packageNumber!: string | null;
  voided!: boolean;
  voidReason!: string | null;
}

/** A requirement, what it is held against, and when it was met. */
export class RequirementViewDto {
  requirement!: RequirementDto;
  /** The most pressing first; none unless it is in force. */
  statuses!: RequirementStatusDto[];
  /** Of all revisions of its code, the latest first. */
  accomplishments!: AccomplishmentDto[];
}
