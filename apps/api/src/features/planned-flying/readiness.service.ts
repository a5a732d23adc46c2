import { Injectable } from '@nestjs/common';
import { flightsAtRate, type PlannedLeg } from '@strutbook/domain/due/planned-flights.js';
import { formatHours } from '@strutbook/domain/units/minutes.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import type { Airframe } from '../../platform/database/generated/client.js';
import { instantToWire, toInstant } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import {
  type DutyInPlan,
  legOf,
  PlannedFlying,
  type ReadinessForPlan,
} from '../../records/planning/planned-flying.js';
import { refuseFaults, typedLeg } from './planned-flights.service.js';
import { refuseRate } from './planned-rates.service.js';
import type {
  AskedReadinessDto,
  ReadinessDto,
  ReadinessFlightDto,
  ReadinessItemDto,
} from './readiness.dto.js';

interface Named {
  readonly flightNumber: string | null;
  readonly fromStation: string | null;
  readonly toStation: string | null;
}

/** The flying that is looked ahead on. */
interface Flying {
  readonly basis: ReadinessDto['basis'];
  readonly legs: readonly (PlannedLeg & Named)[];
}

const UNNAMED: Named = { flightNumber: null, fromStation: null, toStation: null };

/** Which of the flights to come an airframe may make, as its records stand. */
@Injectable()
export class ReadinessService {
  constructor(
    private readonly database: Database,
    private readonly planned: PlannedFlying,
    private readonly clock: Clock,
  ) {}

  /** Readiness for flights, a rate, or the flights planned. Changes nothing. Refuses: NOT_FOUND, INVALID_FIELDS. */
  of(actor: Actor, airframeId: string, asked: AskedReadinessDto): Promise<ReadinessDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const airframe = orNotFound(
        await tx.airframe.findUnique({ where: { operatorId_id: { operatorId, id: airframeId } } }),
        'airframe',
      );
      const flying = await this.flyingOf(tx, operatorId, airframeId, asked);
      const plan = await this.planned.readiness(tx, operatorId, airframe, flying.legs);
      const notLogged = await this.planned.notLogged(tx, operatorId, airframeId);
      return readinessToWire(airframe, flying, plan, notLogged);
    });
  }

  private async flyingOf(
    tx: Tx,
    operatorId: number,
    airframeId: string,
    { flights, rate }: AskedReadinessDto,
  ): Promise<Flying> {
    if (flights !== undefined && rate !== undefined)
      refuse({
        code: 'INVALID_FIELDS',
        fields: [
          { field: 'rate', reason: 'Both flights and a rate are given.', fix: 'Give one of the two.' },
        ],
      });
    if (flights !== undefined) {
      refuseFaults(flights.map(typedLeg), this.clock.now());
      const legs = flights.map((flight) => ({ ...UNNAMED, ...flight, ...typedLeg(flight) }));
      return { basis: 'flights', legs: legs.sort((a, b) => a.takeOffAt - b.takeOffAt) };
    }
    if (rate !== undefined) {
      refuseRate(rate, 'rate.');
      const legs = flightsAtRate(rate, toInstant(this.clock.now()), rate.horizonDays);
      if (legs.length > 5000)
        refuse({
          code: 'INVALID_FIELDS',
          fields: [
            {
              field: 'rate.flights',
              reason: `That is ${legs.length} flights.`,
              fix: 'Look ahead fewer days: up to 5,000 flights.',
            },
          ],
        });
      return { basis: 'rate', legs: legs.map((leg) => ({ ...UNNAMED, ...leg })) };
    }
    const kept = await this.planned.toCome(tx, operatorId, airframeId);
    return {
      basis: 'kept',
      legs: kept.map((row) => ({
        ...{ flightNumber: row.flightNumber, fromStation: row.fromStation, toStation: row.toStation },
        ...legOf(row),
      })),
    };
  }
}

function readinessToWire(
  { id, registration, dayZone }: Airframe,
  { basis, legs }: Flying,
  { duties, lastAllowed }: ReadinessForPlan,
  notLogged: number,
): ReadinessDto {
  const notVerified = duties.filter((duty) => duty.notVerified && duty.breaksOnFlight === null);
  const reached = duties
    .filter((duty) => duty.breaksOnFlight !== null || (duty.dueOnFlight !== null && !duty.notVerified))
    .sort(bySeverity);
  const flights = legs.map((leg, index) => flightToWire(leg, index, lastAllowed));
  const verdict = verdictOf({ count: legs.length, lastAllowed, unknown: notVerified.length });
  return {
    ...{ airframeId: id, registration, dayZone, basis, basisText: basisText(legs, basis), verdict },
    statement: statementOf(verdict, flights, notVerified.length),
    lastAllowed: lastAllowed + 1,
    flights,
    notVerified: notVerified.map(itemToWire),
    items: reached.map(itemToWire),
    notLogged,
  };
}

