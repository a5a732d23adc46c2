import { Injectable } from '@nestjs/common';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { Prisma } from '../../platform/database/generated/client.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import {
  fromDatabaseText,
  fromInstant,
  instantToWire,
  toInstant,
  toWire,
} from '../../platform/http/instants.js';
import { orNotFound, RefusalError } from '../../platform/problems/refusal.error.js';
import type { PassedPoint } from '../../records/due-points/reached-limits.js';
import { entryBody } from '../../records/journal/entry-body.js';
import type { FlightCommand } from './flight-command.js';
import { IN_ORDER_SQL, inOrderValues, isMoreToLookAt } from './flight-in-order.js';

/** What log_flight answers for a flight it logged. */
export interface LoggedFlight {
  readonly id: string;
  readonly airframeId: string;
  readonly number: string;
  readonly airframeMinutes: number;
  readonly airframeFlights: number;
  readonly late: boolean;
  readonly passed: readonly PassedPoint[];
}

type LogRefusal =
  | { readonly code: 'NOT_FOUND' }
  | { readonly code: 'IN_THE_FUTURE'; readonly landingAt: string }
  | {
      readonly code: 'FLIGHTS_OVERLAP';
      readonly logPage: string;
      readonly takeOffAt: string;
      readonly landingAt: string;
    }
  | { readonly code: 'LOG_PAGE_USED'; readonly logPage: string; readonly takeOffAt: string }
  | { readonly code: 'BEFORE_OPENING'; readonly openingAt: string };

type LogAnswer =
  | { readonly flight: LoggedFlight }
  | { readonly late: true }
  | { readonly refusal: LogRefusal }
  | {
      readonly replay: {
        readonly status: number;
        readonly body: string;
        readonly version: number | null;
        readonly same: boolean;
      };
    };

/** The opening balance of the airframe, as it stands beside its clock. */
export interface OpeningPart {
  readonly openingMinutes: string | null;
  readonly openingFlights: string | null;
}

/** Where a flight goes and who says so. */
export interface LogPlace {
  readonly airframeId: string;
  readonly flight: FlightCommand;
  /** Leads to the flight in the request: 'flights[3]'. */
  readonly path: string;
  readonly replacesId?: string;
}

// As IN_ORDER_SQL, for a flight that is not in order.
const HEADLINE = `SELECT l.answer, o.minutes::text AS "openingMinutes", o.cycles::text AS "openingFlights"
  FROM (SELECT log_flight($1::int, $2::uuid, $3::text, $4::bytea, $5::jsonb, '[]'::jsonb, $6::text, false) AS answer) l
  LEFT JOIN LATERAL (SELECT minutes, cycles FROM opening WHERE operator_id = $1::int AND airframe_id = $7::uuid
    AND basis = 'new' AND voided_seq IS NULL AND l.answer IS NOT NULL LIMIT 1) o ON true`;

/** The database's own function that logs a flight, in one statement or within an act. */
@Injectable()
export class FlightLog {
  constructor(private readonly database: Database) {}

  /**
   * Logs a flight without exceptions as one statement, its key with it; one that is not in order, or that something
   * stands against, by a second that looks at everything. Answers null, with nothing written, when the flight is late.
   * Refuses as `refusalOf` says, and KEY_REUSED.
   */
  async one(
    actor: Actor,
    act: ActRequest,
    place: LogPlace,
  ): Promise<{
    answer: Exclude<LogAnswer, { refusal: unknown } | { late: true }>;
    opening: OpeningPart;
  } | null> {
    const { operatorId, personId } = actor;
    const body = bodyOf(actor, place, act.key);
    const inOrder = await this.inOrder(actor, act, { ...place, body });
    if (inOrder !== null) return inOrder;
    const [row] = await this.database.headline<{ answer: LogAnswer } & OpeningPart>(HEADLINE, [
      operatorId,
      personId,
      act.key,
      Buffer.from(act.fingerprint),
      JSON.stringify(flightJson(place)),
      body,
      place.airframeId,
    ]);
    if (row === undefined) throw new Error('log_flight gave no row');
    const { answer, ...opening } = row;
    if ('late' in answer) return null;
    if ('refusal' in answer) throw refusalOf(answer.refusal, place);
    if ('replay' in answer && !answer.replay.same) throw new RefusalError({ code: 'KEY_REUSED' });
    return { answer, opening };
  }

  private async inOrder(
    actor: Actor,
    act: ActRequest,
    place: LogPlace & { readonly body: string },
  ): Promise<{ answer: { readonly flight: LoggedFlight }; opening: OpeningPart } | null> {
    try {
      const [row] = await this.database.headline<
        { answer: { readonly flight: LoggedFlight } | null } & OpeningPart
      >(IN_ORDER_SQL, inOrderValues(actor, act, place));
      if (row === undefined || row.answer === null) return null;
      const { answer, ...opening } = row;
      return { answer, opening };
    } catch (error) {
      if (isMoreToLookAt(error)) return null;
      throw error;
    }
  }

