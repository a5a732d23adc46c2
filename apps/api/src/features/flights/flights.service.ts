import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { toInstant } from '../../platform/http/instants.js';
import { cursorAfter, readCursor } from '../../platform/http/landing-cursor.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import type { ConsequencesDto } from '../../records/consequences/consequences.dto.js';
import { type Before, Consequences } from '../../records/consequences/consequences.js';
import { Projections } from '../../records/due-points/projections.js';
import { describeReached } from '../../records/due-points/reached-limits.js';
import { lockForStays } from '../../records/stays/stay-facts.js';
import { airframeCounters } from '../../records/usage/airframe-counters.js';
import { BoundaryInFlight } from './boundary-in-flight.js';
import type { FlightsQueryDto, NewFlightsDto } from './flight.dto.js';
import { flightToWire, flownSince, flownToWire, loggedToWire } from './flight.mapper.js';
import { type FlightCommand, toFlightCommand } from './flight-command.js';
import { gapNoteToWire, gapsBefore, gapsToWire } from './flight-gaps.js';
import { FlightLog, type LoggedFlight, type LogPlace, type OpeningPart } from './flight-log.js';
import type { AirframeFlownDto, FlightsAnswerDto, FlightsPageDto } from './flight-view.dto.js';

const PAGE = 50;

export const WITH_EXCEPTIONS = {
  flightExceptionByFlight: { include: { position: { select: { number: true } } } },
} as const;

