// What the system must say once everything is loaded, computed here by plain arithmetic.
import { builds } from './builds.mjs';
import { airframes, special } from './fleet.mjs';
import { RECORD_ENDS, wire } from './instants.mjs';
import { add, remainingOf } from './life.mjs';
import { models } from './models.mjs';
import { expectedDues } from './shop/due.mjs';
import { acceptedGap, lostLog, workedChanges } from './story.mjs';
import { openingOfAirframe, podOpenings } from './tables.mjs';
import { changes, flights, hangingOf, placeOf } from './timeline.mjs';
import { flownBy, podRan, ranSinceInstalled } from './usage.mjs';
import { closedRequirements, expectedPackages } from './work/packages.mjs';

const sum = (byRating) =>
  Object.values(byRating).reduce(
    (all, part) => ({ minutes: all.minutes + part.minutes, units: all.units + part.units }),
    { minutes: 0, units: 0 },
  );

export function expected() {
  const engines = builds.map(expectedEngine);
  return {
    note: 'Computed by seed/generate from the same files, apart from the system. Cycles are units over the denominator.',
    asOf: wire(RECORD_ENDS),
    flights: Object.values(flights).reduce((count, log) => count + log.length, 0),
    changes: changes.length,
    airframes: airframes.map((airframe) => expectedAirframe(airframe, engines)),
    engines,
    pods: podOpenings.map(({ serial, minutes }) => ({
      serialNumber: serial,
      minutes: minutes + podRan(serial),
    })),
    special: engines.flatMap((engine) =>
      engine.parts
        .filter((part) => special[engine.serialNumber]?.[part.description] !== undefined)
        .map((part) => ({ engine: engine.serialNumber, ...part })),
    ),
    packages: expectedPackages(),
    moves: workedChanges.flatMap((change) => expectedMoves(change, engines)),
    requirements: expectedDues(builds, closedRequirements()),
  };
}

/** What moved with the signature of its step, and its counters since new then: no flight was logged after. */
function expectedMoves({ registration, position, outgoing, incoming, removedAt, installedAt }, engines) {
  const counters = (serialNumber) => {
    const engine = engines.find((one) => one.serialNumber === serialNumber);
    if (engine !== undefined) return { minutes: engine.minutes, cycles: engine.cycles };
    const pod = podOpenings.find(({ serial }) => serial === serialNumber);
    return { minutes: pod.minutes + podRan(serialNumber) };
  };
  const moved = (direction, serialNumber, at) => ({
    registration,
    position,
    direction,
    serialNumber,
    at,
    ...counters(serialNumber),
  });
  return [moved('removal', outgoing, removedAt), moved('installation', incoming, installedAt)];
}

function expectedAirframe({ registration, positions, ...airframe }, engines) {
  const opening = openingOfAirframe({ registration, ...airframe });
  const flown = flownBy(registration);
  const numbers = Object.keys(positions).map(Number);
  return {
    registration,
    minutes: opening.minutes + flown.minutes,
    flights: opening.flights + flown.flights,
    lastLandingAt: wire(flights[registration].at(-1).landingAt),
    lastLogPage: flights[registration].at(-1).page,
    positions: numbers.map((number) => {
      const engine = engines.find(
        ({ place }) => place.registration === registration && place.position === number,
      );
      const pod = podOpenings.find(({ serial }) => {
        const last = hangingOf(serial).at(-1);
        return last?.to === null && last.registration === registration && last.position === number;
      });
      const left = changes
        .filter(
          (change) =>
            change.registration === registration && change.position === number && change.incoming === null,
        )
        .at(-1);
      return {
        number,
        engine: engine?.serialNumber ?? null,
        emptySince: engine === undefined ? wire(left.at) : null,
        pod: pod?.serial ?? null,
      };
    }),
  };
}

function expectedEngine({ serial, model, opening, ran, ratingNow, modules }) {
  const { denominator } = models[model].rule;
  const total = sum(add(opening, ran));
  const since = ranSinceInstalled(serial, model);
  const lost = lostLog.engine === serial;
  const parts = modules.flatMap((module) =>
    module.parts.map((part) => expectedPart({ serial, model, ran, ratingNow, denominator, lost }, part)),
  );
  const untold = parts.find((part) => part.life === 'unsubstantiated');
  const tightest =
    untold ??
    parts
      .filter((part) => part.life === 'limited')
      .reduce((a, b) => (b.remainingCycles < a.remainingCycles ? b : a));
  return {
    serialNumber: serial,
    model,
    ratingCode: ratingNow,
    denominator,
    verified: !lost,
    place: placeOf(serial),
    // Behind a gap that nobody accepted no total stands.
    minutes: lost ? null : total.minutes,
    cycles: lost ? null : { units: total.units, denominator },
    sinceInstalled:
      since === null ? null : { minutes: since.minutes, cycles: { units: since.units, denominator } },
    tightest: {
      description: tightest.description,
      serialNumber: tightest.serialNumber,
      remainingCycles: tightest.remainingCycles,
    },
    parts,
  };
}

function expectedPart(
  { serial, model, ran, ratingNow, denominator, lost },
  { serial: serialNumber, name, partNumber, opening },
) {
  const named = { serialNumber, description: name, partNumber };
  const nothing = { remainingCycles: null, remainingMinutes: null };
  if (opening === null) return { ...named, minutes: null, cycles: null, life: 'unsubstantiated', ...nothing };
  const used = add(opening, ran);
  const total = sum(used);
  // An accepted gap counts at its worst.
  const worst = acceptedGap.engine === serial && acceptedGap.part === name ? acceptedGap : null;
  const minutes = total.minutes + (worst?.minutes ?? 0);
  const units = total.units + (worst?.cycles ?? 0) * denominator;
  const counters = lost ? { minutes: null, cycles: null } : { minutes, cycles: { units, denominator } };
  const remaining = remainingOf(model, partNumber, { used, ratingNow, worst });
  if (typeof remaining === 'string') return { ...named, ...counters, life: remaining, ...nothing };
  if (lost) return { ...named, ...counters, life: 'unsubstantiated', ...nothing };
  return {
    ...named,
    ...counters,
    life: 'limited',
    remainingCycles: remaining.cycles,
    remainingMinutes: remaining.minutes,
    flagged: worst !== null,
  };
}
