import { IsBoolean, IsOptional, IsUUID, MaxLength } from 'class-validator';
import { IsDayText, IsText } from '../../../platform/http/field-forms.js';

/** Whether a revision of a requirement applies, as a competent person found. */
export class NewAssessmentDto {
  /** The revision that was assessed; a new one needs its own. */
  @IsUUID()
  requirementId!: string;

  /** What it was assessed for: at most one of the five; none is everything it may be for. */
  @IsOptional()
  @IsUUID()
  airframeId?: string | null;

  @IsOptional()
  @IsUUID()
  positionId?: string | null;

  @IsOptional()
  @IsUUID()
  componentId?: string | null;

  @IsOptional()
  @IsUUID()
  airframeTypeId?: string | null;

  @IsOptional()
  @IsUUID()
  engineModelId?: string | null;

  @IsBoolean()
  applicable!: boolean;

  /** Why; asked for where it does not apply. */
  @IsOptional()
  @MaxLength(500)
  @IsText()
  reason?: string | null;

  /** How it is to be complied with, where there is a choice. */
  @IsOptional()
  @MaxLength(200)
  @IsText()
  method?: string | null;

  /** Who assessed it. */
  @MaxLength(120)
  @IsText()
  assessedBy!: string;

  /** The paper on which it is found. */
  @MaxLength(200)
  @IsText()
  reference!: string;

  /** The day of the assessment. */
  @IsDayText()
  on!: string;
}
