// What is due of the requirements, by plain addition: counters at each accomplishment and now, apart from the system.
import { airframes, engines } from '../fleet.mjs';
import { dateOf, RECORD_BEGINS, RECORD_ENDS, wire } from '../instants.mjs';
import { models } from '../models.mjs';
import { workedChanges } from '../story.mjs';
import { openingOfAirframe } from '../tables.mjs';
import { flights, hangingOf, hangings } from '../timeline.mjs';
import { cycleUnits, ranIn } from '../usage.mjs';
import { accomplished, requirements } from './requirements.mjs';

const FIRST_CHECK_AFTER = 25 * 60;

/** Every accomplishment: those written down, and the repeat checks of mount bolts between 25 and 50 hours. */
export function accomplishments() {
  return [...boltChecks(), ...accomplished]
    .sort((a, b) => a.at - b.at)
    .map(({ at, ...rest }) => ({ ...rest, at: wire(at) }));
}

function boltChecks() {
  return airframes
    .filter(({ type }) => type === 'V-840')
    .flatMap(({ registration, positions }) =>
      Object.keys(positions).flatMap((number) => {
        const since = installedAt(registration, Number(number));
        const landing = firstLandingWith(registration, since);
        if (landing === undefined) return [];
        return [
          {
            code: 'V840-71-RT',
            registration,
            positionNumber: Number(number),
            at: landing.landingAt + 90,
            evidence: `Log page ${landing.page}: bolts torqued again`,
          },
        ];
      }),
    );
}

/** When the engine that hangs at a position was put there. */
function installedAt(registration, position) {
  const there = hangings.filter(
    (change) =>
      change.registration === registration && change.position === position && change.slot === 'engine',
  );
  return there.length === 0 ? RECORD_BEGINS : there.at(-1).onAt;
}

function firstLandingWith(registration, since) {
  let minutes = 0;
  return flights[registration].find(({ takeOffAt, landingAt }) => {
    if (landingAt <= since) return false;
    minutes += landingAt - takeOffAt;
    return minutes >= FIRST_CHECK_AFTER;
  });
}

/**
 * What the system must say of each requirement that is told here: counters it is due at, days it is due on.
 * `closed`: those that a package's release met after the last flight.
 */
export function expectedDues(builds, closed) {
  const isClosed = (done) =>
    closed.some(
      (one) =>
        one.code === done.code &&
        one.registration === done.registration &&
        one.positionNumber === done.positionNumber,
    );
  const fromRecords = accomplishments()
    .filter(
      ({ code, serialNumber }) =>
        code !== 'V840-71-RT' && code !== 'D45-AD-26-03' && serialNumber !== 'KT-601',
    )
    .filter((done) => !isClosed(done))
    .map((done) => {
      const { repeat, monthRule } = requirements.find(({ code }) => code === done.code);
      const counters = countersAt(done, builds);
      return {
        code: done.code,
        ...subjectOf(done),
        doneOn: done.at.slice(0, 10),
        ...(repeat.minutes === undefined ? {} : { dueAtMinutes: counters.minutes + repeat.minutes }),
        ...(repeat.cycles === undefined ? {} : { dueAtCycles: Math.floor(counters.cycles + repeat.cycles) }),
        ...(repeat.months === undefined
          ? {}
          : { dueOn: monthsAfter(done.at.slice(0, 10), repeat.months, monthRule) }),
      };
    });
  return [...fromRecords, ...closed.map(afterRelease), ...workedChanges.flatMap(afterInstallation)];
}

/** Met by a release: the position's clock stands where the last flight left it. */
function afterRelease({ code, registration, positionNumber }) {
  const { repeat } = requirements.find((one) => one.code === code);
  const minutes = positionMinutes(registration, positionNumber);
  return { code, registration, positionNumber, dueAtMinutes: minutes + repeat.minutes };
}

/** An engine just lifted: its bolts are due from where the clock stands. */
function afterInstallation({ slot, registration, position: positionNumber }) {
  if (slot !== 'engine') return [];
  const { code, threshold } = requirements.find(({ countedFrom }) => countedFrom === 'installation');
  const minutes = positionMinutes(registration, positionNumber);
  return [{ code, registration, positionNumber, doneOn: null, dueAtMinutes: minutes + threshold.minutes }];
}

const subjectOf = ({ serialNumber, registration, positionNumber }) =>
  serialNumber === undefined
    ? { registration, ...(positionNumber === undefined ? {} : { positionNumber }) }
    : { serialNumber };

/** Counters since new at an accomplishment: as the papers say, or added up from the flights. */
function countersAt({ serialNumber, registration, positionNumber, at, minutes, cycles }, builds) {
  if (minutes !== undefined) return { minutes, cycles };
  const until = Date.parse(at) / 60000;
  if (serialNumber !== undefined) return engineAt(serialNumber, until, builds);
  const opening = openingOfAirframe(airframes.find((one) => one.registration === registration));
  const ran = ranIn({ registration, position: positionNumber ?? null, from: RECORD_BEGINS, to: until });
  return { minutes: opening.minutes + ran.minutes, cycles: opening.flights + ran.flights };
}

function engineAt(serial, until, builds) {
  const { model } = engines.find((engine) => engine.serial === serial);
  const { opening } = builds.find((build) => build.serial === serial);
  const sum = { minutes: 0, units: 0 };
  for (const part of Object.values(opening)) {
    sum.minutes += part.minutes;
    sum.units += part.units;
  }
  for (const span of hangingOf(serial)) {
    if (span.from >= until) continue;
    const counts = ranIn({ ...span, to: span.to === null ? until : Math.min(span.to, until) });
    sum.minutes += counts.minutes;
    sum.units += cycleUnits(model, counts);
  }
  return { minutes: sum.minutes, cycles: sum.units / models[model].rule.denominator };
}

/** The same day so many months later, or the last day of that month. */
function monthsAfter(day, months, rule) {
  const [year, month, date] = day.split('-').map(Number);
  const last = new Date(Date.UTC(year, month - 1 + months + 1, 0));
  const wanted = rule === 'month-end' ? last.getUTCDate() : Math.min(date, last.getUTCDate());
  return dateOf(Date.UTC(last.getUTCFullYear(), last.getUTCMonth(), wanted) / 60000);
}

/** Minutes of a position's clock at the end of the flights. */
function positionMinutes(registration, positionNumber) {
  return countersAt({ registration, positionNumber, at: wire(RECORD_ENDS) }, []).minutes;
}
