// Applies prisma/migrations. The record is Prisma's own table, so its ordinary command line could take over.
import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { inRoot } from './building/paths.mjs';
import { StepFailed } from './building/run.mjs';
import { withConnection } from './database/connection.mjs';

const prismasLock = 72707369; // the advisory lock that Prisma's command line takes as well

const recordTable = `
  CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
    "id" VARCHAR(36) PRIMARY KEY NOT NULL,
    "checksum" VARCHAR(64) NOT NULL,
    "finished_at" TIMESTAMPTZ,
    "migration_name" VARCHAR(255) NOT NULL,
    "logs" TEXT,
    "rolled_back_at" TIMESTAMPTZ,
    "started_at" TIMESTAMPTZ NOT NULL DEFAULT now(),
    "applied_steps_count" INTEGER NOT NULL DEFAULT 0
  )`;

const sha256 = (text) => crypto.createHash('sha256').update(text).digest('hex');

/** The migrations of a folder in their order: name, text, checksum. */
export function readMigrations(folder = inRoot('prisma/migrations')) {
  const entries = fs.existsSync(folder) ? fs.readdirSync(folder, { withFileTypes: true }) : [];
  return entries
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => {
      const file = path.join(folder, name, 'migration.sql');
      if (!fs.existsSync(file)) throw new StepFailed(`The migration ${name} has no migration.sql.`);
      const text = fs.readFileSync(file, 'utf8').replaceAll('\r\n', '\n');
      return { name, text, checksum: sha256(text) };
    });
}

/** Errors: StepFailed when what the database has applied is not what the folder holds. */
function refuseOtherHistory(migrations, records) {
  const byName = new Map(migrations.map((migration) => [migration.name, migration]));
  for (const record of records) {
    const name = record.migration_name;
    if (!record.finished_at) {
      throw new StepFailed(
        `The migration ${name} failed half way in this database (started ${record.started_at.toISOString()}): ` +
          `${record.logs ?? 'no reason kept'}. Repair by hand and mark it as rolled back, or restore a backup.`,
      );
    }
    const migration = byName.get(name);
    if (!migration)
      throw new StepFailed(
        `This database has the migration ${name}, which this version of the program does not know. Start the version that made it.`,
      );
    if (migration.checksum !== record.checksum) {
      throw new StepFailed(
        `The migration ${name} was changed after it had been applied (applied ${record.checksum.slice(0, 12)}…, ` +
          `now ${migration.checksum.slice(0, 12)}…). Put it back as it was and write a new migration.`,
      );
    }
  }
}

async function apply(client, { name, text, checksum }) {
  await client.query('BEGIN');
  try {
    await client.query('SET LOCAL ROLE owner');
    await client.query(text);
    await client.query('SET LOCAL ROLE owner'); // whatever the migration left
    await client.query(
      `INSERT INTO public."_prisma_migrations" (id, checksum, migration_name, started_at, finished_at, applied_steps_count)
       VALUES ($1, $2, $3, now(), clock_timestamp(), 1)`,
      [crypto.randomUUID(), checksum, name],
    );
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK');
    const line = error.position ? ` at line ${text.slice(0, Number(error.position)).split('\n').length}` : '';
    throw new StepFailed(
      `The migration ${name} failed${line} and was undone: ${error.message}${error.detail ? ` (${error.detail})` : ''}`,
    );
  }
}

/**
 * Applies the migrations that the database lacks, in order, each in one transaction as role `owner`, and answers
 * their names. Two runs at once wait for each other.
 * Errors: StepFailed, with the reason, when one fails (it leaves nothing behind), was changed after it was applied,
 * failed earlier, or is unknown here.
 */
export function migrate(adminUrl, { folder } = {}) {
  const migrations = readMigrations(folder);
  return withConnection(adminUrl, async (client) => {
    await client.query('SELECT pg_advisory_lock($1)', [prismasLock]); // held by the session: its end frees it
    await client.query('SET ROLE owner');
    await client.query('SET search_path TO public');
    await client.query('SET client_min_messages TO warning');
    await client.query(recordTable);
    await client.query('GRANT SELECT ON "_prisma_migrations" TO app');
    const { rows } = await client.query(
      'SELECT * FROM "_prisma_migrations" WHERE rolled_back_at IS NULL ORDER BY started_at',
    );
    refuseOtherHistory(migrations, rows);
    const applied = new Set(rows.map((row) => row.migration_name));
    const missing = migrations.filter(({ name }) => !applied.has(name));
    for (const migration of missing) await apply(client, migration);
    return missing.map(({ name }) => name);
  });
}
