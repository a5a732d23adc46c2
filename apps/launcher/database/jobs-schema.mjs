import { runMigrations } from 'graphile-worker';
import pg from 'pg';

export const jobsSchema = 'jobs_queue';

/** What the worker of background jobs needs as `app`, which owns nothing and is bound by row-level security. */
const grants = `
  GRANT USAGE ON SCHEMA ${jobsSchema} TO app;
  GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA ${jobsSchema} TO app;
  REVOKE INSERT, UPDATE, DELETE ON ${jobsSchema}.migrations FROM app;
  GRANT USAGE, SELECT ON ALL SEQUENCES IN SCHEMA ${jobsSchema} TO app;
  GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA ${jobsSchema} TO app;
`;

/** The queue's tables carry row-level security with no policy: nobody but their owner would see a job. */
const policies = `
  SELECT format('CREATE POLICY app_works ON %I.%I TO app USING (true) WITH CHECK (true)', n.nspname, c.relname) AS statement
  FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
  WHERE n.nspname = '${jobsSchema}' AND c.relkind IN ('r', 'p') AND c.relrowsecurity
    AND NOT EXISTS (SELECT FROM pg_policy p WHERE p.polrelid = c.oid AND p.polname = 'app_works')
`;

/** Brings the schema of the background jobs up to date as `owner`, and lets `app` work in it. */
export async function migrateJobs(adminUrl) {
  const pool = new pg.Pool({ connectionString: adminUrl, options: '-c role=owner', max: 2 });
  pool.on('error', () => {}); // a lost connection shows in the next query
  pool.on('connect', (client) => client.on('error', () => {}));
  try {
    await runMigrations({ pgPool: pool, schema: jobsSchema });
    await pool.query(grants);
    const { rows } = await pool.query(policies);
    for (const { statement } of rows) await pool.query(statement);
  } finally {
    await pool.end();
  }
}
