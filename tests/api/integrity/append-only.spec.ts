import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type pg from 'pg';
import { startDatabase, type TestDatabase, withClient } from '../../support/database.js';
import { FACTS, fillEveryTable, OPERATOR, RECORDS } from '../../support/scenario/one-row-each.js';

const KEPT = [...FACTS, ...RECORDS];

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
