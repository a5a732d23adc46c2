import { Transform, Type } from 'class-transformer';
import { IsBoolean, IsIn, IsInt, IsOptional, IsUUID, Max, MaxLength, Min } from 'class-validator';

export const SPARE_SORTS = ['serial', 'cycles', 'hours', 'since', 'preservation'] as const;

/** Which spares are asked for, and in which order. */
export class SparesQueryDto {
  @IsOptional()
  @IsIn(['engine', 'module', 'part', 'pod', 'apu'])
  kind?: 'engine' | 'module' | 'part' | 'pod' | 'apu';

  /** A part number, whole. */
  @IsOptional()
  @MaxLength(60)
  partNumber?: string;

  @IsOptional()
  @IsUUID()
  engineModelId?: string;

  @IsOptional()
  @IsUUID()
  locationId?: string;

  /** An owner or a lessor, whole. */
  @IsOptional()
  @MaxLength(120)
  owner?: string;

  /** Part of a serial number, a part number or a description. */
  @IsOptional()
  @MaxLength(60)
  search?: string;

  /** Fit to install alone, or those that are not alone. */
  @IsOptional()
  @Transform(({ value }: { value: unknown }) => (value === 'true' ? true : value === 'false' ? false : value))
  @IsBoolean()
  fit?: boolean;

  /** A slot: those alone that would fit there by kind, model and part number. */
  @IsOptional()
  @IsUUID()
  slotId?: string;

  @IsOptional()
  @IsIn(SPARE_SORTS)
  sort?: (typeof SPARE_SORTS)[number];

  /** The `next` of the page before. */
  @IsOptional()
  @MaxLength(300)
  after?: string;

  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(100)
  limit?: number;
}

/** A reason why a spare can't be fitted as it is. */
export class SpareReasonDto {
  code!:
    | 'unserviceable'
    | 'quarantine'
    | 'in-shop'
    | 'at-shop'
    | 'in-quarantine-store'
    | 'nowhere'
    | 'over-limit'
    | 'at-limit'
    | 'not-verified'
    | 'not-authorised';
  text!: string;
}

/** What is left in a spare before its tightest part is due. */
export class SpareLeftDto {
  /** Whole cycles; null where nothing in it is limited in cycles. */
  cycles!: number | null;
  cyclesPart!: string | null;
  minutes!: number | null;
  minutesPart!: string | null;
  /** The last day the tightest calendar life is good through. */
  goodThrough!: string | null;
  /** Something in it is told only at the rating of the engine it goes into. */
  ratingOpen!: boolean;
}

/** The requirement that comes next for it or something in it. */
export class SpareRequirementDto {
  requirementId!: string;
  code!: string;
  title!: string;
  dimension!: string;
  /** Minutes or cycles left; null where it falls due by a day, or is not verified. */
  remaining!: number | null;
  dueOn!: string | null;
  verified!: boolean;
}

/** Its newest tag. */
export class SpareTagDto {
  status!: 'serviceable' | 'unserviceable' | 'quarantine';
  tagNumber!: string;
}

/** Until when it is preserved. */
export class SparePreservationDto {
  goodUntil!: string;
  over!: boolean;
}

/** A component that is installed nowhere. */
export class SpareDto {
  componentId!: string;
  kind!: 'engine' | 'module' | 'part' | 'pod' | 'apu';
  partNumber!: string;
  serialNumber!: string;
  description!: string;
  engineModelId!: string | null;
  engineModel!: string | null;
  ratingCode!: string | null;
  owner!: string;
  lessor!: string | null;
  /** The name of its location; null where none is recorded. */
  location!: string | null;
  locationKind!: string | null;
  since!: string | null;
  fit!: boolean;
  reasons!: SpareReasonDto[];
  left!: SpareLeftDto;
  nextRequirement!: SpareRequirementDto | null;
  preservation!: SparePreservationDto | null;
  tag!: SpareTagDto | null;
  /** The visit it was not returned from. */
  openVisitId!: string | null;
}

/** A page of spares. */
export class SparesPageDto {
  rows!: SpareDto[];
  /** How many there are in all, as asked. */
  total!: number;
  next!: string | null;
}
