import type { Act, ToldFlight } from './act.js';
import type { PlainModel } from './plain-model.js';
import { AIRFRAMES, COMPONENTS, SLOTS } from './world.js';

/**
 * What can be true: which acts a record may hold. Plain rules over the plain lists, of their own.
 */

const airframeAt = new Map(
  AIRFRAMES.flatMap(({ id, positions }) => positions.map((position) => [position, id] as const)),
);
const slots = new Map(SLOTS.map((slot) => [slot.id, slot]));
const kinds = new Map(COMPONENTS.map((component) => [component.id, component.kind]));

function airframeOf(model: PlainModel, slot: string | null, occupant: string, at: number): string | null {
  const place = model.carriedBy(slot, occupant, at);
  return place === null ? null : (airframeAt.get(place.position) ?? null);
}

/** Whether an instant lies after a take-off and before the landing of a flight of one of the airframes. */
function insideFlight(model: PlainModel, airframes: readonly (string | null)[], at: number): boolean {
  return model.flights.some(
    (each) => airframes.includes(each.airframe) && each.takeOff < at && at < each.landing,
  );
}

/** Whether a flight overlaps no other of its airframe, and no boundary of what it carries lies inside it. */
export function isSound(model: PlainModel, flight: ToldFlight, instead: string | null): boolean {
  const others = model.flights.filter((each) => each.airframe === flight.airframe && each.id !== instead);
  if (others.some((each) => each.takeOff < flight.landing && flight.takeOff < each.landing)) return false;
  return !changesOf(model).some(
    ({ at, airframes }) =>
      flight.takeOff < at && at < flight.landing && airframes().includes(flight.airframe),
  );
}

interface Change {
  readonly at: number;
  readonly airframes: () => readonly (string | null)[];
}

/** Every boundary of a stay and every change of rating, with the airframes it touches just before and after. */
function changesOf(model: PlainModel): readonly Change[] {
  const changes: Change[] = [];
  for (const [id, entries] of model.entries) {
    entries.forEach((entry, index) => {
      const before = entries[index - 1];
      if (before === undefined) return;
      const airframes = () => [
        airframeOf(model, before.slot, id, entry.from - 1),
        airframeOf(model, entry.slot, id, entry.from),
      ];
      changes.push({ at: entry.from, airframes });
    });
  }
  for (const { engine, at } of model.ratings) {
    if (at === 0) continue;
    const airframes = () => [
      airframeOf(model, model.slotAt(engine, at), engine, at),
      airframeOf(model, model.slotAt(engine, at - 1), engine, at - 1),
    ];
    changes.push({ at, airframes });
  }
  return changes;
}

/** Whether the whole record is sound: no two components in one slot, nothing in itself, no boundary inside a flight. */
export function isWholeSound(model: PlainModel): boolean {
  return (
    noSlotTwice(model) &&
    changesOf(model).every(({ at, airframes }) => {
      const spanning = model.flights.filter((each) => each.takeOff < at && at < each.landing);
      return spanning.length === 0 || !spanning.some((flight) => airframes().includes(flight.airframe));
    })
  );
}

function noSlotTwice(model: PlainModel): boolean {
  const taken = new Map<string, { from: number; to: number }[]>();
  for (const entries of model.entries.values()) {
    for (const [index, entry] of entries.entries()) {
      if (entry.slot === null) continue;
      const span = { from: entry.from, to: entries[index + 1]?.from ?? Number.POSITIVE_INFINITY };
      const others = taken.get(entry.slot) ?? [];
      if (others.some((other) => other.from < span.to && span.from < other.to)) return false;
      taken.set(entry.slot, [...others, span]);
    }
  }
  return true;
}

/** Whether a slot is free from an instant on, of everything but one component. */
function freeFrom(model: PlainModel, slot: string, at: number, but: string | null): boolean {
  for (const [id, entries] of model.entries) {
    if (id === but) continue;
    for (const [index, entry] of entries.entries()) {
      const end = entries[index + 1]?.from ?? Number.POSITIVE_INFINITY;
      if (entry.slot === slot && end > at) return false;
    }
  }
  return true;
}

/** Whether an engine or pod change can be true. */
export function soundChange(
  model: PlainModel,
  { slot, off, on, at }: Extract<Act, { kind: 'change' }>,
): boolean {
  const airframe = airframeAt.get(slots.get(slot)?.position ?? '') ?? null;
  if (insideFlight(model, [airframe], at)) return false;
  if (off !== null) {
    const last = model.entriesOf(off).at(-1);
    if (last?.slot !== slot || last.from >= at) return false;
  }
  if (on === null) return true;
  const last = model.entriesOf(on).at(-1);
  if (on === off || last === undefined || last.slot !== null || last.from >= at) return false;
  return kinds.get(on) === slots.get(slot)?.kind && freeFrom(model, slot, at, off);
}

/** Whether a module or part can have come to a place then. */
export function soundMove(
  model: PlainModel,
  { component, place, at }: Extract<Act, { kind: 'move' }>,
): boolean {
  const last = model.entriesOf(component).at(-1);
  if (last === undefined || last.slot === place || last.from >= at) return false;
  const touched = [airframeOf(model, last.slot, component, at - 1), airframeOf(model, place, component, at)];
  if (insideFlight(model, touched, at)) return false;
  return place === null || freeFrom(model, place, at, null);
}

/** Whether an engine can have changed its rating then. */
export function soundRating(model: PlainModel, { engine, at }: Extract<Act, { kind: 'rate' }>): boolean {
  const now = airframeOf(model, model.slotAt(engine, at), engine, at);
  const before = airframeOf(model, model.slotAt(engine, at - 1), engine, at - 1);
  return (
    !insideFlight(model, [now, before], at) &&
    !model.ratings.some((each) => each.engine === engine && each.at === at)
  );
}
