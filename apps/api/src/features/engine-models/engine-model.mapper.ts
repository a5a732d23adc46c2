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
  readonly cycleRuleByEngineModel: readonly CycleRuleDto[];
}

/** A model as the wire has it. Total; the database's checks let no other words through. */
export function engineModelToWire(row: ModelRow): EngineModelDto {
  const { id, maker, designation, lifeSource, version } = row;
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
    cycleRules: row.cycleRuleByEngineModel.map((rule) => ({
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
    })),
  };
}
