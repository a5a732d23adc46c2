import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { ProcedureContent } from '@strutbook/domain/work/step.js';
import { canonical } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { refuseUnsoundContent } from '../../records/work/sound-content.js';
import { toContent } from '../../records/work/wire/procedure-content.mapper.js';
import type { NewProcedureDto, ProcedureDto, ProcedureRowDto, ProceduresQueryDto } from './procedures.dto.js';

/** Procedures: lists of steps made from approved data, one record for each revision. */
@Injectable()
export class ProceduresService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
  ) {}

  /** Every revision, by code, the one recorded last first. */
  list(actor: Actor, { kind }: ProceduresQueryDto): Promise<ProcedureRowDto[]> {
    return this.database.inOperator(
      actor,
      (tx) => tx.$queryRaw<ProcedureRowDto[]>`
        SELECT id, code, revision, title, kind, document, document_revision AS "documentRevision",
               jsonb_array_length(content::jsonb -> 'steps') AS steps,
               row_number() OVER (PARTITION BY code ORDER BY recorded_seq DESC) = 1 AS latest
          FROM procedure
         WHERE operator_id = ${actor.operatorId}::int AND (${kind ?? null}::text IS NULL OR kind = ${kind ?? null})
         ORDER BY code, recorded_seq DESC`,
    );
  }

  /** One revision with its content. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<ProcedureDto> {
    return this.database.inOperator(actor, async (tx) => {
      const where = { operatorId_id: { operatorId: actor.operatorId, id } };
      const row = orNotFound(await tx.procedure.findUnique({ where }), 'procedure');
      return {
        id: row.id,
        code: row.code,
        revision: row.revision,
        title: row.title,
        kind: row.kind as ProcedureDto['kind'],
        document: row.document,
        documentRevision: row.documentRevision,
        content: JSON.parse(row.content) as ProcedureDto['content'],
        contentHash: Buffer.from(row.contentHash).toString('hex'),
      };
    });
  }

  /** Records a revision. Refuses: ALREADY_EXISTS (code and revision), INVALID_FIELDS (a content that cannot be worked). */
  add(actor: Actor, act: ActRequest, { content: sent, ...asked }: NewProcedureDto): Promise<ProcedureDto> {
    const { operatorId } = actor;
    const content: ProcedureContent = toContent(sent);
    refuseUnsoundContent(content);
    const text = canonical(plainJson(content));
    const contentHash = createHash('sha256').update(text).digest();
    return this.acts.perform(actor, act, async (tx) => {
      const { code, revision } = asked;
      if ((await tx.procedure.count({ where: { operatorId, code, revision } })) > 0)
        refuse({
          code: 'ALREADY_EXISTS',
          what: `a procedure ${code} with the revision`,
          field: 'revision',
          value: revision,
        });
      const number = await this.journal.number(tx);
      const id = newId();
      await tx.procedure.create({
        data: {
          operatorId,
          id,
          ...asked,
          content: text,
          contentHash: new Uint8Array(contentHash),
          recordedSeq: number,
        },
      });
      const body: ProcedureDto = {
        id,
        ...asked,
        content: JSON.parse(text) as ProcedureDto['content'],
        contentHash: contentHash.toString('hex'),
      };
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'procedure-recorded',
        body: plainJson({
          procedureId: id,
          ...asked,
          contentHash: body.contentHash,
          steps: content.steps.length,
        }),
        about: [id],
        key: act.key,
      });
      return { status: 201, body, resource: `/api/procedures/${id}`, number };
    });
  }
}
