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
import { IsInstantText, IsText } from '../../platform/http/field-forms.js';

/** What had been used at one rating. */
export class NewOpeningRowDto {
  /** The rating it was used at; null where that is not known or does not matter. */
  @IsOptional()
  @MaxLength(20)
  @IsText()
  ratingCode?: string | null;

  /** Whole minutes; null when not known, which is not zero. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(1_000_000_000)
  minutes?: number | null;

  /** Cycles (for an airframe: flights), in units of 1 / cycleDenominator; null when not known. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(1_000_000_000_000)
  cycles?: number | null;

  /** What cycles are counted in; 1 unless told. */
  @IsOptional()
  @IsInt()
  @Min(1)
  @Max(1_000_000)
  cycleDenominator?: number;
}

/** A balance brought in from older records, for a component or an airframe. */
export class NewOpeningDto {
  @IsOptional()
  @IsUUID()
  componentId?: string;

  @IsOptional()
  @IsUUID()
  airframeId?: string;

  /** The instant at which it holds; everything before is in it. */
  @IsInstantText()
  at!: string;

  /** What it is counted from. */
  @IsIn(['new', 'overhaul', 'shop-visit'])
  basis!: 'new' | 'overhaul' | 'shop-visit';

  /** The model whose ratings are named, for a part that is in no engine. */
  @IsOptional()
  @IsUUID()
  engineModelId?: string;

  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(50)
  @ValidateNested({ each: true })
  @Type(() => NewOpeningRowDto)
  rows!: NewOpeningRowDto[];

  /** The records it comes from. */
  @MaxLength(200)
  @IsText()
  source!: string;
}

/** Why a fact is voided. */
export class VoidFactDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}

/** One rating's part of an opening balance. */
export class OpeningRowDto {
  id!: string;
  ratingCode!: string | null;
  minutes!: number | null;
  cycles!: number | null;
  cycleDenominator!: number;
}

/** A balance brought in from older records. */
export class OpeningDto {
  id!: string;
  componentId!: string | null;
  airframeId!: string | null;
  at!: string;
  basis!: 'new' | 'overhaul' | 'shop-visit';
  rows!: OpeningRowDto[];
  source!: string;
  voided!: boolean;
  voidReason!: string | null;
}
