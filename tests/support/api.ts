import { startApiProcess } from '../../apps/launcher/serving/api-process.mjs';
import { runChild } from '../../apps/launcher/serving/run-child.mjs';
import type { TestDatabase } from './database.js';

/** The API as built, running as a process of its own on a free port. */
export interface RunningApi {
  readonly baseUrl: string;
  readonly pid: number;
  /** Asks it to end, lets requests in progress finish, and waits. */
  readonly stop: () => Promise<void>;
  /** Ends it at once by the signal, SIGKILL unless told, and waits. */
  readonly kill: (signal?: NodeJS.Signals) => Promise<void>;
  /** The lines it has written so far: the latest 2,000. */
  readonly log: readonly string[];
}

/** Starts the API on the database and waits until it is ready. `env` is added to its environment. */
export async function startApi(options: {
  readonly database: Pick<TestDatabase, 'appUrl'>;
  readonly env?: Readonly<Record<string, string>>;
}): Promise<RunningApi> {
  const log: string[] = [];
  const api = await startApiProcess({
    appUrl: options.database.appUrl,
    env: options.env ?? {},
    onLine: (line) => {
      log.push(line);
      if (log.length > 2000) log.shift();
    },
  });
  return { baseUrl: api.baseUrl, pid: api.pid, stop: api.stop, kill: api.kill, log };
}

/** An operator and its administrator, who can sign in. */
export interface Founded {
  readonly operatorCode: string;
  readonly operatorName: string;
  readonly signInName: string;
  readonly fullName: string;
  readonly password: string;
}

/** Makes an operator with its administrator in the database, as the first start does. */
export async function foundOperator(
  database: Pick<TestDatabase, 'adminUrl'>,
  wanted: Partial<Founded> = {},
): Promise<Founded> {
  const founded: Founded = {
    operatorCode: 'TEST',
    operatorName: 'Test operator',
    signInName: 'admin',
    fullName: 'Ada Minister',
    password: 'a long enough password 1',
    ...wanted,
  };
  await runChild('apps/api/dist/bootstrap.js', {
    env: { OWNER_DATABASE_URL: database.adminUrl, BOOTSTRAP_JSON: JSON.stringify(founded) },
  });
  return founded;
}
