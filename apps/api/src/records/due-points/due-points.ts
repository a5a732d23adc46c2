import { Injectable } from '@nestjs/common';
import { duePoint } from '@strutbook/domain/due/due-point.js';
import type { Life, UnsubstantiatedReason } from '@strutbook/domain/life/life.js';
import { fraction } from '@strutbook/domain/units/fraction.js';
import type { Counts } from '@strutbook/domain/usage/counts.js';
import { cycleUnits } from '@strutbook/domain/usage/cycle-rule.js';
import type { Tx } from '../../platform/database/database.js';
import { dayFromWire } from '../../platform/http/instants.js';
import { Lives, type PartInLife } from '../lives/lives.js';
import { RequirementPoints } from '../requirements/requirement-points.js';
import { holdRequirements, scopeOfCodes, shareRequirements } from '../requirements/requirement-scope.js';
import { type ClockReadings, readClocks } from '../usage/clock-readings.js';
import { Counters } from '../usage/counters.js';
import { lockRunning } from '../usage/lock-running.js';
import { Use, type Uses } from '../usage/use.js';
import type { StoredExposure } from '../usage/use-facts.js';
import type { DuePointRow } from './due-point-row.js';
import { keepLateFrom } from './late-from.js';
import { writeDifference } from './write-difference.js';

/** Due points in the carrier's clock: constant while nothing but flying happens, so 'remaining' is never stored. */
@Injectable()
export class DuePoints {
  constructor(
    private readonly lives: Lives,
    private readonly use: Use,
    private readonly counters: Counters,
    private readonly requirements: RequirementPoints,
  ) {}

  /** Writes again the due points of exactly these components, and of these airframes and their positions. */
  async rebuild(
    tx: Tx,
    operatorId: number,
    componentIds: readonly string[],
    airframeIds: readonly string[] = [],
  ): Promise<void> {
    await lockRunning(tx, operatorId, componentIds, airframeIds);
    await shareRequirements(tx, operatorId);
    const rows = await this.fromFacts(tx, operatorId, componentIds, airframeIds);
    const ofAirframes =
      airframeIds.length === 0
        ? []
        : [
            { airframeId: { in: [...airframeIds] } },
            { position: { is: { operatorId, airframeId: { in: [...airframeIds] } } } },
          ];
    await writeDifference(
      tx,
      operatorId,
      { operatorId, OR: [{ componentId: { in: [...componentIds] } }, ...ofAirframes] },
      withIsOneOf(rows),
    );
    await keepLateFrom(tx, operatorId, componentIds, airframeIds);
  }

  /** Writes again the due points of the requirements of these codes, whatever they are for. */
  async rebuildCodes(tx: Tx, operatorId: number, codes: readonly string[]): Promise<void> {
    const known = await scopeOfCodes(tx, operatorId, codes);
    await lockRunning(tx, operatorId, known.componentIds, known.airframeIds);
    await holdRequirements(tx, operatorId);
    // What was entered meanwhile is seen from here on, and no due point of it is written by anyone else.
    const scope = await scopeOfCodes(tx, operatorId, codes);
    const rows = await this.requirements.fromFacts(tx, operatorId, scope, codes);
    const where = { operatorId, requirement: { is: { operatorId, code: { in: [...codes] } } } };
    await writeDifference(tx, operatorId, where, withIsOneOf(rows));
    await keepLateFrom(tx, operatorId, scope.componentIds, scope.airframeIds);
  }

  /** The due points as the records say they are now, nothing written. */
  async fromFacts(
    tx: Tx,
    operatorId: number,
    componentIds: readonly string[],
    airframeIds: readonly string[] = [],
  ): Promise<DuePointRow[]> {
    return [
      ...(await this.ofLives(tx, operatorId, componentIds)),
      ...(await this.requirements.fromFacts(tx, operatorId, { componentIds, airframeIds })),
    ];
  }

  /** What life limits and unknown counters say of these components. */
  private async ofLives(tx: Tx, operatorId: number, componentIds: readonly string[]): Promise<DuePointRow[]> {
    const parts = await this.lives.of(tx, operatorId, componentIds, null);
    const engines = await tx.component.findMany({
      where: { operatorId, id: { in: [...componentIds] }, kind: { in: ['engine', 'apu'] } },
      select: { id: true },
    });
    const engineIds = engines.map((engine) => engine.id);
    const uses = await this.use.of(
      tx,
      operatorId,
      [...parts.keys(), ...engineIds].map((componentId) => ({ componentId, at: null })),
    );
    const carriers = [...parts.keys()].flatMap((id) => uses.running(id)?.carrierId ?? []);
    const reading = await readClocks(
      tx,
      operatorId,
      carriers.map((carrierId) => ({ carrierId, at: null })),
    );
    const limited = [...parts.values()].flatMap((part) => rowsOf(part, uses, reading));
    return [...limited, ...(await this.unknownCounters(tx, operatorId, engineIds, uses))];
  }

