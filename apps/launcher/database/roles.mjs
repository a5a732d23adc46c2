import { setTimeout as sleep } from 'node:timers/promises';
import pg from 'pg';

// Roles belong to the whole server: another database's launcher may be making or changing the same one now.
const made = new Set(['42710', '23505']); // duplicate_object, unique_violation
const changedMeanwhile = 'XX000'; // "tuple concurrently updated"

async function makeRole(client, name, attributes) {
  try {
    await client.query(`CREATE ROLE ${name} ${attributes}`);
  } catch (error) {
    if (!made.has(error.code)) throw error;
  }
}

async function withRetry(work) {
  for (let attempt = 1; ; attempt++) {
    try {
      return await work();
    } catch (error) {
      if (error.code !== changedMeanwhile || attempt === 10) throw error;
      await sleep(20 * attempt);
    }
  }
}

/**
 * Makes the product's roles where they are missing: `owner` owns tables and can't sign in, `app` serves and is
 * bound by row-level security, `auditor` reads. With a password, `app` may sign in by it.
 * The connection's user must be allowed to create roles; it becomes a member of `owner`.
 */
export async function makeRoles(client, { appPassword } = {}) {
  await makeRole(client, 'owner', 'NOLOGIN');
  await makeRole(client, 'auditor', 'NOLOGIN');
  await makeRole(client, 'app', 'NOLOGIN');
  await withRetry(async () => {
    // True for a superuser too; since PostgreSQL 16 making a role no longer makes its maker a member.
    const { rows } = await client.query("SELECT pg_has_role(current_user, 'owner', 'USAGE') AS member");
    if (!rows[0].member) await client.query('GRANT owner TO CURRENT_USER');
  });
  if (appPassword === undefined) return;
  const password = pg.escapeLiteral(appPassword);
  await withRetry(async () => {
    const { rows } = await client.query("SELECT rolsuper, rolbypassrls FROM pg_roles WHERE rolname = 'app'");
    // Only a superuser may name these attributes, so they are named only where they are wrong.
    const bound = rows[0].rolsuper || rows[0].rolbypassrls ? 'NOSUPERUSER NOBYPASSRLS' : '';
    await client.query(`ALTER ROLE app LOGIN ${bound} PASSWORD ${password}`);
  });
}

/** Gives `owner` the database's schema, and makes the extension that it may not be allowed to make itself. */
export async function giveSchemaToOwner(client) {
  await client.query('CREATE EXTENSION IF NOT EXISTS btree_gist');
  await client.query('ALTER SCHEMA public OWNER TO owner');
  await client.query('GRANT USAGE ON SCHEMA public TO app, auditor');
  const { rows } = await client.query('SELECT current_database() AS name');
  // The schema of the background jobs is the owner's too.
  await client.query(
    `GRANT CREATE, CONNECT, TEMPORARY ON DATABASE ${pg.escapeIdentifier(rows[0].name)} TO owner`,
  );
}
