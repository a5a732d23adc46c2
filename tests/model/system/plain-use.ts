import type { ToldFlight } from './act.js';
import { type Carried, type PlainRecord, placeOf, ratingBefore } from './plain-record.js';
import {
  AIRFRAMES,
  COMPONENTS,
  COUNTS_BY_LOWEST,
  LIMITS,
  RATINGS,
  RULES,
  type RuleInWorld,
  TWELFTHS,
} from './world.js';

const byName = new Map(COMPONENTS.map((component) => [component.name, component]));
const airframeByName = new Map(AIRFRAMES.map((airframe) => [airframe.name, airframe]));

/** Minutes, and cycles in twelfths; null where something is not known. */
export interface PlainTotal {
  readonly minutes: number | null;
  readonly twelfths: number | null;
}

const NONE: PlainTotal = { minutes: 0, twelfths: 0 };
const UNKNOWN: PlainTotal = { minutes: null, twelfths: null };

function plus(a: PlainTotal, b: PlainTotal): PlainTotal {
  return {
    minutes: a.minutes === null || b.minutes === null ? null : a.minutes + b.minutes,
    twelfths: a.twelfths === null || b.twelfths === null ? null : a.twelfths + b.twelfths,
  };
}

function unitsOf(flight: ToldFlight, rule: RuleInWorld): number {
  return (
    rule.perFlight +
    rule.perLanding * (1 + flight.touchAndGoes) +
    rule.perTouchAndGo * flight.touchAndGoes +
    rule.perStart * flight.starts +
    rule.perAbortedTakeOff * flight.abortedTakeOffs
  );
}

/** The rule an engine of this model counts by on this airframe. */
export function ruleOf(model: string | null | undefined, airframe: string): RuleInWorld | null {
  const type = airframeByName.get(airframe)?.type;
  return RULES.find((rule) => rule.model === model && rule.type === type) ?? null;
}

/** What one flight adds to what hung there: nothing where it did not run. */
function usedOn(flight: ToldFlight, { top, position, airframe }: Carried): PlainTotal {
  const head = byName.get(top);
  const exception =
    head?.podClock === 'airframe' ? undefined : flight.exceptions.find((each) => each.position === position);
  if (exception?.shutDownMinutes === null) return NONE;
  const minutes = flight.landing - flight.takeOff - (exception?.shutDownMinutes ?? 0);
  if (head?.kind === 'pod') return { minutes, twelfths: TWELFTHS };
  const rule = ruleOf(head?.model, airframe);
  return { minutes, twelfths: rule === null ? null : unitsOf(flight, rule) * (TWELFTHS / rule.denominator) };
}

/** What a component used by rating, flight by flight, in those that landed in `(after, until]`. */
function flown(
  record: PlainRecord,
  component: string,
  after: number,
  until: number,
): Map<string | null, PlainTotal> {
  const used = new Map<string | null, PlainTotal>();
  for (const flight of record.flights) {
    if (flight.landing <= after || flight.landing > until) continue;
    const place = placeOf(record, component, flight.takeOff);
    if (place === null || place.airframe !== flight.airframe) continue;
    const rating = ratingBefore(record, place.top, flight.landing);
    used.set(rating, plus(used.get(rating) ?? NONE, usedOn(flight, place)));
  }
  return used;
}

/** What a component used until an instant, by rating (null: nobody knows at which). */
export function usedByRating(
  record: PlainRecord,
  component: string,
  until: number,
): Map<string | null, PlainTotal> {
  const used = flown(record, component, Number.NEGATIVE_INFINITY, until);
  const { opening, model } = byName.get(component) ?? { opening: null, model: null };
  const rating = opening === null || model === null ? null : (RATINGS[model]?.[0] ?? null);
  const before =
    opening === null
      ? UNKNOWN
      : { minutes: opening.minutes, twelfths: opening.cycles === null ? null : opening.cycles * TWELFTHS };
  return used.set(rating, plus(used.get(rating) ?? NONE, before));
}

