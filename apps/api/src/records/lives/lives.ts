import { Injectable } from '@nestjs/common';
import type { LifeDays } from '@strutbook/domain/life/calendar-life.js';
import type { Life, LifeMethod, TraceAcceptance, TraceGap } from '@strutbook/domain/life/life.js';
import { lifeOf } from '@strutbook/domain/life/limited-life.js';
import { type LimitInForce, limitsInForce } from '@strutbook/domain/life/limits-in-force.js';
import { limitAt } from '@strutbook/domain/life/substantiation.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { CycleRule } from '@strutbook/domain/usage/cycle-rule.js';
import type { RatingTotal } from '@strutbook/domain/usage/totals.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { Clock } from '../../platform/time/clock.js';
import { Structure } from '../stays/structure.js';
import type { FilledSlot } from '../stays/structure.sql.js';
import { groupRows } from '../usage/group-rows.js';
import { Use, type Uses } from '../usage/use.js';
import type { RecordedAcceptance, RecordedGap } from '../usage/use-facts.js';
import type { HangingFacts } from './hanging-facts.js';
import { type DayFacts, lifeDays, loadDayFacts } from './life-days.js';
import { loadLifeLimits, type RecordedLimit } from './life-limits.js';
import { ratingsAt } from './ratings.js';

/** A limited part with its life, and what it was judged by. */
export interface PartInLife {
  readonly componentId: string;
  readonly engineId: string | null;
  readonly modelId: string | null;
  readonly ratingId: string | null;
  readonly life: Life;
  /** The limit that counts now, with the rows that govern it; null when none is recorded. */
  readonly limit: LimitInForce<RecordedLimit> | null;
  /** The limits in force at every rating. */
  readonly limits: readonly LimitInForce<RecordedLimit>[];
  /** What was used at each rating since new, gaps left aside. */
  readonly usedAt: readonly RatingTotal[];
  /** The days its calendar lives count from; null where it has none. */
  readonly days: LifeDays | null;
  /** The clock it runs by; null where it hangs on none. */
  readonly running: { readonly carrierId: string; readonly rule: CycleRule | undefined } | null;
  readonly gaps: readonly RecordedGap[];
  readonly acceptances: readonly RecordedAcceptance[];
}

/** Other limits than those recorded, or those in force at another instant, to see what they would change. */
export interface OtherLimits {
  readonly proposed: readonly RecordedLimit[];
  /** As of when limits are in force; use is counted as of the instant asked. */
  readonly inForceAt: Date;
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
  readonly limitsOf: (partNumber: string, modelId: string) => readonly LimitInForce<RecordedLimit>[];
  readonly daysOf: ReadonlyMap<string, LifeDays>;
}

type Given = Omit<Context, 'limitsOf' | 'daysOf'> & {
  readonly limits: readonly RecordedLimit[];
  readonly inForceAt?: Date | undefined;
  readonly dayFacts: readonly DayFacts[];
};

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
   * the model it is recorded for, at the rating it last ran at. By `other` limits nothing is recorded.
   */
  async of(
    tx: Tx,
    operatorId: number,
    componentIds: readonly string[],
    at: Date | null,
    other?: OtherLimits,
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
      limits: [...(await loadLifeLimits(tx, operatorId, partNumbers)), ...(other?.proposed ?? [])],
      inForceAt: other?.inForceAt,
      dayFacts: await loadDayFacts(tx, operatorId, { componentIds: ids, at, withDays: other !== undefined }),
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
    dayFacts,
    methods,
    ...facts
  }: HangingFacts): ReadonlyMap<string, PartInLife> {
    const engineOf = enginesBeneath(slots, facts.engineOf);
    const parts = slots.flatMap(({ componentId, part }) =>
      componentId === null || part?.lifeLimited !== true ? [] : [{ id: componentId, ...part }],
    );
    const engines = [...heads.values()];
    return this.judged(parts, {
      ...{ at, uses, engineOf, limits, dayFacts },
      modelOf: new Map(engines.map(({ id, engineModelId }) => [id, engineModelId])),
      methodOf: new Map([...methods].map(([id, method]) => [id, methodOf(method)])),
      ratingOf: new Map(engines.flatMap(({ id, ratingId }) => (ratingId === null ? [] : [[id, ratingId]]))),
    });
  }

  private judged(
    parts: readonly LimitedPart[],
    { limits, inForceAt, dayFacts, ...rest }: Given,
  ): ReadonlyMap<string, PartInLife> {
    const now = rest.at ?? this.clock.now();
    const context: Context = {
      ...rest,
      limitsOf: limitsOf(limits, toInstant(inForceAt ?? now)),
      daysOf: new Map(dayFacts.map((facts) => [facts.componentId, lifeDays(facts, now)])),
    };
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
  const found = new Map<string, readonly LimitInForce<RecordedLimit>[]>();
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
  const usedAt = uses.totalsAt({ componentId: part.id, at }).byRating;
  const days = context.daysOf.get(part.id);
  const life = lifeOf({
    used: usedAt,
    limits,
    method: (modelId === null ? undefined : context.methodOf.get(modelId)) ?? 'pro-rata',
    ratingNow: ratingId,
    traceGaps: gapsOf(part.id, context),
    acceptance: acceptanceOf(part.id, uses),
    ...(days === undefined ? {} : { days }),
  });
  const limit = limitAt(limits, ratingId);
  return {
    componentId: part.id,
    engineId,
    modelId,
    ratingId,
    life,
    limit: limits.find((row) => row === limit) ?? null,
    limits,
    usedAt,
    days: days ?? null,
    running: runningAt(part.id, at, uses),
    gaps: recordedGaps(part.id, context),
    acceptances: uses.facts.acceptances.filter((row) => row.componentId === part.id),
  };
}

function runningAt(
  componentId: string,
  at: Date | null,
  { exposuresOf, facts }: Uses,
): PartInLife['running'] {
  const found = exposuresOf(componentId).find(({ fromAt, toAt }) =>
    at === null ? toAt === null : fromAt <= at && (toAt === null || toAt > at),
  );
  if (found === undefined) return null;
  const { carrierId, cycleRuleId } = found;
  return { carrierId, rule: cycleRuleId === null ? undefined : facts.cycleRules.get(cycleRuleId) };
}

function recordedGaps(componentId: string, { at, uses: { facts } }: Context): RecordedGap[] {
  return facts.gaps.filter((gap) => gap.componentId === componentId && (at === null || gap.fromAt < at));
}

function gapsOf(componentId: string, context: Context): TraceGap[] {
  const { facts } = context.uses;
  return recordedGaps(componentId, context).map((gap) => {
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
