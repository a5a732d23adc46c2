// npm run bench: the product's hot paths against hand-written twins, in one run on one database at scale S.
// It prints ratios; a figure above its target ends with exit code 1.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import pg from 'pg';
import { build } from '../../apps/launcher/building/build.mjs';
import { ensureInstalled } from '../../apps/launcher/building/install.mjs';
import { startEmbedded } from '../../apps/launcher/database/embedded.mjs';
import { prepareDatabase } from '../../apps/launcher/database/prepare.mjs';
import { dueListWays } from './due-list.mjs';
import { flightWays, makeTwin } from './log-flight.mjs';
import { openCheck } from './open-check.mjs';
import { compare, told } from './ratio.mjs';
import { releaseCheckWays } from './release-check.mjs';
import { fillPackage } from './release-check-rows.mjs';
import { fillScaleS, scale } from './scale-s.mjs';

ensureInstalled();
await build('api');
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'strutbook-bench-'));
const server = await startEmbedded({ folder });
const open = [];

async function connect(url) {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  open.push(client);
  return client;
}

async function bench() {
  const home = await connect(server.url('postgres'));
  await home.query('CREATE DATABASE bench');
  const appPassword = 'bench-only';
  await prepareDatabase(server.url('bench'), { appPassword });
  const admin = await connect(server.url('bench'));
  const begun = Date.now();
  await fillScaleS(admin);
  await makeTwin(admin);
  await fillPackage(admin);
  console.log(
    `filled scale S in ${((Date.now() - begun) / 1000).toFixed(1)} s: ${scale.airframes} airframes, ` +
      `${scale.airframes * scale.flights} flights, ${scale.airframes * scale.engines * scale.parts} limited parts`,
  );
  const appUrl = new URL(server.url('bench'));
  appUrl.username = 'app';
  appUrl.password = appPassword;
  const app = await connect(appUrl.href);
  const releaseCheck = await releaseCheckWays(app, (packageId) => openCheck(appUrl.href, packageId));
  const results = [
    // Before flights are logged: pages of chance names would be gaps of the log.
    await compare({ name: 'release check / one hand-written SELECT', target: 2, each: 10, ...releaseCheck }),
    await compare({ name: 'log one flight / bare insert', target: 1.5, each: 200, ...flightWays(app) }),
    await compare({
      name: 'first page of what is due / hand-written SQL',
      target: 2,
      each: 30,
      ...(await dueListWays(app)),
    }),
  ];
  await releaseCheck.close();
  console.log(
    `\n${'ms for one, product and twin'.padEnd(46)} ${'product'.padStart(9)} ${'twin'.padStart(9)} ${'ratio'.padStart(7)}`,
  );
  for (const result of results) console.log(told(result));
  return results.every((result) => result.ratio <= result.target);
}

let within = false;
try {
  within = await bench();
} finally {
  for (const client of open) await client.end();
  await server.stop();
  fs.rmSync(folder, { recursive: true, force: true });
}
process.exit(within ? 0 : 1);