  /** Logs a flight within an act that holds the airframe's head, late or not. Refuses as `refusalOf` says, NOT_FOUND for a position. */
  async within(tx: Tx, actor: Actor, act: ActRequest, place: LogPlace): Promise<LoggedFlight> {
    const { operatorId, personId } = actor;
    const exceptions = await exceptionsJson(tx, operatorId, place);
    const [row] = await tx.$queryRaw<{ answer: LogAnswer }[]>(Prisma.sql`
      SELECT log_flight(${operatorId}::int, ${personId}::uuid, NULL, NULL,
        ${JSON.stringify({ ...flightJson(place), actKey: act.key })}::jsonb, ${JSON.stringify(exceptions)}::jsonb, ${bodyOf(actor, place, act.key)}, true) AS answer`);
    const answer = row?.answer;
    if (answer !== undefined && 'refusal' in answer) throw refusalOf(answer.refusal, place);
    if (answer === undefined || !('flight' in answer)) throw new Error('log_flight gave no flight');
    return answer.flight;
  }
}

function flightJson({ airframeId, flight, replacesId }: LogPlace) {
  const { id, logPage, fromStation, toStation, touchAndGoes, starts, abortedTakeOffs, typed } = flight;
  return {
    ...{ id, airframeId, logPage, fromStation, toStation, touchAndGoes, starts, abortedTakeOffs, typed },
    takeOffAt: fromInstant(flight.takeOffAt).toISOString(),
    landingAt: fromInstant(flight.landingAt).toISOString(),
    source: 'entered',
    replacesId: replacesId ?? null,
  };
}

function bodyOf(actor: Actor, { airframeId, flight, replacesId }: LogPlace, key: string): string {
  const { id, logPage, fromStation, toStation, touchAndGoes, starts, abortedTakeOffs, exceptions } = flight;
  return entryBody(actor, {
    kind: 'flight-logged',
    key,
    about: [airframeId, id],
    body: {
      flightId: id,
      ...{ logPage, fromStation, toStation, touchAndGoes, starts, abortedTakeOffs },
      takeOffAt: instantToWire(flight.takeOffAt),
      landingAt: instantToWire(flight.landingAt),
      exceptions: exceptions.map(({ positionNumber, kind, missed }) => ({ positionNumber, kind, ...missed })),
      replacesId: replacesId ?? null,
    },
  });
}

async function exceptionsJson(tx: Tx, operatorId: number, { airframeId, flight, path }: LogPlace) {
  if (flight.exceptions.length === 0) return [];
  const positions = await tx.position.findMany({
    where: { operatorId, airframeId },
    select: { id: true, number: true },
  });
  return flight.exceptions.map(({ positionNumber, kind, missed }, index) => {
    const position = positions.find(({ number }) => number === positionNumber);
    const positionId = orNotFound(
      position,
      'position on this airframe',
      `${path}.exceptions[${index}].positionNumber`,
    ).id;
    return { id: newId(), positionId, kind, ...missed };
  });
}

/** What the function refused, about the field it lies in. */
function refusalOf(refusal: LogRefusal, { path, airframeId, flight }: LogPlace): RefusalError {
  const at = (text: string): string => toWire(fromDatabaseText(text));
  const instantOf = (text: string): Instant => toInstant(fromDatabaseText(text));
  switch (refusal.code) {
    case 'NOT_FOUND':
      return new RefusalError({ code: 'NOT_FOUND', what: 'airframe' });
    case 'IN_THE_FUTURE':
      return new RefusalError({
        code: 'IN_THE_FUTURE',
        field: `${path}.landingAt`,
        at: at(refusal.landingAt),
      });
    case 'FLIGHTS_OVERLAP': {
      const { logPage, takeOffAt, landingAt } = refusal;
      return new RefusalError({
        code: 'FLIGHTS_OVERLAP',
        field: `${path}.takeOffAt`,
        logPage,
        takeOffAt: at(takeOffAt),
        landingAt: at(landingAt),
      });
    }
    case 'LOG_PAGE_USED':
      return new RefusalError({
        code: 'LOG_PAGE_USED',
        field: `${path}.logPage`,
        logPage: refusal.logPage,
        takeOffAt: at(refusal.takeOffAt),
      });
    case 'BEFORE_OPENING':
      return new RefusalError(
        {
          code: 'BEFORE_OPENING',
          componentId: airframeId,
          at: flight.takeOffAt,
          openingAt: instantOf(refusal.openingAt),
          source: 'the opening balance of the airframe',
        },
        { field: `${path}.takeOffAt` },
      );
  }
}
