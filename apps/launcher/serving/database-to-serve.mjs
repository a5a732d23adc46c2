import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import pg from 'pg';
import { StepFailed } from '../building/run.mjs';
import { asUser, withConnection } from '../database/connection.mjs';
import { prepareDatabase } from '../database/prepare.mjs';
import { dataFolder, keptSecret } from './data-folder.mjs';

const database = 'strutbook';
const served = 4180_0002; // the advisory lock of the one launcher that serves an embedded database
const notThereYet = new Set(['ECONNREFUSED', 'ENOTFOUND', 'EAI_AGAIN', '57P03']); // 57P03: it is starting up

/** Holds the embedded database for this process alone, until the answered function is called or the process ends. */
async function holdAlone(url) {
  const client = new pg.Client({ connectionString: url });
  client.on('error', () => {});
  await client.connect();
  const { rows } = await client.query('SELECT pg_try_advisory_lock($1) AS held', [served]);
  if (rows[0].held) return () => client.end().catch(() => {});
  await client.end();
  throw new StepFailed(
    'Strutbook already runs on this data folder. Stop it first, or set DATA_DIR to another folder.',
  );
}

async function embedded(folder) {
  const { startEmbedded } = await import('../database/embedded.mjs');
  const server = await startEmbedded({ folder: path.join(folder, 'postgres') });
  await withConnection(server.url('postgres'), async (client) => {
    const { rowCount } = await client.query('SELECT FROM pg_database WHERE datname = $1', [database]);
    if (rowCount === 0) await client.query(`CREATE DATABASE ${database}`);
  });
  const adminUrl = server.url(database);
  const release = await holdAlone(adminUrl);
  const stop = async () => {
    await release();
    await server.stop();
  };
  return { adminUrl, stop, where: `embedded PostgreSQL in ${folder}` };
}

/** A server given by its address may still be starting beside us; it gets half a minute. */
async function given(adminUrl) {
  for (let second = 0; ; second++) {
    try {
      await withConnection(adminUrl, (client) => client.query('SELECT 1'));
      return { adminUrl, stop: async () => {}, where: `PostgreSQL at ${new URL(adminUrl).host}` };
    } catch (error) {
      if (second === 30 || !notThereYet.has(error.code))
        throw new StepFailed(`DATABASE_URL can't be reached: ${error.message}`);
      await sleep(1000);
    }
  }
}

/**
 * The database to serve, ready: the one at DATABASE_URL, or the embedded one under DATA_DIR.
 * Answers the address for preparing (`adminUrl`), the one for serving as `app` (`appUrl`), the migrations applied,
 * where it is, the data folder, and how to let go of it.
 * Errors: StepFailed.
 */
export async function databaseToServe() {
  const folder = dataFolder();
  const address = process.env.DATABASE_URL;
  const place = address ? await given(address) : await embedded(folder);
  try {
    const ownAppUrl = process.env.APP_DATABASE_URL;
    const appPassword = ownAppUrl ? undefined : keptSecret(folder, 'app-password');
    const applied = await prepareDatabase(place.adminUrl, { appPassword });
    return { ...place, folder, applied, appUrl: ownAppUrl ?? asUser(place.adminUrl, 'app', appPassword) };
  } catch (error) {
    await place.stop();
    throw error;
  }
}
