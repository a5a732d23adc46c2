import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type pg from 'pg';
import { startDatabase, type TestDatabase, withClient } from '../support/database.js';
import { fillEveryTable, OPERATOR } from '../support/scenario/one-row-each.js';
import { tablesOf } from '../support/scenario/stored-rows.js';

/** What happened. A row may be voided, once; a stay may be ended, once. */
const FACTS = [
  'counter_reading',
  'flight',
  'flight_exception',
  'gap_acceptance',
  'life_limit',
  'opening',
  'rating_change',
  'reset',
  'stay',
  'trace_gap',
];
/** What was done and signed. An act is given its answer, once. */
const RECORDS = ['about', 'act', 'document', 'journal_entry', 'package_change', 'release', 'signature'];
const KEPT = [...FACTS, ...RECORDS];
/** The tables that belong to no operator: the operators themselves, and the migrations applied. */
const WITHOUT_OPERATOR = ['_prisma_migrations', 'operator'];

const CHANGED = 'SB005';
const NOT_PERMITTED = '42501';

let database: TestDatabase;

beforeAll(async () => {
  database = await startDatabase();
  await fillEveryTable(database);
}, 60_000);

afterAll(async () => {
  await database?.drop();
}, 30_000);

/** How a statement ends: its SQLSTATE, or how many rows it changed. Nothing of it stays. */
async function outcome(client: pg.Client, statement: string): Promise<string> {
  await client.query('BEGIN');
  try {
    await client.query(`SELECT set_config('app.operator_id', '${OPERATOR}', true)`);
    const { rowCount } = await client.query(statement);
    return `${rowCount} rows`;
  } catch (error) {
    return (error as pg.DatabaseError).code ?? String(error);
  } finally {
    await client.query('ROLLBACK');
  }
}

const asApp = <T>(work: (client: pg.Client) => Promise<T>) => withClient(database.appUrl, work);

/** The superuser with triggers told to stand aside: as much as anyone can be from inside. */
const asReplica = <T>(work: (client: pg.Client) => Promise<T>) =>
  withClient(database.adminUrl, async (client) => {
    await client.query('SET session_replication_role = replica');
    return work(client);
  });

async function columnsOf(client: pg.Client, table: string): Promise<string[]> {
  const { rows } = await client.query<{ name: string }>(
    `SELECT attname AS name FROM pg_attribute WHERE attrelid = '"${table}"'::regclass AND attnum > 0 AND NOT attisdropped`,
  );
  return rows.map(({ name }) => name);
}

/** Statements that would change, replace or remove what the table holds. */
function removals(table: string, [key = 'operator_id']: readonly string[]): string[] {
  return [
    `DELETE FROM "${table}"`,
    `TRUNCATE "${table}" CASCADE`,
    `MERGE INTO "${table}" t USING (SELECT 1) AS s ON true WHEN MATCHED THEN DELETE`,
    `MERGE INTO "${table}" t USING (SELECT 1) AS s ON true WHEN MATCHED THEN UPDATE SET "${key}" = t."${key}"`,
  ];
}

async function primaryKey(client: pg.Client, table: string): Promise<string[]> {
  const { rows } = await client.query<{ name: string }>(
    `SELECT a.attname AS name FROM pg_constraint c JOIN pg_attribute a ON a.attrelid = c.conrelid AND a.attnum = ANY (c.conkey)
      WHERE c.conrelid = '"${table}"'::regclass AND c.contype = 'p'`,
  );
  return rows.map(({ name }) => name);
}

async function upsert(client: pg.Client, table: string): Promise<string> {
  const columns = (await columnsOf(client, table)).map((name) => `"${name}"`).join(', ');
  const keys = (await primaryKey(client, table)).map((name) => `"${name}"`).join(', ');
  return `INSERT INTO "${table}" (${columns}) SELECT ${columns} FROM "${table}" ON CONFLICT (${keys}) DO UPDATE SET operator_id = excluded.operator_id`;
}

describe.each(KEPT)('table %s', (table) => {
  it('holds a row to be tried on', async () => {
    await withClient(database.adminUrl, async (client) => {
      const { rows } = await client.query(`SELECT count(*)::int AS held FROM "${table}"`);
      expect(rows[0].held).toBeGreaterThan(0);
    });
  });

  it('refuses the application every change but those that end, void or answer', async () => {
    await asApp(async (client) => {
      const outcomes: Record<string, string> = {};
      for (const column of await columnsOf(client, table))
        outcomes[column] = await outcome(client, `UPDATE "${table}" SET "${column}" = "${column}"`);
      // The columns it may touch are refused by the row's own rule, as nothing is ended, voided or answered.
      for (const [column, result] of Object.entries(outcomes))
        expect([column, result]).toEqual([column, expect.stringMatching(`^(${CHANGED}|${NOT_PERMITTED})$`)]);
    });
  });

  it('refuses the application every removal and every replacement', async () => {
    await asApp(async (client) => {
      for (const statement of [
        ...removals(table, await columnsOf(client, table)),
        await upsert(client, table),
      ])
        expect([statement, await outcome(client, statement)]).toEqual([statement, NOT_PERMITTED]);
    });
  });

  it('refuses even a superuser who tells the triggers to stand aside', async () => {
    await asReplica(async (client) => {
      const columns = await columnsOf(client, table);
      const statements = [
        ...columns.map((column) => `UPDATE "${table}" SET "${column}" = "${column}"`),
        ...removals(table, columns),
        await upsert(client, table),
      ];
      for (const statement of statements)
        expect([statement, await outcome(client, statement)]).toEqual([statement, CHANGED]);
    });
  });
});

