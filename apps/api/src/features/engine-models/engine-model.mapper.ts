import { dayToWire } from '../../platform/http/instants.js';
import type { CycleRuleDto, EngineModelDto } from './engine-model.dto.js';
import type { LifeLimitDto } from './life-limit.dto.js';

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

interface LimitRow {
  readonly id: string;
  readonly partNumber: string;
  readonly engineModelId: string;
  readonly authorisation: string;
  readonly cycles: number | null;
  readonly minutes: bigint | null;
  readonly document: string;
  readonly revision: string;
  readonly effectiveOn: Date;
  readonly voidedSeq: bigint | null;
  readonly voidReason: string | null;
  readonly rating: { readonly code: string } | null;
  readonly engineModel: { readonly maker: string; readonly designation: string };
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

/** A limit as the wire has it. Total. */
export function lifeLimitToWire(row: LimitRow): LifeLimitDto {
  const {
    id,
    partNumber,
    engineModelId,
    cycles,
    minutes,
    document,
    revision,
    effectiveOn,
    voidedSeq,
    voidReason,
  } = row;
  return {
    id,
    partNumber,
    engineModelId,
    engineModel: `${row.engineModel.maker} ${row.engineModel.designation}`,
    ratingCode: row.rating?.code ?? null,
    authorisation: row.authorisation as LifeLimitDto['authorisation'],
    cycles,
    minutes: minutes === null ? null : Number(minutes),
    document,
    revision,
    effectiveOn: dayToWire(effectiveOn),
    voided: voidedSeq !== null,
    voidReason,
  };
}
