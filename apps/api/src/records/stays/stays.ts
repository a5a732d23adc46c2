import { Injectable } from '@nestjs/common';
import type { RefusalCode } from '@strutbook/domain/refusals.js';
import {
  type Boundary,
  type Precision,
  type ResolvedBoundary,
  resolveBoundary,
} from '@strutbook/domain/stays/boundary.js';
import { type Place, planPlacement } from '@strutbook/domain/stays/plan-stay.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { Stay } from '@strutbook/domain/usage/flatten-exposures.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { fromInstant } from '../../platform/http/instants.js';
import { orNotFound, orRefuse, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { voidReadingsOfStay } from '../counting/counter-readings.js';
import { beneathDuring, withAllAbove } from '../usage/kinship.js';
import { loadBoundaryFacts } from './boundary-facts.js';
import { refuseFutureBoundary } from './future-boundary.js';
import { airframesOfSlots, loadComponentFacts, loadSlotStays, lockForStays } from './stay-facts.js';

/** A placement as it is told; `until` makes it a stay of the past. */
export interface Placement {
  readonly componentId: string;
  readonly place: Place;
  readonly boundary: Boundary;
  readonly until: Boundary | null;
  /** The airframe whose log a page or a date refers to, where the place doesn't tell. */
  readonly airframeId: string | null;
  readonly reason: string | null;
}

/** A stay to write. */
export interface NewStay {
  readonly componentId: string;
  readonly slotId: string | null;
  readonly locationId: string | null;
  readonly from: Instant;
  readonly fromBoundary: Boundary;
  readonly to: Instant | null;
  readonly toBoundary: Boundary | null;
  readonly reason: string | null;
  readonly packageId: string | null;
}

/** What a placement did. */
export interface PlacedStay {
  readonly stayId: string;
  readonly componentId: string;
  readonly at: Instant;
  readonly precision: Precision;
  readonly endedStayId: string | null;
  /** When it ended again, for a stay of the past. */
  readonly until: Instant | null;
}

/** Stays are facts: opened, ended once, voided once. The caller flattens again what they touch. */
@Injectable()
export class Stays {
  constructor(private readonly clock: Clock) {}

  /**
   * Puts a component to a place, ending its open stay: at a location, or in another component when it goes to a
   * location. What is at a position leaves it by a change alone. Refuses as planPlacement does.
   */
  async place(tx: Tx, operatorId: number, placement: Placement, number: bigint): Promise<PlacedStay> {
    const { componentId, place, boundary, until } = placement;
    const airframeIds = await this.lock(tx, operatorId, placement);
    const facts = await loadBoundaryFacts(tx, operatorId, airframeIds, boundary);
    const component = orNotFound(
      (await loadComponentFacts(tx, operatorId, [componentId])).get(componentId),
      'component',
    );
    const slotStays = place.kind === 'slot' ? await loadSlotStays(tx, operatorId, place.slotId) : [];
    const { at: begins, precision } = orRefuse(resolveBoundary(boundary, facts));
    refuseFutureBoundary(boundary, begins, this.clock.now());
    const ends = until === null ? null : await this.ending(tx, operatorId, { until, begins, airframeIds });
    const within = await beneathDuring(tx, operatorId, componentId, {
      from: fromInstant(begins),
      to: ends === null ? null : fromInstant(ends.at),
    });
    const ownSlots = await tx.slot.findMany({
      where: { operatorId, componentId: { in: [componentId, ...within] } },
      select: { id: true },
    });
    // A stay of the past only has to fit between what is recorded before and after it.
    const overlapping = (stay: { from: Instant }) => ends === null || stay.from < ends.at;
    const planned = planPlacement(
      { componentId, place, boundary: { kind: 'instant', at: begins } },
      {
        ...facts,
        // Whose flights count depends on where everything hung at that very instant: the database's guard knows.
        flights: [],
        componentStays: component.stays.filter(overlapping),
        slotStays: slotStays.filter(overlapping),
        leavesSlot: until === null && (await isInComponent(tx, operatorId, component.stays)),
        ownSlotIds: new Set(ownSlots.map((slot) => slot.id)),
        opening: component.opening,
        manufacturedAt: component.manufacturedAt,
        scrappedAt: component.scrappedAt,
      },
    );
    const plan = orRefuse(planned, planned.ok ? undefined : fieldToBlame(planned.refusal.code, place));
    if (plan.ends !== null)
      await this.end(tx, operatorId, {
        stayId: plan.ends,
        at: plan.from,
        boundary,
        number,
        packageId: null,
        reason: placement.reason,
      });
    const stayId = await this.open(tx, operatorId, number, {
      componentId,
      slotId: place.kind === 'slot' ? place.slotId : null,
      locationId: place.kind === 'location' ? place.locationId : null,
      from: plan.from,
      fromBoundary: boundary,
      to: ends?.at ?? null,
      toBoundary: until,
      reason: placement.reason,
      packageId: null,
    });
    return { stayId, componentId, at: plan.from, precision, endedStayId: plan.ends, until: ends?.at ?? null };
  }

  /** The end of a stay of the past. Refuses as resolveBoundary does, ENDS_BEFORE_START, IN_THE_FUTURE. */
  private async ending(
    tx: Tx,
    operatorId: number,
    {
      until,
      begins,
      airframeIds,
    }: {
      readonly until: Boundary;
      readonly begins: Instant;
      readonly airframeIds: readonly string[];
    },
  ): Promise<ResolvedBoundary> {
    const ends = orRefuse(
      resolveBoundary(until, await loadBoundaryFacts(tx, operatorId, airframeIds, until)),
      until.kind === 'after-page' ? 'until.page' : 'until',
    );
    if (ends.at <= begins)
      refuse({ code: 'ENDS_BEFORE_START', stayId: 'new', from: begins, at: ends.at }, 'until');
    refuseFutureBoundary(until, ends.at, this.clock.now(), 'until');
    return ends;
  }

  /** Writes a stay; PostgreSQL has the last word on overlaps and flights. Answers its id. */
  async open(tx: Tx, operatorId: number, number: bigint, stay: NewStay): Promise<string> {
    const id = newId();
    await tx.stay.create({
      data: {
        operatorId,
        id,
        componentId: stay.componentId,
        slotId: stay.slotId,
        locationId: stay.locationId,
        fromAt: fromInstant(stay.from),
        fromKind: stay.fromBoundary.kind,
        fromText: boundaryText(stay.fromBoundary),
        ...(stay.to === null || stay.toBoundary === null
          ? {}
          : {
              toAt: fromInstant(stay.to),
              toKind: stay.toBoundary.kind,
              toText: boundaryText(stay.toBoundary),
              endedSeq: number,
            }),
        reason: stay.reason,
        packageId: stay.packageId,
        recordedSeq: number,
      },
    });
    return id;
  }

  /** Ends an open stay, once. */
  async end(
    tx: Tx,
    operatorId: number,
    end: {
      stayId: string;
      at: Instant;
      boundary: Boundary;
      number: bigint;
      packageId: string | null;
      reason: string | null;
    },
  ): Promise<void> {
    await tx.stay.updateMany({
      where: { operatorId, id: end.stayId, toAt: null, voidedSeq: null },
      data: {
        toAt: fromInstant(end.at),
        toKind: end.boundary.kind,
        toText: boundaryText(end.boundary),
        endReason: end.reason,
        endPackageId: end.packageId,
        endedSeq: end.number,
      },
    });
  }

  /** Voids a stay; the row stays, the place is free. Refuses: NOT_FOUND, ALREADY_VOIDED. Answers its component. */
  async void(
    tx: Tx,
    operatorId: number,
    { stayId, reason, number }: { stayId: string; reason: string; number: bigint },
  ): Promise<string> {
    const stay = orNotFound(
      await tx.stay.findUnique({ where: { operatorId_id: { operatorId, id: stayId } } }),
      'stay',
    );
    if (stay.voidedSeq !== null) refuse({ code: 'ALREADY_VOIDED', what: 'stay' });
    if (stay.slotId !== null) {
      const airframeIds = await airframesOfSlots(tx, operatorId, [stay.slotId], stay.fromAt);
      const componentIds = await withAllAbove(tx, operatorId, [stay.componentId]);
      await lockForStays(tx, operatorId, { airframeIds, componentIds });
    }
    await tx.stay.updateMany({
      where: { operatorId, id: stayId, voidedSeq: null },
      data: { voidedSeq: number, voidReason: reason },
    });
    await voidReadingsOfStay(tx, operatorId, { stayId, number, reason });
    return stay.componentId;
  }

  /**
   * Locks what a placement touches, with all it hung in or will: what carries the parent to another clock at the
   * same moment must see this stay, or be seen. Answers the airframes whose flights matter, the one of its log first.
   */
  private async lock(
    tx: Tx,
    operatorId: number,
    { componentId, place, boundary, airframeId }: Placement,
  ): Promise<string[]> {
    const open = await tx.stay.findFirst({
      where: { operatorId, componentId, voidedSeq: null, toAt: null },
      select: { slotId: true },
    });
    const slotIds = [
      ...(place.kind === 'slot' ? [place.slotId] : []),
      ...(open?.slotId == null ? [] : [open.slotId]),
    ];
    const at = boundary.kind === 'instant' ? fromInstant(boundary.at) : this.clock.now();
    const onThem = slotIds.length === 0 ? [] : await airframesOfSlots(tx, operatorId, slotIds, at);
    const airframeIds = [...new Set([...(airframeId === null ? [] : [airframeId]), ...onThem])];
    const into =
      place.kind === 'slot'
        ? await tx.slot.findUnique({
            where: { operatorId_id: { operatorId, id: place.slotId } },
            select: { componentId: true },
          })
        : null;
    const componentIds = await withAllAbove(tx, operatorId, [
      componentId,
      ...(into?.componentId == null ? [] : [into.componentId]),
    ]);
    await lockForStays(tx, operatorId, { airframeIds, componentIds });
    return airframeIds;
  }
}

/** The field of a placement, where the rule itself speaks of a change at a position or of a slot. */
function fieldToBlame(code: RefusalCode, place: Place): string | undefined {
  if (code === 'ALREADY_INSTALLED') return 'componentId';
  return code === 'SAME_PLACE' && place.kind === 'location' ? 'locationName' : undefined;
}

/** Whether the component is in a slot of another component or of a test cell now, and not at a position. */
async function isInComponent(tx: Tx, operatorId: number, stays: readonly Stay[]): Promise<boolean> {
  const slotId = stays.find((stay) => stay.to === null)?.slotId ?? null;
  if (slotId === null) return false;
  const slot = await tx.slot.findUnique({ where: { operatorId_id: { operatorId, id: slotId } } });
  return slot !== null && slot.positionId === null;
}

/** What was typed for a boundary that is not an instant. */
export function boundaryText(boundary: Boundary): string | null {
  switch (boundary.kind) {
    case 'instant':
      return null;
    case 'after-page':
      return boundary.page;
    case 'before-first':
    case 'after-last':
      return boundary.on;
  }
}
