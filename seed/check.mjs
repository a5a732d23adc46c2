// Compares what the running system says with expected.json. Same variables as load.mjs.
import { checkMoves, checkPackages, checkRequirements } from './check/work.mjs';
import { Client } from './load/client.mjs';
import { each, json } from './load/files.mjs';

const differences = [];

function same(what, found, expected) {
  const [a, b] = [JSON.stringify(found ?? null), JSON.stringify(expected ?? null)];
  if (a !== b) differences.push(`${what}: found ${a}, expected ${b}`);
}

/** Cycles as one number where two fractions may be written differently. */
const inUnits = (cycles, denominator) =>
  cycles === null ? null : (cycles.units * denominator) / cycles.denominator;

async function checkAirframe(client, expected, airframe) {
  const name = expected.registration;
  same(`${name} minutes`, airframe.minutes, expected.minutes);
  same(`${name} flights`, airframe.flights, expected.flights);
  const { positions, airframe: head } = await client.get(`/api/airframes/${airframe.id}/positions`);
  same(`${name} last landing`, head.lastLandingAt, expected.lastLandingAt);
  same(`${name} last page`, head.lastLogPage, expected.lastLogPage);
  for (const { number, engine, pod, emptySince } of expected.positions) {
    const card = positions.find((one) => one.number === number);
    same(`${name} position ${number} engine`, card.engine?.serialNumber, engine);
    same(`${name} position ${number} pod`, card.pod?.serialNumber, pod);
    same(`${name} position ${number} empty since`, card.emptySince, emptySince);
  }
}

function checkEngine(expected, found) {
  const name = expected.serialNumber;
  const { denominator } = expected;
  const { sinceNew, sinceInstalled } = found.counters;
  same(`${name} minutes`, sinceNew.minutes, expected.minutes);
  same(`${name} cycles`, inUnits(sinceNew.cycles, denominator), expected.cycles?.units);
  same(`${name} rating`, found.ratingCode, expected.ratingCode);
  same(`${name} verified`, found.verified, expected.verified);
  same(`${name} minutes since installed`, sinceInstalled?.minutes, expected.sinceInstalled?.minutes);
  const since = sinceInstalled === null ? null : inUnits(sinceInstalled.cycles, denominator);
  same(`${name} cycles since installed`, since, expected.sinceInstalled?.cycles.units);
  same(`${name} tightest, cycles`, found.limiter?.remainingCycles, expected.tightest.remainingCycles);
  if (expected.tightest.remainingCycles !== null)
    same(`${name} tightest`, found.limiter?.description, expected.tightest.description);
  const parts = new Map(
    found.slots
      .flatMap(({ component }) => component.slots)
      .map((slot) => [slot.component.serialNumber, slot.component]),
  );
  for (const part of expected.parts)
    checkPart(`${name} ${part.description}`, part, parts.get(part.serialNumber), denominator);
}

function checkPart(name, expected, found, denominator) {
  if (found === undefined) return differences.push(`${name}: not in the engine`);
  const { minutes, cycles } = found.counters.sinceNew;
  same(`${name} minutes`, minutes, expected.minutes);
  same(`${name} cycles`, inUnits(cycles, denominator), expected.cycles?.units);
  same(`${name} life`, found.life?.kind, expected.life);
  same(`${name} cycles left`, found.life?.remainingCycles, expected.remainingCycles);
  same(`${name} minutes left`, found.life?.remainingMinutes, expected.remainingMinutes);
  if (expected.life === 'limited') same(`${name} flagged`, found.life?.flagged, expected.flagged);
}

async function check() {
  const client = new Client(process.env.BASE_URL);
  await client.signIn(process.env.SEED_SIGN_IN, process.env.SEED_PASSWORD);
  const expected = json('expected.json');
  const airframes = await client.get('/api/airframes');
  for (const one of expected.airframes) {
    await checkAirframe(
      client,
      one,
      airframes.find(({ registration }) => registration === one.registration),
    );
  }
  const { rows: engines } = await client.get('/api/components?kind=engine&limit=200');
  await each(expected.engines, 4, async (one) => {
    const { id } = engines.find(({ serialNumber }) => serialNumber === one.serialNumber);
    checkEngine(one, await client.get(`/api/components/${id}`));
  });
  const { rows: pods } = await client.get('/api/components?kind=pod&limit=200');
  await each(expected.pods, 4, async (one) => {
    const { id } = pods.find(({ serialNumber }) => serialNumber === one.serialNumber);
    same(
      `${one.serialNumber} minutes`,
      (await client.get(`/api/components/${id}`)).counters.sinceNew.minutes,
      one.minutes,
    );
  });
  await checkPackages(client, expected.packages, same);
  await checkMoves(client, expected.moves, same);
  await checkRequirements(client, expected.requirements, same);
}

try {
  await check();
  for (const difference of differences) console.error(difference);
  console.log(`${differences.length} differences`);
  process.exitCode = differences.length === 0 ? 0 : 1;
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}
