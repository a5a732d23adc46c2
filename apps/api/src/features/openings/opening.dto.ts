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
import { BoundaryDto } from '../../platform/http/boundary.dto.js';
import { IsInstantText, IsText } from '../../platform/http/field-forms.js';
import { ConsequencesDto } from '../../records/consequences/consequences.dto.js';

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

  /** The instant at which it holds; everything before is in it. Or `boundary`. */
  @IsOptional()
  @IsInstantText()
  at?: string;

  /** When it holds, by a log page or a day. */
  @IsOptional()
  @ValidateNested()
  @Type(() => BoundaryDto)
  boundary?: BoundaryDto;

  /** What it is counted from. */
  @IsIn(['new', 'overhaul', 'shop-visit', 'repair'])
  basis!: 'new' | 'overhaul' | 'shop-visit' | 'repair';

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

  /**
   * How well the records behind it show it: 'shown', an unbroken trace; 'stated', a statement alone; 'not-shown', a gap,
   * by which lives that rest on it are not verified. 'shown' unless told.
   */
  @IsOptional()
  @IsIn(['shown', 'stated', 'not-shown'])
  trace?: 'shown' | 'stated' | 'not-shown';

  /** Who states it, or what is missing; asked for unless its trace is shown. */
  @IsOptional()
  @MaxLength(500)
  @IsText({ lines: true })
  traceNote?: string | null;
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
  precision!: 'minute' | 'page' | 'day';
  /** What was typed where it is no instant. */
  text!: string | null;
  basis!: 'new' | 'overhaul' | 'shop-visit' | 'repair';
  rows!: OpeningRowDto[];
  source!: string;
  trace!: 'shown' | 'stated' | 'not-shown';
  traceNote!: string | null;
  voided!: boolean;
  voidReason!: string | null;
}

/** A balance, and what recording or voiding it did. */
export class RecordedOpeningDto extends OpeningDto {
  consequences!: ConsequencesDto;
}
