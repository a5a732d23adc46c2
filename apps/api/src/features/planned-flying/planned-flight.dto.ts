import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsBoolean,
  IsOptional,
  Matches,
  MaxLength,
  ValidateNested,
} from 'class-validator';
import { IsInstantText, IsText } from '../../platform/http/field-forms.js';

const STATION = /^[A-Z0-9]{2,8}$/;
const STATION_FORM = {
  message: 'This is no station code',
  context: { fix: 'Enter 2 to 8 capital letters or digits.' },
};

/** A flight the airframe is planned to make. */
export class NewPlannedFlightDto {
  @IsOptional()
  @MaxLength(20)
  @IsText()
  flightNumber?: string;

  @IsOptional()
  @Matches(STATION, STATION_FORM)
  fromStation?: string;

  @IsOptional()
  @Matches(STATION, STATION_FORM)
  toStation?: string;

  @IsInstantText()
  takeOffAt!: string;

  @IsInstantText()
  landingAt!: string;
}

/** Flights to plan, beside those planned already or in their place. */
export class NewPlannedFlightsDto {
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(2000)
  @ValidateNested({ each: true })
  @Type(() => NewPlannedFlightDto)
  flights!: NewPlannedFlightDto[];

  /** Whether they replace all flights planned that are still to come. */
  @IsBoolean()
  replace!: boolean;

  /** Why those before no longer hold; 'Replaced by a new plan' unless told. */
  @IsOptional()
  @MaxLength(500)
  @IsText({ lines: true })
  reason?: string;
}

/** Why a plan no longer holds. */
export class VoidPlanDto {
  @MaxLength(500)
  @IsText({ lines: true })
  reason!: string;
}

/** A planned flight. */
export class PlannedFlightDto {
  id!: string;
  flightNumber!: string | null;
  fromStation!: string | null;
  toStation!: string | null;
  takeOffAt!: string;
  landingAt!: string;
  /** Whole minutes. */
  minutes!: number;
  voided!: boolean;
  voidReason!: string | null;
}

/** The flights an airframe is planned to make. */
export class PlannedFlightsDto {
  airframeId!: string;
  registration!: string;
  /** Those still to come, in order. */
  flights!: PlannedFlightDto[];
  /** How many planned flights are past and have no flight in the log: what they used is counted nowhere. */
  notLogged!: number;
}

/** What planning flights did. */
export class FlightsPlannedDto {
  airframeId!: string;
  /** How many were planned. */
  planned!: number;
  /** How many that were planned before they replaced. */
  replaced!: number;
}
