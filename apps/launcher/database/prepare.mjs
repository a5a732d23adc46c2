import { migrate } from '../migrate.mjs';
import { withConnection } from './connection.mjs';
import { migrateJobs } from './jobs-schema.mjs';
import { giveSchemaToOwner, makeRoles } from './roles.mjs';

const preparing = 4180_0001; // the advisory lock of this program's own preparations

/**
 * Makes a database ready to serve: roles, extension, tables, the queue of background jobs. Two at once wait for
 * each other. `adminUrl` is of a user that may create roles; without a password `app` keeps the one it has;
 * `migrations` is another folder than the project's own.
 * Answers the names of the migrations that were applied. Errors: as `migrate`.
 */
export function prepareDatabase(adminUrl, { appPassword, migrations } = {}) {
  return withConnection(adminUrl, async (client) => {
    await client.query('SELECT pg_advisory_lock($1)', [preparing]);
    await client.query('SET client_min_messages TO warning');
    await makeRoles(client, { appPassword });
    await giveSchemaToOwner(client);
    const applied = await migrate(adminUrl, { folder: migrations });
    await migrateJobs(adminUrl);
    return applied;
  });
}
