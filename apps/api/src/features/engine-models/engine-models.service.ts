import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayToWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import type { EngineModelDto, NewEngineModelDto } from './engine-model.dto.js';
import { engineModelToWire } from './engine-model.mapper.js';
import { refuseIdleRule } from './idle-rule.js';

const WITH_RULES = {
  ratingByEngineModel: { orderBy: { code: 'asc' } },
  cycleRuleByEngineModel: { where: { voidedSeq: null }, orderBy: { id: 'asc' } },
} as const;

/** Models of engine, with their ratings and cycle rules. */
@Injectable()
export class EngineModelsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly clock: Clock,
  ) {}

  private today(): string {
    return dayToWire(this.clock.now());
  }

  /** All models, by maker and designation. */
  list(actor: Actor): Promise<EngineModelDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const orderBy = [{ maker: 'asc' as const }, { designation: 'asc' as const }];
      const rows = await tx.engineModel.findMany({ where: { operatorId }, include: WITH_RULES, orderBy });
      return rows.map((row) => engineModelToWire(row, this.today()));
    });
  }

  /** Adds a model with its ratings and cycle rules. Refuses: ALREADY_EXISTS, NOT_FOUND (airframe type), INVALID_FIELDS. */
  add(actor: Actor, act: ActRequest, asked: NewEngineModelDto): Promise<EngineModelDto> {
    const { operatorId } = actor;
    refuseTwice(asked);
    return this.acts.perform(actor, act, async (tx) => {
      const { kind, maker, designation, lifeMethod, lifeSource } = asked;
      const same = await tx.engineModel.findFirst({
        where: { operatorId, maker, designation },
        select: { id: true },
      });
      if (same !== null)
        refuse({
          code: 'ALREADY_EXISTS',
          what: 'a model of this maker called',
          field: 'designation',
          value: designation,
        });
      await refuseUnknownTypes(tx, operatorId, asked);
      const number = await this.journal.number(tx);
      const id = newId();
      const ratings = asked.ratings.map(({ code, description }) => ({
        id: newId(),
        code,
        description: description ?? null,
      }));
      const cycleRules = asked.cycleRules.map((rule) => ({
        id: newId(),
        ...rule,
        airframeTypeId: rule.airframeTypeId ?? null,
      }));
      await tx.engineModel.create({
        data: { operatorId, id, kind, maker, designation, lifeMethod, lifeSource },
      });
      await tx.rating.createMany({
        data: ratings.map((rating) => ({ operatorId, engineModelId: id, ...rating })),
      });
      await tx.cycleRule.createMany({
        data: cycleRules.map((rule) => ({ operatorId, engineModelId: id, recordedSeq: number, ...rule })),
      });
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'engine-model-added',
        body: { kind, maker, designation, lifeMethod, lifeSource, ratings, cycleRules },
        about: [id],
        key: act.key,
      });
      const row = await tx.engineModel.findUnique({
        where: { operatorId_id: { operatorId, id } },
        include: WITH_RULES,
      });
      return {
        status: 201,
        body: engineModelToWire(orNotFound(row, 'engine model'), this.today()),
        version: 1,
        number,
        resource: `/api/engine-models/${id}`,
      };
    });
  }
}

function refuseTwice({ ratings, cycleRules }: NewEngineModelDto): void {
  const codes = ratings.map((rating) => rating.code);
  const twice = codes.findIndex((code, index) => codes.indexOf(code) !== index);
  if (twice !== -1) {
    const reason = `The rating ${codes[twice]} is named twice.`;
    refuse({
      code: 'INVALID_FIELDS',
      fields: [{ field: `ratings[${twice}].code`, reason, fix: 'Name each rating once.' }],
    });
  }
  const types = cycleRules.map((rule) => rule.airframeTypeId ?? null);
  const again = types.findIndex((type, index) => types.indexOf(type) !== index);
  if (again !== -1) {
    const reason = 'There are two rules for the same type of airframe.';
    refuse({
      code: 'INVALID_FIELDS',
      fields: [{ field: `cycleRules[${again}].airframeTypeId`, reason, fix: 'Give one rule a type.' }],
    });
  }
  for (const [index, rule] of cycleRules.entries()) refuseIdleRule(rule, `cycleRules[${index}].perFlight`);
}

async function refuseUnknownTypes(
  tx: Tx,
  operatorId: number,
  { cycleRules }: NewEngineModelDto,
): Promise<void> {
  const ids = cycleRules.flatMap((rule) => rule.airframeTypeId ?? []);
  const known = await tx.airframeType.findMany({
    where: { operatorId, id: { in: ids } },
    select: { id: true },
  });
  const unknown = cycleRules.findIndex(
    ({ airframeTypeId }) => airframeTypeId != null && !known.some(({ id }) => id === airframeTypeId),
  );
  if (unknown !== -1)
    refuse({ code: 'NOT_FOUND', what: 'type of airframe', field: `cycleRules[${unknown}].airframeTypeId` });
}
