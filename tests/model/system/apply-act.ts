import type { Act, ToldFlight } from './act.js';
import { isConsistent } from './consistency.js';
import {
  type Follows,
  followsOf,
  instantOf,
  type PlainRecord,
  type PlainStay,
  stayAt,
} from './plain-record.js';
import { COMPONENTS, SLOTS } from './world.js';

const slotKind = new Map(SLOTS.map((slot) => [slot.name, slot.kind]));
const componentKind = new Map(COMPONENTS.map((component) => [component.name, component.kind]));

/** The record after an act; null when it can't have been so, and the record stays as it is. */
export function after(record: PlainRecord, act: Act): PlainRecord | null {
  const next = applied(record, act);
  return next !== null && isConsistent(next) ? next : null;
}

function applied(record: PlainRecord, act: Act): PlainRecord | null {
  switch (act.kind) {
    case 'fly':
      return { ...record, flights: [...record.flights, act.flight] };
    case 'void':
      return withoutFlight(record, act);
    case 'correct':
      return corrected(record, act);
    case 'change':
      return changed(record, act);
    case 'place':
      return act.until === null ? placed(record, act) : placedInThePast(record, act);
    case 'rate':
      return rated(record, act);
    case 'void-stay':
      return { ...record, stays: record.stays.filter((stay) => stay.number !== act.stay) };
  }
}

const isPage = (follows: Follows | null, { airframe, page }: Follows) =>
  follows?.airframe === airframe && follows.page === page;

/** A flight can't go while a stay begins or ends by its page. */
function withoutFlight(record: PlainRecord, page: Follows): PlainRecord | null {
  const followed = record.stays.some(
    (stay) => isPage(stay.fromFollows, page) || isPage(stay.toFollows, page),
  );
  const flights = record.flights.filter(
    (flight) => flight.airframe !== page.airframe || flight.page !== page.page,
  );
  return followed ? null : { ...record, flights };
}

function corrected(
  record: PlainRecord,
  { page, flight }: { readonly page: string; readonly flight: ToldFlight },
): PlainRecord {
  const before = { airframe: flight.airframe, page };
  const now = { airframe: flight.airframe, page: flight.page };
  const at = flight.landing;
  return {
    ...record,
    flights: [
      ...record.flights.filter((each) => each.airframe !== flight.airframe || each.page !== page),
      flight,
    ],
    stays: record.stays.map((stay) => ({
      ...stay,
      ...(isPage(stay.fromFollows, before) ? { from: at, fromFollows: now } : {}),
      ...(isPage(stay.toFollows, before) ? { to: at, toFollows: now } : {}),
    })),
    ratings: record.ratings.map((each) =>
      isPage(each.follows, before) ? { ...each, at, follows: now } : each,
    ),
  };
}

type Change = Extract<Act, { kind: 'change' }>;
type Placement = Extract<Act, { kind: 'place' }>;

/** What the component's open stay becomes when it leaves for another place; null when it can't leave like that. */
function leaving(
  record: PlainRecord,
  component: string,
  at: number,
  fromSlotToo: boolean,
): readonly PlainStay[] | null {
  const own = record.stays.filter(
    (stay) => stay.component === component && (stay.to === null || stay.to > at),
  );
  const [open, ...more] = own;
  if (open === undefined) return [];
  const may = more.length === 0 && open.to === null && open.from < at && (fromSlotToo || open.slot === null);
  return may ? [open] : null;
}

function isFree({ stays }: PlainRecord, slot: string, at: number, except: number | null): boolean {
  return !stays.some(
    (stay) => stay.slot === slot && stay.number !== except && (stay.to === null || stay.to > at),
  );
}

