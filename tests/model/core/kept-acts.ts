import type { LoggedFlight } from '@strutbook/domain/stays/boundary.js';
import type { StayFacts } from '@strutbook/domain/stays/plan-stay.js';
import { type Instant, instant } from '@strutbook/domain/units/minutes.js';
import type { Stay } from '@strutbook/domain/usage/flatten-exposures.js';
import type { Act } from './act.js';
import { modelOf, slotPlaces } from './driven-world.js';
import type { KeptWorld } from './kept-world.js';
import { COMPONENTS, SLOTS } from './world.js';

/** Records one act in the kept world, by the core's own plans; false when the core refuses it. */
export function record(world: KeptWorld, act: Act): boolean {
  switch (act.kind) {
    case 'fly':
      return world.logFlight(act.flight);
    case 'void':
      world.voidFlight(act.id);
      return true;
    case 'correct':
      world.voidFlight(act.id);
      return world.logFlight(act.flight);
    case 'change':
      return recordChange(world, act);
    case 'move':
      return recordMove(world, act);
    case 'rate': {
      const at = instant(act.at);
      world.ratings.push({ componentId: act.engine, at, ratingId: act.rating });
      world.flattenAgain(act.engine, { from: at, to: null });
      return true;
    }
    case 'shift':
      recordShift(world, act);
      return true;
  }
}

function recordChange(
  world: KeptWorld,
  { slot, off, on, at: told }: Extract<Act, { kind: 'change' }>,
): boolean {
  const at = instant(told);
  const place = slotPlaces.get(slot);
  const boundary = { kind: 'instant', at } as const;
  const planned = world.core.planChange(
    {
      slotId: slot,
      off: off === null ? null : { expectedSerial: off, boundary, toLocationId: 'store' },
      on: on === null ? null : { componentId: on, boundary },
    },
    {
      slot: {
        id: slot,
        kind: SLOTS.find(({ id }) => id === slot)?.kind ?? '',
        positionNumber: 1,
        authorisedModelIds: null,
        stays: world.stays.filter((stay) => stay.slotId === slot),
      },
      components: new Map(
        COMPONENTS.map(({ id, kind }) => [
          id,
          { ...known, id, serial: id, kind, modelId: modelOf.get(id) ?? null, stays: staysOf(world, id) },
        ]),
      ),
      flights: place?.kind === 'position' ? flightsOf(world, [place.airframeId]) : [],
      offsetMinutes: 0,
      lifeObjections: [],
    },
  );
  if (!planned.ok) return false;
  for (const { stayId, at: end } of planned.value.ends) endStay(world, stayId, end);
  for (const { componentId, slotId, locationId, from, to } of planned.value.opens)
    world.stays.push({
      id: `${componentId}#${world.stays.length}`,
      componentId,
      slotId,
      locationId,
      from,
      to,
    });
  for (const id of [off, on]) if (id !== null) world.flattenAgain(id, { from: at, to: null });
  return true;
}

const opening = { at: instant(0), source: 'the beginning of the record' };
const known = { serviceable: true, opening, manufacturedAt: null, scrappedAt: null };

function recordMove(
  world: KeptWorld,
  { component, place, at: told }: Extract<Act, { kind: 'move' }>,
): boolean {
  const at = instant(told);
  const boundary = { kind: 'instant', at } as const;
  const open = staysOf(world, component).find((stay) => stay.to === null);
  if (open === undefined) throw new Error(`${component} is nowhere`);
  const facts = factsOf(world, component, [open.slotId, place], at);
  const requested =
    place === null
      ? ({ kind: 'location', locationId: 'store' } as const)
      : ({ kind: 'slot', slotId: place } as const);
  if (open.slotId === null || open.slotId === place) {
    // Out of the store, or to where it is: one placement.
    const planned = world.core.planPlacement({ componentId: component, place: requested, boundary }, facts);
    if (!planned.ok) return false;
  } else {
    const ended = world.core.planEnd(open, boundary, facts);
    if (!ended.ok) return false;
    const componentStays = facts.componentStays.map((stay) =>
      stay.id === open.id ? { ...stay, to: ended.value.at } : stay,
    );
    const planned = world.core.planPlacement(
      { componentId: component, place: requested, boundary },
      { ...facts, componentStays },
    );
    if (!planned.ok) return false;
  }
  endStay(world, open.id, at);
  const locationId = place === null ? 'store' : null;
  world.stays.push({
    id: `${component}#${world.stays.length}`,
    componentId: component,
    slotId: place,
    locationId,
    from: at,
    to: null,
  });
  world.flattenAgain(component, { from: at, to: null });
  return true;
}

/** Another instant for the beginning of a stay, and so for the end of the one before. */
function recordShift(
  world: KeptWorld,
  { component, stay: number, at: told }: Extract<Act, { kind: 'shift' }>,
): void {
  const stays = [...staysOf(world, component)].sort((a, b) => a.from - b.from);
  const [before, after] = [stays[number - 1], stays[number]];
  if (before === undefined || after === undefined) throw new Error(`${component} has no stay ${number}`);
  const at = instant(told);
  replace(world, { ...before, to: at });
  replace(world, { ...after, from: at });
  const span = at < after.from ? { from: at, to: after.from } : { from: after.from, to: at };
  world.flattenAgain(component, span);
}

function staysOf(world: KeptWorld, component: string): readonly Stay[] {
  return world.stays.filter((stay) => stay.componentId === component);
}

function endStay(world: KeptWorld, id: string, at: Instant): void {
  const stay = world.stays.find((each) => each.id === id);
  if (stay === undefined) throw new Error(`no stay ${id}`);
  replace(world, { ...stay, to: at });
}

function replace(world: KeptWorld, stay: Stay): void {
  world.stays[world.stays.findIndex((each) => each.id === stay.id)] = stay;
}

function factsOf(
  world: KeptWorld,
  component: string,
  slots: readonly (string | null)[],
  at: Instant,
): StayFacts {
  const [left, entered] = slots;
  const airframes = [
    airframeUp(world, left ?? null, instant(at - 1)),
    airframeUp(world, entered ?? null, at),
  ];
  return {
    componentStays: staysOf(world, component),
    slotStays: world.stays.filter((stay) => stay.slotId !== null && stay.slotId === entered),
    ownSlotIds: new Set(SLOTS.filter((slot) => slot.parent === component).map((slot) => slot.id)),
    flights: flightsOf(
      world,
      airframes.filter((airframe) => airframe !== null),
    ),
    offsetMinutes: 0,
    opening,
    manufacturedAt: null,
    scrappedAt: null,
  };
}

/** The airframe that carries a slot at an instant. */
function airframeUp(world: KeptWorld, slotId: string | null, at: Instant): string | null {
  const place = slotId === null ? undefined : slotPlaces.get(slotId);
  if (place === undefined || place.kind === 'test-cell') return null;
  if (place.kind === 'position') return place.airframeId;
  const stay = staysOf(world, place.componentId).find(
    (each) => each.from <= at && (each.to === null || at < each.to),
  );
  return airframeUp(world, stay?.slotId ?? null, at);
}

function flightsOf(world: KeptWorld, airframes: readonly string[]): readonly LoggedFlight[] {
  return [...world.flights.values()]
    .filter(({ airframe }) => airframes.includes(airframe))
    .map(({ flight }) => ({
      id: flight.id,
      page: null,
      takeOffAt: flight.takeOffAt,
      landingAt: flight.landingAt,
    }));
}
