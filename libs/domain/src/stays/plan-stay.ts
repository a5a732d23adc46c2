import type { Refusal } from '../refusals.js';
import { accepted, type Result, refused } from '../result.js';
import type { Instant } from '../units/minutes.js';
import type { Stay } from '../usage/flatten-exposures.js';
import {
  type Boundary,
  flightAround,
  type LoggedFlight,
  type Precision,
  resolveBoundary,
} from './boundary.js';

/** Where a component is put: a slot or a location. */
export type Place =
  | { readonly kind: 'slot'; readonly slotId: string }
  | { readonly kind: 'location'; readonly locationId: string };

/** What is recorded around a stay that is planned. Stays that are voided are left out. */
export interface StayFacts {
  /** All stays of the component. */
  readonly componentStays: readonly Stay[];
  /** All stays in the slot it goes to or leaves; none for a location. */
  readonly slotStays: readonly Stay[];
  /** Whether coming to a location takes it out of the slot it is in: so a module or part leaves, an engine by a change. */
  readonly leavesSlot?: boolean;
  /** Slots in the component itself and in everything in it, at the boundary: it can't go there. */
  readonly ownSlotIds: ReadonlySet<string>;
  /** Flights around the boundary, of every airframe that carries the slot left or entered. */
  readonly flights: readonly LoggedFlight[];
  readonly offsetMinutes: number;
  readonly opening: { readonly at: Instant; readonly source: string } | null;
  readonly manufacturedAt: Instant | null;
  readonly scrappedAt: Instant | null;
}

/** A stay to open, with how exactly its beginning is known. */
export interface PlannedStay {
  readonly componentId: string;
  readonly place: Place;
  readonly from: Instant;
  readonly precision: Precision;
  /** The open stay elsewhere that ends as this one begins, if any. */
  readonly ends: string | null;
}

/** A stay to end, with how exactly its end is known. */
export interface PlannedEnd {
  readonly stayId: string;
  readonly at: Instant;
  readonly precision: Precision;
}

/** A placement as it is told. */
export interface PlacementRequest {
  readonly componentId: string;
  readonly place: Place;
  readonly boundary: Boundary;
}

/**
 * Plans that a component comes to a place and stays there.
 *
 * Its open stay at a location ends by it. One in a slot ends by it when it comes to a location and may leave
 * like that; to come into another slot it must be taken out first.
 * Refuses: NO_SUCH_LOG_PAGE, INSIDE_A_FLIGHT, BEFORE_OPENING, BEFORE_MANUFACTURE, AFTER_SCRAP, SAME_PLACE,
 * ALREADY_INSTALLED, STAY_OVERLAP, SLOT_OCCUPIED, INSIDE_ITSELF.
 */
export function planPlacement(request: PlacementRequest, facts: StayFacts): Result<PlannedStay, Refusal> {
  const resolved = resolveBoundary(request.boundary, facts);
  if (!resolved.ok) return resolved;
  const { at, precision } = resolved.value;
  const { componentId, place } = request;
  const refusal =
    refusalOfInstant(componentId, at, facts) ??
    refusalOfComponent(componentId, place, at, facts) ??
    refusalOfSlot(componentId, place, at, facts);
  if (refusal !== null) return refused(refusal);
  const open = facts.componentStays.find((stay) => stay.to === null);
  return accepted({ componentId, place, from: at, precision, ends: open?.id ?? null });
}

/**
 * Plans that an open stay ends.
 *
 * Refuses: NO_SUCH_LOG_PAGE, INSIDE_A_FLIGHT, BEFORE_OPENING, BEFORE_MANUFACTURE, AFTER_SCRAP, NOT_OPEN,
 * ENDS_BEFORE_START (a stay has at least one minute).
 */
export function planEnd(stay: Stay, boundary: Boundary, facts: StayFacts): Result<PlannedEnd, Refusal> {
  const resolved = resolveBoundary(boundary, facts);
  if (!resolved.ok) return resolved;
  const { at, precision } = resolved.value;
  if (stay.to !== null) return refused({ code: 'NOT_OPEN', stayId: stay.id, to: stay.to });
  const refusal = refusalOfInstant(stay.componentId, at, facts);
  if (refusal !== null) return refused(refusal);
  if (at <= stay.from) return refused({ code: 'ENDS_BEFORE_START', stayId: stay.id, from: stay.from, at });
  return accepted({ stayId: stay.id, at, precision });
}

/** Whether something may happen to the component at that instant at all; null when it may. Total. */
export function refusalOfInstant(
  componentId: string,
  at: Instant,
  facts: Pick<StayFacts, 'flights' | 'opening' | 'manufacturedAt' | 'scrappedAt'>,
): Refusal | null {
  const { opening, manufacturedAt, scrappedAt } = facts;
  const inTheAir = flightAround(at, facts.flights);
  if (inTheAir !== null) {
    const { id, page, takeOffAt, landingAt } = inTheAir;
    return { code: 'INSIDE_A_FLIGHT', at, flightId: id, page, takeOffAt, landingAt };
  }
  if (opening !== null && at < opening.at)
    return { code: 'BEFORE_OPENING', componentId, at, openingAt: opening.at, source: opening.source };
  if (manufacturedAt !== null && at < manufacturedAt)
    return { code: 'BEFORE_MANUFACTURE', componentId, at, manufacturedAt };
  if (scrappedAt !== null && at >= scrappedAt) return { code: 'AFTER_SCRAP', componentId, at, scrappedAt };
  return null;
}

// The new stay is open, so any stay of the component that is not over by then overlaps it, save an
// open one that ends by it.
function refusalOfComponent(
  componentId: string,
  place: Place,
  at: Instant,
  { componentStays, leavesSlot = false }: StayFacts,
): Refusal | null {
  for (const stay of componentStays) {
    if (stay.to !== null && stay.to <= at) continue;
    if (stay.to === null && isAt(stay, place) && stay.from <= at)
      return { code: 'SAME_PLACE', componentId, stayId: stay.id };
    const leaves = place.kind === 'location' && leavesSlot && stay.from < at;
    if (stay.to === null && stay.slotId !== null && stay.from <= at && !leaves)
      return { code: 'ALREADY_INSTALLED', componentId, stayId: stay.id, slotId: stay.slotId, at };
    if (stay.to !== null || stay.from >= at)
      return { code: 'STAY_OVERLAP', componentId, stayId: stay.id, at };
  }
  return null;
}

function isAt(stay: Stay, place: Place): boolean {
  return place.kind === 'slot' ? stay.slotId === place.slotId : stay.locationId === place.locationId;
}

function refusalOfSlot(componentId: string, place: Place, at: Instant, facts: StayFacts): Refusal | null {
  if (place.kind === 'location') return null;
  const { slotId } = place;
  if (facts.ownSlotIds.has(slotId)) return { code: 'INSIDE_ITSELF', componentId, slotId };
  const there = facts.slotStays.find((stay) => stay.slotId === slotId && (stay.to === null || stay.to > at));
  if (there === undefined) return null;
  return { code: 'SLOT_OCCUPIED', slotId, stayId: there.id, componentId: there.componentId, at };
}
