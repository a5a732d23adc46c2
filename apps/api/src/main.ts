import 'reflect-metadata';
import { buildApp } from './app.js';
import { Config } from './platform/config/config.js';
import { StartUpChecks } from './platform/database/start-up-checks.js';
import { Worker } from './platform/jobs/worker.js';

/** Says why the API does not serve, and ends. */
function giveUp(reasons: readonly string[]): never {
  for (const reason of reasons) console.error(`not serving: ${reason}`);
  process.exit(1);
}

async function serve(): Promise<void> {
  const config = Config.from();
  const { app } = await buildApp();
  if (config.databaseUrl === '') giveUp(['DATABASE_URL is not set']);
  const reasons = await app.get(StartUpChecks).reasonsAgainst();
  if (reasons.length > 0) giveUp(reasons);
  app.enableShutdownHooks(['SIGTERM', 'SIGINT']);
  await app.listen(config.port, config.host);
  await app.get(Worker).start();
  const address = app.getHttpServer().address();
  const port = typeof address === 'object' && address !== null ? address.port : config.port;
  console.log(`listening ${JSON.stringify({ port })}`);
}

serve().catch((error: unknown) =>
  giveUp([error instanceof Error ? (error.cause ?? error) : error].map(inWords)),
);

function inWords(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
