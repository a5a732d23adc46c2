import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsInt,
  IsOptional,
  Max,
  Min,
  ValidateNested,
} from 'class-validator';
import { NewPlannedFlightDto } from './planned-flight.dto.js';

/** A rate to look ahead by. */
export class AskedRateDto {
  /** The days the amounts are of. */
  @IsInt()
  @Min(1)
  @Max(366)
  days!: number;

  /** Minutes in those days. */
  @IsInt()
  @Min(1)
  @Max(527_040)
  minutes!: number;

  /** Flights in those days. */
  @IsInt()
  @Min(1)
  @Max(10_000)
  flights!: number;

  /** How many days ahead. */
  @IsInt()
  @Min(1)
  @Max(366)
  horizonDays!: number;
}

/** For which flying readiness is asked: these flights, a rate, or, with neither, the flights planned and kept. */
export class AskedReadinessDto {
  @IsOptional()
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(2000)
  @ValidateNested({ each: true })
  @Type(() => NewPlannedFlightDto)
  flights?: NewPlannedFlightDto[];

  @IsOptional()
  @ValidateNested()
  @Type(() => AskedRateDto)
  rate?: AskedRateDto;
}

/** What is left of one dimension before the first flight. */
export class ReadinessLeftDto {
  dimension!: 'minutes' | 'cycles' | 'days' | 'months';
  remaining!: number;
  /** The same until the end of what is granted past the due. */
  untilLatest!: number;
  dueOn!: string | null;
}

/** A life or a requirement that the flying reaches, is over, or of which nothing can be stated. */
export class ReadinessItemDto {
  kind!: 'life-limit' | 'counters' | 'requirement';
  name!: string;
  of!: string;
  requirementId!: string | null;
  componentId!: string | null;
  engineSerial!: string | null;
  positionNumber!: number | null;
  combine!: 'first' | 'last';
  /** Why nothing can be stated, or why it is over. */
  reason!: string | null;
  left!: ReadinessLeftDto[];
  /** The flight, from 1, in which it goes past its due; null: in none. */
  dueOnFlight!: number | null;
  /** The first flight, from 1, that must not be made; null: none. */
  breaksOnFlight!: number | null;
}

/** A flight to come and whether it may be made. */
export class ReadinessFlightDto {
  /** Its place, from 1. */
  number!: number;
  flightNumber!: string | null;
  fromStation!: string | null;
  toStation!: string | null;
  takeOffAt!: string;
  landingAt!: string;
  minutes!: number;
  /** Whether nothing known is over at or before its landing. */
  allowed!: boolean;
}

/** Which of the flights to come may be made. A forecast is never a limit; what is not verified is told first. */
export class ReadinessDto {
  airframeId!: string;
  registration!: string;
  /** The zone in which its days are counted. */
  dayZone!: string;
  basis!: 'flights' | 'rate' | 'kept';
  /** What the flying is, in words. */
  basisText!: string;
  /** 'not-verified': no readiness can be stated; 'none', 'some' or 'all' of the flights may be made. */
  verdict!: 'not-verified' | 'none' | 'some' | 'all' | 'no-flights';
  /** The verdict in words. */
  statement!: string;
  /** The last flight that may be made, from 1; 0 when none may. */
  lastAllowed!: number;
  flights!: ReadinessFlightDto[];
  /** Of which nothing can be stated. */
  notVerified!: ReadinessItemDto[];
  /** What the flights reach, in the order in which they do: first what forbids a flight. */
  items!: ReadinessItemDto[];
  /** How many planned flights are past and have no flight in the log: what they used is counted nowhere. */
  notLogged!: number;
}
