import { IsIn, IsInt, IsOptional, IsUUID, Max, MaxLength, Min } from 'class-validator';
import { IsDayText, IsText } from '../../platform/http/field-forms.js';

/** A new life limit, one row of a document's revision. */
export class NewLifeLimitDto {
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
  document!: string;
  revision!: string;
  effectiveOn!: string;
  voided!: boolean;
  voidReason!: string | null;
}
