import type { Instant } from '@strutbook/domain/units/minutes.js';
import { instant } from '@strutbook/domain/units/minutes.js';
import type { Counts } from '@strutbook/domain/usage/counts.js';
import { flightCounts, planFlight } from '@strutbook/domain/usage/flight.js';
import { canonical, type Json } from '@strutbook/journal/canonical.js';
import { newId } from '../../platform/database/uuid.js';
import { momentOf, toInstant } from '../../platform/http/instants.js';
import { RefusalError, refuse } from '../../platform/problems/refusal.error.js';
import type { NewFlightDto, NewFlightExceptionDto } from './flight.dto.js';

/** A position that did not run for all of a flight, and what it did not count. */
export interface ExceptionCommand {
  readonly id: string;
  readonly positionNumber: number;
  readonly kind: 'shut-down' | 'not-running';
  readonly missed: Counts;
}

/** A checked flight, in units. */
export interface FlightCommand {
  readonly id: string;
  readonly logPage: string;
  readonly fromStation: string;
  readonly toStation: string;
  readonly takeOffAt: Instant;
  readonly landingAt: Instant;
  readonly touchAndGoes: number;
  readonly starts: number;
  readonly abortedTakeOffs: number;
  readonly exceptions: readonly ExceptionCommand[];
  /** What was typed, as canonical JSON. */
  readonly typed: string;
}

const EVENTS = ['flights', 'landings', 'touchAndGoes', 'starts', 'abortedTakeOffs'] as const;

/** The flight as the core checked it; `path` leads to it in the request: 'flights[3]'. Refuses as planFlight does. */
export function toFlightCommand(dto: NewFlightDto, path: string): FlightCommand {
  const {
    logPage,
    fromStation,
    toStation,
    touchAndGoes,
    starts = 1,
    abortedTakeOffs = 0,
    exceptions = [],
  } = dto;
  const told = {
    id: newId(),
    takeOffAt: instantOf(dto.takeOffAt),
    landingAt: instantOf(dto.landingAt),
    touchAndGoes,
    starts,
    abortedTakeOffs,
  };
  const plan = planFlight({
    ...told,
    exceptions: exceptions.map(({ positionNumber, kind, minutes }) => ({
      positionCarrierId: String(positionNumber),
      kind,
      ...(minutes === undefined ? {} : { minutes }),
    })),
  });
  if (!plan.ok) throw new RefusalError(plan.refusal, { field: `${path}.${fieldOf(plan.refusal)}` });
  const flown = flightCounts(told);
  return {
    ...{ ...told, logPage, fromStation, toStation },
    exceptions: exceptions.map((exception, index) =>
      toException(exception, flown, `${path}.exceptions[${index}]`),
    ),
    typed: canonical(plain(dto)),
  };
}

function toException(dto: NewFlightExceptionDto, flown: Counts, path: string): ExceptionCommand {
  const { positionNumber, kind, minutes = 0 } = dto;
  const missed = kind === 'not-running' ? flown : missedEvents(dto, minutes);
  for (const event of EVENTS) {
    const told = dto[event];
    if (told === undefined || (told <= flown[event] && told === missed[event])) continue;
    const reason =
      kind === 'not-running'
        ? `The whole flight does not count for it: ${flown[event]}.`
        : `The flight has no more than ${flown[event]}.`;
    refuse({
      code: 'INVALID_FIELDS',
      fields: [{ field: `${path}.${event}`, reason, fix: 'Correct it, or leave it out.' }],
    });
  }
  return { id: newId(), positionNumber, kind, missed };
}

function missedEvents(dto: NewFlightExceptionDto, minutes: number): Counts {
  const { flights = 0, landings = 0, touchAndGoes = 0, starts = 0, abortedTakeOffs = 0 } = dto;
  return { minutes, flights, landings, touchAndGoes, starts, abortedTakeOffs };
}

function fieldOf(refusal: { readonly code: string; readonly field?: string }): string {
  if (refusal.code === 'NOT_A_COUNT') return refusal.field ?? 'touchAndGoes';
  return refusal.code.startsWith('EXCEPTION') ? 'exceptions' : 'landingAt';
}

function instantOf(text: string): Instant {
  return instant(toInstant(momentOf(text)));
}

/** The request's own members, without the class around them. */
function plain(dto: NewFlightDto): Json {
  return JSON.parse(JSON.stringify(dto)) as Json;
}
