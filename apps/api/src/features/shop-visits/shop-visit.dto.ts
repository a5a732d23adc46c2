import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
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
import { IsDayText, IsInstantText, IsText } from '../../platform/http/field-forms.js';

export const DISPOSITIONS = [
  'record',
  'tag',
  'temporary-mark',
  'permanent-mark',
  'segregated',
  'mutilated',
  'other',
] as const;

/** A component sent to a shop. */
export class NewShopVisitDto {
  @IsUUID()
  componentId!: string;

  /** The shop, by the name of its location. */
  @MaxLength(80)
  @IsText()
  locationName!: string;

  /** The order it is sent under. */
  @MaxLength(80)
  @IsText()
  orderReference!: string;

  /** What the shop is asked to do. */
  @MaxLength(2000)
  @IsText({ lines: true })
  workscope!: string;

  /** When it went. */
  @IsInstantText()
  sentAt!: string;
}

/** How a removed life-limited part is controlled. */
export class DispositionDto {
  @IsIn(DISPOSITIONS)
  method!: (typeof DISPOSITIONS)[number];

  /** The number of the tag, the place, the mark. */
  @MaxLength(200)
  @IsText()
  text!: string;
}

/** What the shop took out of a place, put into it, or both. */
export class NewShopChangeDto {
  @IsUUID()
  slotId!: string;

  /** The serial that came off; left out when the place was empty. */
  @IsOptional()
  @MaxLength(40)
  @IsText()
  outgoingSerial?: string | null;

  /** Where what came off went, by the name of the location. */
  @IsOptional()
  @MaxLength(80)
  @IsText()
  removedToLocation?: string | null;

  /** What went on; left out when the place stayed empty. */
  @IsOptional()
  @IsUUID()
  incomingId?: string | null;

  /** When; the return, when left out. */
  @IsOptional()
  @IsInstantText()
  at?: string | null;

  @MaxLength(200)
  @IsText()
  reason!: string;

  /** The release certificate of what went on. */
  @IsOptional()
  @MaxLength(120)
  @IsText()
  certificate?: string | null;

  /** How a life-limited part that came off is controlled. */
  @IsOptional()
  @ValidateNested()
  @Type(() => DispositionDto)
  disposition?: DispositionDto | null;
}

/** A counter that begins again. */
export class ShopResetDto {
  @IsUUID()
  componentId!: string;

  @IsIn(['overhaul', 'shop-visit', 'repair'])
  kind!: 'overhaul' | 'shop-visit' | 'repair';

  /** What shows it; the shop's report, when left out. */
  @IsOptional()
  @MaxLength(200)
  @IsText()
  evidence?: string | null;
}

/** A bulletin or directive that was embodied, or another requirement that was met. */
export class ShopAccomplishmentDto {
  @IsUUID()
  requirementId!: string;

  @IsUUID()
  componentId!: string;

  /** What shows it; the shop's report, when left out. */
  @IsOptional()
  @MaxLength(200)
  @IsText()
  evidence?: string | null;
}

/** How it was preserved. */
export class ShopPreservationDto {
  @MaxLength(200)
  @IsText()
  method!: string;

  /** The last day it holds. */
  @IsDayText()
  goodUntil!: string;

  @MaxLength(200)
  @IsText()
  document!: string;
}

/** The tag it came back with. */
export class ShopTagDto {
  @IsIn(['serviceable', 'unserviceable', 'quarantine'])
  status!: 'serviceable' | 'unserviceable' | 'quarantine';

  @MaxLength(80)
  @IsText()
  tagNumber!: string;

  @MaxLength(300)
  @IsText({ lines: true })
  reason!: string;
}

/** A component returned from a shop, with all that was done to it. */
export class NewShopReturnDto {
  @IsInstantText()
  returnedAt!: string;

  /** Where it went, by the name of the location. */
  @MaxLength(80)
  @IsText()
  locationName!: string;

  /** The shop's report. */
  @MaxLength(120)
  @IsText()
  report!: string;

  /** The release certificate it came with. */
  @IsOptional()
  @MaxLength(120)
  @IsText()
  certificate?: string | null;

  @MaxLength(2000)
  @IsText({ lines: true })
  workDone!: string;

  @IsOptional()
  @IsArray()
  @ArrayMaxSize(200)
  @ValidateNested({ each: true })
  @Type(() => NewShopChangeDto)
  changes?: NewShopChangeDto[];

  @IsOptional()
  @IsArray()
  @ArrayMaxSize(100)
  @ValidateNested({ each: true })
  @Type(() => ShopResetDto)
  resets?: ShopResetDto[];

  @IsOptional()
  @IsArray()
  @ArrayMaxSize(200)
  @ValidateNested({ each: true })
  @Type(() => ShopAccomplishmentDto)
  accomplishments?: ShopAccomplishmentDto[];

  /** The rating an engine runs at from then on; left out, it stays. */
  @IsOptional()
  @MaxLength(20)
  @IsText()
  ratingCode?: string | null;

  @IsOptional()
  @ValidateNested()
  @Type(() => ShopPreservationDto)
  preservation?: ShopPreservationDto | null;

  @IsOptional()
  @ValidateNested()
  @Type(() => ShopTagDto)
  tag?: ShopTagDto | null;
}

/** Why a visit or a return is voided. */
export class VoidShopFactDto {
  @MaxLength(200)
  @IsText()
  reason!: string;
}

/** Which visits are asked for. */
export class ShopVisitsQueryDto {
  @IsOptional()
  @IsIn(['in-shop', 'returned'])
  status?: 'in-shop' | 'returned';

  @IsOptional()
  @IsUUID()
  componentId?: string;

  /** The `next` of the page before. */
  @IsOptional()
  @MaxLength(200)
  after?: string;

  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(100)
  limit?: number;
}
