// npm run db:migrate       applies what is missing to DATABASE_URL, or to the embedded database under DATA_DIR
// npm run db:new -- name   writes a new migration: what prisma/schema says and the migrations do not yet
// npm run db:drift         fails when prisma/schema and the migrations differ
import fs from 'node:fs';
import path from 'node:path';
import { ensureInstalled } from './building/install.mjs';
import { inRoot } from './building/paths.mjs';
import { reporting, StepFailed } from './building/run.mjs';

async function difference() {
  const { scratchServer, withScratchDatabase } = await import('./database/scratch-server.mjs');
  const { prepareDatabase } = await import('./database/prepare.mjs');
  const { differenceToSchema } = await import('./database/schema-engine.mjs');
  const server = await scratchServer(process.env.DATABASE_URL);
  try {
    return await withScratchDatabase(server, async (url) => {
      await prepareDatabase(url);
      return await differenceToSchema(url);
    });
  } finally {
    await server.stop();
  }
}

async function applyMissing() {
  const { databaseToServe } = await import('./serving/database-to-serve.mjs');
  const database = await databaseToServe();
  console.log(database.applied.length > 0 ? `applied: ${database.applied.join(', ')}` : 'nothing to apply');
  await database.stop();
}

async function writeNew(name) {
  if (!/^[a-z][a-z0-9_]*$/.test(name ?? ''))
    throw new StepFailed('Name it in small letters: npm run db:new -- add_borescope_findings');
  const sql = await difference();
  if (!sql) return console.log('prisma/schema and the migrations agree: nothing to write');
  const stamp = new Date().toISOString().replace(/\D/g, '').slice(0, 14);
  const folder = inRoot('prisma/migrations', `${stamp}_${name}`);
  fs.mkdirSync(folder, { recursive: true });
  fs.writeFileSync(path.join(folder, 'migration.sql'), sql);
  console.log(`wrote ${path.relative(inRoot(), folder)}/migration.sql: read it before you commit it`);
}

async function refuseDrift() {
  const sql = await difference();
  if (sql) throw new StepFailed(`prisma/schema and the migrations differ; this would be missing:\n${sql}`);
  console.log('prisma/schema and the migrations agree');
}

const commands = { migrate: applyMissing, new: () => writeNew(process.argv[3]), drift: refuseDrift };

await reporting(async () => {
  ensureInstalled();
  const command = commands[process.argv[2]];
  if (!command) throw new StepFailed(`commands: ${Object.keys(commands).join(', ')}`);
  await command();
});
process.exit(); // the engine's memory and idle connections would keep the process
