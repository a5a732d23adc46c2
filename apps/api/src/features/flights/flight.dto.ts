import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsIn,
  IsInt,
  IsOptional,
  Matches,
  Max,
  MaxLength,
  Min,
  ValidateNested,
} from 'class-validator';
import { IsInstantText, IsText } from '../../platform/http/field-forms.js';

const STATION = /^[A-Z0-9]{2,8}$/;
const STATION_FORM = {
  message: 'This is no station code',
  context: { fix: 'Enter 2 to 8 capital letters or digits.' },
};

/** A position that did not run for all of a flight. */
export class NewFlightExceptionDto {
  @IsInt()
  @Min(0)
  @Max(12)
  positionNumber!: number;

  /** 'shut-down': it stood still for some minutes; 'not-running': it was dead for the whole flight. */
  @IsIn(['shut-down', 'not-running'])
  kind!: 'shut-down' | 'not-running';

  /** Minutes it did not run; asked of an engine shut down. */
  @IsOptional()
  @IsInt()
  @Min(1)
  @Max(1440)
  minutes?: number;

  /** Flights that do not count for it. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(1)
  flights?: number;

  /** Landings that do not count for it. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(9999)
  landings?: number;

  /** Touch-and-goes that do not count for it. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(9999)
  touchAndGoes?: number;

  /** Starts that do not count for it. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(9999)
  starts?: number;

  /** Aborted take-offs that do not count for it. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(9999)
  abortedTakeOffs?: number;
}

/** One take-off to one landing, from a numbered log page. */
export class NewFlightDto {
  @MaxLength(20)
  @IsText()
  logPage!: string;

  @Matches(STATION, STATION_FORM)
  fromStation!: string;

  @Matches(STATION, STATION_FORM)
  toStation!: string;

  @IsInstantText()
  takeOffAt!: string;

  @IsInstantText()
  landingAt!: string;

  @IsInt()
  @Min(0)
  @Max(9999)
  touchAndGoes!: number;

  /** Starts of each engine; 1 unless told. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(9999)
  starts?: number;

  /** Aborted take-offs before it; none unless told. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(9999)
  abortedTakeOffs?: number;

  @IsOptional()
  @IsArray()
  @ArrayMaxSize(13)
  @ValidateNested({ each: true })
  @Type(() => NewFlightExceptionDto)
  exceptions?: NewFlightExceptionDto[];
}

/** Flights to log, all or none. */
export class NewFlightsDto {
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(50)
  @ValidateNested({ each: true })
  @Type(() => NewFlightDto)
  flights!: NewFlightDto[];
}

/** Why a flight is voided. */
export class VoidFlightDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}

/** The flight as it was, and why it is entered again. */
export class CorrectFlightDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;

  @ValidateNested()
  @Type(() => NewFlightDto)
  flight!: NewFlightDto;
}

/** Asks for flights of an airframe, the newest first. */
export class FlightsQueryDto {
  /** Where the page before ended. */
  @IsOptional()
  @MaxLength(200)
  @IsText()
  after?: string;

  /** Rows a page, at most 200; 50 unless told. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(200)
  limit?: number;

  /** Whether voided flights are listed too. */
  @IsOptional()
  @IsIn(['true', 'false'])
  voided?: 'true' | 'false';
}
