import { Injectable, Logger } from '@nestjs/common';
import type { Actor } from '../access/actor.js';
import { isRole } from '../access/roles.js';
import { Database } from '../database/database.js';
import { Prisma } from '../database/generated/client.js';
import { problemOf } from '../problems/problem-of.js';
import { RefusalError } from '../problems/refusal.error.js';
import { Clock } from '../time/clock.js';
import type { JobContext } from './job-handler.js';
import { type JobState, Jobs } from './jobs.js';

interface Claimed {
  readonly actor: Actor;
  readonly job: JobContext['job'];
}

/** Runs one job from its row to its end, and writes there what became of it. */
@Injectable()
export class JobRun {
  private readonly log = new Logger('Jobs');

  constructor(
    private readonly database: Database,
    private readonly jobs: Jobs,
    private readonly clock: Clock,
  ) {}

  /** Does the job unless it has ended. A handler's failure ends the job; it is not tried again by itself. */
  async run(operatorId: number, id: string, isStopping: () => boolean): Promise<void> {
    const claimed = await this.claim(operatorId, id);
    if (claimed === null) return;
    const context = this.contextOf(claimed, isStopping);
    let result: Prisma.InputJsonObject | null;
    try {
      const handler = this.jobs.handlerOf(claimed.job.kind);
      if (handler === null) throw new Error(`nobody does jobs of kind ${claimed.job.kind}`);
      result = await handler(context);
    } catch (error) {
      // Left running: the next start of the server begins it again.
      if (isStopping()) return;
      this.log.error({
        jobId: id,
        kind: claimed.job.kind,
        error: error instanceof Error ? error.stack : String(error),
      });
      await this.end(operatorId, id, { state: 'failed', failure: failureText(error, id) });
      return;
    }
    if (await this.wasCancelled(operatorId, id))
      await this.end(operatorId, id, { state: 'cancelled', result });
    else if (!isStopping() || result !== null) await this.end(operatorId, id, { state: 'done', result });
  }

  private claim(operatorId: number, id: string): Promise<Claimed | null> {
    return this.database.inOperator({ operatorId }, async (tx) => {
      await tx.$queryRaw`SELECT id FROM job WHERE operator_id = ${operatorId}::int AND id = ${id}::uuid FOR UPDATE`;
      const where = { operatorId_id: { operatorId, id } };
      const job = await tx.job.findUnique({ where, include: { createdBy: true } });
      if (job === null || (job.state !== 'queued' && job.state !== 'running')) return null;
      await tx.job.update({
        where,
        data: { state: 'running' satisfies JobState, startedAt: job.startedAt ?? this.clock.now() },
      });
      const { createdBy } = job;
      return {
        actor: {
          operatorId,
          personId: createdBy.id,
          fullName: createdBy.fullName,
          licence: createdBy.licence,
          roles: createdBy.roles.filter(isRole),
          sessionId: '',
        },
        job: {
          id,
          kind: job.kind,
          subjectId: job.subjectId,
          input: (job.input ?? {}) as Record<string, unknown>,
        },
      };
    });
  }

  private contextOf({ actor, job }: Claimed, isStopping: () => boolean): JobContext {
    const { operatorId } = actor;
    return {
      actor,
      job,
      inOperator: (work, limits) => this.database.inOperator(actor, work, limits),
      progress: async (done, total) => {
        await this.database.inOperator(actor, (tx) =>
          tx.job.update({ where: { operatorId_id: { operatorId, id: job.id } }, data: { done, total } }),
        );
      },
      cancelled: async () => isStopping() || (await this.wasCancelled(operatorId, job.id)),
    };
  }

  private async wasCancelled(operatorId: number, id: string): Promise<boolean> {
    const job = await this.database.inOperator({ operatorId }, (tx) =>
      tx.job.findUnique({
        where: { operatorId_id: { operatorId, id } },
        select: { cancelRequestedAt: true },
      }),
    );
    return job?.cancelRequestedAt != null;
  }

  private async end(
    operatorId: number,
    id: string,
    { state, result, failure }: { state: JobState; result?: Prisma.InputJsonObject | null; failure?: string },
  ): Promise<void> {
    await this.database.inOperator({ operatorId }, (tx) =>
      tx.job.update({
        where: { operatorId_id: { operatorId, id } },
        data: { state, failure: failure ?? null, result: result ?? Prisma.DbNull, endedAt: this.clock.now() },
      }),
    );
  }
}

/** What the person who began the job is told; a fault of ours tells the job's id alone. */
function failureText(error: unknown, id: string): string {
  if (error instanceof RefusalError) return problemOf(error, id).detail;
  return `The server failed at this job. Nothing more was done. Give the id ${id} when you report it.`;
}
