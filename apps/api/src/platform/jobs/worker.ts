import { createHash } from 'node:crypto';
import { type BeforeApplicationShutdown, Injectable, Logger } from '@nestjs/common';
import { Logger as QueueLogger, type Runner, run, type Task } from 'graphile-worker';
import pg from 'pg';
import { Config } from '../config/config.js';
import { Database } from '../database/database.js';
import { JobRun } from './job-run.js';
import { enqueue, TASK } from './jobs.js';

const AT_ONCE = 2;
const LOOK_FOR_LOST_MS = 60_000;

/** Takes jobs from the queue while the API serves, and begins those again whose process was killed. */
@Injectable()
export class Worker implements BeforeApplicationShutdown {
  private readonly log = new Logger('Jobs');
  private pool: pg.Pool | null = null;
  private runner: Runner | null = null;
  private rescue: NodeJS.Timeout | null = null;
  private stopping = false;

  constructor(
    private readonly config: Config,
    private readonly database: Database,
    private readonly jobRun: JobRun,
  ) {}

  /** Begins to work. Called once the database is known to be there. */
  async start(): Promise<void> {
    const connectionString = this.config.databaseUrl;
    this.pool = new pg.Pool({ connectionString, max: 2 * AT_ONCE + 3, application_name: 'strutbook jobs' });
    this.pool.on('error', () => {}); // the runner connects again by itself
    this.pool.on('connect', (client) => client.on('error', () => {}));
    this.runner = await run({
      pgPool: this.pool,
      schema: 'jobs_queue',
      concurrency: AT_ONCE,
      noHandleSignals: true,
      pollInterval: 1_000,
      parsedCronItems: [],
      taskList: { [TASK]: this.task },
      logger: new QueueLogger(() => (level, message) => {
        if (level === 'error') this.log.error(message);
      }),
    });
    await this.beginLostAgain();
    this.rescue = setInterval(() => {
      this.beginLostAgain().catch((error: unknown) => this.log.error(String(error)));
    }, LOOK_FOR_LOST_MS).unref();
  }

  /** Lets jobs under way come to their next look, and stops. */
  async beforeApplicationShutdown(): Promise<void> {
    this.stopping = true;
    if (this.rescue !== null) clearInterval(this.rescue);
    await this.runner?.stop();
    await this.pool?.end();
  }

  private readonly task: Task = async (payload, helpers) => {
    const { operatorId, id } = payload as { operatorId: number; id: string };
    await helpers.withPgClient(async (client) => {
      // Held for as long as this process lives and works on the job: what is running and free was lost.
      if (!(await lock(client, id))) return;
      try {
        await this.jobRun.run(operatorId, id, () => this.stopping);
      } finally {
        await unlock(client, id);
      }
    });
  };

  private async beginLostAgain(): Promise<void> {
    const pool = this.pool;
    if (pool === null || this.stopping) return;
    for (const { id: operatorId } of await this.database.headline<{ id: number }>(
      'SELECT * FROM operators_for_sign_in()',
    )) {
      // Queued ones too: a process may have died between taking a job and beginning it. One that only waits is
      // put again in its own place.
      const open = await this.database.inOperator({ operatorId }, (tx) =>
        tx.job.findMany({
          where: { operatorId, state: { in: ['queued', 'running'] } },
          select: { id: true, notBefore: true },
        }),
      );
      for (const job of open) await this.beginAgainIfLost(pool, operatorId, job);
    }
  }

  private async beginAgainIfLost(
    pool: pg.Pool,
    operatorId: number,
    { id, notBefore }: { readonly id: string; readonly notBefore: Date | null },
  ): Promise<void> {
    const client = await pool.connect();
    try {
      if (!(await lock(client, id))) return;
      await unlock(client, id);
      await this.database.inOperator({ operatorId }, (tx) => enqueue(tx, operatorId, id, notBefore));
    } finally {
      client.release();
    }
  }
}

/** A job's own number for an advisory lock of a session. */
function lockNumber(id: string): string {
  return createHash('sha256').update(`job ${id}`).digest().readBigInt64BE().toString();
}

async function lock(client: pg.PoolClient, id: string): Promise<boolean> {
  const { rows } = await client.query<{ locked: boolean }>('SELECT pg_try_advisory_lock($1) AS locked', [
    lockNumber(id),
  ]);
  return rows[0]?.locked === true;
}

async function unlock(client: pg.PoolClient, id: string): Promise<void> {
  await client.query('SELECT pg_advisory_unlock($1)', [lockNumber(id)]);
}
