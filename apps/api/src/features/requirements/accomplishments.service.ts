import { Injectable } from '@nestjs/common';
import { compare, fraction } from '@strutbook/domain/units/fraction.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayToWire, toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { refuseFuture } from '../../platform/time/refuse-future.js';
import { DuePoints } from '../../records/due-points/due-points.js';
import { Journal } from '../../records/journal/journal.js';
import type { RequirementSubject } from '../../records/requirements/requirement-status.js';
import { subjectOf } from '../../records/requirements/requirements.js';
import { type Standing, Standings } from '../../records/requirements/standings.js';
import { lockForStays } from '../../records/stays/stay-facts.js';
import type { NewAccomplishmentDto } from './accomplishment.dto.js';
import { doneWhen } from './done-when.js';
import { accomplishmentToWire, WITH_SUBJECT } from './requirement.mapper.js';
import type { AccomplishmentDto } from './requirement-view.dto.js';

interface Held extends RequirementSubject {
  /** The airframe whose head its due points hang on; null for a component. */
  readonly onAirframeId: string | null;
}

/** Accomplishments recorded by hand. */
@Injectable()
export class AccomplishmentsService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly standings: Standings,
    private readonly duePoints: DuePoints,
    private readonly clock: Clock,
  ) {}

  /**
   * Records that a requirement was met; what is due next is computed again. Refuses: INVALID_FIELDS, NOT_FOUND,
   * IN_THE_FUTURE, ALREADY_EXISTS, REFUSED_BY_FACTS (it is not for this, was not made yet, or has not run so much).
   */
  add(actor: Actor, act: ActRequest, asked: NewAccomplishmentDto): Promise<AccomplishmentDto> {
    const { operatorId } = actor;
    const subject = subjectOf(asked, '');
    return this.acts.perform(actor, act, async (tx) => {
      const held = await this.lock(tx, operatorId, subject);
      const requirement = orNotFound(
        await tx.requirement.findUnique({
          where: { operatorId_id: { operatorId, id: asked.requirementId } },
          select: { code: true, title: true },
        }),
        'requirement',
        'requirementId',
      );
      const standing = await this.standingOf(tx, operatorId, held, requirement.code);
      const { at, doneOn } = doneWhen(asked, standing.subject);
      refuseFuture(at, asked.at == null ? 'on' : 'at', this.clock.now());
      refuseContradicted(asked, standing, dayToWire(doneOn));
      await refuseSame(tx, operatorId, { asked, subject, at });
      const number = await this.journal.number(tx);
      const id = newId();
      const counted = {
        minutes: asked.minutes ?? null,
        cycles: asked.cycles ?? null,
        cycleDenominator: asked.cycleDenominator ?? 1,
      };
      await tx.accomplishment.create({
        data: {
          operatorId,
          id,
          requirementId: asked.requirementId,
          ...subject,
          at,
          doneOn,
          ...counted,
          evidence: asked.evidence,
          recordedSeq: number,
        },
      });
      await this.dueAgain(tx, operatorId, held);
      const stream = streamOf(held);
      await this.journal.append(tx, actor, {
        number,
        stream,
        kind: 'accomplishment-recorded',
        body: {
          id,
          requirementId: asked.requirementId,
          ...requirement,
          ...subject,
          at: toWire(at),
          on: dayToWire(doneOn),
          ...counted,
          evidence: asked.evidence,
        },
        about: [...new Set([stream, id, asked.requirementId])],
        key: act.key,
      });
      const body = await read(tx, operatorId, id);
      return { status: 201, body, number, resource: `/api/requirements/${asked.requirementId}` };
    });
  }

  /** Voids an accomplishment; what is due is computed again. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<AccomplishmentDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const { airframeId, positionId, componentId, requirementId } = await read(tx, operatorId, id);
      const held = await this.lock(tx, operatorId, { airframeId, positionId, componentId });
      const number = await this.journal.number(tx);
      const { count } = await tx.accomplishment.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the accomplishment' });
      await this.dueAgain(tx, operatorId, held);
      const stream = streamOf(held);
      await this.journal.append(tx, actor, {
        number,
        stream,
        kind: 'accomplishment-voided',
        body: { id, requirementId, reason },
        about: [...new Set([stream, id, requirementId])],
        key: act.key,
      });
      const body = await read(tx, operatorId, id);
      return { status: 200, body, number, resource: `/api/requirements/${requirementId}` };
    });
  }

  /** Locks what it was met on, so that of two at once the second sees the first. Refuses: NOT_FOUND. */
  private async lock(tx: Tx, operatorId: number, subject: RequirementSubject): Promise<Held> {
    const { airframeId, positionId, componentId } = subject;
    const byId = (id: string) => ({ where: { operatorId_id: { operatorId, id } } });
    if (componentId !== null)
      orNotFound(
        await tx.component.findUnique({ ...byId(componentId), select: { id: true } }),
        'component',
        'componentId',
      );
    if (airframeId !== null)
      orNotFound(
        await tx.airframe.findUnique({ ...byId(airframeId), select: { id: true } }),
        'airframe',
        'airframeId',
      );
    const position =
      positionId === null
        ? null
        : orNotFound(
            await tx.position.findUnique({ ...byId(positionId), select: { airframeId: true } }),
            'position',
            'positionId',
          );
    const onAirframeId = airframeId ?? position?.airframeId ?? null;
    await lockForStays(tx, operatorId, {
      airframeIds: onAirframeId === null ? [] : [onAirframeId],
      componentIds: componentId === null ? [] : [componentId],
    });
    return { ...subject, onAirframeId };
  }

  private async standingOf(tx: Tx, operatorId: number, held: Held, code: string): Promise<Standing> {
    const scope = {
      airframeIds: held.onAirframeId === null ? [] : [held.onAirframeId],
      componentIds: held.componentId === null ? [] : [held.componentId],
    };
    const found = (await this.standings.of(tx, operatorId, scope, { code })).find(
      ({ subject }) =>
        subject.airframeId === held.airframeId &&
        subject.positionId === held.positionId &&
        subject.componentId === held.componentId,
    );
    return (
      found ??
      refuse({
        code: 'REFUSED_BY_FACTS',
        field: 'requirementId',
        reason: 'This requirement is not in force, or not for what is named.',
        fix: 'Choose one that the airframe or the component lists under Requirements.',
      })
    );
  }

  private dueAgain(tx: Tx, operatorId: number, { componentId, onAirframeId }: Held): Promise<void> {
    return this.duePoints.rebuild(
      tx,
      operatorId,
      componentId === null ? [] : [componentId],
      onAirframeId === null ? [] : [onAirframeId],
    );
  }
}

