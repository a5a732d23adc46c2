import { Type } from 'class-transformer';
import { ArrayMaxSize, IsArray, IsIn, IsInt, IsOptional, Max, Min, ValidateNested } from 'class-validator';

/** What is granted for intervals up to a length: of what is given the lesser applies. */
export class TierDto {
  /** The longest interval it is for; left out, any. */
  @IsOptional()
  @IsInt()
  @Min(1)
  @Max(60_000_000)
  upTo?: number | null;

  /** Whole hundredths of the interval. */
  @IsOptional()
  @IsInt()
  @Min(1, { context: { fix: 'Enter a share from 1 to 100 %, or leave it out.' } })
  @Max(100, { context: { fix: 'Enter a share from 1 to 100 %, or leave it out.' } })
  percent?: number | null;

  /** Minutes, cycles, days or calendar months, as the dimension counts. */
  @IsOptional()
  @IsInt()
  @Min(1, { context: { fix: 'Enter 1 or more, or leave it out.' } })
  @Max(60_000_000)
  atMost?: number | null;

  /** Of months alone: days at most. */
  @IsOptional()
  @IsInt()
  @Min(1, { context: { fix: 'Enter 1 day or more, or leave it out.' } })
  @Max(3650)
  atMostDays?: number | null;
}

/** What is granted in each dimension, by tiers from the shortest interval to the longest; leave out what grants nothing. */
export class GrantsDto {
  @IsOptional()
  @IsArray()
  @ArrayMaxSize(10)
  @ValidateNested({ each: true })
  @Type(() => TierDto)
  minutes?: TierDto[];

  @IsOptional()
  @IsArray()
  @ArrayMaxSize(10)
  @ValidateNested({ each: true })
  @Type(() => TierDto)
  cycles?: TierDto[];

  @IsOptional()
  @IsArray()
  @ArrayMaxSize(10)
  @ValidateNested({ each: true })
  @Type(() => TierDto)
  days?: TierDto[];

  @IsOptional()
  @IsArray()
  @ArrayMaxSize(10)
  @ValidateNested({ each: true })
  @Type(() => TierDto)
  months?: TierDto[];
}

/** How far before and after its due a requirement may be met without planned times shifting. */
export class WindowDto {
  @IsOptional()
  @ValidateNested()
  @Type(() => GrantsDto)
  early?: GrantsDto | null;

  @IsOptional()
  @ValidateNested()
  @Type(() => GrantsDto)
  late?: GrantsDto | null;
}

/** From where the next is counted: from what was done or from what was due. */
export class RebaseDto {
  /** Early, before the window; from what was done unless told. */
  @IsOptional()
  @IsIn(['from-done', 'from-due'])
  early?: 'from-done' | 'from-due';

  /** Inside the window; from what was due unless told. */
  @IsOptional()
  @IsIn(['from-done', 'from-due'])
  within?: 'from-done' | 'from-due';

  /** Late under an approved variation; from what was due unless told. */
  @IsOptional()
  @IsIn(['from-done', 'from-due'])
  varied?: 'from-done' | 'from-due';

  /** Past all that is granted; from what was done unless told. */
  @IsOptional()
  @IsIn(['from-done', 'from-due'])
  beyond?: 'from-done' | 'from-due';
}
