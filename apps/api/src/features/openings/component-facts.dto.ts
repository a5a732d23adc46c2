import { Type } from 'class-transformer';
import { IsIn, IsInt, IsOptional, IsUUID, Max, MaxLength, Min, ValidateNested } from 'class-validator';
import { BoundaryDto } from '../../platform/http/boundary.dto.js';
import { IsInstantText, IsText } from '../../platform/http/field-forms.js';
import { ConsequencesDto } from '../../records/consequences/consequences.dto.js';
import { OpeningDto } from './opening.dto.js';

/** A span the records of a component do not cover. */
export class NewTraceGapDto {
  @IsUUID()
  componentId!: string;

  /** The instant it begins; or `fromBoundary`. */
  @IsOptional()
  @IsInstantText()
  from?: string;

  /** When it begins, by a log page or a day. */
  @IsOptional()
  @ValidateNested()
  @Type(() => BoundaryDto)
  fromBoundary?: BoundaryDto;

  /** The instant it ends; or `toBoundary`. */
  @IsOptional()
  @IsInstantText()
  to?: string;

  @IsOptional()
  @ValidateNested()
  @Type(() => BoundaryDto)
  toBoundary?: BoundaryDto;

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

  /** The opening balance it is for, whose trace is not shown; `cycles` and `minutes` then come on top of it. */
  @IsOptional()
  @IsUUID()
  openingId?: string | null;

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

/** An overhaul, shop visit or repair, from which a counter begins again. */
export class NewResetDto {
  @IsUUID()
  componentId!: string;

  @IsIn(['overhaul', 'shop-visit', 'repair'])
  kind!: 'overhaul' | 'shop-visit' | 'repair';

  /** The instant it was; or `boundary`. */
  @IsOptional()
  @IsInstantText()
  at?: string;

  /** When it was, by a log page or a day. */
  @IsOptional()
  @ValidateNested()
  @Type(() => BoundaryDto)
  boundary?: BoundaryDto;

  /** The document that shows it. */
  @MaxLength(200)
  @IsText()
  evidence!: string;
}

/** From when an engine runs at a rating. */
export class NewRatingChangeDto {
  @IsUUID()
  componentId!: string;

  /** The instant from which it is; or `boundary`. */
  @IsOptional()
  @IsInstantText()
  at?: string;

  /** From when, by a log page or a day. */
  @IsOptional()
  @ValidateNested()
  @Type(() => BoundaryDto)
  boundary?: BoundaryDto;

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
  fromPrecision!: 'minute' | 'page' | 'day';
  /** What was typed where the beginning is no instant: a log page or a date. */
  fromText!: string | null;
  to!: string;
  toPrecision!: 'minute' | 'page' | 'day';
  toText!: string | null;
  note!: string;
  voided!: boolean;
  voidReason!: string | null;
}

/** A recorded acceptance. */
export class GapAcceptanceDto {
  id!: string;
  componentId!: string;
  traceGapId!: string | null;
  openingId!: string | null;
  acceptedBy!: string;
  reference!: string;
  cycles!: number | null;
  minutes!: number | null;
  voided!: boolean;
  voidReason!: string | null;
}

/** A recorded overhaul, shop visit or repair. */
export class ResetDto {
  id!: string;
  componentId!: string;
  kind!: 'overhaul' | 'shop-visit' | 'repair';
  at!: string;
  precision!: 'minute' | 'page' | 'day';
  /** What was typed where it is no instant. */
  text!: string | null;
  evidence!: string;
  voided!: boolean;
  voidReason!: string | null;
}

/** A recorded change of rating. */
export class RatingChangeDto {
  id!: string;
  componentId!: string;
  at!: string;
  precision!: 'minute' | 'page' | 'day';
  /** What was typed where it is no instant. */
  text!: string | null;
  ratingCode!: string;
  source!: string;
  voided!: boolean;
  voidReason!: string | null;
}

/** A gap, and what recording it did. */
export class RecordedTraceGapDto extends TraceGapDto {
  consequences!: ConsequencesDto;
}

/** An acceptance, and what recording it did. */
export class RecordedGapAcceptanceDto extends GapAcceptanceDto {
  consequences!: ConsequencesDto;
}

/** An overhaul, shop visit or repair, and what recording it did. */
export class RecordedResetDto extends ResetDto {
  consequences!: ConsequencesDto;
}

/** A change of rating, and what recording it did. */
export class RecordedRatingChangeDto extends RatingChangeDto {
  consequences!: ConsequencesDto;
}

/** What a component came with and what happened to it beside its places; voided facts are marked. */
export class ComponentFactsDto {
  openings!: OpeningDto[];
  traceGaps!: TraceGapDto[];
  gapAcceptances!: GapAcceptanceDto[];
  resets!: ResetDto[];
  ratingChanges!: RatingChangeDto[];
}
