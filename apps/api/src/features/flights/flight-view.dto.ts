import { ConsequencesDto } from '../../records/consequences/consequences.dto.js';
import { FlightGapDto, GapNoteDto } from './gap-note.dto.js';

/** What one position did not count of a flight. */
export class FlightExceptionDto {
  positionNumber!: number;
  kind!: 'shut-down' | 'not-running';
  minutes!: number;
  flights!: number;
  landings!: number;
  touchAndGoes!: number;
  starts!: number;
  abortedTakeOffs!: number;
}

/** A flight on record. */
export class FlightDto {
  id!: string;
  airframeId!: string;
  logPage!: string;
  fromStation!: string;
  toStation!: string;
  takeOffAt!: string;
  landingAt!: string;
  /** Whole minutes in service. */
  minutes!: number;
  touchAndGoes!: number;
  starts!: number;
  abortedTakeOffs!: number;
  exceptions!: FlightExceptionDto[];
  /** How it came in: 'entered', or 'import' with the line of its file. */
  source!: string;
  entryRow!: number | null;
  /** The flight it corrects. */
  replacesId!: string | null;
  voided!: boolean;
  voidReason!: string | null;
}

/** A flight in the log, with what is missing before it. */
export class LoggedFlightDto extends FlightDto {
  /** Gaps between it and the flight before, found as the log stands now. */
  gaps!: FlightGapDto[];
  /** All that was ever noted of gaps before it, the latest first. */
  gapNotes!: GapNoteDto[];
}

/** A page of flights. */
export class FlightsPageDto {
  rows!: LoggedFlightDto[];
  /** What to send as `after` for the next page; null on the last. */
  next!: string | null;
}

/** What an airframe has flown, its opening balance included; unknown where that does not say. */
export class AirframeFlownDto {
  minutes!: number | null;
  flights!: number | null;
}

/** What logging, voiding or correcting flights did. */
export class FlightsAnswerDto extends ConsequencesDto {
  flights!: FlightDto[];
  airframe!: AirframeFlownDto;
  /** Whether one of them lies before a change recorded already, so that counters of the past moved. */
  late!: boolean;
}