function streamOf({ componentId, onAirframeId }: Held): string {
  return componentId ?? onAirframeId ?? '';
}

/** Refuses what the records contradict: met before it was made, or at more than it has run. */
function refuseContradicted(
  { minutes, cycles, cycleDenominator = 1 }: NewAccomplishmentDto,
  { subject, counters: { now } }: Standing,
  on: string,
): void {
  const against = (field: string, reason: string, fix: string) =>
    refuse({ code: 'REFUSED_BY_FACTS', field, reason, fix });
  if (subject.manufacturedOn !== null && on < subject.manufacturedOn)
    against('on', `It was made on ${subject.manufacturedOn}.`, 'Enter that day or a later one.');
  if (minutes != null && now.minutes !== null && minutes > now.minutes)
    against('minutes', 'It has not run so many hours yet.', 'Enter the hours since new when it was met.');
  if (cycles != null && now.cycles !== null && compare(fraction(cycles, cycleDenominator), now.cycles) > 0)
    against('cycles', 'It has not run so many cycles yet.', 'Enter the cycles since new when it was met.');
}

async function refuseSame(
  tx: Tx,
  operatorId: number,
  {
    asked: { requirementId },
    subject,
    at,
  }: { readonly asked: NewAccomplishmentDto; readonly subject: RequirementSubject; readonly at: Date },
): Promise<void> {
  const same = await tx.accomplishment.findFirst({
    where: { operatorId, requirementId, ...subject, at, voidedSeq: null },
    select: { id: true },
  });
  if (same !== null)
    refuse({
      code: 'ALREADY_EXISTS',
      what: 'an accomplishment of it here at',
      field: 'at',
      value: toWire(at),
    });
}

async function read(tx: Tx, operatorId: number, id: string): Promise<AccomplishmentDto> {
  const row = await tx.accomplishment.findUnique({
    where: { operatorId_id: { operatorId, id } },
    include: WITH_SUBJECT,
  });
  return accomplishmentToWire(orNotFound(row, 'accomplishment'));
}
