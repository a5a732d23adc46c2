import { Type } from 'class-transformer';
import { IsIn, IsInt, IsOptional, IsString, Max, MaxLength, Min } from 'class-validator';
import { IsInstantText, IsText } from '../../platform/http/field-forms.js';
import { ConsequencesDto } from '../../records/consequences/consequences.dto.js';

/** A run of an engine in a test cell. */
export class NewCellRunDto {
  /** Whole minutes of UTC. */
  @IsInstantText()
  startedAt!: string;

  @IsInstantText()
  endedAt!: string;

  /** Whole minutes it ran; from start to end when left out. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(1440)
  runMinutes?: number;

  /** Of them, what counts as time in service by the engine's approved data; none when left out. */
  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(1440)
  countedMinutes?: number;

  @IsInt()
  @Min(0)
  @Max(1000)
  starts!: number;

  @IsOptional()
  @IsInt()
  @Min(0)
  @Max(1000)
  abortedTakeOffs?: number;

  /** What it was run for. */
  @MaxLength(120)
  @IsText()
  purpose!: string;

  /** The document it is written in. */
  @MaxLength(120)
  @IsText()
  source!: string;
}

/** A run of an engine at a position on the ground. */
export class NewGroundRunDto extends NewCellRunDto {
  @IsInt()
  @Min(1)
  @Max(8)
  positionNumber!: number;
}

/** Which runs are asked for. */
export class GroundRunsQueryDto {
  /** What the page before gave as `next`. */
  @IsOptional()
  @IsString()
  @MaxLength(200)
  after?: string;

  @IsOptional()
  @Type(() => Number)
  @IsInt()
  @Min(1)
  @Max(200)
  limit?: number;

  /** Whether voided runs are among them. */
  @IsOptional()
  @IsIn(['true', 'false'])
  voided?: 'true' | 'false';
}

/** Why a run is voided; it stays to be seen. */
export class VoidRunDto {
  @MaxLength(200)
  @IsText()
  reason!: string;
}

/** The engine that was there during a run. */
export class RunEngineDto {
  id!: string;
  serialNumber!: string;
}

/** A run on record. */
export class GroundRunDto {
  id!: string;
  /** Null in a test cell. */
  airframeId!: string | null;
  positionNumber!: number | null;
  /** Null at a position. */
  testCellId!: string | null;
  /** Null where a later record says that none was there. */
  engine!: RunEngineDto | null;
  startedAt!: string;
  endedAt!: string;
  /** Whole minutes it ran. */
  runMinutes!: number;
  /** Of them, what counts as time in service. */
  countedMinutes!: number;
  starts!: number;
  abortedTakeOffs!: number;
  purpose!: string;
  source!: string;
  voided!: boolean;
  voidReason!: string | null;
}

/** A page of runs, the newest first. */
export class GroundRunsPageDto {
  rows!: GroundRunDto[];
  /** What to send as `after` for the next page; null on the last. */
  next!: string | null;
}

/** What recording or voiding a run did. */
export class GroundRunAnswerDto {
  run!: GroundRunDto;
  /** Whether it lies before a change recorded already, so that counters of the past moved. */
  late!: boolean;
  consequences!: ConsequencesDto;
}

/** A new test cell. */
export class NewTestCellDto {
  @MaxLength(80)
  @IsText()
  name!: string;
}

/** A place where one engine runs off the wing. */
export class TestCellDto {
  id!: string;
  name!: string;
  /** Where an engine is placed to be run. */
  slotId!: string;
  /** The engine in it now. */
  engine!: RunEngineDto | null;
}
