import type { fraction } from '@strutbook/domain/units/fraction.js';
import { type Instant, instant } from '@strutbook/domain/units/minutes.js';
import {
  addCounts,
  type Counts,
  equalCounts,
  negateCounts,
  subtractCounts,
  zeroCounts,
} from '@strutbook/domain/usage/counts.js';
import { flightCounts } from '@strutbook/domain/usage/flight.js';
import type { ExposureAmounts, Totals } from '@strutbook/domain/usage/totals.js';
import { cycleRules, openings } from './driven-world.js';
import type { KeptWorld } from './kept-world.js';
import { plainLife, ratingNow } from './plain-life.js';
import type { PlainModel, Used } from './plain-model.js';
import { AIRFRAMES, COMPONENTS, countsByLowest, LIMITS, TWELFTHS } from './world.js';

/** A difference between the core and the plain lists: what of which component, and both answers. */
export interface Difference {
  readonly what: string;
  readonly subject: string;
  readonly plain: unknown;
  readonly core: unknown;
}

/** Compares everything there is, now and as of one earlier instant; the first difference, or null. */
export function compare(
  world: KeptWorld,
  model: PlainModel,
  now: number,
  earlier: number,
): Difference | null {
  for (const { id, kind } of COMPONENTS) {
    const difference =
      compareExposures(world, model, id) ??
      compareTotals('total', id, model.used(id, now), totalsNow(world, id)) ??
      compareTotals('total earlier', id, model.used(id, earlier), totalsAt(world, id, instant(earlier))) ??
      (kind === 'part' ? compareLife(world, model, id, now) : null);
    if (difference !== null) return difference;
  }
  return compareBalance(world);
}

function differ(what: string, subject: string, plain: unknown, core: unknown): Difference | null {
  const [left, right] = [JSON.stringify(plain), JSON.stringify(core)];
  return left === right ? null : { what, subject, plain, core };
}

function compareExposures(world: KeptWorld, model: PlainModel, id: string): Difference | null {
  const kept = (world.exposures.get(id) ?? []).map(({ carrierId, from, to, ratingId, cycleRuleId }) => ({
    carrier: carrierId,
    from,
    to,
    rating: ratingId,
    rule: cycleRuleId,
  }));
  return differ('exposures', id, model.ran(id), kept);
}

function totalsOf(world: KeptWorld, id: string, seen: readonly ExposureAmounts[]): Totals {
  return world.core.totals({ openings: openings.get(id) ?? [], exposures: seen, cycleRules });
}

function totalsNow(world: KeptWorld, id: string): Totals {
  return totalsOf(
    world,
    id,
    (world.exposures.get(id) ?? []).map((exposure) => ({ ...exposure, counts: world.seen(exposure) })),
  );
}

function totalsAt(world: KeptWorld, id: string, at: Instant): Totals {
  const seen = (world.exposures.get(id) ?? []).flatMap((exposure) => {
    const counts = world.seenUntil(exposure, at);
    return counts === null ? [] : [{ ...exposure, counts }];
  });
  return totalsOf(world, id, seen);
}

type Row = readonly [rating: string, minutes: number | null, twelfths: number | null];

// Ratings at which nothing was used are left out: one side lists them, the other doesn't.
function compareTotals(
  what: string,
  id: string,
  used: ReadonlyMap<string | null, Used>,
  totals: Totals,
): Difference | null {
  const plain: Row[] = [...used].map(([rating, { minutes, twelfths }]) => [`${rating}`, minutes, twelfths]);
  const kept: Row[] = totals.byRating.map(({ ratingId, minutes, cycles }) => [
    `${ratingId}`,
    minutes,
    twelfths(cycles),
  ]);
  const told = (rows: readonly Row[]) =>
    rows.filter(([, minutes, cycles]) => minutes !== 0 || cycles !== 0).sort();
  return (
    differ(`${what} by rating`, id, told(plain), told(kept)) ??
    differ(what, id, ['all', sum(plain, 1), sum(plain, 2)], ['all', totals.minutes, twelfths(totals.cycles)])
  );
}

function sum(rows: readonly Row[], column: 1 | 2): number | null {
  return rows.reduce<number | null>((total, row) => {
    const part = row[column];
    return total === null || part === null ? null : total + part;
  }, 0);
}

function twelfths(cycles: ReturnType<typeof fraction> | null): number | null {
  return cycles === null ? null : Number(cycles.num * BigInt(TWELFTHS)) / Number(cycles.den);
}

function compareLife(world: KeptWorld, model: PlainModel, id: string, now: number): Difference | null {
  const life = world.core.lifeOf({
    used: totalsNow(world, id).byRating,
    limits: [
      { ratingId: 'low', kind: 'limited', cycles: LIMITS.low, minutes: null },
      { ratingId: 'high', kind: 'limited', cycles: LIMITS.high, minutes: null },
    ],
    method: countsByLowest(id) ? 'lowest-limit' : 'pro-rata',
    ratingNow: ratingNow(model, id, now),
    traceGaps: [],
    acceptance: null,
  });
  const plain = plainLife(model, id, now);
  const open = world.exposures.get(id)?.find(({ from, to }) => from <= now && (to === null || now < to));
  if (life.kind !== 'limited' || life.remainingExact === null)
    return differ('life', id, plain, { kind: life.kind });
  const rule = cycleRules.get(open?.cycleRuleId ?? '');
  const dueAt =
    open === undefined || rule === undefined
      ? null
      : world.core.duePoint({
          remainingExact: life.remainingExact,
          reading: world.core.cycleUnits(world.readingNow(open.carrierId), rule),
          denominator: rule.denominator,
        });
  return differ('life', id, plain, { kind: life.kind, remaining: life.remaining, dueAt });
}

/** The trial balance: what was flown, by the flights themselves, against what every account took. */
function compareBalance(world: KeptWorld): Difference | null {
  const rows = AIRFRAMES.flatMap((airframe) =>
    airframe.positions.map((position) => ({
      airframeId: airframe.id,
      positionCarrierId: position,
      flown: flownBy(world, airframe.id),
      runs: zeroCounts,
      onEngines: onEngines(world, position),
      empty: whileEmpty(world, position),
      notRunning: negateCounts(world.ownHead(position)),
    })),
  );
  const wrong = world.core.trialBalance(rows).find((row) => !equalCounts(row.difference, zeroCounts));
  return wrong === undefined
    ? null
    : { what: 'trial balance', subject: wrong.positionCarrierId, plain: zeroCounts, core: wrong };
}

function flownBy(world: KeptWorld, airframe: string): Counts {
  const flights = [...world.flights.values()].filter((each) => each.airframe === airframe);
  return flights.reduce((total, { flight }) => addCounts(total, flightCounts(flight)), zeroCounts);
}

function onEngines(world: KeptWorld, position: string): Counts {
  const engines = COMPONENTS.filter((component) => component.kind === 'engine');
  const there = engines
    .flatMap(({ id }) => world.exposures.get(id) ?? [])
    .filter((each) => each.carrierId === position);
  return there.reduce((total, exposure) => addCounts(total, world.seen(exposure)), zeroCounts);
}

function whileEmpty(world: KeptWorld, position: string): Counts {
  const spans = world.core.emptySpans(world.stays.filter((stay) => stay.slotId === `${position}/engine`));
  return spans.reduce((total, { from, to }) => {
    const end = to === null ? world.readingNow(position) : world.readingAt(position, to);
    const start = from === null ? zeroCounts : world.readingAt(position, from);
    return addCounts(total, subtractCounts(end, start));
  }, zeroCounts);
}
