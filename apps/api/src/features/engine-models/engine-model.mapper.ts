import { dayToWire } from '../../platform/http/instants.js';
import type { CycleRuleDto, EngineModelDto } from './engine-model.dto.js';

interface ModelRow {
  readonly id: string;
  readonly kind: string;
  readonly maker: string;
  readonly designation: string;
  readonly lifeMethod: string;
  readonly lifeSource: string;
  readonly version: number;
  readonly ratingByEngineModel: readonly {
    readonly id: string;
    readonly code: string;
    readonly description: string | null;
  }[];
  readonly cycleRuleByEngineModel: readonly RuleRow[];
}

/** A cycle rule's row. */
export interface RuleRow extends Omit<CycleRuleDto, 'effectiveOn'> {
  readonly effectiveOn: Date | null;
  readonly voidedSeq: bigint | null;
}

/** Which of these rules count on a day: of each type of airframe the newest from that day or before. Total. */
export function idsInForce(rows: readonly RuleRow[], today: string): ReadonlySet<string> {
  const newest = new Map<string | null, RuleRow>();
  for (const row of rows) {
    const since = row.effectiveOn === null ? '' : dayToWire(row.effectiveOn);
    const known = newest.get(row.airframeTypeId);
    if (row.voidedSeq !== null || since > today) continue;
    if (known === undefined || known.effectiveOn === null || dayToWire(known.effectiveOn) <= since)
      newest.set(row.airframeTypeId, row);
  }
  return new Set([...newest.values()].map((row) => row.id));
}

/** A rule as the wire has it. Total. */
export function cycleRuleToWire(rule: RuleRow): CycleRuleDto {
  return {
    id: rule.id,
    airframeTypeId: rule.airframeTypeId,
    perFlight: rule.perFlight,
    perLanding: rule.perLanding,
    perTouchAndGo: rule.perTouchAndGo,
    perStart: rule.perStart,
    perAbortedTakeOff: rule.perAbortedTakeOff,
    denominator: rule.denominator,
    source: rule.source,
    revision: rule.revision,
    effectiveOn: rule.effectiveOn === null ? null : dayToWire(rule.effectiveOn),
  };
}

/** A model as the wire has it, with the rules that count on a day. Total; the database's checks let no other words through. */
export function engineModelToWire(row: ModelRow, today: string): EngineModelDto {
  const { id, maker, designation, lifeSource, version } = row;
  const inForce = idsInForce(row.cycleRuleByEngineModel, today);
  return {
    id,
    kind: row.kind as EngineModelDto['kind'],
    maker,
    designation,
    lifeMethod: row.lifeMethod as EngineModelDto['lifeMethod'],
    lifeSource,
    version,
    ratings: row.ratingByEngineModel.map((rating) => ({
      id: rating.id,
      code: rating.code,
      description: rating.description,
    })),
    cycleRules: row.cycleRuleByEngineModel.filter((rule) => inForce.has(rule.id)).map(cycleRuleToWire),
  };
}
