import type { Act, ToldException, ToldFlight } from './act.js';
import type { PlainModel } from './plain-model.js';
import { isSound, isWholeSound, soundChange, soundMove, soundRating } from './soundness.js';
import { AIRFRAMES, COMPONENTS, RATINGS, SLOTS } from './world.js';

/** Numbers from which one act is made: what, and choices for it. A `what` of 0 is nothing: failures shrink to it. */
export type Draw = readonly [what: number, a: number, b: number, c: number, d: number, e: number];

/** Largest numbers of a draw. */
export const DRAW_LIMITS: Draw = [99, 997, 997, 997, 997, 997];

/** Instants lie on multiples of it, so that boundaries, take-offs and landings often coincide. */
const STEP = 5;

/** An act, and whether it must be accepted. */
export interface Chosen {
  readonly act: Act;
  readonly acceptable: boolean;
}

const engines = COMPONENTS.filter((component) => component.kind === 'engine').map(
  (component) => component.id,
);
const movable = COMPONENTS.filter((component) => component.kind === 'module' || component.kind === 'part');

function pick<T>(from: readonly T[], choice: number): T {
  const found = from[choice % from.length];
  if (found === undefined) throw new Error('nothing to pick from');
  return found;
}

/**
 * Makes the next act of a history, or null where the numbers lead to nothing.
 *
 * Of what must be refused only removals, installations and moves are made: the rest is turned away by the
 * database, not by the core.
 */
export function chooseAct(model: PlainModel, now: number, draw: Draw, id: string): Chosen | null {
  const [what] = draw;
  if (what === 0) return null;
  if (what < 34) return accept(nextFlight(model, now, draw, id));
  if (what < 48) return accept(lateFlight(model, draw, id));
  if (what < 53) return accept(voidOne(model, draw));
  if (what < 61) return accept(correctOne(model, draw, id));
  if (what < 74) return change(model, now, draw, 'engine');
  if (what < 78) return change(model, now, draw, 'pod');
  if (what < 88) return move(model, now, draw);
  if (what < 93) return rate(model, now, draw);
  return shift(model, draw);
}

function accept(act: Act | null): Chosen | null {
  return act === null ? null : { act, acceptable: true };
}

function nextFlight(model: PlainModel, now: number, [, a, b, c, d, e]: Draw, id: string): Act {
  const { id: airframe } = pick(AIRFRAMES, a);
  const landings = model.flights
    .filter((flight) => flight.airframe === airframe)
    .map((flight) => flight.landing);
  const takeOff = Math.max(now, ...landings) + STEP * (b % 7 < 4 ? 0 : b % 23);
  return { kind: 'fly', flight: flightOf(airframe, takeOff, takeOff + STEP * (1 + (c % 40)), [d, e], id) };
}

function flightOf(
  airframe: string,
  takeOff: number,
  landing: number,
  [d, e]: readonly [number, number],
  id: string,
): ToldFlight {
  return {
    id,
    airframe,
    takeOff,
    landing,
    touchAndGoes: d % 5 === 0 ? d % 4 : 0,
    starts: d % 3,
    abortedTakeOffs: d % 7 === 0 ? 1 : 0,
    exceptions: exceptionsOf(airframe, landing - takeOff, e),
  };
}

function exceptionsOf(airframe: string, minutes: number, choice: number): readonly ToldException[] {
  if (choice % 4 !== 0) return [];
  const position = pick(AIRFRAMES.find((each) => each.id === airframe)?.positions ?? [], choice >> 2);
  return [{ position, shutDownMinutes: choice % 3 === 0 ? null : 1 + (choice % minutes) }];
}

// A late flight begins at an earlier landing or boundary, or anywhere, and ends before what comes next.
function lateFlight(model: PlainModel, [, a, b, c, d, e]: Draw, id: string): Act | null {
  const { id: airframe } = pick(AIRFRAMES, a);
  const starts = [...model.flights.map((flight) => flight.landing), ...boundaries(model), 0];
  const takeOff = pick(starts, b) + (c % 3 === 0 ? STEP : 0);
  for (let steps = 1 + (c % 40); steps > 0; steps >>= 1) {
    const flight = flightOf(airframe, takeOff, takeOff + STEP * steps, [d, e], id);
    if (isSound(model, flight, null)) return { kind: 'fly', flight };
  }
  return null;
}

function boundaries(model: PlainModel): readonly number[] {
  return [...model.entries.values()].flatMap((entries) => entries.map((entry) => entry.from));
}

