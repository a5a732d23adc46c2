import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayOf, dayToWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { lockForStays } from '../../records/stays/stay-facts.js';
import type { NewRuleRevisionDto, RuleRevisionsDto } from './engine-model.dto.js';
import { cycleRuleToWire, idsInForce } from './engine-model.mapper.js';
import { refuseIdleRule } from './idle-rule.js';

/** What a change of a rule touches: engines counted from this day on. */
interface Touched {
  readonly engineModelId: string;
  readonly effectiveOn: Date | null;
}

/** Cycle rules by revision: each counts from its day on, and what ran since is counted again. */
@Injectable()
export class CycleRulesService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly clock: Clock,
  ) {}

  /** All revisions of a model's rules, the newest first. Refuses: NOT_FOUND. */
  list(actor: Actor, engineModelId: string): Promise<RuleRevisionsDto> {
    return this.database.inOperator(actor, (tx) => this.answer(tx, actor.operatorId, engineModelId));
  }

  /**
   * Records a revision. Refuses: NOT_FOUND, INVALID_FIELDS (it counts nothing), ALREADY_EXISTS (one from the same
   * day), IN_THE_FUTURE (today's clocks would count by it).
   */
  add(
    actor: Actor,
    act: ActRequest,
    engineModelId: string,
    asked: NewRuleRevisionDto,
  ): Promise<RuleRevisionsDto> {
    const { operatorId } = actor;
    refuseIdleRule(asked, 'perFlight');
    const effectiveOn = dayOf(asked.effectiveOn);
    if (effectiveOn > this.clock.now())
      refuse({ code: 'IN_THE_FUTURE', field: 'effectiveOn', at: asked.effectiveOn });
    return this.acts.perform(actor, act, async (tx) => {
      await lockModel(tx, operatorId, engineModelId);
      const airframeTypeId = asked.airframeTypeId ?? null;
      if (airframeTypeId !== null)
        orNotFound(
          await tx.airframeType.findUnique({
            where: { operatorId_id: { operatorId, id: airframeTypeId } },
            select: { id: true },
          }),
          'type of airframe',
          'airframeTypeId',
        );
      const number = await this.journal.number(tx);
      const id = newId();
      const rule = { ...asked, airframeTypeId };
      await tx.cycleRule.create({
        data: { operatorId, id, engineModelId, ...rule, effectiveOn, recordedSeq: number },
      });
      await this.countAgain(tx, operatorId, { engineModelId, effectiveOn });
      await this.journal.append(tx, actor, {
        number,
        stream: engineModelId,
        kind: 'cycle-rule-recorded',
        body: { id, ...rule },
        about: [engineModelId, id],
        key: act.key,
      });
      const body = await this.answer(tx, operatorId, engineModelId);
      return { status: 201, body, number, resource: `/api/engine-models/${engineModelId}/cycle-rules` };
    });
  }

  /** Voids a revision. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(actor: Actor, act: ActRequest, id: string, reason: string): Promise<RuleRevisionsDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const { engineModelId, effectiveOn } = orNotFound(
        await tx.cycleRule.findUnique({ where: { operatorId_id: { operatorId, id } } }),
        'cycle rule',
      );
      await lockModel(tx, operatorId, engineModelId);
      const number = await this.journal.number(tx);
      const { count } = await tx.cycleRule.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'the cycle rule' });
      await this.countAgain(tx, operatorId, { engineModelId, effectiveOn });
      await this.journal.append(tx, actor, {
        number,
        stream: engineModelId,
        kind: 'cycle-rule-voided',
        body: { id, reason },
        about: [engineModelId, id],
        key: act.key,
      });
      const body = await this.answer(tx, operatorId, engineModelId);
      return { status: 200, body, number, resource: `/api/engine-models/${engineModelId}/cycle-rules` };
    });
  }

  /** Writes again the projections of engines of the model that ran since the day, and of all that hung in them. */
  private async countAgain(
    tx: Tx,
    operatorId: number,
    { engineModelId, effectiveOn }: Touched,
  ): Promise<void> {
    const ofModel = await tx.component.findMany({
      where: { operatorId, engineModelId },
      select: { id: true },
    });
    // Whoever moves one of them meanwhile may have read the rules as they were: it is seen once it is done.
    const ids = ofModel.map(({ id }) => id);
    await lockForStays(tx, operatorId, { airframeIds: [], componentIds: ids });
    const engines = await tx.component.findMany({
      where: {
        operatorId,
        engineModelId,
        exposureByComponent: {
          some: effectiveOn === null ? {} : { OR: [{ toAt: null }, { toAt: { gt: effectiveOn } }] },
        },
      },
      select: { id: true },
    });
    await this.projections.ofComponents(
      tx,
      operatorId,
      engines.map((engine) => engine.id),
    );
  }

  private async answer(tx: Tx, operatorId: number, engineModelId: string): Promise<RuleRevisionsDto> {
    const where = { operatorId_id: { operatorId, id: engineModelId } };
    orNotFound(await tx.engineModel.findUnique({ where, select: { id: true } }), 'engine model');
    const rows = await tx.cycleRule.findMany({
      where: { operatorId, engineModelId },
      orderBy: [{ effectiveOn: { sort: 'desc', nulls: 'last' } }, { id: 'desc' }],
      include: { airframeType: { select: { maker: true, designation: true } } },
    });
    const inForce = idsInForce(rows, dayToWire(this.clock.now()));
    return {
      engineModelId,
      rows: rows.map((row) => ({
        ...cycleRuleToWire(row),
        airframeType:
          row.airframeType === null ? null : `${row.airframeType.maker} ${row.airframeType.designation}`,
        inForce: inForce.has(row.id),
        voided: row.voidedSeq !== null,
        voidReason: row.voidReason,
      })),
    };
  }
}

// Two revisions at once would each count again what the other has not yet written.
async function lockModel(tx: Tx, operatorId: number, id: string): Promise<void> {
  const [row] = await tx.$queryRaw<{ id: string }[]>`
    SELECT id FROM engine_model WHERE operator_id = ${operatorId}::int AND id = ${id}::uuid FOR NO KEY UPDATE`;
  orNotFound(row, 'engine model');
}
