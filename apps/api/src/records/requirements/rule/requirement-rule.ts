import { REBASE } from '@strutbook/domain/due/rebase.js';
import type { DueEvent, Interval, RequirementRule } from '@strutbook/domain/due/requirement.js';
import type { Tx } from '../../../platform/database/database.js';
import type { Requirement } from '../../../platform/database/generated/client.js';
import { storedRule } from './stored-rule.js';

/** When a requirement is to be met, as its row says. Total. */
export function ruleOf(row: Requirement): RequirementRule {
  const { bounds, window, variation, rebase } = storedRule(row.rule);
  return {
    threshold: intervalOf(row.thresholdMinutes, row.thresholdCycles, row.thresholdDays, row.thresholdMonths),
    repeat: intervalOf(row.repeatMinutes, row.repeatCycles, row.repeatDays, row.repeatMonths),
    combine: row.combine === 'last' ? 'last' : 'first',
    monthRule: row.monthRule === 'month-end' ? 'month-end' : 'same-day',
    events: {
      threshold: row.thresholdEvent as DueEvent | null,
      repeat: row.repeatEvent as DueEvent | null,
    },
    ...(bounds === undefined ? {} : { bounds }),
    ...(window === undefined ? {} : { window }),
    ...(variation === undefined ? {} : { variation }),
    rebase: rebase ?? REBASE,
  };
}

function intervalOf(
  minutes: bigint | null,
  cycles: number | null,
  days: number | null,
  months: number | null,
): Interval | null {
  if (minutes === null && cycles === null && days === null && months === null) return null;
  return { minutes: minutes === null ? null : Number(minutes), cycles, days, months };
}

/** Whether it asks anything in cycles. Total. */
export function countsCycles({ threshold, repeat, bounds }: RequirementRule): boolean {
  return [threshold, repeat, bounds?.threshold, bounds?.repeat].some((interval) => interval?.cycles != null);
}

/** The requirements in force on a day: of each code the revision that became effective last. */
export async function requirementsInForce(tx: Tx, operatorId: number, on: Date): Promise<Requirement[]> {
  const rows = await tx.requirement.findMany({
    where: { operatorId, voidedSeq: null, effectiveOn: { lte: on } },
    orderBy: [{ code: 'asc' }, { effectiveOn: 'desc' }, { recordedSeq: 'desc' }],
  });
  return rows.filter((row, index) => rows[index - 1]?.code !== row.code);
}

/** Whether its applicability must be assessed before it can be told that it is met, or need not be. Total. */
export function needsAssessment({ kind, mandatory }: Pick<Requirement, 'kind' | 'mandatory'>): boolean {
  return kind === 'directive' || (kind === 'bulletin' && mandatory);
}
