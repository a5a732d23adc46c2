import { Injectable } from '@nestjs/common';
import type { Life, LifeMethod, TraceAcceptance, TraceGap } from '@strutbook/domain/life/life.js';
import { lifeOf } from '@strutbook/domain/life/limited-life.js';
import { limitsInForce } from '@strutbook/domain/life/limits-in-force.js';
import { limitAt } from '@strutbook/domain/life/substantiation.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { Clock } from '../../platform/time/clock.js';
import { Structure } from '../stays/structure.js';
import type { FilledSlot } from '../stays/structure.sql.js';
import { groupRows } from '../usage/group-rows.js';
import { Use, type Uses } from '../usage/use.js';
import type { RecordedAcceptance } from '../usage/use-facts.js';
import type { HangingFacts } from './hanging-facts.js';
import { loadLifeLimits, type RecordedLimit } from './life-limits.js';
import { ratingsAt } from './ratings.js';

/** A limited part with its life, and what it was judged by. */
export interface PartInLife {
  readonly componentId: string;
  readonly engineId: string | null;
  readonly modelId: string | null;
  readonly ratingId: string | null;
  readonly life: Life;
  /** The row of the limit that counts now; null when none is recorded. */
  readonly limit: RecordedLimit | null;
}

interface LimitedPart {
  readonly id: string;
  readonly partNumber: string;
  readonly engineModelId: string | null;
}

interface Context {
  readonly at: Date | null;
  readonly uses: Uses;
  readonly engineOf: ReadonlyMap<string, string>;
  readonly modelOf: ReadonlyMap<string, string | null>;
  readonly methodOf: ReadonlyMap<string, LifeMethod>;
  readonly ratingOf: ReadonlyMap<string, string>;
  /** The limits in force then for a part number in a model. */
  readonly limitsOf: (partNumber: string, modelId: string) => readonly RecordedLimit[];
}

/** The lives of limited parts, from the records as they stand. */
@Injectable()
export class Lives {
  constructor(
    private readonly use: Use,
    private readonly structure: Structure,
    private readonly clock: Clock,
  ) {}

  /**
   * The life of each limited part among these components, now (null) or at an instant.
   *
   * A part is judged by the model of the engine it is in, at the rating that engine runs at; one in no engine by
   * the model it is recorded for, at the rating it last ran at.
   */
  async of(
    tx: Tx,
    operatorId: number,
    componentIds: readonly string[],
    at: Date | null,
  ): Promise<ReadonlyMap<string, PartInLife>> {
    const parts = await tx.component.findMany({
      where: { operatorId, id: { in: [...componentIds] }, lifeLimited: true },
      select: { id: true, partNumber: true, engineModelId: true },
    });
    const ids = parts.map((part) => part.id);
    const engineOf = await this.structure.engineOf(tx, operatorId, ids, at);
    const engineIds = [...new Set(engineOf.values())];
    const engines = await tx.component.findMany({
      where: { operatorId, id: { in: engineIds } },
      select: { id: true, engineModelId: true },
    });
    const models = await tx.engineModel.findMany({
      where: { operatorId },
      select: { id: true, lifeMethod: true },
    });
    const uses = await this.use.of(
      tx,
      operatorId,
      ids.map((componentId) => ({ componentId, at })),
    );
    const partNumbers = parts.map((part) => part.partNumber);
    return this.judged(parts, {
      at,
      limits: await loadLifeLimits(tx, operatorId, partNumbers),
      uses,
      engineOf,
      modelOf: new Map(engines.map((engine) => [engine.id, engine.engineModelId])),
      methodOf: new Map(models.map((model) => [model.id, methodOf(model.lifeMethod)])),
      ratingOf: await ratingsAt(tx, operatorId, engineIds, at),
    });
  }

  /** The same of the limited parts beneath components of which all was read already. Total. */
  ofHanging({
    at,
    slots,
    heads,
    uses,
    limits,
    methods,
    ...facts
  }: HangingFacts): ReadonlyMap<string, PartInLife> {
    const engineOf = enginesBeneath(slots, facts.engineOf);
    const parts = slots.flatMap(({ componentId, part }) =>
      componentId === null || part?.lifeLimited !== true ? [] : [{ id: componentId, ...part }],
    );
    const engines = [...heads.values()];
    return this.judged(parts, {
      ...{ at, uses, engineOf, limits },
      modelOf: new Map(engines.map(({ id, engineModelId }) => [id, engineModelId])),
      methodOf: new Map([...methods].map(([id, method]) => [id, methodOf(method)])),
      ratingOf: new Map(engines.flatMap(({ id, ratingId }) => (ratingId === null ? [] : [[id, ratingId]]))),
    });
  }

