import { Type } from 'class-transformer';
import { IsInt, IsOptional, IsString, IsUUID, Max, MaxLength, Min } from 'class-validator';

/** Which part of the due list. */
export class DueQueryDto {
  /** The 'next' of the page before. */
  @IsOptional()
  @IsString()
  @MaxLength(300)
  after?: string;

  /** How many rows; 50 unless told. */
  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(200)
  limit?: number;

  /** Of one airframe alone. */
  @IsOptional()
  @IsUUID()
  airframeId?: string;
}

/** Something that falls due, or of which that can't be told. */
export class DueRowDto {
  id!: string;
  componentId!: string;
  description!: string;
  partNumber!: string;
  serialNumber!: string;
  engineId!: string | null;
  engineSerial!: string | null;
  airframeId!: string | null;
  /** The registration; null for what is on no airframe. */
  airframe!: string | null;
  positionNumber!: number | null;
  status!:
    | 'over'
    | 'in-tolerance'
    | 'soon'
    | 'planned'
    | 'later'
    | 'not-verified'
    | 'not-applicable'
    | 'closed';
  /** What is counted: cycles, minutes, or neither where nothing can be told. */
  dimension!: 'cycles' | 'minutes' | 'none';
  /** Whole cycles left, rounded down; below zero they are past. */
  remainingCycles!: number | null;
  /** Whole minutes left. */
  remainingMinutes!: number | null;
  /** The limit, in whole cycles or minutes. */
  limit!: number | null;
  /** Document the limit is from. */
  document!: string | null;
  revision!: string | null;
  /** The day on which nothing is left at the use named by `basis`; a forecast, never a limit. */
  projectedOn!: string | null;
  /** What the projection rests on, or why there is none. */
  basis!: string;
  /** Why it is not verified or not authorised. */
  reason!: string | null;
  /** A worst case stands for what is unknown, under a recorded acceptance. */
  flagged!: boolean;
}

/** A page of the due list, the most urgent first. */
export class DuePageDto {
  rows!: DueRowDto[];
  /** Send it as `after` for the next page; null after the last. */
  next!: string | null;
}
