import { Transform, Type } from 'class-transformer';
import {
  ArrayMaxSize,
  IsArray,
  IsIn,
  IsInt,
  IsOptional,
  IsString,
  IsUUID,
  Max,
  MaxLength,
  Min,
} from 'class-validator';
import { IsText } from '../../platform/http/field-forms.js';
import { SORTS } from './due-list.sql.js';
import { BASES } from './sql/use.sql.js';

const STATUSES = ['over', 'in-tolerance', 'soon', 'planned', 'later', 'not-verified'] as const;
const KINDS = [
  'life-limit',
  'counters',
  'inspection',
  'overhaul',
  'directive',
  'bulletin',
  'discard',
  'check',
  'airworthiness-limitation',
] as const;

/** 'a,b' and repeated values alike. */
const Several = (): PropertyDecorator =>
  Transform(({ value }: { value: unknown }) =>
    [value].flat().flatMap((each) => (typeof each === 'string' ? each.split(',') : [each])),
  );

/** What the due list is of. */
export class DueFilterDto {
  /** Of one airframe, with all that hangs on it. */
  @IsOptional()
  @IsUUID()
  airframeId?: string;

  /** Of one position, with all that hangs there. */
  @IsOptional()
  @IsUUID()
  positionId?: string;

  /** Of one engine, module or part, with all beneath it. */
  @IsOptional()
  @IsUUID()
  componentId?: string;

  /** Of these statuses alone. */
  @IsOptional()
  @Several()
  @IsArray()
  @ArrayMaxSize(6)
  @IsIn(STATUSES, { each: true })
  status?: ('over' | 'in-tolerance' | 'soon' | 'planned' | 'later' | 'not-verified')[];

  /** Of these kinds alone: life limits, unknown counters, or kinds of requirements. */
  @IsOptional()
  @Several()
  @IsArray()
  @ArrayMaxSize(9)
  @IsIn(KINDS, { each: true })
  kind?: (
    | 'life-limit'
    | 'counters'
    | 'inspection'
    | 'overhaul'
    | 'directive'
    | 'bulletin'
    | 'discard'
    | 'check'
    | 'airworthiness-limitation'
  )[];

  /** Part numbers that contain this. */
  @IsOptional()
  @MaxLength(100)
  @IsText()
  partNumber?: string;

  /** What has no more hours left than these; with cycles or days, any of them is enough. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(0)
  @Max(1_000_000)
  withinHours?: number;

  /** What has no more cycles left than these. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(0)
  @Max(10_000_000)
  withinCycles?: number;

  /** What is due, or projected by the basis, in no more days than these. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(0)
  @Max(100_000)
  withinDays?: number;

  /** Serial and part numbers, descriptions, codes, titles, registrations and documents that contain this. */
  @IsOptional()
  @MaxLength(100)
  @IsText()
  search?: string;

  /** By what dates are projected: the average of the last days, the planned rate, or the flights planned. */
  @IsOptional()
  @IsIn(BASES)
  basis?: 'average' | 'rate' | 'flights';

  /** How many days an average is of; 90 unless told. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(730)
  days?: number;
}

/** The whole due list in an order. */
export class DueExportQueryDto extends DueFilterDto {
  /** By urgency unless told. */
  @IsOptional()
  @IsIn(SORTS)
  sort?: 'urgency' | 'projected' | 'subject' | 'code' | 'remaining';

  /** The order turned round. */
  @IsOptional()
  @IsIn(['asc', 'desc'])
  direction?: 'asc' | 'desc';
}

/** Which part of the due list. */
export class DueQueryDto extends DueExportQueryDto {
  /** The 'next' of the page before. */
  @IsOptional()
  @IsString()
  @MaxLength(2000)
  after?: string;

  /** How many rows; 50 unless told. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(200)
  limit?: number;
}