function voidOne(model: PlainModel, [, a]: Draw): Act | null {
  return model.flights.length === 0 ? null : { kind: 'void', id: pick(model.flights, a).id };
}

function correctOne(model: PlainModel, [, a, b, c, d, e]: Draw, id: string): Act | null {
  if (model.flights.length === 0) return null;
  const old = pick(model.flights, a);
  const takeOff = old.takeOff + STEP * ((b % 5) - 2);
  const landing = Math.max(takeOff + STEP, old.landing + STEP * ((c % 9) - 4));
  const flight = flightOf(old.airframe, takeOff, landing, [d, e], id);
  return takeOff > 0 && isSound(model, flight, old.id) ? { kind: 'correct', id: old.id, flight } : null;
}

/** Now, or some steps later; or at an instant long past, at which something else happened. */
function instantOf(model: PlainModel, now: number, choice: number): number {
  if (choice % 3 !== 0) return now + STEP * (choice % 4);
  return (
    pick([...boundaries(model), ...model.flights.map((flight) => flight.landing)], choice) +
    STEP * (choice % 2)
  );
}

function change(
  model: PlainModel,
  now: number,
  [, a, b, c, d, e]: Draw,
  kind: 'engine' | 'pod',
): Chosen | null {
  const slot = pick(
    SLOTS.filter((each) => each.kind === kind),
    a,
  ).id;
  const at = instantOf(model, now, b);
  const there = COMPONENTS.find(({ id }) => model.slotAt(id, at) === slot)?.id ?? null;
  const kinds = COMPONENTS.filter((component) => component.kind === kind).map((component) => component.id);
  const free = kinds.filter((id) => model.entriesOf(id).at(-1)?.slot === null);
  const on = c % 4 === 0 ? null : c % 9 === 1 ? pick(kinds, d) : free.length === 0 ? null : pick(free, d);
  const off = e % 11 === 0 ? pick(kinds, d) : e % 7 === 0 ? null : there;
  if (off === null && on === null) return null;
  const act = { kind: 'change', slot, off, on, at } as const;
  return judged(model, act, soundChange(model, act));
}

function move(model: PlainModel, now: number, [, a, b, c, d]: Draw): Chosen | null {
  const component = pick(movable, a);
  const places = SLOTS.filter((slot) => slot.kind === component.kind && slot.parent !== component.id);
  const free = places.filter(
    (slot) => !COMPONENTS.some(({ id }) => model.entriesOf(id).at(-1)?.slot === slot.id),
  );
  const place = c % 5 === 0 ? null : c % 8 === 1 || free.length === 0 ? pick(places, d).id : pick(free, d).id;
  const act = { kind: 'move', component: component.id, place, at: instantOf(model, now, b) } as const;
  return judged(model, act, soundMove(model, act));
}

// What is sound in itself may still put an old boundary of something else inside a flight; the core is not
// asked about that, so such an act is left out.
function judged(model: PlainModel, act: Act, acceptable: boolean): Chosen | null {
  return acceptable && !staysSound(model, act) ? null : { act, acceptable };
}

function rate(model: PlainModel, now: number, [, a, b, c]: Draw): Chosen | null {
  const engine = pick(engines, a);
  const rating = c % 13 === 0 ? null : pick(RATINGS, c);
  const act = { kind: 'rate', engine, rating, at: instantOf(model, now, b) } as const;
  return act.at > 0 && soundRating(model, act) ? { act, acceptable: true } : null;
}

function shift(model: PlainModel, [, a, b, c]: Draw): Chosen | null {
  const moved = COMPONENTS.filter(({ id }) => model.entriesOf(id).length > 1);
  if (moved.length === 0) return null;
  const component = pick(moved, a).id;
  const entries = model.entriesOf(component);
  const stay = 1 + (b % (entries.length - 1));
  const at = (entries[stay]?.from ?? 0) + STEP * ((c % 61) - 30);
  const act = { kind: 'shift', component, stay, at } as const;
  const [before, after] = [entries[stay - 1]?.from ?? 0, entries[stay + 1]?.from ?? Number.POSITIVE_INFINITY];
  if (at <= before || at >= after || at === entries[stay]?.from) return null;
  return staysSound(model, act) ? { act, acceptable: true } : null;
}

function staysSound(model: PlainModel, act: Act): boolean {
  const kept = new Map([...model.entries].map(([id, entries]) => [id, [...entries]]));
  model.apply(act);
  const sound = isWholeSound(model);
  for (const [id, entries] of kept) model.entries.set(id, entries);
  return sound;
}
