import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type pg from 'pg';
import { startDatabase, type TestDatabase, withClient } from '../../support/database.js';
import { FACTS, RECORDS } from '../../support/scenario/one-row-each.js';
import { tablesOf } from '../../support/scenario/stored-rows.js';

/** The tables that belong to no operator: the operators themselves, and the migrations applied. */
const WITHOUT_OPERATOR = ['_prisma_migrations', 'operator'];

const NOT_PERMITTED = '42501';

let database: TestDatabase;

beforeAll(async () => {
  database = await startDatabase();
}, 60_000);

afterAll(() => database?.drop(), 30_000);

describe('the schema', () => {
  const asked = <T extends pg.QueryResultRow>(sql: string): Promise<T[]> =>
    withClient(database.adminUrl, async (client) => (await client.query<T>(sql)).rows);

  it('lets no table but the known ones belong to no operator', async () => {
    const all = await withClient(database.adminUrl, tablesOf);
    const rows = await asked<{ name: string }>(
      `SELECT table_name AS name FROM information_schema.columns WHERE table_schema = 'public' AND column_name = 'operator_id'`,
    );
    const owned = new Set(rows.map(({ name }) => name));
    expect(all.filter((table) => !owned.has(table))).toEqual(WITHOUT_OPERATOR);
  });

  it('forces row-level security on every table of an operator, with one policy for those who serve and read', async () => {
    const rows = await asked<{ name: string; enabled: boolean; forced: boolean; policies: string[] }>(
      `SELECT c.relname AS name, c.relrowsecurity AS enabled, c.relforcerowsecurity AS forced,
         (SELECT array_agg(p.policyname || ' ' || array_to_string(p.roles, ',') ORDER BY p.policyname) FROM pg_policies p
           WHERE p.schemaname = 'public' AND p.tablename = c.relname)::text[] AS policies
       FROM pg_class c WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND c.relname <> '_prisma_migrations'
       ORDER BY 1`,
    );
    expect(rows.length).toBeGreaterThan(30);
    for (const { name, ...table } of rows)
      expect([name, table]).toEqual([
        name,
        { enabled: true, forced: true, policies: ['own_operator app,auditor', 'whole_table owner'] },
      ]);
  });

  it('leads every primary key, unique key and foreign key of an operator’s table with the operator', async () => {
    const rows = await asked<{ name: string; first: string }>(
      `SELECT i.indexrelid::regclass::text AS name, a.attname AS first
         FROM pg_index i JOIN pg_attribute a ON a.attrelid = i.indrelid AND a.attnum = i.indkey[0]
        WHERE i.indisunique AND i.indrelid IN (SELECT oid FROM pg_class WHERE relnamespace = 'public'::regnamespace
          AND relname NOT IN ('operator', '_prisma_migrations'))
       UNION ALL
       SELECT c.conname, a.attname FROM pg_constraint c JOIN pg_attribute a ON a.attrelid = c.conrelid AND a.attnum = c.conkey[1]
        WHERE c.contype IN ('p', 'f', 'x') AND c.connamespace = 'public'::regnamespace
          AND c.conrelid NOT IN ('operator'::regclass, '_prisma_migrations'::regclass)`,
    );
    expect(rows.length).toBeGreaterThan(100);
    expect(rows.filter(({ first }) => first !== 'operator_id')).toEqual([]);
  });

  it('lets no foreign key cascade', async () => {
    const rows =
      await asked(`SELECT conname FROM pg_constraint WHERE contype = 'f' AND connamespace = 'public'::regnamespace
      AND (confdeltype <> 'a' OR confupdtype <> 'a')`);
    expect(rows).toEqual([]);
  });

  it('guards every fact and record with triggers that always fire, against rows and against truncation', async () => {
    const rows = await asked<{ name: string; guards: string[] }>(
      `SELECT c.relname AS name, array_agg(t.tgname || ' ' || t.tgenabled::text ORDER BY t.tgname)::text[] AS guards
         FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid
        WHERE NOT t.tgisinternal AND t.tgname IN ('fact_guard', 'record_guard', 'no_truncate') GROUP BY 1`,
    );
    const guards = Object.fromEntries(rows.map((row) => [row.name, row.guards]));
    const expected = (guard: string) => [`${guard} A`, 'no_truncate A'].sort();
    expect(guards).toEqual(
      Object.fromEntries([
        ...FACTS.map((table) => [table, expected('fact_guard')]),
        ...RECORDS.map((table) => [table, expected('record_guard')]),
      ]),
    );
  });

  it('refuses the application to end a table, a trigger or a policy', async () => {
    await withClient(database.appUrl, async (client) => {
      const statements = [
        'DROP TABLE stay',
        'ALTER TABLE stay DISABLE TRIGGER fact_guard',
        'ALTER TABLE stay DISABLE ROW LEVEL SECURITY',
        'DROP POLICY own_operator ON stay',
        'ALTER TABLE stay NO FORCE ROW LEVEL SECURITY',
        'SET session_replication_role = replica',
        'DROP TRIGGER fact_guard ON stay',
      ];
      for (const statement of statements)
        await expect(client.query(statement)).rejects.toMatchObject({ code: NOT_PERMITTED });
    });
  });
});
