import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import type { JobDto, JobResultDto } from './jobs.dto.js';

/** Long work as people see it. */
@Injectable()
export class JobsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly jobs: Jobs,
  ) {}

  /** One job. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<JobDto> {
    return this.database.inOperator(actor, (tx) => read(tx, actor.operatorId, id));
  }

  /** Asks a job to end early. Refuses: NOT_FOUND, WRONG_STATE, NOT_ALLOWED. */
  cancel(actor: Actor, act: ActRequest, id: string): Promise<JobDto> {
    return this.acts.perform(actor, act, async (tx) => {
      await this.jobs.cancel(tx, actor, id);
      return { status: 200, body: await read(tx, actor.operatorId, id), resource: `/api/jobs/${id}` };
    });
  }
}

async function read(tx: Tx, operatorId: number, id: string): Promise<JobDto> {
  const job = orNotFound(await tx.job.findUnique({ where: { operatorId_id: { operatorId, id } } }), 'job');
  return {
    id,
    kind: job.kind,
    state: job.state as JobDto['state'],
    done: job.done,
    total: job.total,
    subjectId: job.subjectId,
    result: job.result as JobResultDto | null,
    failure: job.failure,
  };
}
