import { IsOptional } from 'class-validator';
import { CountersDto } from '../../platform/http/counters.dto.js';
import { IsInstantText } from '../../platform/http/field-forms.js';

/** As of when the positions are asked for. */
export class PositionsQueryDto {
  /** 'YYYY-MM-DDTHH:MMZ', UTC; left out, it is now. */
  @IsOptional()
  @IsInstantText()
  at?: string;
}

/** The part of an engine that limits it. */
export class TightestPartDto {
  componentId!: string;
  description!: string;
  serialNumber!: string;
  /** Whole cycles left; below zero they are past; null when no cycles limit it or they can't be told. */
  remainingCycles!: number | null;
  /** Whole minutes left. */
  remainingMinutes!: number | null;
  /** Days until the last it is good through; below zero they are past. */
  remainingDays!: number | null;
  /** The last day it is good through. */
  goodThrough!: string | null;
  /** The worst case stands for something unknown, under a recorded acceptance. */
  flagged!: boolean;
  /** Why nothing can be counted on; null when it can. */
  reason!: string | null;
}

/** The part whose life is projected to end first. */
export class SoonestPartDto extends TightestPartDto {
  /** The day; a forecast where use drives it, never a limit. Null when it is past, or too far off. */
  projectedOn!: string | null;
  /** What it rests on. */
  basis!: string;
}

/** An engine, or an auxiliary power unit, at a position. */
export class InstalledEngineDto {
  id!: string;
  serialNumber!: string;
  partNumber!: string;
  /** Maker and designation of its model. */
  model!: string | null;
  ratingCode!: string | null;
  installedAt!: string;
  precision!: 'minute' | 'page' | 'day';
  sinceNew!: CountersDto;
  sinceInstalled!: CountersDto;
  status!:
    | 'over'
    | 'in-tolerance'
    | 'soon'
    | 'planned'
    | 'later'
    | 'not-verified'
    | 'not-applicable'
    | 'closed';
  tightest!: TightestPartDto | null;
  /** Null where nothing can be projected, as for a clock that did not run. */
  soonest!: SoonestPartDto | null;
}

/** The pod at a position. */
export class InstalledPodDto {
  id!: string;
  serialNumber!: string;
  installedAt!: string;
}

/** A position with what is there. */
export class PositionCardDto {
  positionId!: string;
  number!: number;
  kind!: 'engine' | 'apu';
  mount!: 'left-wing' | 'right-wing' | 'tail';
  label!: string;
  engine!: InstalledEngineDto | null;
  /** Since when no engine is there; null when one is, or none ever was. */
  emptySince!: string | null;
  pod!: InstalledPodDto | null;
}

/** An airframe on the board. */
export class BoardAirframeDto {
  id!: string;
  registration!: string;
  /** Maker and designation of the type. */
  type!: string;
  /** Whole minutes in service; null while they are not known. */
  minutes!: number | null;
  flights!: number | null;
  lastFlightAt!: string | null;
}

/** An airframe with its positions. */
export class BoardRowDto {
  airframe!: BoardAirframeDto;
  positions!: PositionCardDto[];
}

/** The airframe of a positions screen. */
export class PositionsAirframeDto {
  id!: string;
  registration!: string;
  serialNumber!: string;
  type!: string;
  ruleSet!: string;
  counters!: CountersDto;
  lastLandingAt!: string | null;
  lastLogPage!: string | null;
}

/** The positions of one airframe, now or at an instant. */
export class PositionsDto {
  airframe!: PositionsAirframeDto;
  /** The instant asked for; null is now. */
  at!: string | null;
  positions!: PositionCardDto[];
}
