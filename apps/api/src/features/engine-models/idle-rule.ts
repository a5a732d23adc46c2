import { refuse } from '../../platform/problems/refusal.error.js';
import type { NewCycleRuleDto } from './engine-model.dto.js';

/** Refuses a rule by which nothing counts: INVALID_FIELDS. */
export function refuseIdleRule(rule: NewCycleRuleDto, field: string): void {
  if (rule.perFlight + rule.perLanding + rule.perTouchAndGo + rule.perStart + rule.perAbortedTakeOff > 0)
    return;
  const reason = 'This rule would count nothing: every weight is zero.';
  refuse({ code: 'INVALID_FIELDS', fields: [{ field, reason, fix: 'Give what counts a weight.' }] });
}
