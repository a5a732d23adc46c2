import { Injectable } from '@nestjs/common';
import { compare, fraction } from '@strutbook/domain/units/fraction.js';
import type { Actor } from '../../../platform/access/actor.js';
import type { Tx } from '../../../platform/database/database.js';
import { newId } from '../../../platform/database/uuid.js';
import type { ActRequest } from '../../../platform/http/act-key.js';
import { Acts } from '../../../platform/http/acts.js';
import { dayToWire, toWire } from '../../../platform/http/instants.js';
import { orNotFound, refuse } from '../../../platform/problems/refusal.error.js';
import { Clock } from '../../../platform/time/clock.js';
import { refuseFuture } from '../../../platform/time/refuse-future.js';
import { Journal } from '../../../records/journal/journal.js';
import type { RequirementSubject } from '../../../records/requirements/requirement-status.js';
import { subjectOf } from '../../../records/requirements/requirements.js';
import type { Standing } from '../../../records/requirements/standings.js';
import { type Held, HeldSubjects, streamOf } from '../held-subjects.js';
import { accomplishmentToWire, WITH_SUBJECT } from '../met.mapper.js';
import type { AccomplishmentDto } from '../met-view.dto.js';
import type { CorrectedAccomplishmentDto, MetDto, NewAccomplishmentDto } from './accomplishment.dto.js';
import { doneWhen } from './done-when.js';
import { moveVariations } from './move-variations.js';

/** What was met, on what is locked, and in which act. */
interface Meeting {
  readonly held: Held;
  readonly requirement: { readonly id: string; readonly code: string; readonly title: string };
  readonly asked: MetDto;
  readonly number: bigint;
  /** What it corrects, and the package whose release met it. */
  readonly corrects: { readonly id: string; readonly packageId: string | null } | null;
}

