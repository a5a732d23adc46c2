// Loads the demonstration through the running API, as a user would. See README.md beside this file.
// BASE_URL: where the API answers. SEED_SIGN_IN, SEED_PASSWORD: an administrator.
// SEED_OPERATOR: the operator's code, where several are served.
import { Client } from './load/client.mjs';
import { counting } from './load/counting.mjs';
import { directives } from './load/directives.mjs';
import { record } from './load/events.mjs';
import { each } from './load/files.mjs';
import { byHand, flightFiles, importFile } from './load/flights.mjs';
import { limitDirective } from './load/lives.mjs';
import { colleagues, pins } from './load/people.mjs';
import { plannedFlying } from './load/planned.mjs';
import * as register from './load/register.mjs';
import * as shop from './load/shop.mjs';
import { shopVisits } from './load/shop-visits.mjs';
import { work } from './load/work.mjs';

const started = Date.now();
const tell = (line) => console.log(`${((Date.now() - started) / 1000).toFixed(1).padStart(5)} s  ${line}`);

function needed(name) {
  const value = process.env[name];
  if (value === undefined || value === '') throw new Error(`${name} is not set`);
  return value;
}

async function load() {
  const base = needed('BASE_URL');
  const client = new Client(base);
  const { person } = await client.signIn(needed('SEED_SIGN_IN'), needed('SEED_PASSWORD'));
  tell(`signed in as ${person.fullName}`);
  tell(await register.people(client));
  const colleague = colleagues(base);
  tell(await pins(colleague));
  const fleet = await register.fleet(client);
  tell(`${Object.keys(fleet.airframes).length} airframes, ${Object.keys(fleet.models).length} models`);
  tell(await shop.authorisations(client, fleet));
  tell(await register.lifeLimits(client, fleet));
  const found = await register.components(client, fleet);
  tell(`${Object.keys(found).length} components`);
  tell(await register.openings(client, fleet, found));
  tell(await register.ratings(client, found));
  tell(await register.placements(client, fleet, found));
  const about = { colleague, airframes: fleet.airframes, found, tell };
  await record(client, { ...about, when: 'before' });
  tell(await byHand(client, fleet));
  await each(flightFiles(), 1, async (fileName) => tell(await importFile(client, fileName)));
  await record(client, { ...about, when: 'after' });
  tell(await counting(client, { ...fleet, found }));
  tell(await register.traceGaps(client, found));
  tell(await limitDirective(client, fleet));
  tell(await shopVisits(client, { models: fleet.models, found }));
  const tools = await shop.tools(client);
  tell(tools.line);
  const procedures = await shop.procedures(client);
  tell(procedures.line);
  const named = { ...about, ...fleet, positions: await shop.positionIds(client, fleet.airframes) };
  const requirements = await shop.requirements(client, named);
  tell(requirements.line);
  tell(await directives(client, named, requirements.found));
  await work({
    ...named,
    tools: tools.found,
    procedures: procedures.found,
    requirements: requirements.found,
  });
  tell(await plannedFlying(client, fleet.airframes));
  tell('the demonstration is loaded');
}

try {
  await load();
} catch (error) {
  const cause = error.cause?.code ?? error.cause?.message;
  console.error(
    `The demonstration could not be loaded: ${error.message}${cause === undefined ? '' : ` (${cause})`}`,
  );
  process.exitCode = 1;
}
