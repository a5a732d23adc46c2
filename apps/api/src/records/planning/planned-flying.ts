import { Injectable } from '@nestjs/common';
import { type PlannedLeg, plannedCounts } from '@strutbook/domain/due/planned-flights.js';
import { type DutyReadiness, dutyReadiness, lastFlightAllowed } from '@strutbook/domain/due/readiness.js';
import type { PlannedReach } from '@strutbook/domain/release/snapshot.js';
import type { Tx } from '../../platform/database/database.js';
import type { PlannedFlight } from '../../platform/database/generated/client.js';
import { fromInstant, toInstant } from '../../platform/http/instants.js';
import { Clock } from '../../platform/time/clock.js';
import { packageRequirements } from '../requirements/package-requirements.js';
import { dayIn } from '../stays/day-zone.js';
import { Structure } from '../stays/structure.js';
import { type DutyOnAirframe, dutiesOnAirframe } from './duties-on-airframe.js';

/** A duty with what the planned flights do to it. */
export interface DutyInPlan extends DutyOnAirframe, DutyReadiness {}

/** Which of planned flights may be made. Flights are told by their place, from 0. */
export interface ReadinessForPlan {
  readonly duties: readonly DutyInPlan[];
  /** The last flight that may be made: −1 when none may. */
  readonly lastAllowed: number;
}

interface AirframeZone {
  readonly id: string;
  readonly dayZone: string;
}

/** What planned flights, or a rate, use up of everything on an airframe. */
@Injectable()
export class PlannedFlying {
  constructor(
    private readonly structure: Structure,
    private readonly clock: Clock,
  ) {}

  /** The planned flights of an airframe that are still to come, in order. */
  toCome(tx: Tx, operatorId: number, airframeId: string): Promise<PlannedFlight[]> {
    return tx.plannedFlight.findMany({
      where: { operatorId, airframeId, voidedSeq: null, takeOffAt: { gte: this.clock.now() } },
      orderBy: { takeOffAt: 'asc' },
    });
  }

  /**
   * How many planned flights should have been made by now, and no flight of the log lies in their time: what they used
   * is counted nowhere.
   */
  async notLogged(tx: Tx, operatorId: number, airframeId: string): Promise<number> {
    const [row] = await tx.$queryRaw<{ count: number }[]>`
      SELECT count(*)::int AS count FROM planned_flight p
       WHERE p.operator_id = ${operatorId}::int AND p.airframe_id = ${airframeId}::uuid AND p.voided_seq IS NULL
         AND p.take_off_at < ${this.clock.now()}::timestamptz
         AND NOT EXISTS (SELECT FROM flight f WHERE f.operator_id = p.operator_id AND f.airframe_id = p.airframe_id
               AND f.voided_seq IS NULL AND tstzrange(f.take_off_at, f.landing_at) && tstzrange(p.take_off_at, p.landing_at))`;
    return row?.count ?? 0;
  }

  /** What the flights planned would make over and is not yet, but for requirements that a package accomplishes. */
  async reached(
    tx: Tx,
    operatorId: number,
    { airframeId, packageId }: { readonly airframeId: string; readonly packageId: string },
  ): Promise<readonly PlannedReach[]> {
    const legs = (await this.toCome(tx, operatorId, airframeId)).map(legOf);
    if (legs.length === 0) return [];
    const airframe = await tx.airframe.findUniqueOrThrow({
      where: { operatorId_id: { operatorId, id: airframeId } },
      select: { id: true, dayZone: true },
    });
    const { duties } = await this.readiness(tx, operatorId, airframe, legs);
    const named = await packageRequirements(tx, operatorId, packageId);
    const isMet = (duty: DutyOnAirframe) =>
      named.some(
        (row) =>
          row.requirementId === duty.requirementId &&
          (row.componentId ?? row.positionId ?? row.airframeId) === duty.subjectId,
      );
    return duties.flatMap((duty) => {
      const leg = duty.breaksOnFlight === null ? undefined : legs[duty.breaksOnFlight];
      const isOver = duty.left.length === 0 || duty.left.some(({ untilLatest }) => untilLatest < 0);
      const { requirementId, componentId, name, of, positionNumber } = duty;
      const id = requirementId ?? componentId;
      if (leg === undefined || isOver || id === null || isMet(duty)) return [];
      const kind = requirementId === null ? ('component' as const) : ('requirement' as const);
      return [{ record: { kind, id }, name, on: of, positionNumber, takeOffAt: leg.takeOffAt }];
    });
  }

  /** Which of these flights, in order, may be made: a constant number of statements. */
  async readiness(
    tx: Tx,
    operatorId: number,
    { id: airframeId, dayZone }: AirframeZone,
    legs: readonly PlannedLeg[],
  ): Promise<ReadinessForPlan> {
    const slots = await this.structure.onAirframes(tx, operatorId, [airframeId], null);
    const tops = slots.flatMap((slot) => slot.componentId ?? []);
    const beneath = tops.length === 0 ? [] : await this.structure.beneath(tx, operatorId, tops, null);
    const componentIds = [...tops, ...beneath.flatMap((slot) => slot.componentId ?? [])];
    const today = dayIn(dayZone, this.clock.now());
    const duties = await dutiesOnAirframe(tx, operatorId, { airframeId, componentIds }, today);
    const flights = legs.map((leg) => ({
      adds: plannedCounts(leg),
      landsOn: dayIn(dayZone, fromInstant(leg.landingAt)),
    }));
    const inPlan = duties.map((duty) => ({ ...duty, ...dutyReadiness(duty, flights) }));
    return {
      duties: inPlan,
      lastAllowed: lastFlightAllowed(
        inPlan.map((duty) => duty.breaksOnFlight),
        flights.length,
      ),
    };
  }
}

/** A planned flight as the core takes it. Total. */
export function legOf({ takeOffAt, landingAt }: Pick<PlannedFlight, 'takeOffAt' | 'landingAt'>): PlannedLeg {
  return { takeOffAt: toInstant(takeOffAt), landingAt: toInstant(landingAt) };
}
