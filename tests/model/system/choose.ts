import type { Act, ToldBoundary, ToldFlight } from './act.js';
import { carriedBy, type PlainRecord, type PlainStay } from './plain-record.js';
import { AIRFRAMES, COMPONENTS, RATINGS, SLOTS } from './world.js';

/** Numbers from which an act is chosen; smaller ones choose plainer acts. */
export interface Choice {
  readonly what: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

const DAY = 1440;

function one<T>(list: readonly T[], choice: number): T | null {
  return list[choice % Math.max(1, list.length)] ?? null;
}

/** The last minute of which anything is on record. */
export function lastMinute({ flights, stays, ratings }: PlainRecord): number {
  return Math.max(
    0,
    ...flights.map((flight) => flight.landing),
    ...stays.map((stay) => Math.max(stay.from, stay.to ?? 0)),
    ...ratings.map((rating) => rating.at),
  );
}

/** An instant where mistakes live: the edges and the middle of flights, the edges of stays; or any, or the next. */
function instantOf(record: PlainRecord, choice: number, spread: number): number {
  const last = lastMinute(record);
  const flight = one(record.flights, spread);
  const stay = one(record.stays, spread);
  switch (choice % 8) {
    case 0:
    case 1:
    case 2:
      return last + (spread % 240);
    case 3:
      return flight?.landing ?? last;
    case 4:
      return flight?.takeOff ?? last;
    case 5:
      return stay?.to ?? stay?.from ?? last;
    case 6:
      return flight === null ? last : Math.floor((flight.takeOff + flight.landing) / 2);
    default:
      return spread % (last + 1);
  }
}

function boundaryOf(record: PlainRecord, airframe: string, { b, c }: Choice): ToldBoundary {
  const own = record.flights.filter((flight) => flight.airframe === airframe);
  const flight = own[own.length - 1 - (c % 4)];
  const kind = b % 10;
  if (kind < 2 && flight !== undefined) return { kind: 'after-page', airframe, page: flight.page };
  if (kind < 4)
    return {
      kind: kind === 2 ? 'before-first' : 'after-last',
      airframe,
      day: Math.max(1, Math.floor(instantOf(record, c, c) / DAY)),
    };
  return { kind: 'instant', at: instantOf(record, b >> 3, c) };
}

function flightOf({ a, b, c, d }: Choice, page: string, takeOff: number): ToldFlight {
  const airframe = AIRFRAMES[a % AIRFRAMES.length];
  const minutes = 1 + (b % (b % 7 === 0 ? 1440 : 240));
  const position = 1 + (c % (airframe?.positions ?? 1));
  const exceptions =
    c % 5 === 0 ? [{ position, shutDownMinutes: c % 2 === 0 ? null : 1 + (d % minutes) }] : [];
  const counts = {
    touchAndGoes: c % 3 === 0 ? d % 4 : 0,
    starts: d % 3,
    abortedTakeOffs: d % 11 === 0 ? 1 : 0,
  };
  return {
    airframe: airframe?.name ?? 'A',
    page,
    takeOff,
    landing: takeOff + minutes,
    ...counts,
    exceptions,
  };
}

/** The act a choice means as things stand; null when there is nothing it could be about. `page` is not yet used. */
export function chosen(record: PlainRecord, choice: Choice, page: string): Act | null {
  const { what } = choice;
  if (what < 40) return flyNext(record, choice, page);
  if (what < 50)
    return { kind: 'fly', flight: flightOf(choice, page, instantOf(record, choice.b, choice.d)) };
  if (what < 55) return voidFlight(record, choice);
  if (what < 63) return correct(record, choice, page);
  if (what < 78) return change(record, choice, 'engine');
  if (what < 84) return change(record, choice, 'pod');
  if (what < 91) return move(record, choice);
  if (what < 96) return rate(record, choice);
  return voidStay(record, choice);
}

function flyNext(record: PlainRecord, choice: Choice, page: string): Act {
  const flight = flightOf(choice, page, 0);
  const own = record.flights.filter((each) => each.airframe === flight.airframe).map((each) => each.landing);
  const takeOff = Math.max(0, ...own, choice.d % 3 === 0 ? lastMinute(record) : 0) + (choice.d % 90);
  return { kind: 'fly', flight: { ...flight, takeOff, landing: takeOff + flight.landing } };
}

function voidFlight({ flights }: PlainRecord, { a }: Choice): Act | null {
  const flight = one(flights, a);
  return flight === null ? null : { kind: 'void', airframe: flight.airframe, page: flight.page };
}

/** Most corrections move a flight by some minutes; its page sometimes changes too. */
function correct(record: PlainRecord, choice: Choice, page: string): Act | null {
  const wrong = one(record.flights, choice.a);
  if (wrong === null) return null;
  const takeOff = Math.max(0, wrong.takeOff + (choice.b % 31) - 15);
  const landing = Math.max(takeOff + 1, wrong.landing + (choice.c % 31) - 15);
  const counts = flightOf(choice, page, takeOff);
  return {
    kind: 'correct',
    page: wrong.page,
    flight: {
      ...wrong,
      takeOff,
      landing,
      page: choice.d % 4 === 0 ? page : wrong.page,
      touchAndGoes: counts.touchAndGoes,
      exceptions: [],
    },
  };
}

/** Mostly what is possible; now and then a wrong serial, an occupied place or nothing at all. */
function change(record: PlainRecord, choice: Choice, kind: 'engine' | 'pod'): Act | null {
  const slots = SLOTS.filter((slot) => slot.kind === kind && slot.airframe !== null);
  const slot = one(slots, choice.a);
  if (slot?.airframe == null) return null;
  const open = record.stays.filter((stay) => stay.to === null);
  const there = open.find((stay) => stay.slot === slot.name)?.component ?? null;
  const components = COMPONENTS.filter((component) => component.kind === kind).map(({ name }) => name);
  const spare = components.filter(
    (name) => !open.some((stay) => stay.component === name && stay.slot !== null),
  );
  const any = one(components, choice.d);
  const on = choice.d % 9 === 0 ? null : choice.d % 9 === 1 ? any : one(spare, choice.d);
  const off = choice.c % 13 === 0 ? any : choice.c % 17 === 0 ? null : there;
  const model = COMPONENTS.find(({ name }) => name === on)?.model ?? null;
  const rating =
    kind === 'engine' && model !== null && choice.b % 3 === 0 ? one(RATINGS[model] ?? [], choice.c) : null;
  return {
    kind: 'change',
    slot: slot.name,
    off,
    on,
    boundary: boundaryOf(record, slot.airframe, choice),
    rating,
  };
}

/** A module or part out of its place, or into another's. */
function move(record: PlainRecord, choice: Choice): Act | null {
  const component = one(
    COMPONENTS.filter(({ kind }) => kind === 'module' || kind === 'part'),
    choice.a,
  );
  if (component === null) return null;
  const isIn = record.stays.some(
    (stay) => stay.component === component.name && stay.to === null && stay.slot !== null,
  );
  const taken = new Set(record.stays.filter((stay) => stay.to === null).map((stay) => stay.slot));
  const places = SLOTS.filter(
    ({ kind, name }) => kind === component.kind && (choice.d % 7 === 0 || !taken.has(name)),
  );
  const slot = isIn && choice.d % 11 !== 0 ? null : (one(places, choice.d)?.name ?? null);
  const there =
    record.stays.find((stay) => stay.component === component.name && stay.to === null)?.slot ?? null;
  const hangs = carriedBy(record, { slot: slot ?? there, occupant: component.name }, Number.MAX_SAFE_INTEGER);
  // The log and the days are those of the airframe it comes to or leaves; off the wing, of any.
  const airframe = hangs?.airframe ?? AIRFRAMES[choice.d % AIRFRAMES.length]?.name ?? 'A';
  return {
    kind: 'place',
    component: component.name,
    slot,
    boundary: boundaryOf(record, airframe, choice),
    until: null,
  };
}

function rate(record: PlainRecord, { a, b, c }: Choice): Act | null {
  const engine = one(
    COMPONENTS.filter(({ kind }) => kind === 'engine'),
    a,
  );
  const rating = engine?.model == null ? null : one(RATINGS[engine.model] ?? [], c);
  return engine === null || rating === null
    ? null
    : { kind: 'rate', engine: engine.name, rating, at: instantOf(record, b, c) };
}

function voidStay(record: PlainRecord, { a }: Choice): Act | null {
  const stay = one(
    record.stays.filter(({ slot }) => slot !== null),
    a,
  );
  return stay === null ? null : { kind: 'void-stay', stay: stay.number };
}

/** A voided stay entered again, its ends moved a little: what usually follows a void. */
export function enteredAgain({ component, slot, from, to }: PlainStay, { b, c }: Choice): Act {
  const moved = (choice: number) => (choice % 4 < 2 ? 0 : choice % 4 === 2 ? 30 : -30);
  const start = Math.max(0, from + moved(b));
  const end = to === null ? null : Math.max(start + 1, to + moved(c));
  return {
    kind: 'place',
    component,
    slot,
    boundary: { kind: 'instant', at: start },
    until: end === null ? null : { kind: 'instant', at: end },
  };
}
