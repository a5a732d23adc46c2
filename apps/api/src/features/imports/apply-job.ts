import { createHash } from 'node:crypto';
import { Injectable, type OnModuleInit } from '@nestjs/common';
import { merkleRoot } from '@strutbook/journal/merkle.js';
import type { Tx } from '../../platform/database/database.js';
import type { Prisma } from '../../platform/database/generated/client.js';
import { newId } from '../../platform/database/uuid.js';
import { toInstant } from '../../platform/http/instants.js';
import type { JobContext } from '../../platform/jobs/job-handler.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { Clock } from '../../platform/time/clock.js';
import type { ConsequencesDto } from '../../records/consequences/consequences.dto.js';
import { Consequences } from '../../records/consequences/consequences.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { lockForStays } from '../../records/stays/stay-facts.js';
import { canonicalRow, type RecordedRow } from './flights-file/canonical-row.js';
import { type CheckedRows, checkRows } from './flights-file/check-rows.js';
import { type FlightsFile, readFlightsFile } from './flights-file/read-file.js';
import { GivenUp, giveUpIfAsked, wasCancelled } from './giving-up.js';
import { effectOf, type ImportEffect, type ImportReport } from './import-report.js';
import { APPLY_JOB, stopped } from './imports.service.js';
import { recordsOfFile } from './records-of-file.js';
import { insertFlights, lateAirframes, postBatch } from './write-flights.js';

const LIMITS = { statementMs: 120_000, wholeMs: 600_000 };
const CHUNK = 2000;
const MOST_REACHED = 200;
const NOTHING_BROKEN: ConsequencesDto = { newlyOver: [], newlyUnknown: [], overruns: [] };

/** The file under way. */
interface Batch {
  readonly id: string;
  readonly fileName: string;
  readonly sha256: string;
  readonly file: FlightsFile;
}

/** Applies a checked file in one transaction: every flight, every clock, every due point, one journal entry. */
@Injectable()
export class ApplyJob implements OnModuleInit {
  constructor(
    private readonly jobs: Jobs,
    private readonly clock: Clock,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly consequences: Consequences,
  ) {}

  onModuleInit(): void {
    this.jobs.register(APPLY_JOB, (context) => this.apply(context));
  }

  private async apply(context: JobContext): Promise<Prisma.InputJsonObject | null> {
    const { operatorId } = context.actor;
    const id = context.job.subjectId ?? '';
    const where = { operatorId_id: { operatorId, id } };
    const row = await context.inOperator((tx) => tx.importFile.findUnique({ where, omit: { report: true } }));
    if (row?.state !== 'applying') return null;
    try {
      const file = await readFlightsFile(Buffer.from(row.content), () => giveUpIfAsked(context));
      const batch: Batch = {
        id,
        fileName: row.fileName,
        sha256: Buffer.from(row.sha256).toString('hex'),
        file,
      };
      return await context.inOperator((tx) => this.record(tx, context, batch), LIMITS);
    } catch (error) {
      const cancelled = error instanceof GivenUp && (await wasCancelled(context));
      // A server that stops leaves the import applying: the next start begins again.
      if (cancelled || !(error instanceof GivenUp))
        await context.inOperator((tx) => stopped(tx, operatorId, id));
      if (!(error instanceof GivenUp)) throw error;
      return null;
    }
  }

