import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { type EmbeddedServer, startEmbedded } from '../../../apps/launcher/database/embedded.mjs';
import { withClient } from '../../support/database.js';

describe('the embedded PostgreSQL', () => {
  let folder: string;
  let server: EmbeddedServer;

  beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'embedded-'));
    server = await startEmbedded({ folder });
  });

  afterAll(async () => {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  });

  test('listens on the loopback interface alone and asks for its password', async () => {
    const shown = await withClient(
      server.url('postgres'),
      async (client) => (await client.query('SHOW listen_addresses')).rows,
    );
    expect(shown).toEqual([{ listen_addresses: '127.0.0.1' }]);
    const wrong = new URL(server.url('postgres'));
    wrong.password = 'wrong';
    await expect(withClient(wrong.href, (client) => client.query('SELECT 1'))).rejects.toThrow(
      /password authentication failed/,
    );
  });

  test('keeps its password for its own user alone', () => {
    expect(statSync(path.join(folder, 'password')).mode & 0o077).toBe(0);
  });

  test('is attached to while it runs', async () => {
    const again = await startEmbedded({ folder });
    expect(again).toMatchObject({ attached: true, pid: server.pid, port: server.port });
  });

  test('comes up after kill -9 with every row whose commit was answered', async () => {
    await withClient(server.url('postgres'), async (client) => {
      await client.query('CREATE TABLE kept (id int)');
      for (let id = 1; id <= 50; id++) await client.query('INSERT INTO kept VALUES ($1)', [id]);
    });
    process.kill(server.pid, 'SIGKILL');
    server = await startEmbedded({ folder });
    expect(server.attached).toBe(false);
    const { rows } = await withClient(server.url('postgres'), (client) =>
      client.query('SELECT count(*)::int AS n FROM kept'),
    );
    expect(rows).toEqual([{ n: 50 }]);
  });
});
