import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import type { LifeLimitDto, LifeLimitsQueryDto, NewLifeLimitDto } from './life-limit.dto.js';
import { lifeLimitToWire } from './life-limit.mapper.js';
import { findRows, readLimits, recordRows, WITH_NAMES } from './limit-rows.js';
import { refuseUnfit } from './limit-rules.js';
import { standingsOf } from './limit-standing.js';
import { LimitsInEffect } from './limits-in-effect.js';

/** Life limits, and what falls due by them. */
@Injectable()
export class LifeLimitsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly effect: LimitsInEffect,
    private readonly clock: Clock,
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
      const standing = await standingsOf(
        tx,
        operatorId,
        rows.map((row) => row.partNumber),
        this.clock.now(),
      );
      return rows.map((row) => lifeLimitToWire(row, standing));
    });
  }

  /** Records a limit; what falls due by it is computed again. Refuses: NOT_FOUND, ALREADY_EXISTS, INVALID_FIELDS. */
  add(actor: Actor, act: ActRequest, asked: NewLifeLimitDto): Promise<LifeLimitDto> {
    const { operatorId } = actor;
    const { document, revision, effectiveOn, basis = 'manual' } = asked;
    refuseUnfit(basis, [asked], () => '');
    return this.acts.perform(actor, act, async (tx) => {
      const from = { basis, document, revision, effectiveOn };
      const rows = await findRows(
        tx,
        operatorId,
        { ...from, rows: [asked] },
        { lock: true, placeOf: () => '' },
      );
      const number = await this.journal.number(tx);
      await recordRows(tx, operatorId, rows, { ...from, number });
      await this.effect.changed(tx, actor, { partNumbers: [asked.partNumber], effectiveOn });
      const [body] = await readLimits(
        tx,
        operatorId,
        rows.map((row) => row.id),
        this.clock.now(),
      );
      if (body === undefined) throw new Error('a limit was recorded and is not there');
      const { id, engineModelId } = body;
      const entry = rows.map(({ engineModelId: _model, ...row }) => ({ ...row, ...from }))[0] ?? {};
      await this.journal.append(tx, actor, {
        number,
        stream: engineModelId,
        kind: 'life-limit-recorded',
        body: entry,
        about: [engineModelId, id],
        key: act.key,
      });
      return { status: 201, body, number, resource: `/api/life-limits/${id}` };
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
      await this.effect.writeAgain(tx, operatorId, [found.partNumber]);
      await this.journal.append(tx, actor, {
        number,
        stream: found.engineModelId,
        kind: 'life-limit-voided',
        body: { id, partNumber: found.partNumber, reason },
        about: [found.engineModelId, id],
        key: act.key,
      });
      const [body] = await readLimits(tx, operatorId, [id], this.clock.now());
      return {
        status: 200,
        body: orNotFound(body, 'life limit'),
        number,
        resource: `/api/life-limits/${id}`,
      };
    });
  }
}

async function lockModel(tx: Tx, operatorId: number, id: string): Promise<void> {
  await tx.$queryRaw`
    SELECT id FROM engine_model WHERE operator_id = ${operatorId}::int AND id = ${id}::uuid FOR NO KEY UPDATE`;
}
