import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database } from '../../platform/database/database.js';
import type { Prisma } from '../../platform/database/generated/client.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayOf, dayToWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { DuePoints } from '../../records/due-points/due-points.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { type Holder, Requirements } from '../../records/requirements/requirements.js';
import {
  accomplishmentToWire,
  assessmentToWire,
  variationToWire,
  WITH_ASSESSED,
  WITH_SUBJECT,
  WITH_VARIED,
} from './met.mapper.js';
import { codesTouchedBy, one, read } from './read-requirements.js';
import type { NewRequirementDto } from './requirement.dto.js';
import type { RequirementViewDto } from './requirement-page.dto.js';
import type { RequirementStatusDto } from './requirement-status.dto.js';
import type { RequirementDto } from './requirement-view.dto.js';
import { refuseUnknownScope } from './rules/known-scope.js';
import { requirementRow } from './rules/requirement-row.js';
import { refuseContradictions } from './rules/requirement-rules.js';

const SHOWN = 200;

/** The register of requirements, and what is due by them. */
@Injectable()
export class RequirementsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly requirements: Requirements,
    private readonly duePoints: DuePoints,
    private readonly clock: Clock,
  ) {}

  /** All requirements by code, the newest revision first; voided ones are marked. */
  list(actor: Actor, inForceAlone: boolean): Promise<RequirementDto[]> {
    return this.database.inOperator(actor, async (tx) => {
      const rows = await read(tx, actor.operatorId, {}, this.clock.now());
      return rows.filter((row) => row.inForce || !inForceAlone);
    });
  }

  /** One requirement with all it is held against and when it was met. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string, withAll: boolean): Promise<RequirementViewDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const requirement = await one(tx, operatorId, id, this.clock.now());
      const { code } = requirement;
      const ofCode = { operatorId, requirement: { is: { operatorId, code } } };
      const assessed = await tx.assessment.findMany({
        where: ofCode,
        include: WITH_ASSESSED,
        orderBy: [{ assessedOn: 'desc' }, { recordedSeq: 'desc' }],
        take: SHOWN,
      });
      const varied = await tx.variation.findMany({
        where: ofCode,
        include: WITH_VARIED,
        orderBy: [{ approvedOn: 'desc' }, { recordedSeq: 'desc' }],
        take: SHOWN,
      });
      const done = await tx.accomplishment.findMany({
        where: ofCode,
        include: WITH_SUBJECT,
        orderBy: [{ at: 'desc' }, { recordedSeq: 'desc' }],
        take: SHOWN,
      });
      const statuses = requirement.inForce
        ? await this.requirements.statusesOfCode(tx, operatorId, code, withAll)
        : [];
      return {
        requirement,
        statuses: statuses.map(statusToWire),
        accomplishments: done.map(accomplishmentToWire),
        assessments: assessed.map(assessmentToWire),
        variations: varied.map(variationToWire),
        revisions: await read(tx, operatorId, { code }, this.clock.now()),
      };
    });
  }

  /** What is held against an airframe with all that hangs on it, or a component with all beneath it. Refuses: NOT_FOUND. */
  statusesOn(actor: Actor, of: Holder, withAll: boolean): Promise<RequirementStatusDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const byId = (id: string) => ({ where: { operatorId_id: { operatorId, id } }, select: { id: true } });
      if ('airframeId' in of) orNotFound(await tx.airframe.findUnique(byId(of.airframeId)), 'airframe');
      else orNotFound(await tx.component.findUnique(byId(of.componentId)), 'component');
      return (await this.requirements.statusesOn(tx, operatorId, of, null, { withAll })).map(statusToWire);
    });
  }

  /**
   * Records a requirement; what is due by it is computed for all it is for.
   * Refuses: INVALID_FIELDS, NOT_FOUND (type, position, model, a linked requirement), ALREADY_EXISTS (this revision of the code).
   */
  add(actor: Actor, act: ActRequest, asked: NewRequirementDto): Promise<RequirementDto> {
    const { operatorId } = actor;
    refuseContradictions(asked, dayToWire(this.clock.now()));
    return this.acts.perform(actor, act, async (tx) => {
      await refuseUnknownScope(tx, operatorId, asked);
      const { code, revision } = asked;
      const same = await tx.requirement.findFirst({
        where: { operatorId, code, revision, voidedSeq: null },
        select: { id: true },
      });
      if (same !== null)
        refuse({ code: 'ALREADY_EXISTS', what: `${code}, revision`, field: 'revision', value: revision });
      const number = await this.journal.number(tx);
      const id = newId();
      const { fromOn, effectiveOn, rule, ...row } = requirementRow(asked);
      const stored = rule as Prisma.InputJsonObject;
      await tx.requirement.create({
        data: {
          operatorId,
          id,
          ...row,
          rule: stored,
          fromOn: fromOn === null ? null : dayOf(fromOn),
          effectiveOn: dayOf(effectiveOn),
          recordedSeq: number,
        },
      });
      await this.duePoints.rebuildCodes(tx, operatorId, await codesTouchedBy(tx, operatorId, code));
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'requirement-recorded',
        body: { id, ...row, rule: plainJson(rule), fromOn, effectiveOn },
        about: [id],
        key: act.key,
      });
      const body = await one(tx, operatorId, id, this.clock.now());
      return { status: 201, body, number, resource: `/api/requirements/${id}` };
    });
  }

  /** Voids a requirement that was recorded wrongly. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<RequirementDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const { code, revision } = await one(tx, operatorId, id, this.clock.now());
      const number = await this.journal.number(tx);
      const { count } = await tx.requirement.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the requirement' });
      await this.duePoints.rebuildCodes(tx, operatorId, await codesTouchedBy(tx, operatorId, code));
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'requirement-voided',
        body: { id, code, revision, reason },
        about: [id],
        key: act.key,
      });
      const body = await one(tx, operatorId, id, this.clock.now());
      return { status: 200, body, number, resource: `/api/requirements/${id}` };
    });
  }
}

function statusToWire(status: Awaited<ReturnType<Requirements['statusesOn']>>[number]): RequirementStatusDto {
  const { lastDone, dues, reasonCodes, event, assessment, variation, closedBy } = status;
  return {
    ...status,
    reasonCodes: [...reasonCodes],
    dues: dues.map((due) => ({ ...due })),
    event: event === null ? null : { ...event },
    assessment: assessment === null ? null : { ...assessment },
    variation: variation === null ? null : { ...variation },
    closedBy: closedBy === null ? null : { ...closedBy },
    lastDone: lastDone === null ? null : { ...lastDone },
  };
}