describe.each(FACTS)('a row of %s', (table) => {
  const voiding = `UPDATE "${table}" SET voided_seq = 99, void_reason = 'wrong' WHERE voided_seq IS NULL`;

  it('is voided once and then never again', async () => {
    await asApp(async (client) => {
      await client.query('BEGIN');
      await client.query(`SELECT set_config('app.operator_id', '${OPERATOR}', true)`);
      expect((await client.query(voiding)).rowCount).toBeGreaterThan(0);
      await expect(
        client.query(`UPDATE "${table}" SET voided_seq = 100, void_reason = 'wrong again'`),
      ).rejects.toMatchObject({ code: CHANGED });
      await client.query('ROLLBACK');
    });
  });

  it('is not voided back, and changes nothing else with its void', async () => {
    await asReplica(async (client) => {
      expect(await outcome(client, `${voiding.replace('SET', 'SET recorded_seq = recorded_seq + 1,')}`)).toBe(
        CHANGED,
      );
      await client.query('BEGIN');
      await client.query(voiding);
      await expect(
        client.query(`UPDATE "${table}" SET voided_seq = NULL, void_reason = NULL`),
      ).rejects.toMatchObject({ code: CHANGED });
      await client.query('ROLLBACK');
    });
  });
});

describe('a stay', () => {
  const ending = `UPDATE stay SET to_at = from_at + interval '1 day', to_kind = 'instant', ended_seq = 99 WHERE to_at IS NULL`;

  it('is ended once and then never moved', async () => {
    await asApp(async (client) => {
      await client.query('BEGIN');
      await client.query(`SELECT set_config('app.operator_id', '${OPERATOR}', true)`);
      expect((await client.query(ending)).rowCount).toBeGreaterThan(0);
      await expect(client.query(`UPDATE stay SET to_at = to_at + interval '1 day'`)).rejects.toMatchObject({
        code: CHANGED,
      });
      await client.query('ROLLBACK');
    });
  });

  it('changes nothing else with its end, and is not ended and voided at once', async () => {
    await asReplica(async (client) => {
      expect(await outcome(client, ending.replace('SET', `SET from_at = from_at - interval '1 day',`))).toBe(
        CHANGED,
      );
      expect(await outcome(client, ending.replace('SET', `SET voided_seq = 99,`))).toBe(CHANGED);
    });
  });

  it('does not end without saying by which act', async () => {
    expect(
      await asApp((client) =>
        outcome(
          client,
          `UPDATE stay SET to_at = from_at + interval '1 day', to_kind = 'instant' WHERE to_at IS NULL`,
        ),
      ),
    ).toBe('23514');
  });
});

describe('an act', () => {
  it('is given its answer once', async () => {
    await asApp(async (client) => {
      await client.query('BEGIN');
      await client.query(`SELECT set_config('app.operator_id', '${OPERATOR}', true)`);
      await client.query(
        `INSERT INTO act (operator_id, person_id, key, fingerprint) SELECT operator_id, id, 'a-key-of-its-own', '\\x00' FROM person`,
      );
      const answer = `UPDATE act SET status = 201, body = '{}' WHERE key = 'a-key-of-its-own'`;
      expect((await client.query(answer)).rowCount).toBe(1);
      await expect(client.query(answer)).rejects.toMatchObject({ code: CHANGED });
      await client.query('ROLLBACK');
    });
  });
});

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
    await asApp(async (client) => {
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
        expect([statement, await outcome(client, statement)]).toEqual([statement, NOT_PERMITTED]);
    });
  });
});

describe('the auditor', () => {
  it('reads and writes nothing', async () => {
    await withClient(database.adminUrl, async (client) => {
      await client.query('SET ROLE auditor');
      for (const table of KEPT) {
        expect([table, await outcome(client, `SELECT FROM "${table}"`)]).toEqual([
          table,
          expect.stringMatching(/^[1-9]\d* rows$/),
        ]);
        expect([table, await outcome(client, `DELETE FROM "${table}"`)]).toEqual([table, NOT_PERMITTED]);
        expect([table, await outcome(client, `UPDATE "${table}" SET operator_id = operator_id`)]).toEqual([
          table,
          NOT_PERMITTED,
        ]);
        expect([table, await outcome(client, `INSERT INTO "${table}" SELECT * FROM "${table}"`)]).toEqual([
          table,
          NOT_PERMITTED,
        ]);
      }
    });
  });
});
