import { Injectable, type OnModuleInit } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import { dayOf } from '../../platform/http/instants.js';
import type { JobContext } from '../../platform/jobs/job-handler.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { Clock } from '../../platform/time/clock.js';
import { DuePoints } from '../../records/due-points/due-points.js';
import { holdRequirements } from '../../records/requirements/requirement-scope.js';
import { lockRunning } from '../../records/usage/lock-running.js';
import { withPartNumbers } from './limit-rows.js';

const LIMITS_IN_EFFECT = 'limits-in-effect';

// The database's clock begins the job, the server's tells the day: they may be some seconds apart.
const AFTER_MS = 60_000;
const LONGEST_MS = 10 * 60_000;

/**
 * A revision that is effective on a later day: lives and the release check follow by themselves, as they ask what is in
 * force. Due points are kept; a job that waits for the first minute of that day (UTC) writes them again.
 */
@Injectable()
export class LimitsInEffect implements OnModuleInit {
  constructor(
    private readonly jobs: Jobs,
    private readonly duePoints: DuePoints,
    private readonly clock: Clock,
  ) {}

  onModuleInit(): void {
    this.jobs.register(LIMITS_IN_EFFECT, (context) => this.follow(context));
  }

  /** Writes due points by what is in force now, and again on the day a later revision is. */
  async changed(
    tx: Tx,
    actor: Actor,
    { partNumbers, effectiveOn }: { readonly partNumbers: readonly string[]; readonly effectiveOn: string },
  ): Promise<void> {
    const { operatorId } = actor;
    await this.writeAgain(tx, operatorId, partNumbers);
    const begins = dayOf(effectiveOn);
    if (begins <= this.clock.now()) return;
    await this.jobs.start(tx, actor, {
      kind: LIMITS_IN_EFFECT,
      subjectId: null,
      input: { partNumbers: [...new Set(partNumbers)] },
      notBefore: new Date(begins.getTime() + AFTER_MS),
    });
  }

  private async follow({ actor, job, inOperator }: JobContext): Promise<{ components: number }> {
    const named = job.input['partNumbers'];
    const partNumbers = Array.isArray(named) ? named.filter((each) => typeof each === 'string') : [];
    const { operatorId } = actor;
    const components = await inOperator((tx) => this.writeAgain(tx, operatorId, partNumbers), {
      wholeMs: LONGEST_MS,
      statementMs: LONGEST_MS,
    });
    return { components };
  }

  /** Writes again the due points of all with these part numbers; answers how many there are. */
  async writeAgain(tx: Tx, operatorId: number, partNumbers: readonly string[]): Promise<number> {
    await lockRunning(tx, operatorId, await withPartNumbers(tx, operatorId, partNumbers));
    // A part that was entered meanwhile knows nothing of a limit that is recorded here: it is seen from here on.
    await holdRequirements(tx, operatorId);
    const ids = await withPartNumbers(tx, operatorId, partNumbers);
    await this.duePoints.rebuild(tx, operatorId, ids);
    return ids.length;
  }
}
