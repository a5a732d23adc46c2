import { CyclesDto } from '../../platform/http/counters.dto.js';

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
