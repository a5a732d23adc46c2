import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { requireVersion } from '../../platform/http/if-match.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import { errorsCsv } from './flights-file/errors-csv.js';
import type { ImportBegunDto, ImportDto, ImportsPageDto, ImportsQueryDto } from './import.dto.js';
import { importRowToWire, importToWire } from './import.mapper.js';
import { reportFrom } from './import-report.js';

export const CHECK_JOB = 'flights-check';
export const APPLY_JOB = 'flights-apply';

const PAGE = 50;
const WITH_PERSON = { createdBy: { select: { fullName: true } } } as const;
/** Everything but the file itself, which can be large. */
const SHOWN = {
  ...{
    id: true,
    fileName: true,
    sha256: true,
    state: true,
    rows: true,
    ready: true,
    failed: true,
    already: true,
  },
  ...{ report: true, version: true, createdAt: true, createdBy: { select: { fullName: true } } },
} as const;

/** Files brought in: taken, checked, applied or given up. */
@Injectable()
export class ImportsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly jobs: Jobs,
    private readonly journal: Journal,
  ) {}

  /** Imports, the newest first, a page at a time. */
  page(actor: Actor, { after, limit = PAGE }: ImportsQueryDto): Promise<ImportsPageDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const found = await tx.importFile.findMany({
        where: { operatorId, ...(after === undefined ? {} : { id: { lt: after } }) },
        omit: { content: true, report: true },
        include: WITH_PERSON,
        orderBy: { id: 'desc' },
        take: limit + 1,
      });
      const rows = found.slice(0, limit);
      return {
        rows: rows.map(importRowToWire),
        next: found.length > limit ? (rows.at(-1)?.id ?? null) : null,
      };
    });
  }

  /** One import with its report. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<ImportDto> {
    return this.database.inOperator(actor, (tx) => read(tx, actor.operatorId, id));
  }

  /** The errors of an import as CSV. Refuses: NOT_FOUND. */
  errors(actor: Actor, id: string): Promise<string> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const row = await tx.importFile.findUnique({
        where: { operatorId_id: { operatorId, id } },
        select: { report: true },
      });
      return errorsCsv(reportFrom(orNotFound(row, 'import').report).errors);
    });
  }

  /** Takes a file in and begins its check; nothing is recorded of it yet. */
  take(
    actor: Actor,
    act: ActRequest,
    { fileName, content }: { readonly fileName: string; readonly content: Buffer },
  ): Promise<ImportBegunDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const id = newId();
      const sha256 = createHash('sha256').update(content).digest();
      const number = await this.journal.number(tx);
      await tx.importFile.create({
        data: {
          operatorId,
          id,
          kind: 'flights',
          fileName,
          sha256: new Uint8Array(sha256),
          content: new Uint8Array(content),
          state: 'checking',
          createdById: actor.personId,
        },
      });
      const jobId = await this.jobs.start(tx, actor, { kind: CHECK_JOB, subjectId: id, input: {} });
      const body = { fileName, sha256: sha256.toString('hex'), bytes: content.length };
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'import-taken',
        body,
        about: [id],
        key: act.key,
      });
      const begun: ImportBegunDto = { id, jobId, state: 'checking', version: 1 };
      return { status: 202, body: begun, version: 1, number, resource: `/api/imports/${id}` };
    });
  }

  /**
   * Begins to apply a checked file, all of it or nothing.
   * Refuses: NOT_FOUND, STALE, WRONG_STATE, ALREADY_EXISTS (this very file was applied), REFUSED_BY_FACTS (lines err, or
   * nothing is new).
   */
  apply(
    actor: Actor,
    act: ActRequest,
    { id, seen }: { readonly id: string; readonly seen: number },
  ): Promise<ImportBegunDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const row = await lock(tx, operatorId, id);
      requireVersion(row.version, seen, 'The import');
      const same = await appliedBefore(tx, operatorId, row);
      if (same !== null)
        refuse({
          code: 'ALREADY_EXISTS',
          what: 'an applied import of this very file, called',
          field: 'id',
          value: same.fileName,
        });
      if (row.state !== 'checked')
        refuse({ code: 'WRONG_STATE', what: 'the import', state: row.state, needed: 'checked' });
      if (row.failed > 0) {
        const reason = `${row.failed} ${row.failed === 1 ? 'line of the file errs' : 'lines of the file err'}; a file is applied whole or not at all.`;
        refuse({
          code: 'REFUSED_BY_FACTS',
          reason,
          fix: 'Download the errors, mend the file and bring it in again.',
        });
      }
      if (row.ready === 0)
        refuse({
          code: 'REFUSED_BY_FACTS',
          reason: 'Nothing in the file is new.',
          fix: 'Bring in a file with flights that are not on record.',
        });
      const version = row.version + 1;
      await tx.importFile.update({
        where: { operatorId_id: { operatorId, id } },
        data: { state: 'applying', version },
        select: { id: true },
      });
      const jobId = await this.jobs.start(tx, actor, { kind: APPLY_JOB, subjectId: id, input: {} });
      const begun: ImportBegunDto = { id, jobId, state: 'applying', version };
      return { status: 202, body: begun, version, resource: `/api/imports/${id}` };
    });
  }

  /** Ends the work under way on an import; nothing of it stays. Refuses: NOT_FOUND, WRONG_STATE, NOT_ALLOWED. */
  cancel(actor: Actor, act: ActRequest, id: string): Promise<ImportDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const row = await lock(tx, operatorId, id);
      if (row.state !== 'checking' && row.state !== 'applying')
        refuse({
          code: 'WRONG_STATE',
          what: 'the import',
          state: row.state,
          needed: 'checked or applied just now',
        });
      const job = orNotFound(await latestJob(tx, operatorId, id), 'job');
      await this.jobs.cancel(tx, actor, job.id);
      // One that had not begun ends here; one under way ends when it next looks, and says so itself.
      if (job.state === 'queued') await stopped(tx, operatorId, id);
      const body = await read(tx, operatorId, id);
      return { status: 202, body, version: body.version, resource: `/api/imports/${id}` };
    });
  }
}