/** The counters since new at an instant. */
export function sinceNew(record: PlainRecord, component: string, until: number): PlainTotal {
  return [...usedByRating(record, component, until).values()].reduce(plus, NONE);
}

/** The counters since an instant. */
export function since(record: PlainRecord, component: string, from: number): PlainTotal {
  // What was used before may not be known: what was used since is.
  return [...flown(record, component, from, Number.POSITIVE_INFINITY).values()].reduce(plus, NONE);
}

/** What remains of a part's life in whole cycles; null when it can't be told. */
export function remainingOf(record: PlainRecord, part: string): number | null {
  const now = Number.POSITIVE_INFINITY;
  const engine = engineOf(record, part);
  const model = byName.get(engine ?? part)?.model ?? null;
  const rating = engine === null ? lastRating(record, part) : ratingBefore(record, engine, now);
  const ratings = model === null ? [] : (RATINGS[model] ?? []);
  if (rating === null || !ratings.includes(rating)) return null;
  const ran = [...usedByRating(record, part, now)].filter(
    ([, { minutes, twelfths }]) => minutes !== 0 || twelfths !== 0,
  );
  const known = ran.flatMap(([at, { twelfths }]) =>
    at === null || twelfths === null || !ratings.includes(at) ? [] : [{ limit: LIMITS[at] ?? 0, twelfths }],
  );
  if (known.length < ran.length) return null;
  const limitNow = LIMITS[rating] ?? 0;
  return model === COUNTS_BY_LOWEST ? leftOfLowest(known, limitNow) : leftInProportion(known, limitNow);
}

interface UsedOfLimit {
  readonly limit: number;
  readonly twelfths: number;
}

/** `floor(limit now × (1 − Σ used ÷ limit))`, over the product of the limits. */
function leftInProportion(used: readonly UsedOfLimit[], limitNow: number): number {
  const over = used.reduce((product, { limit }) => product * BigInt(limit * TWELFTHS), 1n);
  const share = used.reduce(
    (sum, { limit, twelfths }) => sum + (BigInt(twelfths) * over) / BigInt(limit * TWELFTHS),
    0n,
  );
  return floorOf((over - share) * BigInt(limitNow), over);
}

/** `floor(lowest limit − Σ used)`. */
function leftOfLowest(used: readonly UsedOfLimit[], limitNow: number): number {
  const lowest = Math.min(limitNow, ...used.map(({ limit }) => limit));
  const sum = used.reduce((total, { twelfths }) => total + twelfths, 0);
  return floorOf(BigInt(lowest * TWELFTHS - sum), BigInt(TWELFTHS));
}

/** The engine a part is in now, at whatever depth; null in none. */
export function engineOf(record: PlainRecord, part: string): string | null {
  let at = part;
  for (;;) {
    const slot = record.stays.find((stay) => stay.component === at && stay.to === null)?.slot ?? null;
    const parent = slot === null ? null : slot.slice(0, slot.indexOf('/'));
    if (parent === null || !byName.has(parent)) return byName.get(at)?.kind === 'engine' ? at : null;
    at = parent;
  }
}

/** The rating at which a part last hung on an airframe, flown or not. */
function lastRating(record: PlainRecord, part: string): string | null {
  const instants = new Set([
    ...record.stays.flatMap(({ from, to }) => [from, to ?? from]),
    ...record.ratings.map(({ at }) => at),
  ]);
  for (const at of [...instants].sort((a, b) => b - a)) {
    const place = placeOf(record, part, at);
    if (place !== null) return ratingBefore(record, place.top, at + 0.5);
  }
  return null;
}

function floorOf(numerator: bigint, denominator: bigint): number {
  const quotient = numerator / denominator;
  return Number(numerator % denominator < 0n ? quotient - 1n : quotient);
}
