import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsIn,
  IsInt,
  IsOptional,
  IsUUID,
  Max,
  MaxLength,
  Min,
  ValidateNested,
} from 'class-validator';
import { IsDayText, IsText } from '../../platform/http/field-forms.js';

/** A rating of a new model. */
export class NewRatingDto {
  @MaxLength(20)
  @IsText()
  code!: string;

  @IsOptional()
  @MaxLength(120)
  @IsText()
  description?: string | null;
}

/** Whole weights over a denominator that turn counted events into cycles. */
export class NewCycleRuleDto {
  /** The airframe type it counts for; for any, when left out. */
  @IsOptional()
  @IsUUID()
  airframeTypeId?: string | null;

  @IsInt()
  @Min(0)
  @Max(1_000_000)
  perFlight!: number;

  @IsInt()
  @Min(0)
  @Max(1_000_000)
  perLanding!: number;

  @IsInt()
  @Min(0)
  @Max(1_000_000)
  perTouchAndGo!: number;

  @IsInt()
  @Min(0)
  @Max(1_000_000)
  perStart!: number;

  @IsInt()
  @Min(0)
  @Max(1_000_000)
  perAbortedTakeOff!: number;

  @IsInt()
  @Min(1)
  @Max(1_000_000)
  denominator!: number;

  /** The document the rule comes from. */
  @MaxLength(120)
  @IsText()
  source!: string;

  @MaxLength(40)
  @IsText()
  revision!: string;
}

/** A revision of a rule, or the first one for a type of airframe, from a day on. */
export class NewRuleRevisionDto extends NewCycleRuleDto {
  /** From this day on, 00:00 UTC, what is flown and run counts by it. */
  @IsDayText()
  effectiveOn!: string;
}

/** Why a revision is voided; it stays to be seen. */
export class VoidRuleDto {
  @MaxLength(200)
  @IsText()
  reason!: string;
}

/** A new model of engine or auxiliary power unit. */
export class NewEngineModelDto {
  @IsIn(['engine', 'apu'])
  kind!: 'engine' | 'apu';

  @MaxLength(80)
  @IsText()
  maker!: string;

  @MaxLength(40)
  @IsText()
  designation!: string;

  /** How lives at several ratings are joined. */
  @IsIn(['pro-rata', 'lowest-limit'])
  lifeMethod!: 'pro-rata' | 'lowest-limit';

  /** The document that says so. */
  @MaxLength(120)
  @IsText()
  lifeSource!: string;

  @IsArray()
  @ArrayMaxSize(50)
  @ValidateNested({ each: true })
  @Type(() => NewRatingDto)
  ratings!: NewRatingDto[];

  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(50)
  @ValidateNested({ each: true })
  @Type(() => NewCycleRuleDto)
  cycleRules!: NewCycleRuleDto[];
}

/** A thrust rating. */
export class RatingDto {
  id!: string;
  code!: string;
  description!: string | null;
}

/**
 * A rule that turns counted events into cycles, for the model on an airframe type (null: on any without its own, and
 * in a test cell).
 */
export class CycleRuleDto {
  id!: string;
  airframeTypeId!: string | null;
  perFlight!: number;
  perLanding!: number;
  perTouchAndGo!: number;
  perStart!: number;
  perAbortedTakeOff!: number;
  denominator!: number;
  source!: string;
  revision!: string;
  /** From this day on, 00:00 UTC; null: always. */
  effectiveOn!: string | null;
}

/** A revision of a rule in its history. */
export class RuleRevisionDto extends CycleRuleDto {
  /** Maker and designation of the type of airframe; null for any. */
  airframeType!: string | null;
  /** Whether it is the one that counts today. */
  inForce!: boolean;
  voided!: boolean;
  voidReason!: string | null;
}

/** All revisions of a model's rules, the newest first. */
export class RuleRevisionsDto {
  engineModelId!: string;
  rows!: RuleRevisionDto[];
}

/** A model of engine or auxiliary power unit and how the lives of its parts are counted. */
export class EngineModelDto {
  id!: string;
  kind!: 'engine' | 'apu';
  maker!: string;
  designation!: string;
  lifeMethod!: 'pro-rata' | 'lowest-limit';
  lifeSource!: string;
  version!: number;
  ratings!: RatingDto[];
  cycleRules!: CycleRuleDto[];
}