/** Notes that the work on an import was given up: a check leaves it cancelled, an application as it was checked. */
export async function stopped(tx: Tx, operatorId: number, id: string): Promise<void> {
  const version = { increment: 1 };
  await tx.importFile.updateMany({
    where: { operatorId, id, state: 'checking' },
    data: { state: 'cancelled', version },
  });
  await tx.importFile.updateMany({
    where: { operatorId, id, state: 'applying' },
    data: { state: 'checked', version },
  });
}

/** The import's own row, locked. Refuses: NOT_FOUND. */
async function lock(tx: Tx, operatorId: number, id: string) {
  await tx.$queryRaw`SELECT 1 FROM import_file WHERE operator_id = ${operatorId}::int AND id = ${id}::uuid FOR NO KEY UPDATE`;
  return orNotFound(
    await tx.importFile.findUnique({
      where: { operatorId_id: { operatorId, id } },
      omit: { content: true, report: true },
    }),
    'import',
  );
}

function latestJob(tx: Tx, operatorId: number, subjectId: string) {
  return tx.job.findFirst({
    where: { operatorId, subjectId, kind: { in: [CHECK_JOB, APPLY_JOB] } },
    orderBy: { createdAt: 'desc' },
  });
}

function appliedBefore(
  tx: Tx,
  operatorId: number,
  { id, sha256 }: { readonly id: string; readonly sha256: Uint8Array<ArrayBuffer> },
) {
  return tx.importFile.findFirst({
    where: { operatorId, sha256, kind: 'flights', id: { not: id }, state: { in: ['applying', 'applied'] } },
    select: { id: true, fileName: true },
  });
}

async function read(tx: Tx, operatorId: number, id: string): Promise<ImportDto> {
  const row = orNotFound(
    await tx.importFile.findUnique({ where: { operatorId_id: { operatorId, id } }, select: SHOWN }),
    'import',
  );
  return importToWire(row, {
    job: await latestJob(tx, operatorId, id),
    sameAs: await appliedBefore(tx, operatorId, row),
  });
}
