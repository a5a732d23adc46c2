import crypto from 'node:crypto';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import pg from 'pg';
import { startEmbedded } from '../../apps/launcher/database/embedded.mjs';
import { prepareDatabase } from '../../apps/launcher/database/prepare.mjs';

// What a small server of one's own would be given; counts of buffers need the last.
const settings = {
  shared_buffers: '2GB',
  max_wal_size: '4GB',
  shared_preload_libraries: 'pg_stat_statements',
};

const at = (base, database) => Object.assign(new URL(base), { pathname: `/${database}` }).href;

async function query(url, sql) {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return await client.query(sql);
  } finally {
    await client.end();
  }
}

/** The server to measure on: the one in DATABASE_URL, as a superuser of it, or one of this run's own that goes with it. */
async function server() {
  const told = process.env.DATABASE_URL;
  if (told) {
    const { rows } = await query(told, 'SELECT rolsuper FROM pg_roles WHERE rolname = current_user');
    if (!rows[0].rolsuper)
      throw new Error('DATABASE_URL must be of a superuser: the filling passes by the constraints');
    return { url: (name) => (name === 'postgres' ? told : at(told, name)), stop: async () => {} };
  }
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'strutbook-bench-'));
  const own = await startEmbedded({ folder, settings });
  const stop = async () => {
    await own.stop();
    fs.rmSync(folder, { recursive: true, force: true });
  };
  return { url: own.url, stop };
}

/**
 * Databases of this run alone, and a role that may do what `app` may and is known to nobody else. `make` answers a new
 * one with a connection of the superuser and one of that role; `close` drops everything that was made.
 */
export async function databases() {
  const { url, stop } = await server();
  const mark = crypto.randomBytes(4).toString('hex');
  const [role, password] = [`strutbook_bench_${mark}`, crypto.randomBytes(12).toString('hex')];
  const open = [];
  const connect = async (address) => {
    const client = new pg.Client({ connectionString: address });
    await client.connect();
    open.push(client);
    return client;
  };
  const names = [];
  const make = async (label) => {
    const name = `strutbook_bench_${label.toLowerCase().replace(/[^a-z0-9]/g, '_')}_${mark}`;
    await query(url('postgres'), `CREATE DATABASE ${name}`);
    names.push(name);
    await prepareDatabase(url(name));
    if (names.length === 1)
      await query(url(name), `CREATE ROLE ${role} LOGIN PASSWORD '${password}' IN ROLE app`);
    const admin = await connect(url(name));
    const appUrl = Object.assign(new URL(url(name)), { username: role, password }).href;
    return { name, admin, appUrl, client: await connect(appUrl) };
  };
  const close = async () => {
    for (const client of open) await client.end();
    for (const name of names) await query(url('postgres'), `DROP DATABASE IF EXISTS ${name} WITH (FORCE)`);
    if (names.length > 0) await query(url('postgres'), `DROP ROLE IF EXISTS ${role}`);
    await stop();
  };
  return { make, close };
}
