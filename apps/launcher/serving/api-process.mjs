import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { setTimeout as sleep } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import { inRoot } from '../building/paths.mjs';
import { StepFailed } from '../building/run.mjs';

const endWithParent = pathToFileURL(inRoot('apps/launcher/serving/end-with-parent.mjs')).href;
const secondsToStop = 15;

async function isReady(baseUrl) {
  try {
    return (await fetch(`${baseUrl}/health/ready`)).ok;
  } catch {
    return false;
  }
}

/** The port that the API says it listens on; null when it ended before. `onLine` gets every line of its output. */
function portOf(child, onLine) {
  return new Promise((resolve) => {
    createInterface({ input: child.stdout }).on('line', (line) => {
      onLine(line);
      const port = /listening\b.*"port"\s*:\s*(\d+)/.exec(line)?.[1];
      if (port) resolve(Number(port));
    });
    createInterface({ input: child.stderr }).on('line', onLine);
    child.once('exit', () => resolve(null));
    child.once('error', () => resolve(null));
  });
}

/**
 * Starts the API as built, as a process of its own, and waits until it is ready. Answers its address, its process
 * id, `ended` (a promise of how it ended), `stop` (lets requests in progress finish) and `kill` (does not).
 * Errors: StepFailed, when it ends or is not ready within a minute.
 */
export async function startApiProcess({ appUrl, port = 0, host = '127.0.0.1', env = {}, onLine = () => {} }) {
  const { DATABASE_URL, APP_DATABASE_URL, ...inherited } = process.env; // the owner's address is no business of the API
  const child = spawn(
    process.execPath,
    ['--enable-source-maps', '--import', endWithParent, inRoot('apps/api/dist/main.js')],
    {
      cwd: inRoot(),
      env: {
        ...inherited,
        DATABASE_URL: appUrl,
        PORT: String(port),
        HOST: host,
        WEB_DIST: inRoot('apps/web/dist'),
        ...env,
      },
      stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
    },
  );
  const ended = new Promise((resolve) => {
    child.once('close', (code, signal) => resolve({ code, signal })); // after its last line
    child.once('error', (error) => resolve({ error }));
  });
  const kill = async (signal = 'SIGKILL') => {
    child.kill(signal);
    await ended;
  };
  const stop = async () => {
    const impatience = setTimeout(() => child.kill('SIGKILL'), secondsToStop * 1000);
    await kill('SIGTERM');
    clearTimeout(impatience);
  };

  const said = [];
  const listening = await portOf(child, (line) => {
    if (said.length < 200) said.push(line);
    onLine(line);
  });
  if (listening === null) throw new StepFailed(`The API ended before it listened.\n${said.join('\n')}`);
  const baseUrl = `http://127.0.0.1:${listening}`;
  for (const deadline = Date.now() + 60_000; !(await isReady(baseUrl)); await sleep(50)) {
    if (Date.now() < deadline && child.exitCode === null && child.signalCode === null) continue;
    await kill();
    throw new StepFailed(`The API did not become ready.\n${said.join('\n')}`);
  }
  return { baseUrl, port: listening, pid: child.pid, ended, stop, kill };
}
