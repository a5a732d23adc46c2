import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/access/actor.js';
import { Database, type Tx } from '../../../platform/database/database.js';
import type { Occurrence } from '../../../platform/database/generated/client.js';
import { newId } from '../../../platform/database/uuid.js';
import type { ActRequest } from '../../../platform/http/act-key.js';
import { Acts } from '../../../platform/http/acts.js';
import { momentOf, toWire } from '../../../platform/http/instants.js';
import { orNotFound, refuse } from '../../../platform/problems/refusal.error.js';
import { Clock } from '../../../platform/time/clock.js';
import { refuseFuture } from '../../../platform/time/refuse-future.js';
import { Projections } from '../../../records/due-points/projections.js';
import { Journal } from '../../../records/journal/journal.js';
import { lockForStays } from '../../../records/stays/stay-facts.js';
import { everOnAirframes } from '../../../records/usage/kinship.js';
import type { NewOccurrenceDto, OccurrenceDto } from './occurrence.dto.js';

const SHOWN = 200;

/** Events of airframes at which requirements may be due. */
@Injectable()
export class OccurrencesService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly clock: Clock,
  ) {}

  /** Those of an airframe, the latest first. Refuses: NOT_FOUND. */
  list(actor: Actor, airframeId: string): Promise<OccurrenceDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      await refuseUnknown(tx, operatorId, airframeId);
      const rows = await tx.occurrence.findMany({
        where: { operatorId, airframeId },
        orderBy: [{ at: 'desc' }, { recordedSeq: 'desc' }],
        take: SHOWN,
      });
      return rows.map(toDto);
    });
  }

  /** Records one; what is due at it follows. Refuses: NOT_FOUND, IN_THE_FUTURE, ALREADY_EXISTS. */
  add(
    actor: Actor,
    act: ActRequest,
    { airframeId, kind, at, evidence }: NewOccurrenceDto,
  ): Promise<OccurrenceDto> {
    const { operatorId } = actor;
    const when = momentOf(at);
    refuseFuture(when, 'at', this.clock.now());
    return this.acts.perform(actor, act, async (tx) => {
      await refuseUnknown(tx, operatorId, airframeId);
      await lock(tx, operatorId, airframeId);
      const same = await tx.occurrence.findFirst({
        where: { operatorId, airframeId, kind, at: when, voidedSeq: null },
        select: { id: true },
      });
      if (same !== null) refuse({ code: 'ALREADY_EXISTS', what: 'this event at', field: 'at', value: at });
      const number = await this.journal.number(tx);
      const id = newId();
      const row = await tx.occurrence.create({
        data: { operatorId, id, airframeId, kind, at: when, evidence, recordedSeq: number },
      });
      await this.projections.dueOnAirframes(tx, operatorId, [airframeId]);
      await this.journal.append(tx, actor, {
        number,
        stream: airframeId,
        kind: 'occurrence-recorded',
        body: { id, airframeId, kind, at, evidence },
        about: [airframeId, id],
        key: act.key,
      });
      return { status: 201, body: toDto(row), number, resource: resourceOf(airframeId) };
    });
  }

  /** Voids one; what is due is computed again. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<OccurrenceDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const { airframeId } = await one(tx, operatorId, id);
      await lock(tx, operatorId, airframeId);
      const number = await this.journal.number(tx);
      const { count } = await tx.occurrence.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the event' });
      await this.projections.dueOnAirframes(tx, operatorId, [airframeId]);
      await this.journal.append(tx, actor, {
        number,
        stream: airframeId,
        kind: 'occurrence-voided',
        body: { id, airframeId, reason },
        about: [airframeId, id],
        key: act.key,
      });
      return {
        status: 200,
        body: toDto(await one(tx, operatorId, id)),
        number,
        resource: resourceOf(airframeId),
      };
    });
  }
}

const resourceOf = (airframeId: string) => `/api/airframes/${airframeId}/occurrences`;

async function refuseUnknown(tx: Tx, operatorId: number, id: string): Promise<void> {
  orNotFound(
    await tx.airframe.findUnique({ where: { operatorId_id: { operatorId, id } }, select: { id: true } }),
    'airframe',
    'airframeId',
  );
}

/** Locks the airframe and all that ever hung on it, whose dues the event may touch. */
async function lock(tx: Tx, operatorId: number, airframeId: string): Promise<void> {
  const componentIds = await everOnAirframes(tx, operatorId, [airframeId]);
  await lockForStays(tx, operatorId, { airframeIds: [airframeId], componentIds });
}

async function one(tx: Tx, operatorId: number, id: string): Promise<Occurrence> {
  return orNotFound(
    await tx.occurrence.findUnique({ where: { operatorId_id: { operatorId, id } } }),
    'event',
  );
}

function toDto({ id, airframeId, at, evidence, voidedSeq, voidReason }: Occurrence): OccurrenceDto {
  return {
    ...{ id, airframeId, kind: 'main-base-return' as const, at: toWire(at), evidence },
    voided: voidedSeq !== null,
    voidReason,
  };
}
