import { CyclesDto } from '../../platform/http/counters.dto.js';

/** What is granted; null where a dimension does not count. */
export class AmountsDto {
  minutes!: number | null;
  cycles!: number | null;
  days!: number | null;
  months!: number | null;
}

/** When it is due: counters, calendar, an event, and the outer bound of all. */
export class GrantedDto extends AmountsDto {
  /** Due when this happens next; null: at no event. */
  event!: 'shop-visit' | 'installation' | 'removal' | 'main-base-return' | null;
  /** Governs as soon as it comes, from the same point. */
  notToExceed!: AmountsDto | null;
}

/** What is granted for intervals up to a length: of what is given the lesser applies. */
export class GrantedTierDto {
  upTo!: number | null;
  percent!: number | null;
  atMost!: number | null;
  atMostDays!: number | null;
}

/** What is granted in each dimension; no tiers where nothing is. */
export class GrantedTiersDto {
  minutes!: GrantedTierDto[];
  cycles!: GrantedTierDto[];
  days!: GrantedTierDto[];
  months!: GrantedTierDto[];
}

/** How far before and after its due it may be met without planned times shifting. */
export class GrantedWindowDto {
  early!: GrantedTiersDto;
  late!: GrantedTiersDto;
}

/** From where the next is counted. */
export class RebasedDto {
  early!: 'from-done' | 'from-due';
  within!: 'from-done' | 'from-due';
  varied!: 'from-done' | 'from-due';
  beyond!: 'from-done' | 'from-due';
}

/** Another requirement. */
export class LinkedRequirementDto {
  id!: string;
  code!: string;
}

/** A recurring or one-time duty, one revision of it. */
export class RequirementDto {
  id!: string;
  code!: string;
  title!: string;
  kind!:
    | 'inspection'
    | 'overhaul'
    | 'directive'
    | 'bulletin'
    | 'discard'
    | 'check'
    | 'airworthiness-limitation';
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
  countedFrom!:
    | 'new'
    | 'overhaul'
    | 'shop-visit'
    | 'installation'
    | 'accomplishment'
    | 'effective'
    | 'date';
  fromOn!: string | null;
  effectiveOn!: string;
  /** Null: planned times shift with every accomplishment. */
  window!: GrantedWindowDto | null;
  /** How far one due may be varied by an approval; null: not at all. */
  variation!: GrantedTiersDto | null;
  /** Where its own text grants the window or variation. */
  grantedBy!: string | null;
  rebase!: RebasedDto;
  serialFrom!: string | null;
  serialTo!: string | null;
  /** Only for those on which all of these codes are accomplished. */
  onlyWith!: string[];
  /** Not for those on which one of these codes is accomplished. */
  unlessWith!: string[];
  /** The requirement of another code whose place it takes. */
  supersedes!: LinkedRequirementDto | null;
  /** The requirement in force that takes the place of this code. */
  supersededBy!: LinkedRequirementDto | null;
  /** The requirement of another code that it ends, where it is accomplished. */
  terminates!: LinkedRequirementDto | null;
  credit!: 'none' | 'revisions' | 'superseded';
  mandatory!: boolean;
  /** Whether its applicability must be assessed: of a directive, and of a mandatory bulletin. */
  needsAssessment!: boolean;
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
  /** How it was complied with; null where nothing is said. */
  method!: string | null;
  /** The accomplishment that was voided for this one. */
  correctsId!: string | null;
  /** The package whose release met it; null when it was recorded by hand. */
  packageId!: string | null;
  packageNumber!: string | null;
  voided!: boolean;
  voidReason!: string | null;
}

/** Whether a revision of a requirement applies, as was found. */
export class AssessmentDto {
  id!: string;
  requirementId!: string;
  /** The revision that was assessed. */
  revision!: string;
  airframeId!: string | null;
  positionId!: string | null;
  componentId!: string | null;
  airframeTypeId!: string | null;
  engineModelId!: string | null;
  /** What it was assessed for, in words. */
  subject!: string;
  applicable!: boolean;
  /** Why it does not apply, or what it applies by. */
  reason!: string | null;
  /** How it is to be complied with. */
  method!: string | null;
  assessedBy!: string;
  reference!: string;
  on!: string;
  voided!: boolean;
  voidReason!: string | null;
}

/** A permission to go past one due of a requirement, once. */
export class VariationDto {
  id!: string;
  requirementId!: string;
  airframeId!: string | null;
  positionId!: string | null;
  componentId!: string | null;
  /** What it is for, in words. */
  subject!: string;
  /** The due it is for is the one after this accomplishment; null: the first. */
  accomplishmentId!: string | null;
  minutes!: number | null;
  cycles!: number | null;
  /** Days past the day it was due on. */
  days!: number | null;
  approvedBy!: string;
  reference!: string;
  reason!: string;
  on!: string;
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
  /** Of all revisions of its code, the latest first. */
  assessments!: AssessmentDto[];
  /** Of all revisions of its code, the latest first. */
  variations!: VariationDto[];
  /** All revisions of its code, the newest first. */
  revisions!: RequirementDto[];
}