  /**
   * An engine or auxiliary power unit whose own hours or cycles are not known says so on every list of what is due; and so does one that
   * runs without a cycle rule, for with its next flight they are not.
   */
  private async unknownCounters(
    tx: Tx,
    operatorId: number,
    engineIds: readonly string[],
    uses: Uses,
  ): Promise<DuePointRow[]> {
    const counters = await this.counters.of(tx, operatorId, engineIds, null);
    return engineIds.flatMap((id) => {
      const known = counters.get(id)?.sinceNew;
      const isKnown = known !== undefined && known.minutes !== null && known.cycles !== null;
      if (isKnown && !runsWithoutRule(id, uses)) return [];
      return {
        ...NOTHING_DUE,
        componentId: id,
        engineId: id,
        kind: 'counters' as const,
        reason: 'COUNTERS_UNKNOWN',
      };
    });
  }
}

function withIsOneOf(rows: readonly DuePointRow[]): (DuePointRow & { readonly isOneOf: boolean })[] {
  const dimensionsOf = new Map<string, number>();
  const lifeOf = ({ kind, componentId }: DuePointRow) => (kind === 'life-limit' ? componentId : null);
  for (const row of rows) {
    const of = lifeOf(row);
    if (of !== null) dimensionsOf.set(of, (dimensionsOf.get(of) ?? 0) + 1);
  }
  const isOneOf = (row: DuePointRow) => (dimensionsOf.get(lifeOf(row) ?? '') ?? 0) > 1;
  return rows.map((row) => ({ isOneOf: isOneOf(row), ...row }));
}

/** Whether its clock runs and no rule says what a cycle is there. */
function runsWithoutRule(componentId: string, uses: Uses): boolean {
  return uses.running(componentId)?.cycleRuleId === null;
}

const NOTHING_DUE = {
  airframeId: null,
  positionId: null,
  requirementId: null,
  span: null,
  dueOn: null,
  latestAt: null,
  latestOn: null,
  bound: false,
  carrierId: null,
  verdict: 'not-verified',
  dimension: 'none',
  cycleRuleId: null,
  lifeLimitId: null,
  dueAt: null,
  flagged: false,
} as const;

/** Without a rule cycles are known until the first flight alone: the reasons must not change by flying. */
function lastingReasons(reasons: readonly UnsubstantiatedReason[], isUncounted: boolean): string {
  const codes = reasons.map((reason): string => reason.code);
  return (isUncounted ? [...codes.filter((code) => code !== 'CYCLES_UNKNOWN'), 'NO_CYCLE_RULE'] : codes).join(
    ' ',
  );
}

function rowsOf(
  { componentId, engineId, life, limit }: PartInLife,
  uses: Uses,
  reading: ClockReadings,
): DuePointRow[] {
  const base = {
    ...NOTHING_DUE,
    componentId,
    engineId,
    kind: 'life-limit' as const,
    lifeLimitId: limit?.governs.authorisation.id ?? null,
  };
  if (life.kind === 'not-limited') return [];
  if (life.kind === 'not-authorised')
    return [{ ...base, verdict: 'not-authorised', reason: 'NOT_AUTHORISED' }];
  const isUncounted = runsWithoutRule(componentId, uses);
  if (life.kind === 'unsubstantiated')
    return [{ ...base, reason: lastingReasons(life.reasons, isUncounted) }];
  // A clock without a rule counts no cycles: it would never come nearer to the limit, whatever is flown.
  if (isUncounted && life.remainingExact !== null) return [{ ...base, reason: 'NO_CYCLE_RULE' }];
  return limitedRows(base, { life, limit }, { running: uses.running(componentId), uses, reading });
}

/** Where on its clock a life runs out, in each dimension that is limited. */
function limitedRows(
  base: Pick<DuePointRow, 'componentId' | 'engineId' | 'lifeLimitId'>,
  { life, limit }: { readonly life: Extract<Life, { kind: 'limited' }>; readonly limit: PartInLife['limit'] },
  { running, uses, reading }: { running: StoredExposure | null; uses: Uses; reading: ClockReadings },
): DuePointRow[] {
  // Off the wing it hangs on no carrier: a clock that stands still at zero.
  const clock: Counts | null = running === null ? null : reading({ carrierId: running.carrierId, at: null });
  const rule = running?.cycleRuleId == null ? undefined : uses.facts.cycleRules.get(running.cycleRuleId);
  const due = {
    ...NOTHING_DUE,
    ...base,
    kind: 'life-limit' as const,
    verdict: 'limited' as const,
    flagged: life.flagged,
    reason: null,
    carrierId: running?.carrierId ?? null,
  };
  const rows: DuePointRow[] = [];
  if (life.remainingExact !== null)
    rows.push({
      ...due,
      dimension: 'cycles',
      lifeLimitId: limit?.governs.cycles?.id ?? base.lifeLimitId,
      cycleRuleId: rule?.id ?? null,
      dueAt: duePoint({
        remainingExact: life.remainingExact,
        reading: clock === null || rule === undefined ? 0 : cycleUnits(clock, rule),
        denominator: rule?.denominator ?? 1,
      }),
    });
  if (life.remainingMinutes !== null)
    rows.push({
      ...due,
      dimension: 'minutes',
      lifeLimitId: limit?.governs.minutes?.id ?? base.lifeLimitId,
      dueAt: duePoint({
        remainingExact: fraction(life.remainingMinutes),
        reading: clock?.minutes ?? 0,
        denominator: 1,
      }),
    });
  if (life.calendar !== null && life.goodThrough !== null)
    rows.push({
      ...due,
      dimension: life.calendar.unit,
      lifeLimitId: life.calendar.limitId,
      span: life.calendar.span,
      dueOn: dayFromWire(life.goodThrough),
    });
  return rows;
}
