import type { JobContext } from '../../platform/jobs/job-handler.js';

/** Thrown out of a job's work, so that its transaction leaves nothing behind. */
export class GivenUp extends Error {
  constructor() {
    super('the job was asked to end');
    this.name = 'GivenUp';
  }
}

/** Throws GivenUp when someone asked the job to end, or the server is stopping. */
export async function giveUpIfAsked(context: JobContext): Promise<void> {
  if (await context.cancelled()) throw new GivenUp();
}

/** Whether a person asked for it; a server that stops asks too, and the job begins again with its next start. */
export async function wasCancelled({
  actor: { operatorId },
  job: { id },
  inOperator,
}: JobContext): Promise<boolean> {
  const job = await inOperator((tx) =>
    tx.job.findUnique({ where: { operatorId_id: { operatorId, id } }, select: { cancelRequestedAt: true } }),
  );
  return job?.cancelRequestedAt != null;
}