  private judged(
    parts: readonly LimitedPart[],
    { limits, ...rest }: Omit<Context, 'limitsOf'> & { readonly limits: readonly RecordedLimit[] },
  ): ReadonlyMap<string, PartInLife> {
    const then = toInstant(rest.at ?? this.clock.now());
    const context: Context = { ...rest, limitsOf: limitsOf(limits, then) };
    return new Map(parts.map((part) => [part.id, judge(part, context)]));
  }
}

/** The engine each component beneath is in: the nearest above it, itself when it is one. */
function enginesBeneath(
  slots: readonly FilledSlot[],
  engineOf: ReadonlyMap<string, string>,
): ReadonlyMap<string, string> {
  const found = new Map(engineOf);
  for (const { parentId, componentId, part } of slots) {
    if (componentId === null) continue;
    const engine = part?.kind === 'engine' ? componentId : found.get(parentId);
    if (engine !== undefined) found.set(componentId, engine);
  }
  return found;
}

/** Limits in force at an instant, each asked once: the engines of an airframe hold parts of the same numbers. */
function limitsOf(limits: readonly RecordedLimit[], at: Instant): Context['limitsOf'] {
  const byPartNumber = groupRows(limits, (limit) => limit.partNumber);
  const found = new Map<string, readonly RecordedLimit[]>();
  return (partNumber, modelId) => {
    const key = `${modelId} ${partNumber}`;
    const known =
      found.get(key) ?? limitsInForce(byPartNumber.get(partNumber) ?? [], { partNumber, modelId, at });
    found.set(key, known);
    return known;
  };
}

function methodOf(text: string | null): LifeMethod {
  return text === 'lowest-limit' ? 'lowest-limit' : 'pro-rata';
}

function judge(part: LimitedPart, context: Context): PartInLife {
  const { at, uses } = context;
  const engineId = context.engineOf.get(part.id) ?? null;
  const modelId = engineId === null ? part.engineModelId : (context.modelOf.get(engineId) ?? null);
  const lastRun = uses.exposuresOf(part.id).findLast((row) => at === null || row.fromAt <= at);
  const ratingId = engineId === null ? (lastRun?.ratingId ?? null) : (context.ratingOf.get(engineId) ?? null);
  const limits = modelId === null ? [] : context.limitsOf(part.partNumber, modelId);
  const life = lifeOf({
    used: uses.totalsAt({ componentId: part.id, at }).byRating,
    limits,
    method: (modelId === null ? undefined : context.methodOf.get(modelId)) ?? 'pro-rata',
    ratingNow: ratingId,
    traceGaps: gapsOf(part.id, context),
    acceptance: acceptanceOf(part.id, uses),
  });
  const limit = limitAt(limits, ratingId);
  return {
    componentId: part.id,
    engineId,
    modelId,
    ratingId,
    life,
    limit: limits.find((row) => row === limit) ?? null,
  };
}

function gapsOf(componentId: string, { at, uses: { facts } }: Context): TraceGap[] {
  return facts.gaps
    .filter((gap) => gap.componentId === componentId && (at === null || gap.fromAt < at))
    .map((gap) => {
      const own = facts.acceptances.filter((row) => row.traceGapId === gap.id).at(-1);
      return { id: gap.id, description: gap.note, acceptance: own === undefined ? null : asAcceptance(own) };
    });
}

/** The acceptance that names no gap: it stands for an unknown rating, and for all gaps without their own. */
function acceptanceOf(componentId: string, { facts }: Uses): TraceAcceptance | null {
  const whole = facts.acceptances
    .filter((row) => row.componentId === componentId && row.traceGapId === null)
    .at(-1);
  return whole === undefined ? null : asAcceptance(whole);
}

function asAcceptance({ by, reference, cycles, minutes }: RecordedAcceptance): TraceAcceptance {
  return { by, reference, worstCaseCycles: cycles, worstCaseMinutes: minutes };
}
