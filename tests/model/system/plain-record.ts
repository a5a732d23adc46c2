import type { ToldBoundary, ToldFlight } from './act.js';
import { AIRFRAMES, COMPONENTS, FIRST_RATING, SLOTS } from './world.js';

/** What a boundary told by a page follows. */
export interface Follows {
  readonly airframe: string;
  readonly page: string;
}

/** Where a component was, `[from, to)`. A slot that is null is the store. */
export interface PlainStay {
  readonly number: number;
  readonly component: string;
  readonly slot: string | null;
  readonly from: number;
  readonly fromFollows: Follows | null;
  readonly to: number | null;
  readonly toFollows: Follows | null;
}

/** From `at` on an engine runs at a rating. */
export interface PlainRating {
  readonly engine: string;
  readonly at: number;
  readonly rating: string;
  readonly follows: Follows | null;
}

const slotByName = new Map(SLOTS.map((slot) => [slot.name, slot]));
const DAY = 1440;

/** Everything on record that is not voided, as plain lists. Nothing is kept that could be found again from them. */
export interface PlainRecord {
  readonly flights: readonly ToldFlight[];
  readonly stays: readonly PlainStay[];
  readonly ratings: readonly PlainRating[];
  /** Numbers given to stays so far. */
  readonly counted: number;
}

export function firstRecord(): PlainRecord {
  const stays = COMPONENTS.map(({ name, startsIn }, number): PlainStay => {
    return { number, component: name, slot: startsIn, from: 0, fromFollows: null, to: null, toFollows: null };
  });
  const ratings = Object.entries(FIRST_RATING).map(([engine, rating]) => ({
    engine,
    at: 0,
    rating,
    follows: null,
  }));
  return { flights: [], stays, ratings, counted: stays.length };
}

/** The stay of a component at an instant; at its very end it has left. */
export function stayAt({ stays }: PlainRecord, component: string, at: number): PlainStay | null {
  return (
    stays.find(
      (stay) => stay.component === component && stay.from <= at && (stay.to === null || at < stay.to),
    ) ?? null
  );
}

/** The position that carries a slot at an instant, and the component that hangs at it. */
export interface Carried {
  readonly airframe: string;
  readonly position: number;
  readonly top: string;
}

/** Where a slot with this occupant hangs; `justBefore` asks for the minute that ends at the instant. */
export function carriedBy(
  record: PlainRecord,
  { slot, occupant }: { readonly slot: string | null; readonly occupant: string },
  at: number,
  justBefore = false,
): Carried | null {
  const moment = justBefore ? at - 0.5 : at;
  let top = occupant;
  let here = slot === null ? undefined : slotByName.get(slot);
  while (here?.parent != null) {
    top = here.parent;
    const above = stayAt(record, top, moment)?.slot ?? null;
    here = above === null ? undefined : slotByName.get(above);
  }
  if (here?.airframe == null || here.position === null) return null;
  return { airframe: here.airframe, position: here.position, top };
}

/** Where a component hangs at an instant. */
export function placeOf(record: PlainRecord, component: string, at: number): Carried | null {
  const slot = stayAt(record, component, at)?.slot ?? null;
  return carriedBy(record, { slot, occupant: component }, at);
}

/** The rating an engine runs at just before an instant. */
export function ratingBefore({ ratings }: PlainRecord, engine: string, at: number): string | null {
  let found: PlainRating | null = null;
  for (const each of ratings)
    if (each.engine === engine && each.at < at && (found === null || each.at >= found.at)) found = each;
  return found?.rating ?? null;
}

/** The instant a boundary means; null when it names a page that no flight is on. */
export function instantOf({ flights }: PlainRecord, boundary: ToldBoundary): number | null {
  if (boundary.kind === 'instant') return boundary.at;
  const own = flights.filter((flight) => flight.airframe === boundary.airframe);
  if (boundary.kind === 'after-page')
    return own.find((flight) => flight.page === boundary.page)?.landing ?? null;
  const offset = AIRFRAMES.find(({ name }) => name === boundary.airframe)?.dayOffset ?? 0;
  const start = (boundary.day + (boundary.kind === 'after-last' ? 1 : 0)) * DAY - offset;
  const spanning = own.find((flight) => flight.takeOff < start && start < flight.landing);
  if (spanning === undefined) return start;
  const tookOffOn = Math.floor((spanning.takeOff + offset) / DAY);
  return boundary.kind === 'before-first' || tookOffOn === boundary.day ? spanning.landing : start;
}

export function followsOf(boundary: ToldBoundary): Follows | null {
  return boundary.kind === 'after-page' ? { airframe: boundary.airframe, page: boundary.page } : null;
}