function changed(record: PlainRecord, { slot, off, on, boundary, rating }: Change): PlainRecord | null {
  const at = instantOf(record, boundary);
  if (at === null || (off === null && on === null) || off === on) return null;
  const there = record.stays.find(
    (stay) => stay.slot === slot && stay.from <= at && (stay.to === null || at < stay.to),
  );
  if (off !== null && (there?.component !== off || there.to !== null || there.from >= at)) return null;
  const follows = followsOf(boundary);
  const incoming = on === null ? [] : leaving(record, on, at, false);
  if (
    incoming === null ||
    (on !== null &&
      (componentKind.get(on) !== slotKind.get(slot) ||
        !isFree(record, slot, at, off === null ? null : (there?.number ?? null))))
  )
    return null;
  const ended = new Set(
    [...incoming, ...(off === null || there === undefined ? [] : [there])].map((stay) => stay.number),
  );
  const begun = [
    ...(off === null ? [] : [{ component: off, slot: null }]),
    ...(on === null ? [] : [{ component: on, slot }]),
  ].map((stay, index) => ({
    ...stay,
    number: record.counted + index,
    from: at,
    fromFollows: follows,
    to: null,
    toFollows: null,
  }));
  const now = on === null ? null : ratingUntil(record, on, at);
  return {
    ...record,
    stays: [
      ...record.stays.map((stay) =>
        ended.has(stay.number) ? { ...stay, to: at, toFollows: follows } : stay,
      ),
      ...begun,
    ],
    ratings:
      on === null || rating === null || rating === now
        ? record.ratings
        : [...record.ratings, { engine: on, at, rating, follows }],
    counted: record.counted + begun.length,
  };
}

/** The rating at an instant, one from that very instant included. */
function ratingUntil({ ratings }: PlainRecord, engine: string, at: number): string | null {
  const found = ratings.filter((each) => each.engine === engine && each.at <= at);
  return found.sort((a, b) => b.at - a.at)[0]?.rating ?? null;
}

function placed(record: PlainRecord, { component, slot, boundary }: Placement): PlainRecord | null {
  const at = instantOf(record, boundary);
  if (at === null) return null;
  // Out of a slot it only goes to a location; what goes from slot to slot is taken out first.
  const leaves = leaving(record, component, at, slot === null);
  if (leaves === null || leaves.some((stay) => stay.slot === slot)) return null;
  if (
    slot !== null &&
    (slotKind.get(slot) !== componentKind.get(component) || !isFree(record, slot, at, null))
  )
    return null;
  return begin(record, { component, slot, at, to: null, boundary, until: null, leaves });
}

function placedInThePast(
  record: PlainRecord,
  { component, slot, boundary, until }: Placement,
): PlainRecord | null {
  const at = instantOf(record, boundary);
  const to = until === null ? null : instantOf(record, until);
  if (at === null || to === null || to <= at) return null;
  const open = stayAt(record, component, at);
  if (open !== null && (open.to !== null || open.slot !== null || open.from >= at)) return null;
  return begin(record, { component, slot, at, to, boundary, until, leaves: open === null ? [] : [open] });
}

function begin(
  record: PlainRecord,
  {
    component,
    slot,
    at,
    to,
    boundary,
    until,
    leaves,
  }: Pick<Placement, 'component' | 'slot' | 'boundary' | 'until'> & {
    readonly at: number;
    readonly to: number | null;
    readonly leaves: readonly PlainStay[];
  },
): PlainRecord {
  const follows = followsOf(boundary);
  const ended = new Set(leaves.map((stay) => stay.number));
  const begun = {
    number: record.counted,
    component,
    slot,
    from: at,
    fromFollows: follows,
    to,
    toFollows: until === null ? null : followsOf(until),
  };
  return {
    ...record,
    stays: [
      ...record.stays.map((stay) =>
        ended.has(stay.number) ? { ...stay, to: at, toFollows: follows } : stay,
      ),
      begun,
    ],
    counted: record.counted + 1,
  };
}

/** Nothing is rated twice at one instant, or in the air. */
function rated(
  record: PlainRecord,
  { engine, rating, at }: Extract<Act, { kind: 'rate' }>,
): PlainRecord | null {
  const place = stayAt(record, engine, at)?.slot ?? null;
  const airframe = SLOTS.find((slot) => slot.name === place)?.airframe ?? null;
  const inTheAir = record.flights.some(
    (flight) => flight.airframe === airframe && flight.takeOff < at && at < flight.landing,
  );
  const twice = record.ratings.some((each) => each.engine === engine && each.at === at);
  return at < 0 || inTheAir || twice
    ? null
    : { ...record, ratings: [...record.ratings, { engine, at, rating, follows: null }] };
}
