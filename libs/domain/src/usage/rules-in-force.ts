import type { Instant } from '../units/minutes.js';
import type { CycleRuleInForce } from './flatten-exposures.js';

/** A revision of a cycle rule as it is recorded; for any type of airframe without its own where `airframeTypeId` is null. */
export interface CycleRuleRevision {
  readonly id: string;
  readonly modelId: string;
  readonly airframeTypeId: string | null;
  /** From when on it holds; always, when null. */
  readonly from: Instant | null;
}

/**
 * The rules that hold for one model on one type of airframe (null: in a test cell, or by its own counter), each
 * from when on: the type's own, and before the first of them those for any type. Total.
 */
export function rulesInForce(
  revisions: readonly CycleRuleRevision[],
  modelId: string,
  airframeTypeId: string | null,
): readonly CycleRuleInForce[] {
  const ofModel = revisions.filter((rule) => rule.modelId === modelId);
  const own = ofModel.filter((rule) => rule.airframeTypeId === airframeTypeId);
  const general = airframeTypeId === null ? [] : ofModel.filter((rule) => rule.airframeTypeId === null);
  const first = own.reduce((earliest, rule) => Math.min(earliest, startOf(rule)), Number.POSITIVE_INFINITY);
  return [...general.filter((rule) => startOf(rule) < first), ...own].map(({ id, from }) => ({
    cycleRuleId: id,
    modelId,
    airframeTypeId,
    from,
  }));
}

function startOf({ from }: CycleRuleRevision): number {
  return from ?? Number.NEGATIVE_INFINITY;
}
