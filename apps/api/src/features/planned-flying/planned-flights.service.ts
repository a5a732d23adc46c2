import { Injectable } from '@nestjs/common';
import { type PlanFault, type PlannedLeg, planFaults } from '@strutbook/domain/due/planned-flights.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import type { PlannedFlight } from '../../platform/database/generated/client.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { momentOf, toInstant, toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import { legOf, PlannedFlying } from '../../records/planning/planned-flying.js';
import type {
  FlightsPlannedDto,
  NewPlannedFlightDto,
  NewPlannedFlightsDto,
  PlannedFlightDto,
  PlannedFlightsDto,
} from './planned-flight.dto.js';

/** Flights an airframe is planned to make: planned, replaced by a new plan, or voided with a reason. */
@Injectable()
export class PlannedFlightsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly planned: PlannedFlying,
    private readonly clock: Clock,
  ) {}

  /** Those to come. Refuses: NOT_FOUND. */
  list(actor: Actor, airframeId: string): Promise<PlannedFlightsDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const airframe = orNotFound(
        await tx.airframe.findUnique({ where: { operatorId_id: { operatorId, id: airframeId } } }),
        'airframe',
      );
      const flights = await this.planned.toCome(tx, operatorId, airframeId);
      return {
        airframeId,
        registration: airframe.registration,
        flights: flights.map(plannedFlightToWire),
        notLogged: await this.planned.notLogged(tx, operatorId, airframeId),
      };
    });
  }

  /**
   * Plans flights, and with `replace` voids those to come that were planned before.
   * Refuses: NOT_FOUND, INVALID_FIELDS (ends before it begins, past, overlap).
   */
  add(
    actor: Actor,
    act: ActRequest,
    airframeId: string,
    { flights, replace, reason = 'Replaced by a new plan' }: NewPlannedFlightsDto,
  ): Promise<FlightsPlannedDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      await lockAirframe(tx, operatorId, airframeId);
      const legs = flights.map(typedLeg);
      const kept = await this.planned.toCome(tx, operatorId, airframeId);
      refuseFaults(legs, this.clock.now());
      if (!replace) refuseOverlap(legs, kept);
      const number = await this.journal.number(tx);
      const replaced = replace ? kept.map(({ id }) => id) : [];
      if (replaced.length > 0)
        await tx.plannedFlight.updateMany({
          where: { operatorId, id: { in: replaced }, voidedSeq: null },
          data: { voidedSeq: number, voidReason: reason },
        });
      const rows = flights.map((flight) => ({ id: newId(), ...flightRow(flight) }));
      await tx.plannedFlight.createMany({
        data: rows.map((row) => ({ operatorId, airframeId, ...row, recordedSeq: number })),
      });
      const body = {
        ...{ airframeId, flights: flights.map(flightBody) },
        ...(replace ? { replaced, reason } : {}),
      };
      await this.journal.append(tx, actor, {
        ...{ number, stream: airframeId, kind: 'flights-planned', body, about: [airframeId], key: act.key },
      });
      const resource = `/api/airframes/${airframeId}/planned-flights`;
      return {
        ...{ status: 201, number, resource },
        body: { airframeId, planned: rows.length, replaced: replaced.length },
      };
    });
  }

  /** Voids a planned flight with its reason. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<PlannedFlightDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const where = { operatorId_id: { operatorId, id } };
      const { airframeId } = orNotFound(await tx.plannedFlight.findUnique({ where }), 'planned flight');
      await lockAirframe(tx, operatorId, airframeId);
      const number = await this.journal.number(tx);
      const { count } = await tx.plannedFlight.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'this planned flight' });
      await this.journal.append(tx, actor, {
        ...{ number, stream: airframeId, kind: 'planned-flight-voided', body: { id, reason } },
        ...{ about: [airframeId], key: act.key },
      });
      const row = await tx.plannedFlight.findUniqueOrThrow({ where });
      return {
        ...{ status: 200, body: plannedFlightToWire(row), number },
        resource: `/api/airframes/${airframeId}/planned-flights`,
      };
    });
  }
}

/** Holds the airframe's plans: of two acts the second sees the first. Refuses: NOT_FOUND. */
export async function lockAirframe(tx: Tx, operatorId: number, airframeId: string): Promise<void> {
  const [row] = await tx.$queryRaw<{ id: string }[]>`
    SELECT id FROM airframe WHERE operator_id = ${operatorId}::int AND id = ${airframeId}::uuid FOR NO KEY UPDATE`;
  orNotFound(row ?? null, 'airframe');
}

