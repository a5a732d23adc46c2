import crypto from 'node:crypto';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { onDatabase, withConnection } from './connection.mjs';

/** Commits are as safe as in service: the API serves from no other server, and crashes are tested here too. */
const settings = {
  max_connections: '200',
  shared_buffers: '256MB',
};

/**
 * A PostgreSQL to make databases in and throw them away: the one at `given` (an address of a user that may create
 * roles and databases), or an embedded one in a temporary folder. `url(database)` is its creator's address.
 */
export async function scratchServer(given) {
  if (given) return { url: (database) => onDatabase(given, database), home: given, stop: async () => {} };
  const { startEmbedded } = await import('./embedded.mjs');
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'strutbook-'));
  const server = await startEmbedded({ folder, settings });
  const stop = async () => {
    await server.stop();
    fs.rmSync(folder, { recursive: true, force: true });
  };
  return { url: server.url, home: server.url('postgres'), stop };
}

/** Runs `work` with the creator's address of a new, empty database on the server, and drops it. */
export async function withScratchDatabase(server, work) {
  const name = `strutbook_${crypto.randomBytes(6).toString('hex')}`;
  await withConnection(server.home, (client) => client.query(`CREATE DATABASE ${name}`));
  try {
    return await work(server.url(name));
  } finally {
    await withConnection(server.home, (client) => client.query(`DROP DATABASE ${name} WITH (FORCE)`));
  }
}
