import { randomBytes } from 'node:crypto';
import { setTimeout as sleep } from 'node:timers/promises';
import pg from 'pg';

/** A database of one test file's own, migrated, without a row. */
export interface TestDatabase {
  readonly name: string;
  /** Of the server's superuser, or the user that made the database: sees and may change everything. */
  readonly adminUrl: string;
  /** Of role `app`, as the product serves: bound by row-level security. */
  readonly appUrl: string;
  /** Drops the database, whoever is connected. */
  readonly drop: () => Promise<void>;
}

/** What `npm test` tells of the server it prepared; says how to run where it didn't. */
function told(name: string): string {
  const value = process.env[name];
  if (value === undefined)
    throw new Error(`${name} is not set: run the tests by "npm test -- api", not by Jest alone`);
  return value;
}

function address(base: string, database: string, user?: { name: string; password: string }): string {
  const url = new URL(base);
  url.pathname = `/${database}`;
  if (user) {
    url.username = user.name;
    url.password = encodeURIComponent(user.password);
  }
  return url.href;
}

/** Runs `work` with one connection, closed in any case. */
export async function withClient<T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url });
  client.on('error', () => {}); // a lost connection shows in the next query
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

const templateInUse = '55006';

async function create(serverUrl: string, statement: string): Promise<void> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await withClient(serverUrl, async (client) => void (await client.query(statement)));
    } catch (error) {
      // Two workers that copy the template at once: one of them waits.
      if (!(error instanceof pg.DatabaseError && error.code === templateInUse) || attempt === 50) throw error;
      await sleep(100);
    }
  }
}

async function start(label: string, template: string | null): Promise<TestDatabase> {
  const serverUrl = told('TEST_SERVER_URL');
  const name = `strutbook_t${label}_${randomBytes(5).toString('hex')}`
    .toLowerCase()
    .replace(/[^a-z0-9_]/g, '_');
  await create(serverUrl, `CREATE DATABASE ${name}${template === null ? '' : ` TEMPLATE ${template}`}`);
  return {
    name,
    adminUrl: address(serverUrl, name),
    appUrl: address(serverUrl, name, { name: 'app', password: told('TEST_APP_PASSWORD') }),
    drop: () =>
      withClient(
        serverUrl,
        async (client) => void (await client.query(`DROP DATABASE IF EXISTS ${name} WITH (FORCE)`)),
      ),
  };
}

const worker = (): string => process.env['JEST_WORKER_ID'] ?? '0';

/** A fresh database, copied from the migrated template. `label` shows in its name. */
export function startDatabase(label: string = worker()): Promise<TestDatabase> {
  return start(label, told('TEST_TEMPLATE'));
}

/** A fresh database without a table. */
export function startEmptyDatabase(label: string = worker()): Promise<TestDatabase> {
  return start(label, null);
}
