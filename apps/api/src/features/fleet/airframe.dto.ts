import { IsOptional, IsUUID, MaxLength } from 'class-validator';
import { IsDayText, IsText } from '../../platform/http/field-forms.js';

/** A new airframe; its positions, slots and clocks come with it. */
export class NewAirframeDto {
  @MaxLength(12)
  @IsText()
  registration!: string;

  @MaxLength(40)
  @IsText()
  serialNumber!: string;

  @IsUUID()
  airframeTypeId!: string;

  /** The code of a rule set. */
  @MaxLength(20)
  @IsText()
  ruleSet!: string;

  /** The zone in which days are counted, such as 'Europe/Vienna'; UTC unless told. */
  @IsOptional()
  @MaxLength(60)
  @IsText()
  dayZone?: string;

  @MaxLength(120)
  @IsText()
  owner!: string;

  @IsOptional()
  @MaxLength(120)
  @IsText()
  lessor?: string | null;

  @IsOptional()
  @IsDayText()
  manufacturedOn?: string | null;
}

/** A slot of a position. */
export class PositionSlotDto {
  id!: string;
  kind!: 'engine' | 'pod' | 'apu';
}

/** A place on one airframe where a powerplant is mounted. */
export class AirframePositionDto {
  id!: string;
  number!: number;
  kind!: 'engine' | 'apu';
  mount!: 'left-wing' | 'right-wing' | 'tail';
  label!: string;
  /** What it takes: an engine and a pod, or an auxiliary power unit. */
  slots!: PositionSlotDto[];
}

/** One airframe. */
export class AirframeDto {
  id!: string;
  registration!: string;
  serialNumber!: string;
  airframeTypeId!: string;
  /** Maker and designation of the type. */
  type!: string;
  ruleSet!: string;
  dayZone!: string;
  owner!: string;
  lessor!: string | null;
  manufacturedOn!: string | null;
  version!: number;
  /** Whole minutes in service, the opening balance included; null while that is not known. */
  minutes!: number | null;
  /** Flights, the opening balance included; null while that is not known. */
  flights!: number | null;
  lastLandingAt!: string | null;
  positions!: AirframePositionDto[];
}