  private async record(tx: Tx, context: JobContext, batch: Batch): Promise<Prisma.InputJsonObject> {
    const { operatorId } = context.actor;
    const { file } = batch;
    const named = await tx.airframe.findMany({
      where: {
        operatorId,
        registration: { in: [...new Set(file.flights.map((flight) => flight.registration))] },
      },
      select: { id: true },
    });
    // Under the locks everything is checked again: the report is only as fresh as its check.
    await lockForStays(tx, operatorId, {
      airframeIds: named.map((airframe) => airframe.id),
      componentIds: [],
    });
    const records = await recordsOfFile(tx, operatorId, file.flights);
    const checked = checkRows(file.flights, records, toInstant(this.clock.now()), file.errors);
    const effect = effectOf(checked, records);
    if (file.errors.failed > 0)
      return keep(tx, operatorId, batch, {
        checked,
        effect,
        state: 'checked',
        broken: NOTHING_BROKEN,
        root: null,
      });
    const airframeIds = effect.map((each) => each.airframeId);
    const late = await lateAirframes(tx, operatorId, checked.ready);
    const before = await this.consequences.beforeOnAirframes(tx, operatorId, airframeIds, late.length > 0);
    const number = await this.journal.number(tx);
    const rows = checked.ready.map((ready) => ({ ...ready, id: newId() }));
    await this.write(tx, context, number, rows);
    const broken = firstOf(await this.consequences.since(tx, operatorId, before));
    const root = rootOf(rows);
    await this.journal.append(tx, context.actor, {
      number,
      stream: batch.id,
      kind: 'flights-imported',
      body: {
        ...{
          fileName: batch.fileName,
          sha256: batch.sha256,
          rows: rows.length,
          already: checked.already,
          root,
        },
        effect: effect.map((each) => ({ ...each })),
      },
      about: [batch.id, ...airframeIds],
    });
    const kept = await keep(tx, operatorId, batch, { checked, effect, state: 'applied', broken, root });
    await giveUpIfAsked(context); // the last look: what is committed stays
    return kept;
  }

  private async write(
    tx: Tx,
    context: JobContext,
    number: bigint,
    rows: readonly RecordedRow[],
  ): Promise<void> {
    const { operatorId } = context.actor;
    for (let at = 0; at < rows.length; at += CHUNK) {
      await insertFlights(tx, operatorId, number, rows.slice(at, at + CHUNK));
      await context.progress(Math.min(at + CHUNK, rows.length), rows.length);
      await giveUpIfAsked(context);
    }
    if (rows.length === 0) return;
    await postBatch(tx, operatorId, number, rows);
    const late = await lateAirframes(tx, operatorId, rows);
    if (late.length > 0) await this.projections.onAirframes(tx, operatorId, late);
  }
}

interface Outcome {
  readonly checked: CheckedRows;
  readonly effect: readonly ImportEffect[];
  readonly state: 'checked' | 'applied';
  readonly broken: ConsequencesDto;
  readonly root: string | null;
}

async function keep(
  tx: Tx,
  operatorId: number,
  { id, file }: Batch,
  { checked, effect, state, broken, root }: Outcome,
): Promise<Prisma.InputJsonObject> {
  const report: ImportReport = { errors: file.errors.list(), effect, ...broken, root };
  const counts = {
    rows: file.rows,
    ready: checked.ready.length,
    failed: file.errors.failed,
    already: checked.already,
  };
  await tx.importFile.update({
    where: { operatorId_id: { operatorId, id } },
    data: {
      ...counts,
      state,
      report: report as unknown as Prisma.InputJsonObject,
      version: { increment: 1 },
    },
    select: { id: true },
  });
  return { state, ...counts };
}

/** A report keeps the first of each. */
function firstOf({ newlyOver, newlyUnknown, overruns }: ConsequencesDto): ConsequencesDto {
  return {
    newlyOver: newlyOver.slice(0, MOST_REACHED),
    newlyUnknown: newlyUnknown.slice(0, MOST_REACHED),
    overruns: overruns.slice(0, MOST_REACHED),
  };
}

function rootOf(rows: readonly RecordedRow[]): string {
  const digest = (bytes: Uint8Array): Uint8Array => createHash('sha256').update(bytes).digest();
  const leaves = (function* () {
    for (const row of rows) yield Buffer.from(canonicalRow(row));
  })();
  return Buffer.from(merkleRoot(leaves, digest)).toString('hex');
}
