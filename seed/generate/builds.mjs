// Each engine with its modules and parts, and what they had used when the record begins.

import { atLeast, engines, special } from './fleet.mjs';
import { add, openingFor, remainingOf } from './life.mjs';
import { models, partNumberOf, partsOf, STRONGER_SHAFT } from './models.mjs';
import { randomOf, seedOf } from './random.mjs';
import { acceptedGap } from './story.mjs';
import { ratingsOf } from './timeline.mjs';
import { ranByRating, ranInAll } from './usage.mjs';

const LEAST = 700;
const STRONGER = ['RV-204', 'RV-270'];
const taken = new Set();

/** Every engine, complete: {serial, opening, modules: [{serial, name, parts: [{serial, name, opening, …}]}], …}. */
export const builds = engines.map(buildOf);

function buildOf(engine) {
  const { serial, model, rating, otherRating, minutesACycle, sinceVisit } = engine;
  const random = randomOf(seedOf(serial));
  const { denominator } = models[model].rule;
  const ran = ranByRating(serial, model);
  const inAll = ranInAll(serial, model);
  const cycles =
    engine.cycles.now === undefined ? engine.cycles : engine.cycles.now.cycles - inAll.units / denominator;
  const minutes =
    engine.cycles.now === undefined
      ? cycles * minutesACycle + random.whole(-900, 900)
      : engine.cycles.now.minutes - inAll.minutes;
  const opening = splitByRating(model, rating, { cycles, minutes, otherRating, denominator });
  const visit =
    sinceVisit === null
      ? null
      : { minutes: sinceVisit * minutesACycle + random.whole(-400, 400), units: sinceVisit * denominator };
  const context = {
    engine,
    random,
    ran,
    opening,
    visit,
    ratingNow: ratingsOf(serial).at(-1).rating,
    denominator,
  };
  const parts = partsOf(model).map((part) => buildPart(context, part));
  const modules = Object.keys(models[model].modules).map((name, index) => ({
    name,
    serial: `${serial}-M${index + 1}`,
    partNumber: partNumberOf(model, `${index + 1}000`),
    parts: parts.filter((part) => part.module === name),
  }));
  return {
    ...engine,
    opening,
    visit,
    ran,
    ratingNow: context.ratingNow,
    made: madeBefore(cycles, random),
    modules,
  };
}

function splitByRating(model, rating, { cycles, minutes, otherRating, denominator }) {
  if (otherRating === 0) return { [rating]: { minutes, units: cycles * denominator } };
  const other = models[model].ratings.find((one) => one !== rating);
  const minutesThere = Math.floor((minutes * otherRating) / cycles);
  return {
    [other]: { minutes: minutesThere, units: otherRating * denominator },
    [rating]: { minutes: minutes - minutesThere, units: (cycles - otherRating) * denominator },
  };
}

function buildPart(
  { engine, random, ran, opening, visit, ratingNow, denominator },
  { module, name, partNumber: usual },
) {
  const { serial: engineSerial, model, rating, minutesACycle } = engine;
  const partNumber = name === 'HPT shaft' && STRONGER.includes(engineSerial) ? STRONGER_SHAFT : usual;
  const part = { module, name, partNumber, serial: serialOf(usual, random), made: null };
  const target = special[engineSerial]?.[name];
  if (target === null) return { ...part, opening: null, origin: 'unknown' };
  if (target !== undefined) {
    const cycles = openingFor(model, partNumber, { ran, other: {}, rating, ratingNow, target });
    const same = opening[rating].units === cycles * denominator && Object.keys(opening).length === 1;
    const minutes = same ? opening[rating].minutes : cycles * minutesACycle + random.whole(-300, 300);
    return {
      ...part,
      opening: { [rating]: { minutes, units: cycles * denominator } },
      origin: same ? 'engine' : 'used',
    };
  }
  if (leaves(opening) >= (atLeast[engineSerial] ?? LEAST)) return { ...part, opening, origin: 'engine' };
  const fitted = { [rating]: visit };
  if (visit === null || leaves(fitted) < (atLeast[engineSerial] ?? LEAST))
    throw new Error(`no opening fits ${name} of ${engineSerial}`);
  return { ...part, opening: fitted, origin: 'visit' };

  function leaves(start) {
    const worst = acceptedGap.engine === engineSerial && acceptedGap.part === name ? acceptedGap : null;
    const remaining = remainingOf(model, partNumber, { used: add(start, ran), ratingNow, worst });
    return typeof remaining === 'string'
      ? Number.POSITIVE_INFINITY
      : Math.min(remaining.cycles, remaining.minutes ?? Number.POSITIVE_INFINITY);
  }
}

function serialOf(partNumber, random) {
  for (;;) {
    const serial = `${partNumber.replace('-', '')}-${random.whole(1000, 9999)}`;
    if (taken.has(serial)) continue;
    taken.add(serial);
    return serial;
  }
}

/** A day of manufacture some years back, the older the more an engine has run. */
function madeBefore(cycles, random) {
  const year = 2022 - Math.min(15, Math.floor(cycles / 900));
  return `${year}-${String(random.whole(1, 12)).padStart(2, '0')}-${String(random.whole(1, 28)).padStart(2, '0')}`;
}
