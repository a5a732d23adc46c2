import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/access/actor.js';
import type { Tx } from '../../../platform/database/database.js';
import { newId } from '../../../platform/database/uuid.js';
import type { ActRequest } from '../../../platform/http/act-key.js';
import { Acts } from '../../../platform/http/acts.js';
import { dayOf, dayToWire } from '../../../platform/http/instants.js';
import { orNotFound, refuse } from '../../../platform/problems/refusal.error.js';
import { Clock } from '../../../platform/time/clock.js';
import { Journal } from '../../../records/journal/journal.js';
import { subjectOf } from '../../../records/requirements/requirements.js';
import type { Standing } from '../../../records/requirements/standings.js';
import { HeldSubjects, streamOf } from '../held-subjects.js';
import { variationToWire, WITH_VARIED } from '../met.mapper.js';
import type { VariationDto } from '../met-view.dto.js';
import { refuseDay } from '../rules/refuse-day.js';
import { refuseUnpermitted } from './permitted.js';
import type { NewVariationDto } from './variation.dto.js';

/** Variations of what is due, each for one due. */
@Injectable()
export class VariationsService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly subjects: HeldSubjects,
    private readonly clock: Clock,
  ) {}

  /**
   * Records an approved variation of what is due now. Refuses: INVALID_FIELDS, NOT_FOUND, ALREADY_EXISTS (of this due),
   * REFUSED_BY_FACTS (a life limit, a text that grants none, nothing is permitted, or not so much, another was met since).
   */
  add(actor: Actor, act: ActRequest, asked: NewVariationDto): Promise<VariationDto> {
    const { operatorId } = actor;
    const subject = subjectOf(asked, '');
    refuseDay(asked.on, dayToWire(this.clock.now()));
    return this.acts.perform(actor, act, async (tx) => {
      const { code } = await requirementOf(tx, operatorId, asked.requirementId);
      const held = await this.subjects.lock(tx, operatorId, subject);
      const standing = await this.subjects.standingOf(tx, operatorId, held, code);
      refuseOther(asked, standing);
      refuseUnpermitted(asked, standing);
      const accomplishmentId = standing.done.at(-1)?.id ?? null;
      if (standing.variation !== null)
        refuse({
          code: 'ALREADY_EXISTS',
          what: 'a variation of this due, one time, by',
          field: 'reference',
          value: standing.variation.reference,
        });
      const number = await this.journal.number(tx);
      const id = newId();
      const {
        requirementId,
        minutes = null,
        cycles = null,
        days = null,
        approvedBy,
        reference,
        reason,
      } = asked;
      const told = {
        requirementId,
        ...subject,
        accomplishmentId,
        minutes,
        cycles,
        days,
        approvedBy,
        reference,
        reason,
      };
      await tx.variation.create({
        data: { operatorId, id, ...told, approvedOn: dayOf(asked.on), recordedSeq: number },
      });
      await this.subjects.dueAgain(tx, operatorId, held);
      const stream = streamOf(held);
      await this.journal.append(tx, actor, {
        number,
        stream,
        kind: 'variation-recorded',
        body: { id, code, ...told, on: asked.on },
        about: [...new Set([stream, id, requirementId])],
        key: act.key,
      });
      const resource = `/api/requirements/${requirementId}`;
      return { status: 201, body: await read(tx, operatorId, id), number, resource };
    });
  }

  /** Voids a variation; what is due is computed again. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<VariationDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const { airframeId, positionId, componentId, requirementId } = await read(tx, operatorId, id);
      const held = await this.subjects.lock(tx, operatorId, { airframeId, positionId, componentId });
      const number = await this.journal.number(tx);
      const { count } = await tx.variation.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the variation' });
      await this.subjects.dueAgain(tx, operatorId, held);
      const stream = streamOf(held);
      await this.journal.append(tx, actor, {
        number,
        stream,
        kind: 'variation-voided',
        body: { id, requirementId, reason },
        about: [...new Set([stream, id, requirementId])],
        key: act.key,
      });
      const resource = `/api/requirements/${requirementId}`;
      return { status: 200, body: await read(tx, operatorId, id), number, resource };
    });
  }
}

/** The requirement that is varied; a life limit has no variation. Refuses: NOT_FOUND, REFUSED_BY_FACTS. */
async function requirementOf(tx: Tx, operatorId: number, id: string) {
  const byId = { where: { operatorId_id: { operatorId, id } }, select: { id: true } };
  const limit = await tx.lifeLimit.findUnique(byId);
  if (limit !== null)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'requirementId',
      reason: 'It is a life limit: a mandatory life has no variation.',
      fix: 'Remove the part at its limit; a revision of its document alone changes it.',
    });
  return orNotFound(
    await tx.requirement.findUnique({ where: byId.where, select: { code: true } }),
    'requirement',
    'requirementId',
  );
}

/** Refuses a revision that is not in force, and a due that is not the one seen. Refuses: REFUSED_BY_FACTS. */
function refuseOther(
  { requirementId, accomplishmentId }: NewVariationDto,
  { requirement, done }: Standing,
): void {
  if (requirementId !== requirement.id)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'requirementId',
      reason: 'Another revision of it is in force.',
      fix: `Vary what is due by revision ${requirement.revision}.`,
    });
  if (accomplishmentId !== undefined && accomplishmentId !== (done.at(-1)?.id ?? null))
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'accomplishmentId',
      reason: 'It is not the last accomplishment: another due stands now.',
      fix: 'Look at what is due now, and approve that.',
    });
}

async function read(tx: Tx, operatorId: number, id: string): Promise<VariationDto> {
  const row = await tx.variation.findUnique({
    where: { operatorId_id: { operatorId, id } },
    include: WITH_VARIED,
  });
  return variationToWire(orNotFound(row, 'variation'));
}
