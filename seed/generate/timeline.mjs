// When each change was, where each engine and pod hung from when to when, and at which rating it ran.
import { airframes, engines, inStore } from './fleet.mjs';
import { dateOf, MINUTES_A_DAY, minuteOf, RECORD_BEGINS, wire } from './instants.mjs';
import { flightsOf } from './schedule.mjs';
import { moves, ratingChanges, changes as told, workedChanges } from './story.mjs';

export const flights = Object.fromEntries(
  airframes.map((airframe) => [airframe.registration, flightsOf(airframe)]),
);

/** The changes with their instants, and their boundaries as the interface takes them. */
export const changes = told.map((change) => ({ ...change, ...momentOf(change) }));

function momentOf({ registration, window, boundary }) {
  const log = flights[registration];
  const opensAt =
    window[0] === 'incident'
      ? log.find((flight) => flight.exceptions.some((one) => one.kind === 'not-running')).landingAt
      : minuteOf(window[0]);
  if (boundary.kind === 'instant') return { at: minuteOf(boundary.at), boundary };
  if (boundary.kind === 'after-page') {
    const last = log.filter((flight) => flight.landingAt <= opensAt).at(-1);
    return { at: last.landingAt, boundary: { ...boundary, page: last.page } };
  }
  if (boundary.kind === 'after-last')
    return { at: opensAt + MINUTES_A_DAY, boundary: { ...boundary, on: dateOf(opensAt) } };
  const closes = minuteOf(window[1]);
  return { at: closes, boundary: { ...boundary, on: dateOf(closes) } };
}

/** Every removal and installation in order: logged at one moment, or worked by steps at two. */
export const hangings = [
  ...changes.map((change) => ({ ...change, offAt: change.at, onAt: change.at })),
  ...workedChanges.map((change) => ({
    ...change,
    offAt: minuteOf(change.removedAt),
    onAt: minuteOf(change.installedAt),
  })),
].sort((a, b) => a.offAt - b.offAt);

/** Where an engine or a pod hung: {registration, position, from, to}, `to` null when it still hangs there. */
export function hangingOf(serial) {
  const spans = [];
  for (const { registration, positions } of airframes) {
    for (const [position, [engine, pod]] of Object.entries(positions)) {
      if (engine === serial || pod === serial)
        spans.push({ registration, position: Number(position), from: RECORD_BEGINS, to: null });
    }
  }
  for (const { registration, position, incoming, outgoing, offAt, onAt } of hangings) {
    if (outgoing === serial) spans.at(-1).to = offAt;
    if (incoming === serial) spans.push({ registration, position, from: onAt, to: null });
  }
  return spans;
}

/** The ratings of an engine: {at, rating}, oldest first. */
export function ratingsOf(serial) {
  const first = { at: RECORD_BEGINS, rating: engines.find((engine) => engine.serial === serial).rating };
  const onWing = ratingChanges
    .filter((change) => change[0] === serial)
    .map(([, at, rating]) => ({ at: minuteOf(at), rating }));
  const atChanges = changes
    .filter((change) => change.incoming === serial && change.ratingCode)
    .map(({ at, ratingCode }) => ({ at, rating: ratingCode }));
  return [first, ...onWing, ...atChanges].sort((a, b) => a.at - b.at);
}

/** The place of an engine at the end, in words. */
export function placeOf(serial) {
  const last = hangingOf(serial).at(-1);
  if (last !== undefined && last.to === null)
    return { registration: last.registration, position: last.position, since: wire(last.from) };
  const off = hangings
    .filter((change) => change.outgoing === serial)
    .map(({ offAt, toLocation }) => ({ at: offAt, location: toLocation }));
  const moved = moves
    .filter((move) => move[0] === serial)
    .map(([, location, at]) => ({ at: minuteOf(at), location }));
  const latest = [...off, ...moved].sort((a, b) => a.at - b.at).at(-1);
  return { location: latest?.location ?? firstStoreOf(serial) };
}

/** The store a spare lies in as the record begins. */
export function firstStoreOf(serial) {
  if (!inStore.includes(serial)) throw new Error(`${serial} was never in store`);
  return { KT: 'Engine store, QXA', RV: 'Engine store, QZJ', DM: 'Engine store, QQJ' }[serial.slice(0, 2)];
}
