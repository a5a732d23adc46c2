import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/access/actor.js';
import type { Tx } from '../../../platform/database/database.js';
import { newId } from '../../../platform/database/uuid.js';
import type { ActRequest } from '../../../platform/http/act-key.js';
import { Acts } from '../../../platform/http/acts.js';
import { dayOf, dayToWire } from '../../../platform/http/instants.js';
import { orNotFound, refuse } from '../../../platform/problems/refusal.error.js';
import { Clock } from '../../../platform/time/clock.js';
import { DuePoints } from '../../../records/due-points/due-points.js';
import { Journal } from '../../../records/journal/journal.js';
import { HeldSubjects } from '../held-subjects.js';
import { assessmentToWire, WITH_ASSESSED } from '../met.mapper.js';
import type { AssessmentDto } from '../met-view.dto.js';
import { refuseDay } from '../rules/refuse-day.js';
import type { NewAssessmentDto } from './assessment.dto.js';

type Of = Pick<
  AssessmentDto,
  'airframeId' | 'positionId' | 'componentId' | 'airframeTypeId' | 'engineModelId'
>;

/** Whether requirements apply, as was found. */
@Injectable()
export class AssessmentsService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly subjects: HeldSubjects,
    private readonly duePoints: DuePoints,
    private readonly clock: Clock,
  ) {}

  /**
   * Records whether a revision applies; what is due is computed again. Refuses: INVALID_FIELDS (more than one subject, no
   * reason, a day to come), NOT_FOUND, REFUSED_BY_FACTS (it is not for this).
   */
  add(actor: Actor, act: ActRequest, asked: NewAssessmentDto): Promise<AssessmentDto> {
    const { operatorId } = actor;
    const of = assessedOf(asked);
    refuseUnreasoned(asked);
    refuseDay(asked.on, dayToWire(this.clock.now()));
    return this.acts.perform(actor, act, async (tx) => {
      const { code } = await requirementOf(tx, operatorId, asked.requirementId);
      await refuseUnknownGroup(tx, operatorId, of);
      const again = await this.lock(tx, operatorId, of, code);
      const number = await this.journal.number(tx);
      const id = newId();
      const { requirementId, applicable, reason = null, method = null, assessedBy, reference, on } = asked;
      const told = { requirementId, ...of, applicable, reason, method, assessedBy, reference };
      await tx.assessment.create({
        data: { operatorId, id, ...told, assessedOn: dayOf(on), recordedSeq: number },
      });
      await again();
      await this.journal.append(tx, actor, {
        number,
        stream: requirementId,
        kind: 'assessment-recorded',
        body: { id, code, ...told, on },
        about: aboutOf(id, requirementId, of),
        key: act.key,
      });
      const resource = `/api/requirements/${requirementId}`;
      return { status: 201, body: await read(tx, operatorId, id), number, resource };
    });
  }

  /** Voids an assessment; what is due is computed again. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<AssessmentDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const { requirementId, ...of } = await read(tx, operatorId, id);
      const { code } = await requirementOf(tx, operatorId, requirementId);
      const again = await this.lock(tx, operatorId, of, code);
      const number = await this.journal.number(tx);
      const { count } = await tx.assessment.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the assessment' });
      await again();
      await this.journal.append(tx, actor, {
        number,
        stream: requirementId,
        kind: 'assessment-voided',
        body: { id, requirementId, code, reason },
        about: aboutOf(id, requirementId, of),
        key: act.key,
      });
      const resource = `/api/requirements/${requirementId}`;
      return { status: 200, body: await read(tx, operatorId, id), number, resource };
    });
  }

  /** Locks what it is of; answers what computes again what is due there. */
  private async lock(tx: Tx, operatorId: number, of: Of, code: string): Promise<() => Promise<void>> {
    const { airframeId, positionId, componentId } = of;
    if ((airframeId ?? positionId ?? componentId) === null)
      return () => this.duePoints.rebuildCodes(tx, operatorId, [code]);
    const held = await this.subjects.lock(tx, operatorId, { airframeId, positionId, componentId });
    await this.subjects.standingOf(tx, operatorId, held, code);
    return () => this.subjects.dueAgain(tx, operatorId, held);
  }
}

function assessedOf(asked: NewAssessmentDto): Of {
  const { airframeId = null, positionId = null, componentId = null } = asked;
  const { airframeTypeId = null, engineModelId = null } = asked;
  const of = { airframeId, positionId, componentId, airframeTypeId, engineModelId };
  if (Object.values(of).filter((id) => id !== null).length > 1)
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'componentId',
          reason: 'An assessment is of one subject, of one type or model, or of all it may be for.',
          fix: 'Give at most one of airframeId, positionId, componentId, airframeTypeId and engineModelId.',
        },
      ],
    });
  return of;
}

function refuseUnreasoned({ applicable, reason }: NewAssessmentDto): void {
  if (applicable || reason != null) return;
  refuse({
    code: 'INVALID_FIELDS',
    fields: [
      {
        field: 'reason',
        reason: 'Nothing says why it does not apply.',
        fix: 'Enter the reason, such as the serial numbers or the modification it is for.',
      },
    ],
  });
}

async function refuseUnknownGroup(
  tx: Tx,
  operatorId: number,
  { airframeTypeId, engineModelId }: Of,
): Promise<void> {
  const byId = (id: string) => ({ where: { operatorId_id: { operatorId, id } }, select: { id: true } });
  if (airframeTypeId !== null)
    orNotFound(await tx.airframeType.findUnique(byId(airframeTypeId)), 'type of airframe', 'airframeTypeId');
  if (engineModelId !== null)
    orNotFound(await tx.engineModel.findUnique(byId(engineModelId)), 'engine model', 'engineModelId');
}

async function requirementOf(tx: Tx, operatorId: number, id: string) {
  return orNotFound(
    await tx.requirement.findUnique({
      where: { operatorId_id: { operatorId, id } },
      select: { code: true },
    }),
    'requirement',
    'requirementId',
  );
}

function aboutOf(id: string, requirementId: string, { componentId, airframeId, positionId }: Of): string[] {
  const subject = componentId ?? airframeId ?? positionId;
  return [id, requirementId, ...(subject === null ? [] : [subject])];
}

async function read(tx: Tx, operatorId: number, id: string): Promise<AssessmentDto> {
  const row = await tx.assessment.findUnique({
    where: { operatorId_id: { operatorId, id } },
    include: WITH_ASSESSED,
  });
  return assessmentToWire(orNotFound(row, 'assessment'));
}
