import { IsInt, IsOptional, IsUUID, Max, MaxLength, Min } from 'class-validator';
import { IsDayText, IsInstantText, IsText } from '../../../platform/http/field-forms.js';

/** When something was met, at which counters, and what proves it. */
export class MetDto {
  /** When it was met. Old papers name a day alone: give `on` then. */
  @IsOptional()
  @IsInstantText()
  at?: string | null;

  /** The day it was met, where the minute is not known; counters not given are read at its beginning. */
  @IsOptional()
  @IsDayText()
  on?: string | null;

  /** Minutes since new as the papers say; left out, what the records here say at that instant. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(1_000_000_000)
  minutes?: number | null;

  /** Cycles since new as the papers say, in units of 1 / cycleDenominator. */
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

  /** The papers that prove it. */
  @MaxLength(300)
  @IsText()
  evidence!: string;

  /** How it was complied with, where there is a choice. */
  @IsOptional()
  @MaxLength(200)
  @IsText()
  method?: string | null;
}

/** An accomplishment recorded by hand, with what proves it. */
export class NewAccomplishmentDto extends MetDto {
  @IsUUID()
  requirementId!: string;

  /** What it was met on: exactly one of the three. */
  @IsOptional()
  @IsUUID()
  airframeId?: string | null;

  @IsOptional()
  @IsUUID()
  positionId?: string | null;

  @IsOptional()
  @IsUUID()
  componentId?: string | null;
}

/** What an accomplishment should have said, and why it is corrected. */
export class CorrectedAccomplishmentDto extends MetDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}
