import type { Act, ToldFlight } from './act.js';
import { isConsistent } from './consistency.js';
import {
  carriedBy,
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

/** The components that came to or left a slot of the airframe by this page of its own log. */
function followers(record: PlainRecord, page: Follows): ReadonlySet<string> {
  const { landing } = record.flights.find((flight) => isPage(flight, page)) ?? { landing: null };
  const hangsThere = ({ slot, component: occupant }: PlainStay, justBefore: boolean) =>
    landing !== null &&
    carriedBy(record, { slot, occupant }, landing, justBefore)?.airframe === page.airframe;
  const moved = record.stays.filter(
    (stay) =>
      (isPage(stay.fromFollows, page) && stay.from === landing && hangsThere(stay, false)) ||
      (isPage(stay.toFollows, page) && stay.to === landing && hangsThere(stay, true)),
  );
  return new Set(moved.map((stay) => stay.component));
}

/** A flight can't go while something came or left by its page. */
function withoutFlight(record: PlainRecord, page: Follows): PlainRecord | null {
  const flights = record.flights.filter((flight) => !isPage(flight, page));
  return followers(record, page).size > 0 ? null : { ...record, flights };
}

/** What came or left by the page of a flight moves with it: its stays, and the rating it was installed at. */
function corrected(
  record: PlainRecord,
  { page, flight }: { readonly page: string; readonly flight: ToldFlight },
): PlainRecord {
  const before = { airframe: flight.airframe, page };
  const now = { airframe: flight.airframe, page: flight.page };
  const at = flight.landing;
  const wrong = record.flights.find((each) => isPage(each, before));
  const moving = followers(record, before);
  const follows = (follows: Follows | null, instant: number | null) =>
    isPage(follows, before) && instant === wrong?.landing;
  return {
    ...record,
    flights: [...record.flights.filter((each) => each !== wrong), flight],
    stays: record.stays.map((stay) =>
      moving.has(stay.component)
        ? {
            ...stay,
            ...(follows(stay.fromFollows, stay.from) ? { from: at, fromFollows: now } : {}),
            ...(follows(stay.toFollows, stay.to) ? { to: at, toFollows: now } : {}),
          }
        : stay,
    ),
    ratings: record.ratings.map((each) =>
      moving.has(each.engine) && follows(each.follows, each.at) ? { ...each, at, follows: now } : each,
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

/** The stays that end for a change; null when it can't be made like that. */
function endedBy(record: PlainRecord, { slot, off, on }: Change, at: number): readonly PlainStay[] | null {
  const there = record.stays.find(
    (stay) => stay.slot === slot && stay.from <= at && (stay.to === null || at < stay.to),
  );
  const comesOff =
    off !== null && there?.component === off && there.to === null && there.from < at ? [there] : [];
  if (off !== null && comesOff.length === 0) return null;
  if (on === null) return comesOff;
  const fits =
    componentKind.get(on) === slotKind.get(slot) && isFree(record, slot, at, comesOff[0]?.number ?? null);
  const leaves = fits ? leaving(record, on, at, false) : null;
  return leaves === null ? null : [...comesOff, ...leaves];
}

function changed(record: PlainRecord, act: Change): PlainRecord | null {
  const { slot, off, on, boundary, rating } = act;
  const at = instantOf(record, boundary);
  if (at === null || off === on) return null;
  const ends = endedBy(record, act, at);
  if (ends === null) return null;
  const ended = new Set(ends.map((stay) => stay.number));
  const follows = followsOf(boundary);
  const begun = [
    ...(off === null ? [] : [{ component: off, slot: null }]),
    ...(on === null ? [] : [{ component: on, slot }]),
  ].map((stay, index) => ({
    ...stay,
    ...{ number: record.counted + index, from: at, fromFollows: follows, to: null, toFollows: null },
  }));
  const isRated = on !== null && rating !== null && rating !== ratingUntil(record, on, at);
  return {
    ...record,
    stays: [
      ...record.stays.map((stay) =>
        ended.has(stay.number) ? { ...stay, to: at, toFollows: follows } : stay,
      ),
      ...begun,
    ],
    ratings: isRated ? [...record.ratings, { engine: on, at, rating, follows }] : record.ratings,
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
