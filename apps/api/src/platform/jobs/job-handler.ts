import type { Actor } from '../access/actor.js';
import type { TransactionLimits, Tx } from '../database/database.js';
import type { Prisma } from '../database/generated/client.js';

/** What a handler gets to do its job with. */
export interface JobContext {
  /** On whose behalf the job runs: who began it, with the roles held now. */
  readonly actor: Actor;
  readonly job: {
    readonly id: string;
    readonly kind: string;
    readonly subjectId: string | null;
    readonly input: Readonly<Record<string, unknown>>;
  };
  /** One transaction of the job's operator. A job has many, and each stands when it has committed. */
  inOperator<T>(work: (tx: Tx) => Promise<T>, limits?: TransactionLimits): Promise<T>;
  /** Tells how far the job is, in a transaction of its own; call it after each batch. */
  progress(done: number, total: number | null): Promise<void>;
  /** True when someone asked to end the job, or the server is stopping. Look after each batch, then return. */
  cancelled(): Promise<boolean>;
}

/**
 * Does a job and answers its result, kept in the job's row. A job may be begun again after the server was
 * killed: it looks at what it has committed before, and does nothing twice. What it throws fails the job.
 */
export type JobHandler = (context: JobContext) => Promise<Prisma.InputJsonObject | null>;
