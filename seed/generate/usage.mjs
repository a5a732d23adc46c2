// What ran how long, by plain addition over the flights.
import { models } from './models.mjs';
import { flights, hangingOf, ratingsOf } from './timeline.mjs';

const COUNTS = ['minutes', 'flights', 'landings', 'touchAndGoes', 'starts', 'abortedTakeOffs'];

/** What a flight adds to its airframe. */
export function countsOf({ takeOffAt, landingAt, touchAndGoes, starts, abortedTakeOffs }) {
  return {
    minutes: landingAt - takeOffAt,
    flights: 1,
    landings: 1 + touchAndGoes,
    touchAndGoes,
    starts,
    abortedTakeOffs,
  };
}

/** What an airframe flew since the record begins. */
export function flownBy(registration) {
  return flights[registration].reduce(
    (sum, flight) => ({
      minutes: sum.minutes + flight.landingAt - flight.takeOffAt,
      flights: sum.flights + 1,
    }),
    { minutes: 0, flights: 0 },
  );
}

/** What something hanging at a position ran in a span: a flight counts when it lands, at the span's end too. */
export function ranIn({ registration, position, from, to }) {
  const sum = Object.fromEntries(COUNTS.map((name) => [name, 0]));
  for (const flight of flights[registration]) {
    if (flight.landingAt <= from || (to !== null && flight.landingAt > to)) continue;
    const counts = countsOf(flight);
    const missed = flight.exceptions.find((exception) => exception.positionNumber === position);
    for (const name of COUNTS) sum[name] += counts[name] - (missed?.[name] ?? 0);
  }
  return sum;
}

/** Cycles in units of the model's rule. */
export function cycleUnits(model, counts) {
  const { rule } = models[model];
  return (
    counts.flights * rule.perFlight +
    counts.landings * rule.perLanding +
    counts.touchAndGoes * rule.perTouchAndGo +
    counts.starts * rule.perStart +
    counts.abortedTakeOffs * rule.perAbortedTakeOff
  );
}

/** What an engine ran since the record begins, by rating: {rating: {minutes, units}}. */
export function ranByRating(serial, model) {
  const ratings = ratingsOf(serial);
  const result = {};
  for (const span of hangingOf(serial)) {
    ratings.forEach(({ at, rating }, index) => {
      const from = Math.max(span.from, at);
      const ends = [span.to, ratings[index + 1]?.at ?? null].filter((end) => end !== null);
      const to = ends.length === 0 ? null : Math.min(...ends);
      if (to !== null && to <= from) return;
      const counts = ranIn({ ...span, from, to });
      const before = result[rating] ?? { minutes: 0, units: 0 };
      result[rating] = {
        minutes: before.minutes + counts.minutes,
        units: before.units + cycleUnits(model, counts),
      };
    });
  }
  return result;
}

/** Minutes and cycle units over all ratings. */
export function ranInAll(serial, model) {
  return Object.values(ranByRating(serial, model)).reduce(
    (sum, part) => ({ minutes: sum.minutes + part.minutes, units: sum.units + part.units }),
    { minutes: 0, units: 0 },
  );
}

/** What an engine ran since it was last installed; null when it hangs nowhere. */
export function ranSinceInstalled(serial, model) {
  const last = hangingOf(serial).at(-1);
  if (last === undefined || last.to !== null) return null;
  const counts = ranIn(last);
  return { minutes: counts.minutes, units: cycleUnits(model, counts) };
}

/** Minutes a pod ran. */
export function podRan(serial) {
  return hangingOf(serial).reduce((sum, span) => sum + ranIn(span).minutes, 0);
}
