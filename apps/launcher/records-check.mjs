// npm run trial-balance         every minute flown is posted once at every position, or exit code 1
// npm run projections:verify    what is computed agrees with a rebuild from the facts, and chains are whole, or exit code 1
// Both read the database that npm start serves, running or not, and write nothing.
import path from 'node:path';
import { build } from './building/build.mjs';
import { ensureInstalled } from './building/install.mjs';
import { inRoot } from './building/paths.mjs';
import { reporting, runNode, StepFailed } from './building/run.mjs';

const commands = { 'trial-balance': 'trial-balance.js', 'projections:verify': 'rebuild.js' };

/** The address of the served database as `app`, and how to let go of it. */
async function servedDatabase() {
  const { asUser } = await import('./database/connection.mjs');
  const { dataFolder, keptSecret } = await import('./serving/data-folder.mjs');
  const own = process.env.APP_DATABASE_URL;
  if (own) return { appUrl: own, stop: async () => {} };
  const folder = dataFolder();
  const password = keptSecret(folder, 'app-password');
  const address = process.env.DATABASE_URL;
  if (address) return { appUrl: asUser(address, 'app', password), stop: async () => {} };
  const { startEmbedded } = await import('./database/embedded.mjs');
  const server = await startEmbedded({ folder: path.join(folder, 'postgres') });
  // A server that was running before serves somebody else: it stays.
  return {
    appUrl: asUser(server.url('strutbook'), 'app', password),
    stop: server.attached ? async () => {} : server.stop,
  };
}

async function run() {
  const file = commands[process.argv[2]];
  if (file === undefined) throw new StepFailed(`Name one of: ${Object.keys(commands).join(', ')}`);
  ensureInstalled();
  await build('api');
  const database = await servedDatabase();
  try {
    runNode([inRoot('apps/api/dist', file)], { env: { DATABASE_URL: database.appUrl } });
  } finally {
    await database.stop();
  }
}

await reporting(run);
