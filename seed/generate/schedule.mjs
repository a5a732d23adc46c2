// The flights of one airframe: out from the base and back, except while it stands in the hangar.
import { MINUTES_A_DAY, minuteOf, RECORD_BEGINS, RECORD_ENDS } from './instants.mjs';
import { randomOf, seedOf } from './random.mjs';
import { changes, checks, incident, training } from './story.mjs';

/**
 * All flights in order: {page, from, to, takeOffAt, landingAt, touchAndGoes, starts, abortedTakeOffs, exceptions}.
 * Exceptions are those of a position that did not run all the way.
 */
export function flightsOf(airframe) {
  const random = randomOf(seedOf(airframe.registration));
  const log = { flights: [], page: airframe.firstPage };
  const windows = windowsOf(airframe.registration);
  const lessons = training
    .filter(([registration]) => registration === airframe.registration)
    .map(([, day, touches]) => ({ at: minuteOf(day), touches }));
  const awaited = incident.registration === airframe.registration ? [incident] : [];
  let now = RECORD_BEGINS + random.whole(240, 600);
  while (now < RECORD_ENDS) {
    now = next(log, { airframe, random, windows, lessons, awaited }, now);
  }
  return log.flights;
}

/** Enters what comes next, if anything does, and answers when the airframe may fly again. */
function next(log, { airframe, random, windows, lessons, awaited }, from) {
  const stands = windows.find((window) => window.to > from);
  const inHangar = stands !== undefined && from >= stands.from;
  const now = withinHours(airframe, inHangar ? stands.to + random.whole(30, 240) : from, random);
  if (lessons.length > 0 && now >= lessons[0].at)
    return train(log, airframe, lessons.shift().touches, now, random);
  const legs = rotation(airframe, now, random);
  if (stands !== undefined && legs[1].landingAt > stands.from && now < stands.to)
    return stands.to + random.whole(30, 240);
  if (awaited.length > 0 && now >= awaited[0].after) {
    const until = divert(log, airframe, awaited.shift(), now);
    windows.push({ from: log.flights.at(-1).landingAt, to: until });
    return until;
  }
  for (const leg of legs) if (leg.landingAt <= RECORD_ENDS) enter(log, leg);
  return legs[1].landingAt + random.whole(...airframe.turn);
}

function windowsOf(registration) {
  const ofChanges = changes
    .filter((change) => change.registration === registration && change.window[0] !== 'incident')
    .map(({ window: [from, to] }) => ({ from: minuteOf(from), to: minuteOf(to) }));
  return [...checks.filter((check) => check.registration === registration), ...ofChanges].sort(
    (a, b) => a.from - b.from,
  );
}

function withinHours({ hours, extra }, at, random) {
  if (hours === null) return at;
  const ofDay = at % MINUTES_A_DAY;
  const day = at - ofDay;
  if (ofDay < hours[0]) return day + hours[0] + random.whole(5, extra);
  if (ofDay > hours[1]) return day + MINUTES_A_DAY + hours[0] + random.whole(5, extra);
  return at;
}

function rotation({ base, routes, turn }, at, random) {
  const [away, minutes] = random.pick(routes);
  const there = Math.max(31, minutes + random.whole(-9, 14));
  const back = Math.max(31, minutes + random.whole(-12, 11));
  const turned = at + there + random.whole(...turn);
  return [
    { from: base, to: away, takeOffAt: at, landingAt: at + there, ...events(random) },
    { from: away, to: base, takeOffAt: turned, landingAt: turned + back, ...events(random) },
  ];
}

/** Now and then an engine is started twice, or a take-off is broken off. */
function events(random) {
  const abortedTakeOffs = random.oneIn(900) ? 1 : 0;
  const starts = abortedTakeOffs === 1 || random.oneIn(250) ? 2 : 1;
  return { touchAndGoes: 0, starts, abortedTakeOffs, exceptions: [] };
}

function train(log, { base }, touches, at, random) {
  let now = at;
  for (const touchAndGoes of touches) {
    const minutes = touchAndGoes * 9 + random.whole(12, 25);
    enter(log, {
      from: base,
      to: base,
      takeOffAt: now,
      landingAt: now + minutes,
      touchAndGoes,
      starts: 1,
      abortedTakeOffs: 0,
      exceptions: [],
    });
    now += minutes + random.whole(70, 120);
  }
  return now;
}

/** The shut-down, the stand at the diversion, the ferry on the other engines, and the hangar. */
function divert(log, { base }, { diversion, flown, position, notRunningFor, stands, ferry }, at) {
  const plain = { touchAndGoes: 0, starts: 1, abortedTakeOffs: 0 };
  const none = { flights: 0, landings: 0, touchAndGoes: 0, starts: 0, abortedTakeOffs: 0 };
  enter(log, {
    from: base,
    to: diversion,
    takeOffAt: at,
    landingAt: at + flown,
    ...plain,
    exceptions: [{ positionNumber: position, kind: 'shut-down', minutes: notRunningFor, ...none }],
  });
  const takeOffAt = at + flown + stands;
  enter(log, {
    from: diversion,
    to: base,
    takeOffAt,
    landingAt: takeOffAt + ferry,
    ...plain,
    exceptions: [
      {
        positionNumber: position,
        kind: 'not-running',
        minutes: ferry,
        ...none,
        flights: 1,
        landings: 1,
        starts: 1,
      },
    ],
  });
  return takeOffAt + ferry + 3 * MINUTES_A_DAY;
}

function enter(log, flight) {
  log.flights.push({ page: String(log.page), ...flight });
  log.page += 1;
}
