import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayOf, dayToWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { DuePoints } from '../../records/due-points/due-points.js';
import { Journal } from '../../records/journal/journal.js';
import { type Holder, Requirements } from '../../records/requirements/requirements.js';
import type { NewRequirementDto } from './requirement.dto.js';
import {
  accomplishmentToWire,
  idsInForce,
  requirementToWire,
  WITH_SCOPE,
  WITH_SUBJECT,
} from './requirement.mapper.js';
import { requirementRow } from './requirement-row.js';
import { refuseContradictions, refuseUnknownScope } from './requirement-rules.js';
import type { RequirementDto, RequirementStatusDto, RequirementViewDto } from './requirement-view.dto.js';

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
      const rows = await read(tx, actor.operatorId, {});
      return rows.filter((row) => row.inForce || !inForceAlone);
    });
  }

  /** One requirement with all it is held against and when it was met. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<RequirementViewDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const requirement = await one(tx, operatorId, id);
      const { code } = requirement;
      const done = await tx.accomplishment.findMany({
        where: { operatorId, requirement: { is: { operatorId, code } } },
        include: WITH_SUBJECT,
        orderBy: [{ at: 'desc' }, { recordedSeq: 'desc' }],
        take: SHOWN,
      });
      const statuses = requirement.inForce
        ? await this.requirements.statusesOfCode(tx, operatorId, code)
        : [];
      return {
        requirement,
        statuses: statuses.map(statusToWire),
        accomplishments: done.map(accomplishmentToWire),
      };
    });
  }

  /** What is held against an airframe with all that hangs on it, or a component with all beneath it. Refuses: NOT_FOUND. */
  statusesOn(actor: Actor, of: Holder): Promise<RequirementStatusDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const byId = (id: string) => ({ where: { operatorId_id: { operatorId, id } }, select: { id: true } });
      if ('airframeId' in of) orNotFound(await tx.airframe.findUnique(byId(of.airframeId)), 'airframe');
      else orNotFound(await tx.component.findUnique(byId(of.componentId)), 'component');
      return (await this.requirements.statusesOn(tx, operatorId, of, null)).map(statusToWire);
    });
  }

  /**
   * Records a requirement; what is due by it is computed for all it is for.
   * Refuses: INVALID_FIELDS, NOT_FOUND (type, position, model), ALREADY_EXISTS (this revision of the code).
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
      const { fromOn, effectiveOn, ...row } = requirementRow(asked);
      await tx.requirement.create({
        data: {
          operatorId,
          id,
          ...row,
          fromOn: fromOn === null ? null : dayOf(fromOn),
          effectiveOn: dayOf(effectiveOn),
          recordedSeq: number,
        },
      });
      await this.duePoints.rebuildCode(tx, operatorId, code);
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'requirement-recorded',
        body: { id, ...row, fromOn, effectiveOn },
        about: [id],
        key: act.key,
      });
      const body = await one(tx, operatorId, id);
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
      const { code, revision } = await one(tx, operatorId, id);
      const number = await this.journal.number(tx);
      const { count } = await tx.requirement.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the requirement' });
      await this.duePoints.rebuildCode(tx, operatorId, code);
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'requirement-voided',
        body: { id, code, revision, reason },
        about: [id],
        key: act.key,
      });
      const body = await one(tx, operatorId, id);
      return { status: 200, body, number, resource: `/api/requirements/${id}` };
    });
  }
}

function statusToWire(status: Awaited<ReturnType<Requirements['statusesOn']>>[number]): RequirementStatusDto {
  const { lastDone, dues } = status;
  return {
    ...status,
    dues: dues.map((due) => ({ ...due })),
    lastDone: lastDone === null ? null : { ...lastDone },
  };
}

async function one(tx: Tx, operatorId: number, id: string): Promise<RequirementDto> {
  const found = await tx.requirement.findUnique({
    where: { operatorId_id: { operatorId, id } },
    select: { code: true },
  });
  const { code } = orNotFound(found, 'requirement');
  const rows = await read(tx, operatorId, { code });
  return orNotFound(
    rows.find((row) => row.id === id),
    'requirement',
  );
}

async function read(
  tx: Tx,
  operatorId: number,
  where: { readonly code?: string },
): Promise<RequirementDto[]> {
  const rows = await tx.requirement.findMany({
    where: { operatorId, ...where },
    include: WITH_SCOPE,
    orderBy: [{ code: 'asc' }, { effectiveOn: 'desc' }, { recordedSeq: 'desc' }],
  });
  const inForce = idsInForce(rows);
  const open = await tx.$queryRaw<{ id: string; open: number }[]>`
    SELECT requirement_id AS id, count(DISTINCT coalesce(component_id, position_id, airframe_id))::int AS open
      FROM due_point WHERE operator_id = ${operatorId}::int AND requirement_id = ANY (${rows.map((row) => row.id)}::uuid[])
     GROUP BY requirement_id`;
  const openOf = new Map(open.map((row) => [row.id, row.open]));
  return rows.map((row) =>
    requirementToWire(row, { inForce: inForce.has(row.id), open: openOf.get(row.id) ?? 0 }),
  );
}
