import { Injectable, type OnModuleInit } from '@nestjs/common';
import type { Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import type { JobContext } from '../../platform/jobs/job-handler.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { Clock } from '../../platform/time/clock.js';
import { History, type HistoryAsk } from '../../records/history/history.js';
import type { ToldSubject, ToldTotals } from '../../records/history/told-line.js';
import { fileNameOf } from './file-name.js';
import { keepDocument } from './keep-document.js';
import type { PrintedDocument } from './pdf/history-pdf.js';
import { PdfThread } from './pdf/pdf-thread.js';

/** The kind of job that prints a history. */
export const HISTORY_JOB = 'history-document';

const LONGEST_MS = 15 * 60_000;

/** Prints a history as a job: read in one transaction, written in a thread of its own, kept with its hash. */
@Injectable()
export class HistoryDocument implements OnModuleInit {
  constructor(
    private readonly jobs: Jobs,
    private readonly history: History,
    private readonly clock: Clock,
  ) {}

  onModuleInit(): void {
    this.jobs.register(HISTORY_JOB, (context) => this.print(context));
  }

  private async print(context: JobContext): Promise<{ documentId: string } | null> {
    const { actor, job } = context;
    const ask: HistoryAsk = {
      kind: job.input['subjectKind'] === 'airframe' ? 'airframe' : 'component',
      id: job.subjectId ?? '',
    };
    const { operatorId } = actor;
    // The document has the job's id: a job that was begun again finds what it made before.
    const where = { operatorId_id: { operatorId, id: job.id } };
    const made = await context.inOperator((tx) => tx.document.findUnique({ where, select: { id: true } }));
    if (made !== null) return { documentId: made.id };
    const preparedAt = this.clock.now();
    const { subject, operatorName } = await context.inOperator(async (tx) => ({
      subject: await this.history.subject(tx, operatorId, ask),
      operatorName: (await tx.operator.findUniqueOrThrow({ where: { id: operatorId } })).name,
    }));
    const thread = new PdfThread({
      subject,
      operatorName,
      preparedBy: actor.fullName,
      preparedAt: toWire(preparedAt),
    });
    try {
      const limits = { wholeMs: LONGEST_MS, statementMs: LONGEST_MS };
      const totals = await context.inOperator((tx) => this.write(tx, context, { ask, thread }), limits);
      if (totals === null) return null;
      const document = await thread.finish(totals);
      return { documentId: await this.keep(context, { subject, document, preparedAt }) };
    } finally {
      await thread.stop();
    }
  }

  /** Hands the lines over in portions. Answers the totals; null when the job was cancelled. */
  private async write(
    tx: Tx,
    context: JobContext,
    { ask, thread }: { readonly ask: HistoryAsk; readonly thread: PdfThread },
  ): Promise<ToldTotals | null> {
    const lines = this.history.tell(tx, context.actor.operatorId, ask);
    for (let done = 0; ; ) {
      const next = await lines.next();
      if (next.done !== true) {
        await thread.write(next.value);
        done += next.value.length;
      }
      await context.progress(done, next.done === true ? done : null);
      if (await context.cancelled()) return null;
      if (next.done === true) return next.value;
    }
  }

  private async keep(
    { actor, job: { id }, inOperator }: JobContext,
    {
      subject,
      document,
      preparedAt,
    }: { readonly subject: ToldSubject; readonly document: PrintedDocument; readonly preparedAt: Date },
  ): Promise<string> {
    const fileName = fileNameOf(`history-${subject.label}-${toWire(preparedAt).slice(0, 10)}`);
    const made = {
      ...document,
      id,
      kind: 'history',
      subjectId: subject.id,
      fileName,
      createdById: actor.personId,
      createdAt: preparedAt,
    };
    await inOperator((tx) => keepDocument(tx, actor.operatorId, made), { wholeMs: LONGEST_MS });
    return id;
  }
}
