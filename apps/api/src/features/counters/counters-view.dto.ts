import { CountersDto, CyclesDto } from '../../platform/http/counters.dto.js';

/** A moment as it was told, and the instant it means. */
export class ToldMomentDto {
  at!: string;
  kind!: 'instant' | 'after-page' | 'before-first' | 'after-last';
  precision!: 'minute' | 'page' | 'day';
  /** The log page or the day that was typed; null for an instant. */
  text!: string | null;
}

/** What set a counter to nothing. */
export class CounterResetDto {
  kind!: 'overhaul' | 'shop-visit' | 'repair' | 'installation' | 'opening';
  id!: string;
  moment!: ToldMomentDto;
  /** The document that shows it; for an installation the place. */
  evidence!: string;
}

/** Whole counted events. */
export class EventCountsDto {
  minutes!: number;
  flights!: number;
  landings!: number;
  touchAndGoes!: number;
  starts!: number;
  abortedTakeOffs!: number;
}

/** The clock a component ran by. */
export class CarrierDto {
  id!: string;
  kind!: string;
  /** In words: the airframe and the position, the test cell, or the unit itself. */
  label!: string;
  airframeId!: string | null;
  positionId!: string | null;
  positionNumber!: number | null;
}

/** The rule that turned events into cycles: whole weights over the denominator. */
export class CycleRuleBehindDto {
  perFlight!: number;
  perLanding!: number;
  perTouchAndGo!: number;
  perStart!: number;
  perAbortedTakeOff!: number;
  denominator!: number;
  source!: string | null;
  revision!: string | null;
}

/** A flight of which the position did not run, or count, all. */
export class ExceptionWithinDto {
  flightId!: string;
  logPage!: string;
  landingAt!: string;
  kind!: string;
  /** What it did not count. */
  missed!: EventCountsDto;
}

/** The component that carried another for a while. */
export class CarriedByDto {
  id!: string;
  serialNumber!: string;
}

/** One line of the sum that a counter is. */
export class CounterAddendDto {
  /** A balance, what it ran by one clock, a gap at its accepted worst case, or something nobody knows. */
  kind!: 'opening' | 'exposure' | 'gap' | 'unknown';
  /** The opening balance or the gap. */
  id!: string | null;
  minutes!: number | null;
  cycles!: CyclesDto | null;
  /** The sum after this line. */
  running!: CountersDto;
  from!: string | null;
  /** Null where it runs still, as of now. */
  to!: string | null;
  /** When a balance holds, as it was told. */
  moment!: ToldMomentDto | null;
  ratingCode!: string | null;
  carrier!: CarrierDto | null;
  /** What carried it over this span: the engine or pod it hung in, or itself. */
  carriedBy!: CarriedByDto | null;
  rule!: CycleRuleBehindDto | null;
  /** Raw events counted by the clock in this span, exceptions taken off and runs added. */
  counts!: EventCountsDto | null;
  exceptions!: ExceptionWithinDto[];
  /** The document of a balance, or the reference of an acceptance. */
  source!: string | null;
  trace!: 'shown' | 'stated' | 'not-shown' | null;
  /** What is missing, or why nothing is known. */
  note!: string | null;
  acceptedBy!: string | null;
}

/** One counter with what set it to nothing and the lines that add up to it. */
export class ExplainedCounterDto {
  basis!: 'new' | 'overhaul' | 'shop-visit' | 'repair' | 'installation';
  total!: CountersDto;
  reset!: CounterResetDto | null;
  addends!: CounterAddendDto[];
}

/** The counters of a component at a moment, each with how it comes about. */
export class ExplainedCountersDto {
  id!: string;
  kind!: 'engine' | 'module' | 'part' | 'pod' | 'apu';
  partNumber!: string;
  serialNumber!: string;
  description!: string;
  /** The moment asked for; null: now. */
  moment!: ToldMomentDto | null;
  counters!: ExplainedCounterDto[];
}

/** One line of what an airframe or a position has run. */
export class ClockAddendDto {
  kind!: 'opening' | 'flown' | 'not-run' | 'run';
  /** Null for the balance. */
  from!: string | null;
  to!: string | null;
  /** What was at the position then; null for an airframe, and where nothing was. */
  engine!: CarriedByDto | null;
  minutes!: number | null;
  cycles!: CyclesDto | null;
  running!: CountersDto;
  counts!: EventCountsDto | null;
  source!: string | null;
  trace!: 'shown' | 'stated' | 'not-shown' | null;
  note!: string | null;
}

/** What a position has run: the airframe's balance, and what its own clock counted, engine by engine. */
export class PositionCountersDto {
  id!: string;
  number!: number;
  label!: string;
  total!: CountersDto;
  addends!: ClockAddendDto[];
}

/** The counters of an airframe and its positions at a moment. */
export class AirframeCountersDto {
  id!: string;
  registration!: string;
  moment!: ToldMomentDto | null;
  total!: CountersDto;
  /** The balance, then a line a calendar year. */
  addends!: ClockAddendDto[];
  positions!: PositionCountersDto[];
}

/** A flight within a line of a counter, and what the component counted of it. */
export class FlightOfLineDto {
  id!: string;
  logPage!: string;
  fromStation!: string;
  toStation!: string;
  takeOffAt!: string;
  landingAt!: string;
  /** What it counted: the flight less what its position did not run. */
  counts!: EventCountsDto;
}

/** A page of them, in the order of their landings. */
export class FlightsOfLinePageDto {
  rows!: FlightOfLineDto[];
  next!: string | null;
}
