import { Injectable } from '@nestjs/common';
import type { Actor } from '../access/actor.js';
import type { Tx } from '../database/database.js';
import type { Prisma } from '../database/generated/client.js';
import { newId } from '../database/uuid.js';
import { orNotFound, refuse } from '../problems/refusal.error.js';
import { Clock } from '../time/clock.js';
import type { JobHandler } from './job-handler.js';

/** The queue's one task; what it does is told by the kind of its job row. */
export const TASK = 'job';

export interface NewJob {
  readonly kind: string;
  /** What the job is about: an import, an airframe, a component. */
  readonly subjectId: string | null;
  /** What the handler needs to know, plain JSON. */
  readonly input: Prisma.InputJsonObject;
  /** It waits until then; at once, when left out. */
  readonly notBefore?: Date;
}

export type JobState = 'queued' | 'running' | 'done' | 'failed' | 'cancelled';

/** Long work: begun in the transaction of the act that wants it, so that it runs exactly when the act was recorded. */
@Injectable()
export class Jobs {
  private readonly handlers = new Map<string, JobHandler>();

  constructor(private readonly clock: Clock) {}

  /** Says who does jobs of a kind. Each kind once, when its module starts. */
  register(kind: string, handler: JobHandler): void {
    if (this.handlers.has(kind)) throw new Error(`jobs of kind ${kind} have a handler already`);
    this.handlers.set(kind, handler);
  }

  handlerOf(kind: string): JobHandler | null {
    return this.handlers.get(kind) ?? null;
  }

  /** Enqueues a job and answers its id; it begins after the transaction has committed. */
  async start(tx: Tx, actor: Actor, { kind, subjectId, input, notBefore }: NewJob): Promise<string> {
    const id = newId();
    await tx.job.create({
      data: {
        operatorId: actor.operatorId,
        id,
        kind,
        state: 'queued' satisfies JobState,
        subjectId,
        input,
        createdById: actor.personId,
        createdAt: this.clock.now(),
        notBefore: notBefore ?? null,
      },
    });
    await enqueue(tx, actor.operatorId, id, notBefore ?? null);
    return id;
  }

  /**
   * Asks a job to end early; a queued one ends at once, a running one when it next looks.
   * Refuses: NOT_FOUND, WRONG_STATE when it has ended, NOT_ALLOWED unless it is one's own or one is an administrator.
   */
  async cancel(tx: Tx, actor: Actor, id: string): Promise<void> {
    await tx.$queryRaw`SELECT id FROM job WHERE operator_id = ${actor.operatorId}::int AND id = ${id}::uuid FOR UPDATE`;
    const where = { operatorId_id: { operatorId: actor.operatorId, id } };
    const job = orNotFound(await tx.job.findUnique({ where }), 'job');
    if (job.createdById !== actor.personId && !actor.roles.includes('administrator')) {
      refuse({ code: 'NOT_ALLOWED', holders: ['administrator'] });
    }
    if (job.state !== 'queued' && job.state !== 'running') {
      refuse({ code: 'WRONG_STATE', what: 'the job', state: job.state, needed: 'queued or running' });
    }
    const now = this.clock.now();
    const ended = job.state === 'queued' ? { state: 'cancelled' satisfies JobState, endedAt: now } : {};
    await tx.job.update({ where, data: { cancelRequestedAt: now, ...ended } });
  }
}

/** Puts a job into the queue, or again, when its worker was lost; under its own key it is there once. */
export async function enqueue(tx: Tx, operatorId: number, id: string, notBefore: Date | null): Promise<void> {
  const payload = JSON.stringify({ operatorId, id });
  await tx.$queryRaw`SELECT id::text FROM jobs_queue.add_job(${TASK}, payload := ${payload}::json,
    job_key := ${id}, max_attempts := 3, run_at := ${notBefore}::timestamptz)`;
}
