import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayUnique,
  IsArray,
  IsBoolean,
  IsIn,
  IsInt,
  IsOptional,
  IsUUID,
  Max,
  MaxLength,
  Min,
  ValidateNested,
} from 'class-validator';
import { IsDayText, IsText } from '../../platform/http/field-forms.js';
import { GrantsDto, RebaseDto, WindowDto } from './rules/granted.dto.js';

/** What is granted, in each dimension that is named; leave the others out. */
export class IntervalDto {
  /** Whole minutes in service. */
  @IsOptional()
  @IsInt()
  @Min(1, {
    context: { fix: 'Enter how many minutes are granted, 1 or more; leave it out where hours do not count.' },
  })
  @Max(60_000_000)
  minutes?: number | null;

  @IsOptional()
  @IsInt()
  @Min(1, {
    context: { fix: 'Enter how many cycles are granted, 1 or more; leave it out where cycles do not count.' },
  })
  @Max(10_000_000)
  cycles?: number | null;

  @IsOptional()
  @IsInt()
  @Min(1, {
    context: { fix: 'Enter how many days are granted, 1 or more; leave it out where days do not count.' },
  })
  @Max(36_500)
  days?: number | null;

  /** Calendar months. */
  @IsOptional()
  @IsInt()
  @Min(1, {
    context: { fix: 'Enter how many months are granted, 1 or more; leave it out where months do not count.' },
  })
  @Max(1200, { context: { fix: 'Enter 1,200 months (a hundred years) or less.' } })
  months?: number | null;
}

/** When it is due: counters, calendar, an event, and the outer bound of all. */
export class PhaseDto extends IntervalDto {
  /** Due when this happens next; until then nothing is due by it. */
  @IsOptional()
  @IsIn(['shop-visit', 'installation', 'removal', 'main-base-return'])
  event?: 'shop-visit' | 'installation' | 'removal' | 'main-base-return' | null;

  /** Not to be exceeded, from the same point: it governs as soon as it comes, whatever the rest combines. */
  @IsOptional()
  @ValidateNested()
  @Type(() => IntervalDto)
  notToExceed?: IntervalDto | null;
}

/** A new requirement, one revision of a document's duty. */
export class NewRequirementDto {
  @MaxLength(60)
  @IsText()
  code!: string;

  @MaxLength(200)
  @IsText()
  title!: string;

  @IsIn(['inspection', 'overhaul', 'directive', 'bulletin', 'discard', 'check', 'airworthiness-limitation'])
  kind!:
    | 'inspection'
    | 'overhaul'
    | 'directive'
    | 'bulletin'
    | 'discard'
    | 'check'
    | 'airworthiness-limitation';

  @MaxLength(120)
  @IsText()
  document!: string;

  @MaxLength(40)
  @IsText()
  revision!: string;

  /** What it follows: the airframe, what hangs at a position, an engine, or a part. */
  @IsIn(['airframe', 'position', 'engine', 'part'])
  anchor!: 'airframe' | 'position' | 'engine' | 'part';

  /** Of one type of airframe alone; for an airframe or a position. */
  @IsOptional()
  @IsUUID()
  airframeTypeId?: string | null;

  /** At one position alone, 0 for the auxiliary power unit; for a position. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(12)
  positionNumber?: number | null;

  /** Of one model alone; for an engine. */
  @IsOptional()
  @IsUUID()
  engineModelId?: string | null;

  /** For a part: its part number. */
  @IsOptional()
  @MaxLength(60)
  @IsText()
  partNumber?: string | null;

  /** When it is due for the first time; left out, after the repeat. */
  @IsOptional()
  @ValidateNested()
  @Type(() => PhaseDto)
  threshold?: PhaseDto | null;

  /** When it is due again; left out, it is met once. */
  @IsOptional()
  @ValidateNested()
  @Type(() => PhaseDto)
  repeat?: PhaseDto | null;

  /** Whether the dimension that comes first governs (unless told), or the one that comes last. */
  @IsOptional()
  @IsIn(['first', 'last'])
  combine?: 'first' | 'last';

  /** Whether months go to the same day (unless told), or to the month's end. */
  @IsOptional()
  @IsIn(['same-day', 'month-end'])
  monthRule?: 'same-day' | 'month-end';

  /** What the first time counts from. */
  @IsIn(['new', 'overhaul', 'shop-visit', 'installation', 'accomplishment', 'effective', 'date'])
  countedFrom!: 'new' | 'overhaul' | 'shop-visit' | 'installation' | 'accomplishment' | 'effective' | 'date';

  /** The date it counts from, where it counts from a date. */
  @IsOptional()
  @IsDayText()
  fromOn?: string | null;

  /** From this day on the revision is effective; the newest of a code counts. */
  @IsDayText()
  effectiveOn!: string;

  /** How far planned times hold around each due; nothing unless told. */
  @IsOptional()
  @ValidateNested()
  @Type(() => WindowDto)
  window?: WindowDto | null;

  /** How far one due may be varied by an approval, one time; not at all unless told. */
  @IsOptional()
  @ValidateNested()
  @Type(() => GrantsDto)
  variation?: GrantsDto | null;

  /** Where its own text grants the window or variation: asked of a directive and an airworthiness limitation. */
  @IsOptional()
  @MaxLength(200)
  @IsText()
  grantedBy?: string | null;

  /** From where the next is counted after an accomplishment. */
  @IsOptional()
  @ValidateNested()
  @Type(() => RebaseDto)
  rebase?: RebaseDto | null;

  /** The first serial number it is for; left out, all up to the last. */
  @IsOptional()
  @MaxLength(60)
  @IsText()
  serialFrom?: string | null;

  /** The last serial number it is for; left out, all from the first on. */
  @IsOptional()
  @MaxLength(60)
  @IsText()
  serialTo?: string | null;

  /** Only for those on which all of these codes are accomplished. */
  @IsOptional()
  @IsArray()
  @ArrayMaxSize(20)
  @ArrayUnique()
  @MaxLength(60, { each: true })
  @IsText({ each: true })
  onlyWith?: string[];

  /** Not for those on which one of these codes is accomplished. */
  @IsOptional()
  @IsArray()
  @ArrayMaxSize(20)
  @ArrayUnique()
  @MaxLength(60, { each: true })
  @IsText({ each: true })
  unlessWith?: string[];

  /** The requirement of another code that it takes the place of. */
  @IsOptional()
  @IsUUID()
  supersedesId?: string | null;

  /** The requirement of another code that it ends, where it is accomplished. */
  @IsOptional()
  @IsUUID()
  terminatesId?: string | null;

  /** What counts that was done before: nothing, by earlier revisions of its code (unless told), or by what it supersedes too. */
  @IsOptional()
  @IsIn(['none', 'revisions', 'superseded'])
  credit?: 'none' | 'revisions' | 'superseded';

  /** A bulletin whose applicability must be assessed, as a directive's must. */
  @IsOptional()
  @IsBoolean()
  mandatory?: boolean;
}

/** Which requirements. */
export class RequirementsQueryDto {
  /** Those in force alone: the newest revision of each code that is not voided. */
  @IsOptional()
  @IsIn(['true', 'false'])
  inForce?: 'true' | 'false';
}

/** Which of what is held against something. */
export class HeldQueryDto {
  /** With all that does not apply, of another type, model or part number too. */
  @IsOptional()
  @IsIn(['true', 'false'])
  notApplicable?: 'true' | 'false';
}

/** Why a fact is voided. */
export class VoidRequirementDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}
