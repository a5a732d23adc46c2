import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { CycleRule } from '@strutbook/domain/usage/cycle-rule.js';
import { type CycleRuleRevision, rulesInForce } from '@strutbook/domain/usage/rules-in-force.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';

/** A revision that counts, with its weights. */
export type RecordedRule = CycleRuleRevision & CycleRule;

/** The revisions that count of these models' rules, the earliest first. */
export async function loadCycleRules(
  tx: Tx,
  operatorId: number,
  modelIds: readonly string[],
): Promise<RecordedRule[]> {
  const rows = await tx.cycleRule.findMany({
    where: { operatorId, engineModelId: { in: [...modelIds] }, voidedSeq: null },
    orderBy: [{ effectiveOn: { sort: 'asc', nulls: 'first' } }, { id: 'asc' }],
  });
  return rows.map(({ engineModelId, effectiveOn, ...rule }) => ({
    ...rule,
    modelId: engineModelId,
    from: effectiveOn === null ? null : toInstant(effectiveOn),
  }));
}

/** The rule by which a model counts cycles by its own counter at an instant; undefined where none says so. Total. */
export function counterRuleAt(
  rules: readonly RecordedRule[],
  modelId: string,
  at: Instant,
): CycleRule | undefined {
  const inForce = rulesInForce(rules, modelId, null).filter(({ from }) => from === null || from <= at);
  const last = inForce.at(-1);
  return last === undefined ? undefined : rules.find((rule) => rule.id === last.cycleRuleId);
}
