import { Injectable, type OnModuleInit } from '@nestjs/common';
import { fromWire } from '../../platform/http/instants.js';
import type { JobContext } from '../../platform/jobs/job-handler.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { Clock } from '../../platform/time/clock.js';
import { LifeSheets } from '../../records/lives/sheet/life-sheets.js';
import { fileNameOf } from './file-name.js';
import { keepDocument } from './keep-document.js';
import { lifeStatusInThread } from './life-status-pdf/life-status-thread.js';

/** The kind of document and of the job that prints it. */
export const LIFE_STATUS = 'life-status';

/** Prints the status of life-limited parts as a job, in a thread of its own, and keeps it with its hash. */
@Injectable()
export class LifeStatusDocument implements OnModuleInit {
  constructor(
    private readonly jobs: Jobs,
    private readonly sheets: LifeSheets,
    private readonly clock: Clock,
  ) {}

  onModuleInit(): void {
    this.jobs.register(LIFE_STATUS, (context) => this.print(context));
  }

  private async print({ actor, job, inOperator }: JobContext): Promise<{ documentId: string }> {
    const { operatorId } = actor;
    const componentId = job.subjectId ?? '';
    const { at } = job.input;
    // The document has the job's id: a job that was begun again finds what it made before.
    const found = await inOperator(async (tx) => ({
      made: await tx.document.findUnique({
        where: { operatorId_id: { operatorId, id: job.id } },
        select: { id: true },
      }),
      sheet: await this.sheets.of(tx, operatorId, componentId, typeof at === 'string' ? fromWire(at) : null),
    }));
    if (found.made !== null) return { documentId: found.made.id };
    const { sheet } = found;
    const preparedAt = this.clock.now();
    const document = await lifeStatusInThread({
      sheet,
      preparedBy: actor.fullName,
      preparedAt: preparedAt.toISOString(),
    });
    await inOperator((tx) =>
      keepDocument(tx, operatorId, {
        ...document,
        id: job.id,
        kind: LIFE_STATUS,
        subjectId: componentId,
        fileName: fileNameOf(`life-status-${sheet.subject.serialNumber}-${sheet.at.slice(0, 10)}`),
        createdById: actor.personId,
        createdAt: preparedAt,
      }),
    );
    return { documentId: job.id };
  }
}
