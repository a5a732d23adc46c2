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
import { IsText } from '../../platform/http/field-forms.js';

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

/** A rule that turns counted events into cycles, for the model on an airframe type (null: on any). */
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
