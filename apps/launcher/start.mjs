// npm start: install, build, database, migrations, API and client. Ctrl-C stops it cleanly.
import net from 'node:net';
import { build } from './building/build.mjs';
import { ensureInstalled } from './building/install.mjs';
import { StepFailed } from './building/run.mjs';

const port = Number(process.env.PORT ?? 4180);
const host = process.env.HOST ?? '127.0.0.1';
const toClose = [];
const stopped = new AbortController();

function refuseTakenPort() {
  return new Promise((resolve, reject) => {
    const probe = net.createServer();
    probe.once('error', (error) =>
      reject(
        new StepFailed(
          error.code === 'EADDRINUSE' ? `Port ${port} is in use. Set PORT to another one.` : error.message,
        ),
      ),
    );
    probe.listen(port, host, () => probe.close(resolve));
  });
}

async function closeAll(code) {
  stopped.abort();
  for (const close of toClose.splice(0).reverse()) await close().catch((error) => console.error(error));
  process.exit(code);
}

function stopOnSignals() {
  let asked = false;
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    process.on(signal, () => {
      if (asked) return;
      asked = true;
      console.log('\nstopping …');
      void closeAll(0);
    });
  }
}

async function serve() {
  // Read late: these need the packages that were just installed.
  const { databaseToServe } = await import('./serving/database-to-serve.mjs');
  const { startApiProcess } = await import('./serving/api-process.mjs');
  const { foundOperator, loadDemo, printSignIns } = await import('./serving/first-run.mjs');

  const opening = databaseToServe();
  // A stop that comes meanwhile waits for it: an embedded server left behind would run on.
  toClose.push(async () => (await opening.catch(() => null))?.stop());
  const database = await opening;
  console.log(
    `database: ${database.where}${database.applied.length > 0 ? `; applied ${database.applied.length} migrations` : ''}`,
  );
  await foundOperator(database);
  const api = await startApiProcess({
    appUrl: database.appUrl,
    port,
    host,
    onLine: (line) => console.log(line),
  });
  toClose.push(api.stop);
  void api.ended.then(({ code, signal, error }) => {
    if (stopped.signal.aborted) return;
    console.error(`The API ended by itself (${error?.message ?? signal ?? code}).`);
    void closeAll(1);
  });
  await loadDemo({ folder: database.folder, baseUrl: api.baseUrl, signal: stopped.signal });
  if (stopped.signal.aborted) return;
  printSignIns(database.folder);
  console.log(`\nStrutbook is at ${api.baseUrl}  (Ctrl-C stops it)`);
}

try {
  if (port !== 0) await refuseTakenPort();
  ensureInstalled();
  await build();
  stopOnSignals();
  await serve();
} catch (error) {
  console.error(error instanceof StepFailed ? error.message : error);
  await closeAll(1);
}