/** Accomplishments recorded by hand, and corrected. */
@Injectable()
export class AccomplishmentsService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly subjects: HeldSubjects,
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
      const held = await this.subjects.lock(tx, operatorId, subject);
      const requirement = await requirementOf(tx, operatorId, asked.requirementId);
      const number = await this.journal.number(tx);
      const { id, body } = await this.record(tx, operatorId, {
        held,
        requirement,
        asked,
        number,
        corrects: null,
      });
      await this.subjects.dueAgain(tx, operatorId, held);
      const stream = streamOf(held);
      await this.journal.append(tx, actor, {
        number,
        stream,
        kind: 'accomplishment-recorded',
        body,
        about: [...new Set([stream, id, requirement.id])],
        key: act.key,
      });
      return {
        status: 201,
        body: await read(tx, operatorId, id),
        number,
        resource: resourceOf(requirement.id),
      };
    });
  }

  /**
   * Voids an accomplishment and records what it should have said, with its variations; what is due is computed again.
   * Refuses: NOT_FOUND, ALREADY_VOIDED, and as recording it does.
   */
  correct(
    actor: Actor,
    act: ActRequest,
    oldId: string,
    { reason, ...asked }: CorrectedAccomplishmentDto,
  ): Promise<AccomplishmentDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const old = await read(tx, operatorId, oldId);
      const { airframeId, positionId, componentId, requirementId, packageId } = old;
      const held = await this.subjects.lock(tx, operatorId, { airframeId, positionId, componentId });
      const requirement = await requirementOf(tx, operatorId, requirementId);
      const number = await this.journal.number(tx);
      await voidOne(tx, operatorId, { id: oldId, reason, number });
      const corrects = { id: oldId, packageId };
      const { id, body } = await this.record(tx, operatorId, { held, requirement, asked, number, corrects });
      await moveVariations(tx, operatorId, { from: oldId, to: id, number });
      await this.subjects.dueAgain(tx, operatorId, held);
      const stream = streamOf(held);
      await this.journal.append(tx, actor, {
        number,
        stream,
        kind: 'accomplishment-corrected',
        body: { ...body, corrects: oldId, reason },
        about: [...new Set([stream, id, oldId, requirementId])],
        key: act.key,
      });
      return {
        status: 201,
        body: await read(tx, operatorId, id),
        number,
        resource: resourceOf(requirementId),
      };
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
      const held = await this.subjects.lock(tx, operatorId, { airframeId, positionId, componentId });
      const number = await this.journal.number(tx);
      await voidOne(tx, operatorId, { id, reason, number });
      await this.subjects.dueAgain(tx, operatorId, held);
      const stream = streamOf(held);
      await this.journal.append(tx, actor, {
        number,
        stream,
        kind: 'accomplishment-voided',
        body: { id, requirementId, reason },
        about: [...new Set([stream, id, requirementId])],
        key: act.key,
      });
      return {
        status: 200,
        body: await read(tx, operatorId, id),
        number,
        resource: resourceOf(requirementId),
      };
    });
  }

  /** Writes the row, checked against the records; answers what the journal keeps of it. */
  private async record(tx: Tx, operatorId: number, { held, requirement, asked, number, corrects }: Meeting) {
    const standing = await this.subjects.standingOf(tx, operatorId, held, requirement.code);
    const { at, doneOn } = doneWhen(asked, standing.subject);
    refuseFuture(at, asked.at == null ? 'on' : 'at', this.clock.now());
    refuseContradicted(asked, standing, dayToWire(doneOn));
    const { airframeId, positionId, componentId } = held;
    const subject = { airframeId, positionId, componentId };
    const requirementId = requirement.id;
    await refuseSame(tx, operatorId, { requirementId, ...subject, at });
    const id = newId();
    const counted = {
      minutes: asked.minutes ?? null,
      cycles: asked.cycles ?? null,
      cycleDenominator: asked.cycleDenominator ?? 1,
    };
    const told = { evidence: asked.evidence, method: asked.method ?? null };
    await tx.accomplishment.create({
      data: {
        ...{ operatorId, id, requirementId, ...subject, at, doneOn, ...counted, ...told },
        correctsId: corrects?.id ?? null,
        packageId: corrects?.packageId ?? null,
        recordedSeq: number,
      },
    });
    const { code, title } = requirement;
    const when = { at: toWire(at), on: dayToWire(doneOn) };
    return { id, body: { id, requirementId, code, title, ...subject, ...when, ...counted, ...told } };
  }
}

const resourceOf = (requirementId: string) => `/api/requirements/${requirementId}`;

async function requirementOf(tx: Tx, operatorId: number, id: string) {
  return orNotFound(
    await tx.requirement.findUnique({
      where: { operatorId_id: { operatorId, id } },
      select: { id: true, code: true, title: true },
    }),
    'requirement',
    'requirementId',
  );
}

async function voidOne(
  tx: Tx,
  operatorId: number,
  { id, reason, number }: { readonly id: string; readonly reason: string; readonly number: bigint },
): Promise<void> {
  const { count } = await tx.accomplishment.updateMany({
    where: { operatorId, id, voidedSeq: null },
    data: { voidedSeq: number, voidReason: reason },
  });
  if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the accomplishment' });
}

/** Refuses what the records contradict: met before it was made, or at more than it has run. */
function refuseContradicted(
  { minutes, cycles, cycleDenominator = 1 }: MetDto,
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
  met: RequirementSubject & { readonly requirementId: string; readonly at: Date },
): Promise<void> {
  const same = await tx.accomplishment.findFirst({
    where: { operatorId, ...met, voidedSeq: null },
    select: { id: true },
  });
  if (same !== null)
    refuse({
      code: 'ALREADY_EXISTS',
      what: 'an accomplishment of it here at',
      field: 'at',
      value: toWire(met.at),
    });
}

async function read(tx: Tx, operatorId: number, id: string): Promise<AccomplishmentDto> {
  const row = await tx.accomplishment.findUnique({
    where: { operatorId_id: { operatorId, id } },
    include: WITH_SUBJECT,
  });
  return accomplishmentToWire(orNotFound(row, 'accomplishment'));
}
