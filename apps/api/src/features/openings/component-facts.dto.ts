import { IsIn, IsInt, IsOptional, IsUUID, Max, MaxLength, Min } from 'class-validator';
import { IsInstantText, IsText } from '../../platform/http/field-forms.js';
import { OpeningDto } from './opening.dto.js';

/** A span the records of a component do not cover. */
export class NewTraceGapDto {
  @IsUUID()
  componentId!: string;

  @IsInstantText()
  from!: string;

  @IsInstantText()
  to!: string;

  @MaxLength(500)
  @IsText({ lines: true })
  note!: string;
}

/** An acceptance that the worst case stands for what is unknown. */
export class NewGapAcceptanceDto {
  @IsUUID()
  componentId!: string;

  /** The gap it is for; for all of them and for unknown ratings, when left out. */
  @IsOptional()
  @IsUUID()
  traceGapId?: string | null;

  @MaxLength(120)
  @IsText()
  acceptedBy!: string;

  @MaxLength(200)
  @IsText()
  reference!: string;

  /** The most cycles that may have been used. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(10_000_000)
  cycles?: number | null;

  /** The most minutes that may have been used. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(1_000_000_000)
  minutes?: number | null;
}

/** An overhaul or shop visit, from which a counter begins again. */
export class NewResetDto {
  @IsUUID()
  componentId!: string;

  @IsIn(['overhaul', 'shop-visit'])
  kind!: 'overhaul' | 'shop-visit';

  @IsInstantText()
  at!: string;

  /** The document that shows it. */
  @MaxLength(200)
  @IsText()
  evidence!: string;
}

/** From when an engine runs at a rating. */
export class NewRatingChangeDto {
  @IsUUID()
  componentId!: string;

  @IsInstantText()
  at!: string;

  @MaxLength(20)
  @IsText()
  ratingCode!: string;

  /** The document or plate that shows it. */
  @MaxLength(200)
  @IsText()
  source!: string;
}

/** A recorded gap. */
export class TraceGapDto {
  id!: string;
  componentId!: string;
  from!: string;
  to!: string;
  note!: string;
  voided!: boolean;
  voidReason!: string | null;
}

/** A recorded acceptance. */
export class GapAcceptanceDto {
  id!: string;
  componentId!: string;
  traceGapId!: string | null;
  acceptedBy!: string;
  reference!: string;
  cycles!: number | null;
  minutes!: number | null;
  voided!: boolean;
  voidReason!: string | null;
}

/** A recorded overhaul or shop visit. */
export class ResetDto {
  id!: string;
  componentId!: string;
  kind!: 'overhaul' | 'shop-visit';
  at!: string;
  evidence!: string;
  voided!: boolean;
  voidReason!: string | null;
}

/** A recorded change of rating. */
export class RatingChangeDto {
  id!: string;
  componentId!: string;
  at!: string;
  ratingCode!: string;
  source!: string;
  voided!: boolean;
  voidReason!: string | null;
}

/** What a component came with and what happened to it beside its places; voided facts are marked. */
export class ComponentFactsDto {
  openings!: OpeningDto[];
  traceGaps!: TraceGapDto[];
  gapAcceptances!: GapAcceptanceDto[];
  resets!: ResetDto[];
  ratingChanges!: RatingChangeDto[];
}
