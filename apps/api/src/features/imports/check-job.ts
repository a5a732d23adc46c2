import { Injectable, type OnModuleInit } from '@nestjs/common';
import type { Prisma } from '../../platform/database/generated/client.js';
import { toInstant } from '../../platform/http/instants.js';
import type { JobContext } from '../../platform/jobs/job-handler.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { Clock } from '../../platform/time/clock.js';
import { checkRows } from './flights-file/check-rows.js';
import { readFlightsFile } from './flights-file/read-file.js';
import { GivenUp, giveUpIfAsked, wasCancelled } from './giving-up.js';
import { effectOf, type ImportReport, NO_REPORT } from './import-report.js';
import { CHECK_JOB, stopped } from './imports.service.js';
import { recordsOfFile } from './records-of-file.js';

const LIMITS = { statementMs: 60_000, wholeMs: 120_000 };
const LINE_FEED = 0x0a;

/** Checks a file without recording anything of it: its report is all that is kept. */
@Injectable()
export class CheckJob implements OnModuleInit {
  constructor(
    private readonly jobs: Jobs,
    private readonly clock: Clock,
  ) {}

  onModuleInit(): void {
    this.jobs.register(CHECK_JOB, (context) => this.check(context));
  }

  private async check(context: JobContext): Promise<Prisma.InputJsonObject | null> {
    const { operatorId } = context.actor;
    const id = context.job.subjectId ?? '';
    const where = { operatorId_id: { operatorId, id } };
    const row = await context.inOperator((tx) =>
      tx.importFile.findUnique({ where, select: { content: true, state: true } }),
    );
    if (row?.state !== 'checking') return null;
    const content = Buffer.from(row.content);
    const total = content.reduce((lines, byte) => (byte === LINE_FEED ? lines + 1 : lines), 0);
    try {
      const file = await readFlightsFile(content, async (done) => {
        await context.progress(done, total);
        await giveUpIfAsked(context);
      });
      const found = await context.inOperator(async (tx) => {
        const records = await recordsOfFile(tx, operatorId, file.flights);
        const checked = checkRows(file.flights, records, toInstant(this.clock.now()), file.errors);
        const report: ImportReport = {
          ...NO_REPORT,
          errors: file.errors.list(),
          effect: effectOf(checked, records),
          root: null,
        };
        const counts = {
          rows: file.rows,
          ready: checked.ready.length,
          failed: file.errors.failed,
          already: checked.already,
        };
        await giveUpIfAsked(context);
        const data = {
          ...counts,
          state: 'checked',
          report: report as unknown as Prisma.InputJsonObject,
          version: { increment: 1 },
        };
        await tx.importFile.update({ where, data, select: { id: true } });
        return counts;
      }, LIMITS);
      await context.progress(found.rows, found.rows);
      return found;
    } catch (error) {
      const givenUp = error instanceof GivenUp;
      // A server that stops leaves the import checking: the next start begins again.
      if (!givenUp || (await wasCancelled(context)))
        await context.inOperator((tx) => stopped(tx, operatorId, id));
      if (!givenUp) throw error;
      return null;
    }
  }
}
