import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { toWirePrecise } from '../../platform/http/instants.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import type { ApiRefusal } from '../../platform/problems/api-refusals.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { History } from '../../records/history/history.js';
import { loadCertificate, RELEASE_CERTIFICATE } from '../../records/releases/frozen-release.js';
import type { DocumentBegunDto, DocumentDto, NewDocumentDto } from './documents.dto.js';
import { HISTORY_JOB } from './history-document.js';
import { LIFE_STATUS } from './life-status-document.js';

/** A document's file. */
export interface DocumentFile {
  readonly fileName: string;
  readonly bytes: Uint8Array;
}

/** Printed documents: prepared by jobs, kept as they were made. */
@Injectable()
export class DocumentsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly jobs: Jobs,
    private readonly history: History,
  ) {}

  /** Begins to prepare a document. Refuses: NOT_FOUND, REFUSED_BY_FACTS when the kind is not made of that subject. */
  begin(actor: Actor, act: ActRequest, asked: NewDocumentDto): Promise<DocumentBegunDto> {
    return this.acts.perform(actor, act, async (tx) => {
      const jobId = await this.start(tx, actor, asked);
      return { status: 202, body: { jobId }, resource: `/api/jobs/${jobId}` };
    });
  }

  private async start(
    tx: Tx,
    actor: Actor,
    { kind, subjectKind, subjectId, at }: NewDocumentDto,
  ): Promise<string> {
    const { operatorId } = actor;
    if (!SUBJECTS[kind].includes(subjectKind)) refuse(wrongSubject(kind));
    if (at !== undefined && kind !== LIFE_STATUS)
      refuse({
        code: 'INVALID_FIELDS',
        fields: [{ field: 'at', reason: `A ${kind} is of no one instant.`, fix: 'Leave it out.' }],
      });
    if (kind === LIFE_STATUS) {
      const where = { operatorId_id: { operatorId, id: subjectId } };
      orNotFound(await tx.component.findUnique({ where, select: { id: true } }), 'component');
      return this.jobs.start(tx, actor, {
        kind: LIFE_STATUS,
        subjectId,
        input: at === undefined ? {} : { at },
      });
    }
    if (subjectKind === 'release') {
      await loadCertificate(tx, operatorId, subjectId);
      return this.jobs.start(tx, actor, { kind: RELEASE_CERTIFICATE, subjectId, input: {} });
    }
    await this.history.subject(tx, operatorId, { kind: subjectKind, id: subjectId });
    return this.jobs.start(tx, actor, { kind: HISTORY_JOB, subjectId, input: { subjectKind } });
  }

  /** The documents of a subject, the newest first. */
  list(actor: Actor, subjectId: string): Promise<DocumentDto[]> {
    return this.database.inOperator(actor, async (tx) => {
      const rows = await tx.document.findMany({
        where: { operatorId: actor.operatorId, subjectId },
        select: {
          id: true,
          kind: true,
          subjectId: true,
          fileName: true,
          pages: true,
          sha256: true,
          createdAt: true,
          createdBy: true,
        },
        orderBy: { id: 'desc' },
        take: 200,
      });
      return rows.map((row) => ({
        id: row.id,
        kind: row.kind,
        subjectId: row.subjectId,
        fileName: row.fileName,
        pages: row.pages,
        sha256: Buffer.from(row.sha256).toString('hex'),
        createdAt: toWirePrecise(row.createdAt),
        by: row.createdBy.fullName,
      }));
    });
  }

  /** The file of a document. Refuses: NOT_FOUND. */
  file(actor: Actor, id: string): Promise<DocumentFile> {
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId: actor.operatorId, id } };
      return orNotFound(
        await tx.document.findUnique({ where, select: { fileName: true, bytes: true } }),
        'document',
      );
    });
  }
}

const SUBJECTS: Readonly<Record<NewDocumentDto['kind'], readonly NewDocumentDto['subjectKind'][]>> = {
  history: ['airframe', 'component'],
  'release-certificate': ['release'],
  'life-status': ['component'],
};

function wrongSubject(kind: NewDocumentDto['kind']): ApiRefusal {
  const of = SUBJECTS[kind].join(' or ');
  return {
    code: 'REFUSED_BY_FACTS',
    field: 'subjectKind',
    reason: `A ${kind} is not made of that.`,
    fix: `Name a subject of kind ${of}.`,
  };
}