/** A planned flight as it was typed. Total. */
export function typedLeg({ takeOffAt, landingAt }: NewPlannedFlightDto): PlannedLeg {
  return { takeOffAt: toInstant(momentOf(takeOffAt)), landingAt: toInstant(momentOf(landingAt)) };
}

/** Refuses: INVALID_FIELDS, each fault with its flight's field. */
export function refuseFaults(legs: readonly PlannedLeg[], now: Date): void {
  const faults = planFaults(legs, toInstant(now));
  if (faults.length > 0) refuse({ code: 'INVALID_FIELDS', fields: faults.map(faultField) });
}

function faultField(fault: PlanFault) {
  const at = `flights[${fault.at}]`;
  switch (fault.code) {
    case 'ENDS_BEFORE_IT_BEGINS':
      return {
        field: `${at}.landingAt`,
        reason: 'It lands before it takes off, or at the same minute.',
        fix: 'Correct the landing: it may be of the next day.',
      };
    case 'IN_THE_PAST':
      return {
        field: `${at}.takeOffAt`,
        reason: 'This take-off is past: a plan is of flights to come.',
        fix: 'Enter what was flown in the log, and plan what is to come.',
      };
    case 'OVERLAP':
      return {
        field: `${at}.takeOffAt`,
        reason: `It takes off before flight ${fault.with + 1} of this list has landed.`,
        fix: 'Correct the times of one of the two.',
      };
  }
}

function refuseOverlap(legs: readonly PlannedLeg[], kept: readonly PlannedFlight[]): void {
  const fields = legs.flatMap((leg, at) => {
    const other = kept.find((row) => {
      const before = legOf(row);
      return leg.takeOffAt < before.landingAt && before.takeOffAt < leg.landingAt;
    });
    if (other === undefined) return [];
    return [
      {
        field: `flights[${at}].takeOffAt`,
        reason: `A flight is planned from ${toWire(other.takeOffAt)} to ${toWire(other.landingAt)} already.`,
        fix: 'Correct the times, void that flight, or let this plan replace the one before.',
      },
    ];
  });
  if (fields.length > 0) refuse({ code: 'INVALID_FIELDS', fields });
}

function flightRow({ flightNumber, fromStation, toStation, takeOffAt, landingAt }: NewPlannedFlightDto) {
  return {
    flightNumber: flightNumber ?? null,
    fromStation: fromStation ?? null,
    toStation: toStation ?? null,
    takeOffAt: momentOf(takeOffAt),
    landingAt: momentOf(landingAt),
  };
}

function flightBody({ flightNumber, fromStation, toStation, takeOffAt, landingAt }: NewPlannedFlightDto) {
  return {
    flightNumber: flightNumber ?? null,
    fromStation: fromStation ?? null,
    toStation: toStation ?? null,
    takeOffAt,
    landingAt,
  };
}

function plannedFlightToWire(row: PlannedFlight): PlannedFlightDto {
  const { takeOffAt, landingAt } = legOf(row);
  return {
    id: row.id,
    flightNumber: row.flightNumber,
    fromStation: row.fromStation,
    toStation: row.toStation,
    takeOffAt: toWire(row.takeOffAt),
    landingAt: toWire(row.landingAt),
    minutes: landingAt - takeOffAt,
    voided: row.voidedSeq !== null,
    voidReason: row.voidReason,
  };
}
