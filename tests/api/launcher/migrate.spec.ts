import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from '@jest/globals';
import { migrate } from '../../../apps/launcher/migrate.mjs';
import { startEmptyDatabase, type TestDatabase, withClient } from '../../support/database.js';

describe('the migration runner', () => {
  let database: TestDatabase;
  let folder: string;

  const write = (name: string, sql: string): void => {
    mkdirSync(path.join(folder, name), { recursive: true });
    writeFileSync(path.join(folder, name, 'migration.sql'), sql);
  };
  const run = (): Promise<string[]> => migrate(database.adminUrl, { folder });
  const rows = (sql: string): Promise<Record<string, unknown>[]> =>
    withClient(database.adminUrl, async (client) => (await client.query(sql)).rows);

  beforeEach(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'migrations-'));
    database = await startEmptyDatabase();
    await withClient(
      database.adminUrl,
      async (client) => void (await client.query('ALTER SCHEMA public OWNER TO owner')),
    );
    write(
      '1_one',
      'CREATE TABLE one (id int);\nCREATE FUNCTION f() RETURNS int LANGUAGE sql AS $$ SELECT 1; $$;\n',
    );
    write('2_two', 'CREATE TABLE two (id int);\n');
  });

  afterEach(async () => {
    await database.drop();
    rmSync(folder, { recursive: true, force: true });
  });

  test('applies what is missing, in order, as the owner, and nothing the next time', async () => {
    expect(await run()).toEqual(['1_one', '2_two']);
    expect(await run()).toEqual([]);
    expect(await rows(`SELECT DISTINCT tableowner FROM pg_tables WHERE schemaname = 'public'`)).toEqual([
      { tableowner: 'owner' },
    ]);
  });

  test('records each as Prisma does: SHA-256 of the file, finished, one step', async () => {
    await run();
    const checksum = createHash('sha256').update('CREATE TABLE two (id int);\n').digest('hex');
    const [record] = await rows(`SELECT * FROM _prisma_migrations WHERE migration_name = '2_two'`);
    expect(record).toMatchObject({ checksum, applied_steps_count: 1, logs: null, rolled_back_at: null });
    expect(record?.['finished_at']).toBeInstanceOf(Date);
  });

  test('refuses a migration that was changed after it was applied, and names it', async () => {
    await run();
    write('1_one', 'CREATE TABLE one (id bigint);\n');
    write('3_three', 'CREATE TABLE three (id int);\n');
    await expect(run()).rejects.toThrow(/1_one was changed after it had been applied/);
    expect(await rows(`SELECT to_regclass('three') AS three`)).toEqual([{ three: null }]);
  });

  test('undoes a migration that fails, names its line, and applies it once it is right', async () => {
    write('3_three', 'CREATE TABLE three (id int);\nCREATE TABLE three (id int);\n');
    await expect(run()).rejects.toThrow(/3_three failed.* undone: relation "three" already exists/);
    expect(await rows(`SELECT to_regclass('three') AS three, to_regclass('two')::text AS two`)).toEqual([
      { three: null, two: 'two' },
    ]);
    write('3_three', 'CREATE TABLE three (id int);\n');
    expect(await run()).toEqual(['3_three']);
  });

  test('refuses to go on after one that another program left half applied', async () => {
    await run();
    await rows(
      `INSERT INTO _prisma_migrations (id, checksum, migration_name, logs) VALUES ('x', 'y', '3_three', 'out of space')`,
    );
    write('3_three', 'CREATE TABLE three (id int);\n');
    await expect(run()).rejects.toThrow(/3_three failed half way.*out of space/);
  });

  test('refuses a database that knows more migrations than this version', async () => {
    await run();
    rmSync(path.join(folder, '2_two'), { recursive: true });
    await expect(run()).rejects.toThrow(/2_two, which this version of the program does not know/);
  });

  test('applies each once when four start at the same time', async () => {
    const runs = await Promise.all([run(), run(), run(), run()]);
    expect(runs.flat().sort()).toEqual(['1_one', '2_two']);
  });
});
