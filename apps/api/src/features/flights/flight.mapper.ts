import { ceil } from '@strutbook/domain/units/fraction.js';
import type { Counters } from '@strutbook/domain/usage/since.js';
import { instantToWire, toWire } from '../../platform/http/instants.js';
import type { FlightCommand } from './flight-command.js';
import type { LoggedFlight, OpeningPart } from './flight-log.js';
import type { AirframeFlownDto, FlightDto, FlightExceptionDto } from './flight-view.dto.js';

/** A flight's row with its exceptions. */
export interface FlightRow {
  readonly id: string;
  readonly airframeId: string;
  readonly logPage: string;
  readonly fromStation: string;
  readonly toStation: string;
  readonly takeOffAt: Date;
  readonly landingAt: Date;
  readonly minutes: number;
  readonly touchAndGoes: number;
  readonly starts: number;
  readonly abortedTakeOffs: number;
  readonly source: string;
  readonly entryRow: number | null;
  readonly replacesId: string | null;
  readonly voidedSeq: bigint | null;
  readonly voidReason: string | null;
  readonly flightExceptionByFlight: readonly (Omit<FlightExceptionDto, 'positionNumber' | 'kind'> & {
    readonly kind: string;
    readonly position: { readonly number: number };
  })[];
}

/** A recorded flight as the wire has it. Total. */
export function flightToWire(row: FlightRow): FlightDto {
  const {
    id,
    airframeId,
    logPage,
    fromStation,
    toStation,
    minutes,
    touchAndGoes,
    starts,
    abortedTakeOffs,
    source,
    entryRow,
  } = row;
  return {
    ...{ id, airframeId, logPage, fromStation, toStation },
    takeOffAt: toWire(row.takeOffAt),
    landingAt: toWire(row.landingAt),
    ...{ minutes, touchAndGoes, starts, abortedTakeOffs },
    exceptions: row.flightExceptionByFlight.map((exception) => ({
      positionNumber: exception.position.number,
      kind: exception.kind as FlightExceptionDto['kind'],
      minutes: exception.minutes,
      flights: exception.flights,
      landings: exception.landings,
      touchAndGoes: exception.touchAndGoes,
      starts: exception.starts,
      abortedTakeOffs: exception.abortedTakeOffs,
    })),
    ...{ source, entryRow, replacesId: row.replacesId },
    voided: row.voidedSeq !== null,
    voidReason: row.voidReason,
  };
}

/** A flight just logged, from what was asked. Total. */
export function loggedToWire(
  flight: FlightCommand,
  { id, airframeId }: Pick<LoggedFlight, 'id' | 'airframeId'>,
  replacesId: string | null = null,
): FlightDto {
  const { logPage, fromStation, toStation, takeOffAt, landingAt, touchAndGoes, starts, abortedTakeOffs } =
    flight;
  return {
    ...{ id, airframeId, logPage, fromStation, toStation },
    takeOffAt: instantToWire(takeOffAt),
    landingAt: instantToWire(landingAt),
    minutes: landingAt - takeOffAt,
    ...{ touchAndGoes, starts, abortedTakeOffs },
    exceptions: flight.exceptions.map(({ positionNumber, kind, missed }) => ({
      positionNumber,
      kind,
      ...missed,
    })),
    ...{ source: 'entered', entryRow: null, replacesId, voided: false, voidReason: null },
  };
}

/** What the airframe has flown: its clock beside its opening. Total. */
export function flownSince(
  { openingMinutes, openingFlights }: OpeningPart,
  logged: LoggedFlight,
): AirframeFlownDto {
  return {
    minutes: openingMinutes === null ? null : Number(openingMinutes) + logged.airframeMinutes,
    flights: openingFlights === null ? null : Number(openingFlights) + logged.airframeFlights,
  };
}

/** The same from the counters. Total. */
export function flownToWire(counters: Counters | undefined): AirframeFlownDto {
  return {
    minutes: counters?.minutes ?? null,
    flights: counters?.cycles == null ? null : ceil(counters.cycles),
  };
}
