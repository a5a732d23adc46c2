import type pg from 'pg';
import { withClient } from '../database.js';

/** Tables whose rows say who is signed in or what a machine is doing, not what is on record. */
const BOOKKEEPING = new Set(['session', 'job', '_prisma_migrations']);

/** The tables of the product in schema public, in order of name. */
export async function tablesOf(client: pg.Client): Promise<string[]> {
  const { rows } = await client.query<{ name: string }>(
    `SELECT relname AS name FROM pg_class WHERE relnamespace = 'public'::regnamespace AND relkind IN ('r', 'p') ORDER BY 1`,
  );
  return rows.map(({ name }) => name);
}

/** What each table holds: how many rows, and a digest of all of them. Sessions and jobs are left out. */
export function storedRows(adminUrl: string): Promise<Readonly<Record<string, string>>> {
  return withClient(adminUrl, async (client) => {
    const tables = (await tablesOf(client)).filter((table) => !BOOKKEEPING.has(table));
    const selects = tables.map(
      (table) => `SELECT '${table}' AS name,
        count(*) || ' rows ' || coalesce(md5(string_agg(md5(t::text), '' ORDER BY md5(t::text))), '') AS held FROM "${table}" t`,
    );
    const { rows } = await client.query<{ name: string; held: string }>(selects.join(' UNION ALL '));
    return Object.fromEntries(rows.map(({ name, held }) => [name, held]));
  });
}
