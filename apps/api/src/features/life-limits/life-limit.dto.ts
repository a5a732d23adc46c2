import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsIn,
  IsInt,
  IsOptional,
  IsUUID,
  Matches,
  Max,
  MaxLength,
  Min,
  ValidateNested,
} from 'class-validator';
import { IsDayText, IsText } from '../../platform/http/field-forms.js';

/** One row of a document's revision: a life limit of a part number in a model at a rating. */
export class LimitRowDto {
  @MaxLength(60)
  @IsText()
  partNumber!: string;

  @IsUUID()
  engineModelId!: string;

  /** The rating it holds at; at any, when null or left out. */
  @IsOptional()
  @MaxLength(20)
  @IsText()
  ratingCode?: string | null;

  @IsIn(['limited', 'not-limited', 'not-authorised'])
  authorisation!: 'limited' | 'not-limited' | 'not-authorised';

  @IsOptional()
  @IsInt()
  @Min(1)
  @Max(10_000_000)
  cycles?: number | null;

  @IsOptional()
  @IsInt()
  @Min(1)
  @Max(1_000_000_000)
  minutes?: number | null;

  /** A calendar life: so many days or months, flown or stored. */
  @IsOptional()
  @IsInt()
  @Min(1)
  @Max(36_500)
  calendarSpan?: number | null;

  @IsOptional()
  @IsIn(['days', 'months'])
  calendarUnit?: 'days' | 'months' | null;

  /** From when the calendar life counts. */
  @IsOptional()
  @IsIn(['new', 'first-installation', 'overhaul'])
  calendarFrom?: 'new' | 'first-installation' | 'overhaul' | null;

  /** How its months are counted: to the same day, unless told, or to the month's end. */
  @IsOptional()
  @IsIn(['same-day', 'month-end'])
  monthRule?: 'same-day' | 'month-end' | null;
}

/** A new life limit, one row of a document's revision. */
export class NewLifeLimitDto extends LimitRowDto {
  /** A manual states limits (unless told, it is one); a directive lowers them. */
  @IsOptional()
  @IsIn(['manual', 'directive'])
  basis?: 'manual' | 'directive';

  @MaxLength(120)
  @IsText()
  document!: string;

  @MaxLength(40)
  @IsText()
  revision!: string;

  /** From this day on the revision is effective. */
  @IsDayText()
  effectiveOn!: string;
}

/** A new revision of a manual, or a directive, with its rows. */
export class LimitRevisionDto {
  /** A manual states limits; a directive lowers them. */
  @IsIn(['manual', 'directive'])
  basis!: 'manual' | 'directive';

  /** The manual, or the directive with its number. */
  @MaxLength(120)
  @IsText()
  document!: string;

  @MaxLength(40)
  @IsText()
  revision!: string;

  /** From this day on the revision is effective. */
  @IsDayText()
  effectiveOn!: string;

  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(500)
  @ValidateNested({ each: true })
  @Type(() => LimitRowDto)
  rows!: LimitRowDto[];
}

/** Accepts a revision as it was shown. */
export class AcceptLimitsDto extends LimitRevisionDto {
  /** The digest of the preview that was seen. */
  @Matches(/^[0-9a-f]{64}$/, {
    message: 'The digest is not one of a preview.',
    context: { fix: 'Look at the preview again and send its digest.' },
  })
  digest!: string;
}

/** Asks for limits of one part number or one model. */
export class LifeLimitsQueryDto {
  @IsOptional()
  @MaxLength(60)
  @IsText()
  partNumber?: string;

  @IsOptional()
  @IsUUID()
  engineModelId?: string;
}

/** Why a fact is voided. */
export class VoidLifeLimitDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}

/** A life limit per part number, engine model and rating, from a dated document revision. */
export class LifeLimitDto {
  id!: string;
  partNumber!: string;
  engineModelId!: string;
  /** Maker and designation of the model. */
  engineModel!: string;
  ratingCode!: string | null;
  authorisation!: 'limited' | 'not-limited' | 'not-authorised';
  cycles!: number | null;
  minutes!: number | null;
  /** A calendar life: so many days or months, flown or stored. */
  calendarSpan!: number | null;
  calendarUnit!: 'days' | 'months' | null;
  calendarFrom!: 'new' | 'first-installation' | 'overhaul' | null;
  monthRule!: 'same-day' | 'month-end' | null;
  /** A manual states limits; a directive lowers them. */
  basis!: 'manual' | 'directive';
  document!: string;
  revision!: string;
  effectiveOn!: string;
  /**
   * Whether it governs now, will from its day on, or does not: for a newer revision, or another's lower limit. Null of
   * one that is voided.
   */
  standing!: 'in-force' | 'later' | 'not-governing' | null;
  voided!: boolean;
  voidReason!: string | null;
}
