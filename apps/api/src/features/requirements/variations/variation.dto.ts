import { IsInt, IsOptional, IsUUID, Max, MaxLength, Min } from 'class-validator';
import { IsDayText, IsText } from '../../../platform/http/field-forms.js';

const FIX = {
  context: { fix: 'Enter how far past its due it may go, 1 or more; leave it out where nothing is varied.' },
};

/** A permission to go past what is due now, once, and by how much. */
export class NewVariationDto {
  @IsUUID()
  requirementId!: string;

  /** What it is for: exactly one of the three. */
  @IsOptional()
  @IsUUID()
  airframeId?: string | null;

  @IsOptional()
  @IsUUID()
  positionId?: string | null;

  @IsOptional()
  @IsUUID()
  componentId?: string | null;

  /** The last accomplishment that was seen, before what is due; left out, whichever is the last. */
  @IsOptional()
  @IsUUID()
  accomplishmentId?: string | null;

  /** Whole minutes past the due. */
  @IsOptional()
  @IsInt()
  @Min(1, FIX)
  @Max(60_000_000)
  minutes?: number | null;

  @IsOptional()
  @IsInt()
  @Min(1, FIX)
  @Max(10_000_000)
  cycles?: number | null;

  /** Days past the day it is due on, whether that is counted in days or months. */
  @IsOptional()
  @IsInt()
  @Min(1, FIX)
  @Max(3650)
  days?: number | null;

  @MaxLength(120)
  @IsText()
  approvedBy!: string;

  /** The paper by which it is approved. */
  @MaxLength(200)
  @IsText()
  reference!: string;

  /** What could not be foreseen. */
  @MaxLength(500)
  @IsText()
  reason!: string;

  /** The day of the approval. */
  @IsDayText()
  on!: string;
}
