import type { Interval, RequirementRule } from '@strutbook/domain/due/requirement.js';
import type { Tx } from '../../platform/database/database.js';
import type { Requirement } from '../../platform/database/generated/client.js';
import type { Subject } from './subjects.js';

/** When a requirement is to be met, as its row says. Total. */
export function ruleOf(row: Requirement): RequirementRule {
  return {
    threshold: intervalOf(row.thresholdMinutes, row.thresholdCycles, row.thresholdDays, row.thresholdMonths),
    repeat: intervalOf(row.repeatMinutes, row.repeatCycles, row.repeatDays, row.repeatMonths),
    combine: row.combine === 'last' ? 'last' : 'first',
    monthRule: row.monthRule === 'month-end' ? 'month-end' : 'same-day',
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
export function countsCycles({ threshold, repeat }: RequirementRule): boolean {
  return threshold?.cycles != null || repeat?.cycles != null;
}

/** The requirements in force: of each code the revision that is effective last. */
export async function requirementsInForce(tx: Tx, operatorId: number): Promise<Requirement[]> {
  const rows = await tx.requirement.findMany({
    where: { operatorId, voidedSeq: null },
    orderBy: [{ code: 'asc' }, { effectiveOn: 'desc' }, { recordedSeq: 'desc' }],
  });
  return rows.filter((row, index) => rows[index - 1]?.code !== row.code);
}

/** Whether a requirement is for a subject. Total. */
export function isFor(row: Requirement, subject: Subject): boolean {
  switch (row.anchor) {
    case 'airframe':
      return subject.kind === 'airframe' && isOneOf(row.airframeTypeId, subject.airframeTypeId);
    case 'position':
      return (
        subject.kind === 'position' &&
        isOneOf(row.airframeTypeId, subject.airframeTypeId) &&
        // Without a number it is for the places of engines.
        (row.positionNumber === null ? subject.number > 0 : row.positionNumber === subject.number)
      );
    case 'engine':
      return (
        subject.kind === 'component' &&
        (subject.componentKind === 'engine' ||
          (row.engineModelId !== null && subject.componentKind === 'apu')) &&
        isOneOf(row.engineModelId, subject.engineModelId)
      );
    default:
      return subject.kind === 'component' && row.partNumber === subject.partNumber;
  }
}

function isOneOf(wanted: string | null, found: string | null): boolean {
  return wanted === null || wanted === found;
}
