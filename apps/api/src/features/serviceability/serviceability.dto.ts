import { IsIn, IsOptional, IsUUID, MaxLength } from 'class-validator';
import { IsDayText, IsInstantText, IsText } from '../../platform/http/field-forms.js';

/** A tag that says whether a component is serviceable. */
export class NewTagDto {
  @IsUUID()
  componentId!: string;

  @IsIn(['serviceable', 'unserviceable', 'quarantine'])
  status!: 'serviceable' | 'unserviceable' | 'quarantine';

  @MaxLength(80)
  @IsText()
  tagNumber!: string;

  /** Why: the fault, what was found, or what made it serviceable. */
  @MaxLength(300)
  @IsText({ lines: true })
  reason!: string;

  /** The release certificate; a serviceable tag rests on one. */
  @IsOptional()
  @MaxLength(120)
  @IsText()
  certificate?: string | null;

  /** Who issued it; the person who records it, when left out. */
  @IsOptional()
  @MaxLength(120)
  @IsText()
  issuedBy?: string | null;

  @IsInstantText()
  at!: string;
}

/** How a component was preserved. */
export class NewPreservationDto {
  @IsUUID()
  componentId!: string;

  @IsInstantText()
  at!: string;

  @MaxLength(200)
  @IsText()
  method!: string;

  /** The last day it holds, from its document. */
  @IsDayText()
  goodUntil!: string;

  @MaxLength(200)
  @IsText()
  document!: string;
}

/** Why a tag or a preservation is voided. */
export class VoidKeepingDto {
  @MaxLength(200)
  @IsText()
  reason!: string;
}

/** A recorded tag. */
export class TagDto {
  id!: string;
  componentId!: string;
  status!: 'serviceable' | 'unserviceable' | 'quarantine';
  tagNumber!: string;
  reason!: string;
  certificate!: string | null;
  issuedBy!: string;
  at!: string;
  /** Whether it is the one that counts now. */
  counts!: boolean;
  voided!: boolean;
  voidReason!: string | null;
}

/** A recorded preservation. */
export class PreservationDto {
  id!: string;
  componentId!: string;
  at!: string;
  method!: string;
  goodUntil!: string;
  document!: string;
  /** Whether it is the one that counts now. */
  counts!: boolean;
  /** Whether its last day has passed. */
  over!: boolean;
  voided!: boolean;
  voidReason!: string | null;
}

/** A visit to a shop that it was not returned from. */
export class OpenVisitDto {
  id!: string;
  shop!: string;
  orderReference!: string;
  sentAt!: string;
}

/** A reason not to fit a component. */
export class UnfitReasonDto {
  code!: 'unserviceable' | 'quarantine' | 'in-shop' | 'in-quarantine-store';
  text!: string;
}

/** Whether a component may be fitted as its tags, its shop and its place say, its lives apart. */
export class ServiceabilityDto {
  /** Nothing among these is held against fitting it. */
  fit!: boolean;
  reasons!: UnfitReasonDto[];
  openVisit!: OpenVisitDto | null;
  tags!: TagDto[];
  preservations!: PreservationDto[];
}
