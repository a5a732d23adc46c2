import { Injectable } from '@nestjs/common';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { fromInstant, toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Consequences } from '../../records/consequences/consequences.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { componentsByPage, followFacts } from '../../records/stays/follow-facts.js';
import { followPage, type MovedPage, staysByPage } from '../../records/stays/follow-page.js';
import { lockForStays } from '../../records/stays/stay-facts.js';
import { BoundaryInFlight } from './boundary-in-flight.js';
import type { CorrectFlightDto } from './flight.dto.js';
import { type FlightRow, flightToWire, loggedToWire } from './flight.mapper.js';
import { toFlightCommand } from './flight-command.js';
import { FlightLog } from './flight-log.js';
import type { FlightsAnswerDto } from './flight-view.dto.js';
import { FlightsService, WITH_EXCEPTIONS } from './flights.service.js';

/** Flights that were logged wrongly: voided, or voided and entered again, each as one act with its reason. */
@Injectable()
export class FlightCorrectionsService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly consequences: Consequences,
    private readonly log: FlightLog,
    private readonly flights: FlightsService,
    private readonly boundaries: BoundaryInFlight,
  ) {}

  /**
   * Voids a flight: its counts go from every counter, its row stays.
   * Refuses: NOT_FOUND, ALREADY_VOIDED, REFUSED_BY_FACTS (a component came or went by its log page).
   */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<FlightsAnswerDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const flight = await lockFlight(tx, operatorId, id);
      const { airframeId } = flight;
      await refuseFollowers(tx, operatorId, flight);
      const before = await this.consequences.beforeOnAirframes(tx, operatorId, [airframeId], true);
      const number = await this.journal.number(tx);
      await voidFlight(tx, operatorId, { id, number, reason });
      await this.projections.dueOnAirframes(tx, operatorId, [airframeId]);
      const body = {
        flightId: id,
        logPage: flight.logPage,
        takeOffAt: toWire(flight.takeOffAt),
        landingAt: toWire(flight.landingAt),
        reason,
      };
      await this.journal.append(tx, actor, {
        number,
        stream: airframeId,
        kind: 'flight-voided',
        body,
        about: [airframeId, id],
        key: act.key,
      });
      const answer: FlightsAnswerDto = {
        flights: [{ ...flightToWire(flight), voided: true, voidReason: reason }],
        ...(await this.flights.stateAfter(tx, operatorId, { airframeId, before })),
        late: await isBeforeBoundary(tx, operatorId, airframeId, flight.landingAt),
      };
      return { status: 200, body: answer, number, resource: `/api/flights/${id}` };
    });
  }

  /**
   * Voids a flight and enters it again as it was, in one act; what came or went by its log page moves along.
   * Refuses: NOT_FOUND, ALREADY_VOIDED, and as logging a flight and moving a stay do.
   */
  correct(
    actor: Actor,
    act: ActRequest,
    id: string,
    { reason, flight: told }: CorrectFlightDto,
  ): Promise<FlightsAnswerDto> {
    const { operatorId } = actor;
    const flight = toFlightCommand(told, 'flight');
    const work = () =>
      this.acts.perform(actor, act, async (tx) => {
        const wrong = await lockFlight(tx, operatorId, id);
        const { airframeId } = wrong;
        const before = await this.consequences.beforeOnAirframes(tx, operatorId, [airframeId], true);
        const number = await this.journal.number(tx);
        await voidFlight(tx, operatorId, { id, number, reason });
        // Before the flight is entered again: it must not find the boundary where the wrong one left it.
        const page: MovedPage = {
          airframeId,
          page: wrong.logPage,
          before: wrong.landingAt,
          after: fromInstant(flight.landingAt),
          pageNow: flight.logPage,
          number,
          reason,
        };
        const facts = await followFacts(tx, operatorId, page);
        const moved = [...new Set([...(await followPage(tx, operatorId, page)), ...facts])];
        const logged = await this.log.within(tx, actor, act, {
          airframeId,
          flight,
          path: 'flight',
          replacesId: id,
        });
        await this.projections.ofComponents(tx, operatorId, moved);
        await this.projections.dueOnAirframes(tx, operatorId, [airframeId]);
        const about = [airframeId, id, logged.id, ...moved];
        const body = { flightId: id, replacedBy: logged.id, movedWithIt: moved, reason };
        await this.journal.append(tx, actor, {
          number,
          stream: airframeId,
          kind: 'flight-corrected',
          body,
          about,
          key: act.key,
        });
        const answer: FlightsAnswerDto = {
          flights: [loggedToWire(flight, logged, id)],
          ...(await this.flights.stateAfter(tx, operatorId, { airframeId, before })),
          late: await isBeforeBoundary(tx, operatorId, airframeId, earlier(wrong.landingAt, flight)),
        };
        return { status: 201, body: answer, number, resource: `/api/flights/${logged.id}` };
      });
    return this.boundaries.named(actor, () => ({ flight, path: 'flight' }), work);
  }
}

