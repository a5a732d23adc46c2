import { Type } from 'class-transformer';
import { IsIn, IsInt, IsOptional, IsUUID, Max, MaxLength, Min, ValidateNested } from 'class-validator';
import { IsDayText, IsText } from '../../platform/http/field-forms.js';

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

/** A new requirement, one revision of a document's duty. */
export class NewRequirementDto {
  @MaxLength(60)
  @IsText()
  code!: string;

  @MaxLength(200)
  @IsText()
  title!: string;

  @IsIn(['inspection', 'overhaul', 'directive', 'bulletin', 'discard', 'check'])
  kind!: 'inspection' | 'overhaul' | 'directive' | 'bulletin' | 'discard' | 'check';

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
  @Type(() => IntervalDto)
  threshold?: IntervalDto | null;

  /** When it is due again; left out, it is met once. */
  @IsOptional()
  @ValidateNested()
  @Type(() => IntervalDto)
  repeat?: IntervalDto | null;

  /** Whether the dimension that comes first governs (unless told), or the one that comes last. */
  @IsOptional()
  @IsIn(['first', 'last'])
  combine?: 'first' | 'last';

  /** Whether months go to the same day (unless told), or to the month's end. */
  @IsOptional()
  @IsIn(['same-day', 'month-end'])
  monthRule?: 'same-day' | 'month-end';

  /** What the first time counts from. */
  @IsIn(['new', 'overhaul', 'installation', 'date'])
  countedFrom!: 'new' | 'overhaul' | 'installation' | 'date';

  /** The date it counts from, where it counts from a date. */
  @IsOptional()
  @IsDayText()
  fromOn?: string | null;

  /** From this day on the revision is effective; the newest of a code counts. */
  @IsDayText()
  effectiveOn!: string;
}

/** Which requirements. */
export class RequirementsQueryDto {
  /** Those in force alone: the newest revision of each code that is not voided. */
  @IsOptional()
  @IsIn(['true', 'false'])
  inForce?: 'true' | 'false';
}

/** Why a fact is voided. */
export class VoidRequirementDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}
