import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import type pg from 'pg';
import { prepareDatabase } from '../../../apps/launcher/database/prepare.mjs';
import { startDatabase, type TestDatabase, withClient } from '../../support/database.js';

describe('the roles of a prepared database', () => {
  let database: TestDatabase;

  const asApp = (sql: string): Promise<pg.QueryResult> =>
    withClient(database.appUrl, (client) => client.query(sql));

  beforeAll(async () => {
    database = await startDatabase();
  });

  afterAll(() => database.drop());

  test('app signs in, is no superuser and is bound by row-level security', async () => {
    const { rows } = await asApp(
      'SELECT rolsuper, rolbypassrls, rolcreaterole, rolcreatedb FROM pg_roles WHERE rolname = current_user',
    );
    expect(rows).toEqual([
      { rolsuper: false, rolbypassrls: false, rolcreaterole: false, rolcreatedb: false },
    ]);
  });

  test('app owns nothing and can make no table', async () => {
    const { rows } = await asApp(
      `SELECT count(*)::int AS owned FROM pg_class WHERE relowner = 'app'::regrole`,
    );
    expect(rows).toEqual([{ owned: 0 }]);
    await expect(asApp('CREATE TABLE public.mine (id int)')).rejects.toThrow(/permission denied/);
  });

  test('app may not become the owner', async () => {
    await expect(asApp('SET ROLE owner')).rejects.toThrow(/permission denied/);
  });

  test('app puts a job in the queue and sees it, and can not touch the record of the queue’s own migrations', async () => {
    await asApp(`SELECT jobs_queue.add_job('of_this_test', json_build_object('a', 1))`);
    const { rows } = await asApp(`SELECT task_identifier FROM jobs_queue.jobs`);
    expect(rows).toEqual([{ task_identifier: 'of_this_test' }]);
    await expect(asApp('DELETE FROM jobs_queue.migrations')).rejects.toThrow(/permission denied/);
  });

  test('preparing it again, twice at once, changes nothing', async () => {
    expect(
      await Promise.all([prepareDatabase(database.adminUrl), prepareDatabase(database.adminUrl)]),
    ).toEqual([[], []]);
  });
});