type LockedFlight = FlightRow & { readonly airframeId: string };

/** The flight under the lock of its airframe's head. Refuses: NOT_FOUND, ALREADY_VOIDED. */
async function lockFlight(tx: Tx, operatorId: number, id: string): Promise<LockedFlight> {
  const where = { operatorId_id: { operatorId, id } };
  const { airframeId } = orNotFound(
    await tx.flight.findUnique({ where, select: { airframeId: true } }),
    'flight',
  );
  await lockForStays(tx, operatorId, { airframeIds: [airframeId], componentIds: [] });
  // Read again: whoever held the lock may have voided it.
  const flight = orNotFound(await tx.flight.findUnique({ where, include: WITH_EXCEPTIONS }), 'flight');
  if (flight.voidedSeq !== null)
    refuse({ code: 'ALREADY_VOIDED', what: `the flight of log page ${flight.logPage}` });
  return flight;
}

async function voidFlight(
  tx: Tx,
  operatorId: number,
  { id, number, reason }: { id: string; number: bigint; reason: string },
): Promise<void> {
  await tx.$executeRaw`SELECT void_flight(${operatorId}::int, ${id}::uuid, ${number}::bigint, ${reason})`;
}

async function refuseFollowers(
  tx: Tx,
  operatorId: number,
  { airframeId, logPage, landingAt }: LockedFlight,
): Promise<void> {
  const page = { airframeId, page: logPage, before: landingAt };
  const moved = await staysByPage(tx, operatorId, page);
  const followers = moved.length > 0 ? moved : await componentsByPage(tx, operatorId, page);
  if (followers.length === 0) return;
  const rows = await tx.component.findMany({
    where: { operatorId, id: { in: followers } },
    select: { serialNumber: true },
  });
  const serials = rows
    .map((row) => row.serialNumber)
    .sort()
    .join(', ');
  const what = moved.length > 0 ? `${serials} came or went` : `something of ${serials} began or ended`;
  refuse({
    code: 'REFUSED_BY_FACTS',
    reason: `By log page ${logPage} it is told when ${what}; without the flight that moment would hang in the air.`,
    fix: `Correct the flight instead, so that the moment moves along, or void that ${moved.length > 0 ? 'stay' : 'record'} first.`,
  });
}

/** Whether something on the airframe was recorded to begin or end at or after this landing. */
async function isBeforeBoundary(
  tx: Tx,
  operatorId: number,
  airframeId: string,
  landingAt: Date,
): Promise<boolean> {
  const head = await tx.carrier.findUniqueOrThrow({
    where: { operatorId_id: { operatorId, id: airframeId } },
    select: { lastBoundaryAt: true },
  });
  return head.lastBoundaryAt !== null && landingAt <= head.lastBoundaryAt;
}

function earlier(before: Date, flight: { readonly landingAt: Instant }): Date {
  const after = fromInstant(flight.landingAt);
  return before < after ? before : after;
}