/** The flight log of each airframe. */
@Injectable()
export class FlightsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly projections: Projections,
    private readonly consequences: Consequences,
    private readonly log: FlightLog,
    private readonly boundaries: BoundaryInFlight,
  ) {}

  /** Flights of an airframe, the newest first, a page at a time. Refuses: NOT_FOUND, INVALID_FIELDS. */
  page(
    actor: Actor,
    airframeId: string,
    { after, limit = PAGE, voided }: FlightsQueryDto,
  ): Promise<FlightsPageDto> {
    const { operatorId } = actor;
    const cursor = after === undefined ? null : readCursor(after);
    return this.database.inOperator(actor, async (tx) => {
      orNotFound(
        await tx.airframe.findUnique({
          where: { operatorId_id: { operatorId, id: airframeId } },
          select: { id: true },
        }),
        'airframe',
      );
      const rows = await tx.flight.findMany({
        where: {
          ...{ operatorId, airframeId },
          ...(voided === 'true' ? {} : { voidedSeq: null }),
          ...(cursor === null
            ? {}
            : {
                OR: [
                  { landingAt: { lt: cursor.landingAt } },
                  { landingAt: cursor.landingAt, id: { lt: cursor.id } },
                ],
              }),
        },
        include: { ...WITH_EXCEPTIONS, gapNoteByFlight: { orderBy: { recordedSeq: 'desc' } } },
        orderBy: [{ landingAt: 'desc' }, { id: 'desc' }],
        take: limit + 1,
      });
      const page = rows.slice(0, limit);
      const last = page.at(-1);
      const gaps = await gapsBefore(tx, operatorId, page);
      return {
        rows: page.map((row) => {
          const gapNotes = row.gapNoteByFlight.map(gapNoteToWire);
          const own = gaps.filter((gap) => gap.flightId === row.id);
          return { ...flightToWire(row), gaps: gapsToWire(own, gapNotes), gapNotes };
        }),
        next: rows.length > limit && last !== undefined ? cursorAfter(last) : null,
      };
    });
  }

  /**
   * Logs flights, all or none. A single one that is neither late nor has exceptions goes by one statement.
   * Refuses: NOT_FOUND, FLIGHTS_OVERLAP, LOG_PAGE_USED, BEFORE_OPENING, IN_THE_FUTURE, FLIGHT_CONTAINS_BOUNDARY, and
   * as planFlight does, each naming its field.
   */
  async logFlights(
    actor: Actor,
    act: ActRequest,
    airframeId: string,
    { flights }: NewFlightsDto,
  ): Promise<FlightsAnswerDto> {
    const commands = flights.map((flight, index) => toFlightCommand(flight, `flights[${index}]`));
    const [only] = commands;
    if (only !== undefined && commands.length === 1 && only.exceptions.length === 0) {
      const place: LogPlace = { airframeId, flight: only, path: 'flights[0]' };
      const answer = await this.boundaries.named(
        actor,
        () => place,
        () => this.logOne(actor, act, place),
      );
      if (answer !== null) return answer;
    }
    return this.logAll(actor, act, airframeId, commands);
  }

  private async logOne(actor: Actor, act: ActRequest, place: LogPlace): Promise<FlightsAnswerDto | null> {
    const done = await this.log.one(actor, act, place);
    if (done === null) return null;
    const { answer, opening } = done;
    if ('flight' in answer) {
      act.answered({ status: 201, version: null });
      return this.answerOf(actor, place.flight, { logged: answer.flight, opening });
    }
    const kept = JSON.parse(answer.replay.body) as LoggedFlight | FlightsAnswerDto;
    act.answered({ status: answer.replay.status, version: null });
    // A late flight went by an act of its own, which kept its answer whole.
    return 'flights' in kept ? kept : this.answerOf(actor, place.flight, { logged: kept, opening });
  }

  private async answerOf(
    actor: Actor,
    flight: FlightCommand,
    { logged, opening }: { readonly logged: LoggedFlight; readonly opening: OpeningPart },
  ): Promise<FlightsAnswerDto> {
    const newlyOver =
      logged.passed.length === 0
        ? []
        : await this.database.inOperator(actor, (tx) => describeReached(tx, actor.operatorId, logged.passed));
    return {
      flights: [loggedToWire(flight, logged)],
      airframe: flownSince(opening, logged),
      late: logged.late,
      newlyOver,
      newlyUnknown: [],
      overruns: [],
    };
  }

  private logAll(
    actor: Actor,
    act: ActRequest,
    airframeId: string,
    commands: readonly FlightCommand[],
  ): Promise<FlightsAnswerDto> {
    const { operatorId } = actor;
    let underWay = { flight: orNotFound(commands[0], 'flight'), path: 'flights[0]' };
    const work = () =>
      this.acts.perform(actor, act, async (tx) => {
        await lockForStays(tx, operatorId, { airframeIds: [airframeId], componentIds: [] });
        const before = await this.consequences.beforeOnAirframes(
          tx,
          operatorId,
          [airframeId],
          await isAnyLate(tx, operatorId, airframeId, commands),
        );
        const logged: LoggedFlight[] = [];
        for (const [index, flight] of commands.entries()) {
          underWay = { flight, path: `flights[${index}]` };
          logged.push(await this.log.within(tx, actor, act, { airframeId, ...underWay }));
        }
        const late = logged.some((flight) => flight.late);
        if (late) await this.projections.dueOnAirframes(tx, operatorId, [airframeId]);
        const body: FlightsAnswerDto = {
          flights: commands.map((flight, index) =>
            loggedToWire(flight, { id: logged[index]?.id ?? flight.id, airframeId }),
          ),
          ...(await this.stateAfter(tx, operatorId, { airframeId, before })),
          late,
        };
        return { status: 201, body, resource: `/api/airframes/${airframeId}/flights` };
      });
    return this.boundaries.named(actor, () => underWay, work);
  }

  /** What the airframe has flown now, and what is newly broken since `before`. */
  async stateAfter(
    tx: Tx,
    operatorId: number,
    { airframeId, before }: { readonly airframeId: string; readonly before: Before },
  ): Promise<ConsequencesDto & { airframe: AirframeFlownDto }> {
    const counters = await airframeCounters(tx, operatorId, [airframeId], null);
    return {
      airframe: flownToWire(counters.get(airframeId)),
      ...(await this.consequences.since(tx, operatorId, before)),
    };
  }
}

/** Whether one of these flights lands before something that is recorded already; the caller holds the airframe's head. */
async function isAnyLate(
  tx: Tx,
  operatorId: number,
  airframeId: string,
  commands: readonly FlightCommand[],
): Promise<boolean> {
  const head = await tx.carrier.findUnique({
    where: { operatorId_id: { operatorId, id: airframeId } },
    select: { lastBoundaryAt: true },
  });
  const last = head?.lastBoundaryAt ?? null;
  return last !== null && commands.some((flight) => flight.landingAt <= toInstant(last));
}
