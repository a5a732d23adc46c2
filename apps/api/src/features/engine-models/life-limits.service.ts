import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayOf } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { DuePoints } from '../../records/due-points/due-points.js';
import { Journal } from '../../records/journal/journal.js';
import { lifeLimitToWire } from './engine-model.mapper.js';
import type { LifeLimitDto, LifeLimitsQueryDto, NewLifeLimitDto } from './life-limit.dto.js';

const WITH_NAMES = {
  rating: { select: { code: true } },
  engineModel: { select: { maker: true, designation: true } },
} as const;

/** Life limits, and what falls due by them. */
@Injectable()
export class LifeLimitsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly duePoints: DuePoints,
  ) {}

  /** Limits by part number, the newest revision first. */
  list(actor: Actor, { partNumber, engineModelId }: LifeLimitsQueryDto): Promise<LifeLimitDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const rows = await tx.lifeLimit.findMany({
        where: {
          operatorId,
          ...(partNumber === undefined ? {} : { partNumber }),
          ...(engineModelId === undefined ? {} : { engineModelId }),
        },
        include: WITH_NAMES,
        orderBy: [{ partNumber: 'asc' }, { effectiveOn: 'desc' }, { id: 'asc' }],
      });
      return rows.map(lifeLimitToWire);
    });
  }

  /** Records a limit; what falls due by it is computed again. Refuses: NOT_FOUND, ALREADY_EXISTS, INVALID_FIELDS. */
  add(actor: Actor, act: ActRequest, asked: NewLifeLimitDto): Promise<LifeLimitDto> {
    const { operatorId } = actor;
    refuseAmounts(asked);
    return this.acts.perform(actor, act, async (tx) => {
      const { partNumber, engineModelId, authorisation, document, revision } = asked;
      const model = await lockModel(tx, operatorId, engineModelId);
      const ratingId = await ratingOf(tx, operatorId, asked);
      const same = await tx.lifeLimit.findFirst({
        where: { operatorId, partNumber, engineModelId, ratingId, document, revision, voidedSeq: null },
        select: { id: true },
      });
      if (same !== null)
        refuse({
          code: 'ALREADY_EXISTS',
          what: `a limit of ${partNumber} at this rating in ${document}, revision`,
          field: 'revision',
          value: revision,
        });
      const number = await this.journal.number(tx);
      const id = newId();
      const limit = {
        partNumber,
        ratingId,
        authorisation,
        cycles: asked.cycles ?? null,
        minutes: asked.minutes ?? null,
        document,
        revision,
      };
      const effectiveOn = dayOf(asked.effectiveOn);
      await tx.lifeLimit.create({
        data: { operatorId, id, engineModelId, ...limit, effectiveOn, recordedSeq: number },
      });
      await this.duePoints.rebuild(tx, operatorId, await withPartNumber(tx, operatorId, partNumber));
      await this.journal.append(tx, actor, {
        number,
        stream: engineModelId,
        kind: 'life-limit-recorded',
        body: { id, model, ...limit, ratingCode: asked.ratingCode ?? null, effectiveOn: asked.effectiveOn },
        about: [engineModelId, id],
        key: act.key,
      });
      return {
        status: 201,
        body: await read(tx, operatorId, id),
        number,
        resource: `/api/life-limits/${id}`,
      };
    });
  }

  /** Voids a limit with its reason. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<LifeLimitDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const found = orNotFound(
        await tx.lifeLimit.findUnique({ where: { operatorId_id: { operatorId, id } } }),
        'life limit',
      );
      await lockModel(tx, operatorId, found.engineModelId);
      const number = await this.journal.number(tx);
      const { count } = await tx.lifeLimit.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the life limit' });
      await this.duePoints.rebuild(tx, operatorId, await withPartNumber(tx, operatorId, found.partNumber));
      await this.journal.append(tx, actor, {
        number,
        stream: found.engineModelId,
        kind: 'life-limit-voided',
        body: { id, partNumber: found.partNumber, reason },
        about: [found.engineModelId, id],
        key: act.key,
      });
      return {
        status: 200,
        body: await read(tx, operatorId, id),
        number,
        resource: `/api/life-limits/${id}`,
      };
    });
  }
}

function refuseAmounts({ authorisation, cycles, minutes }: NewLifeLimitDto): void {
  const given = cycles != null || minutes != null;
  if ((authorisation === 'limited') === given) return;
  const field = authorisation === 'limited' ? 'cycles' : cycles == null ? 'minutes' : 'cycles';
  const fault =
    authorisation === 'limited'
      ? {
          reason: 'A limited part has a limit in cycles, in hours or in both.',
          fix: 'Enter cycles, minutes or both.',
        }
      : { reason: 'Only a limited part has a limit.', fix: "Leave it empty, or choose 'limited'." };
  refuse({ code: 'INVALID_FIELDS', fields: [{ field, ...fault }] });
}

// Two rows of one revision at once would miss each other in the check for the same one.
async function lockModel(tx: Tx, operatorId: number, id: string): Promise<string> {
  const [row] = await tx.$queryRaw<{ designation: string }[]>`
    SELECT designation FROM engine_model WHERE operator_id = ${operatorId}::int AND id = ${id}::uuid FOR NO KEY UPDATE`;
  if (row === undefined) refuse({ code: 'NOT_FOUND', what: 'engine model', field: 'engineModelId' });
  return row.designation;
}

async function ratingOf(
  tx: Tx,
  operatorId: number,
  { engineModelId, ratingCode }: NewLifeLimitDto,
): Promise<string | null> {
  if (ratingCode == null) return null;
  const rating = await tx.rating.findFirst({
    where: { operatorId, engineModelId, code: ratingCode },
    select: { id: true },
  });
  return orNotFound(rating, 'rating of this model', 'ratingCode').id;
}

async function withPartNumber(tx: Tx, operatorId: number, partNumber: string): Promise<string[]> {
  const rows = await tx.component.findMany({ where: { operatorId, partNumber }, select: { id: true } });
  return rows.map((row) => row.id);
}

async function read(tx: Tx, operatorId: number, id: string): Promise<LifeLimitDto> {
  const row = await tx.lifeLimit.findUnique({
    where: { operatorId_id: { operatorId, id } },
    include: WITH_NAMES,
  });
  return lifeLimitToWire(orNotFound(row, 'life limit'));
}
