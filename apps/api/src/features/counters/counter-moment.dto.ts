import { Type } from 'class-transformer';
import { IsInt, IsOptional, IsUUID, Max, MaxLength, Min } from 'class-validator';
import { IsDayText, IsInstantText, IsText } from '../../platform/http/field-forms.js';

/** Asks for counters as of a moment, told as the records tell it: at most one of at, page, beforeFirst and afterLast. */
export class CounterMomentDto {
  /** As of this instant; now, where none of the four is told. */
  @IsOptional()
  @IsInstantText()
  at?: string;

  /** After the flight of this log page of `airframeId`. */
  @IsOptional()
  @MaxLength(20)
  @IsText()
  page?: string;

  /** Before the first flight of this day. */
  @IsOptional()
  @IsDayText()
  beforeFirst?: string;

  /** After the last flight of this day. */
  @IsOptional()
  @IsDayText()
  afterLast?: string;

  /** Whose log or days are meant; the airframe it hangs on now, unless told. */
  @IsOptional()
  @IsUUID()
  airframeId?: string;
}

/** Asks for the flights of one line of a counter. */
export class FlightsOfLineDto {
  /** The clock of the line. */
  @IsUUID()
  carrierId!: string;

  /** What landed after this instant. */
  @IsInstantText()
  from!: string;

  /** And up to this one; to now, unless told. */
  @IsOptional()
  @IsInstantText()
  to?: string;

  /** Where the page before ended. */
  @IsOptional()
  @MaxLength(400)
  @IsText()
  after?: string;

  /** Rows a page, at most 200; 50 unless told. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(200)
  limit?: number;
}
