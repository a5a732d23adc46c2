import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { ProcedureContent } from '@strutbook/domain/work/step.js';
import { canonical } from '@strutbook/journal/canonical.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { refuseUnsoundContent } from '../../records/work/sound-content.js';
import { toContent } from '../../records/work/wire/procedure-content.mapper.js';
import { idsOfWhatItIsFor } from './made-for.js';
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
        SELECT p.id, p.code, p.revision, p.title, p.kind, p.document, p.document_revision AS "documentRevision",
               t.designation AS "airframeType", m.designation AS "engineModel",
               jsonb_array_length(p.content::jsonb -> 'steps') AS steps,
               row_number() OVER (PARTITION BY p.code ORDER BY p.recorded_seq DESC) = 1 AS latest
          FROM procedure p
          LEFT JOIN airframe_type t ON t.operator_id = p.operator_id AND t.id = p.airframe_type_id
          LEFT JOIN engine_model m ON m.operator_id = p.operator_id AND m.id = p.engine_model_id
         WHERE p.operator_id = ${actor.operatorId}::int AND (${kind ?? null}::text IS NULL OR p.kind = ${kind ?? null})
         ORDER BY p.code, p.recorded_seq DESC`,
    );
  }

  /** One revision with its content. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<ProcedureDto> {
    return this.database.inOperator(actor, (tx) => read(tx, actor.operatorId, id));
  }

  /** Records a revision. Refuses: ALREADY_EXISTS (code and revision), INVALID_FIELDS (a content that cannot be worked). */
  add(actor: Actor, act: ActRequest, { content: sent, ...told }: NewProcedureDto): Promise<ProcedureDto> {
    const { operatorId } = actor;
    const content: ProcedureContent = toContent(sent);
    refuseUnsoundContent(content);
    const text = canonical(plainJson(content));
    const contentHash = createHash('sha256').update(text).digest();
    return this.acts.perform(actor, act, async (tx) => {
      const { airframeType = null, engineModel = null, ...asked } = told;
      const { code, revision } = asked;
      if ((await tx.procedure.count({ where: { operatorId, code, revision } })) > 0)
        refuse({
          code: 'ALREADY_EXISTS',
          what: `a procedure ${code} with the revision`,
          field: 'revision',
          value: revision,
        });
      const madeFor = await idsOfWhatItIsFor(tx, operatorId, { airframeType, engineModel });
      const number = await this.journal.number(tx);
      const id = newId();
      await tx.procedure.create({
        data: {
          operatorId,
          id,
          ...asked,
          ...madeFor,
          content: text,
          contentHash: new Uint8Array(contentHash),
          recordedSeq: number,
        },
      });
      const body = await read(tx, operatorId, id);
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'procedure-recorded',
        body: plainJson({
          procedureId: id,
          ...told,
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

async function read(tx: Tx, operatorId: number, id: string): Promise<ProcedureDto> {
  const where = { operatorId_id: { operatorId, id } };
  const include = { airframeType: true, engineModel: true } as const;
  const row = orNotFound(await tx.procedure.findUnique({ where, include }), 'procedure');
  return {
    id: row.id,
    code: row.code,
    revision: row.revision,
    title: row.title,
    kind: row.kind as ProcedureDto['kind'],
    document: row.document,
    documentRevision: row.documentRevision,
    airframeType: row.airframeType?.designation ?? null,
    engineModel: row.engineModel?.designation ?? null,
    content: JSON.parse(row.content) as ProcedureDto['content'],
    contentHash: Buffer.from(row.contentHash).toString('hex'),
  };
}