function verdictOf({
  count,
  lastAllowed,
  unknown,
}: {
  readonly count: number;
  readonly lastAllowed: number;
  readonly unknown: number;
}): ReadinessDto['verdict'] {
  if (count === 0) return 'no-flights';
  if (lastAllowed < 0) return 'none';
  if (unknown > 0) return 'not-verified';
  return lastAllowed === count - 1 ? 'all' : 'some';
}

function statementOf(
  verdict: ReadinessDto['verdict'],
  flights: readonly ReadinessFlightDto[],
  unknown: number,
): string {
  const last = flights.findLast((flight) => flight.allowed);
  const things = unknown === 1 ? 'One item is' : `${unknown} items are`;
  switch (verdict) {
    case 'no-flights':
      return 'No flights to come are planned.';
    case 'none':
      return 'No flight may be made: something is over, or would be before the first landing.';
    case 'not-verified':
      return last?.number === flights.length
        ? `No readiness can be stated: ${things} not verified. Nothing else forbids a flight.`
        : `No readiness can be stated: ${things} not verified. By what is known, the last flight that may be made is ${flightWords(last)}.`;
    case 'all':
      return flights.length === 1 ? 'The flight may be made.' : `All ${flights.length} flights may be made.`;
    case 'some':
      return `The last flight that may be made is ${flightWords(last)}.`;
  }
}

function flightWords(flight: ReadinessFlightDto | undefined): string {
  if (flight === undefined) return 'none';
  const { number, flightNumber, fromStation, toStation, takeOffAt } = flight;
  const way = fromStation === null || toStation === null ? '' : `, ${fromStation} to ${toStation}`;
  return `number ${number}${flightNumber === null ? '' : ` (${flightNumber})`}${way}, take-off ${takeOffAt.replace('T', ' ').replace('Z', '')} UTC`;
}

function basisText(legs: readonly PlannedLeg[], basis: ReadinessDto['basis']): string {
  const minutes = legs.reduce((sum, leg) => sum + leg.landingAt - leg.takeOffAt, 0);
  const what = `${legs.length === 1 ? '1 flight' : `${legs.length} flights`}, ${formatHours(minutes)} hours`;
  const counted = 'each one flight, one landing and one start';
  switch (basis) {
    case 'flights':
      return `Flights entered: ${what}; ${counted}.`;
    case 'rate':
      return `Flights at the rate, evenly spread: ${what}; ${counted}.`;
    case 'kept':
      return `Flights planned and kept: ${what}; ${counted}.`;
  }
}

function flightToWire(leg: PlannedLeg & Named, index: number, lastAllowed: number): ReadinessFlightDto {
  const { flightNumber, fromStation, toStation, takeOffAt, landingAt } = leg;
  return {
    ...{ number: index + 1, flightNumber, fromStation, toStation },
    takeOffAt: instantToWire(takeOffAt),
    landingAt: instantToWire(landingAt),
    minutes: landingAt - takeOffAt,
    allowed: index <= lastAllowed,
  };
}

function itemToWire(duty: DutyInPlan): ReadinessItemDto {
  const { kind, name, of, requirementId, componentId, engineSerial, positionNumber, combine, reason } = duty;
  const fromOne = (place: number | null) => (place === null ? null : place + 1);
  return {
    ...{ kind, name, of, requirementId, componentId, engineSerial, positionNumber, combine, reason },
    left: duty.left.map((each) => ({ ...each })),
    dueOnFlight: fromOne(duty.dueOnFlight),
    breaksOnFlight: fromOne(duty.breaksOnFlight),
  };
}

function bySeverity(a: DutyInPlan, b: DutyInPlan): number {
  const order = (place: number | null) => place ?? Number.MAX_SAFE_INTEGER;
  return (
    order(a.breaksOnFlight) - order(b.breaksOnFlight) ||
    order(a.dueOnFlight) - order(b.dueOnFlight) ||
    a.name.localeCompare(b.name, 'en') ||
    a.of.localeCompare(b.of, 'en')
  );
}
