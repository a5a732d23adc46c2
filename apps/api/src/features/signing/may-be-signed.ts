import { ruleSetOn } from '@strutbook/domain/release/rule-sets.js';
import { dateOf } from '@strutbook/domain/units/calendar.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import {
  type Blocker,
  blockersOf,
  countingSignatures,
  missingEntries,
  type StepFacts,
  type StepSignatureFacts,
} from '@strutbook/domain/work/step-standing.js';
import { instantToWire } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import type { Asked } from './signed-words.js';

/** The signature of the work that an inspection covers, and why one person looked twice. */
export interface Covered {
  readonly coversId: string | null;
  readonly reinspectionReason: string | null;
}

/**
 * Whether a step may be signed as it stands: not signed before, nothing in its way, all captured and accepted, in its
 * order of time, and inspected by another person.
 * Refuses: ALREADY_SIGNED, WRONG_STATE, STEP_BLOCKED, CAPTURES_MISSING, SAME_PERSON, REFUSED_BY_FACTS.
 */
export function requireSignable(asked: Asked, all: readonly StepFacts[], now: Instant): Covered {
  const { step, meaning, performedAt } = asked;
  const { done, inspection } = countingSignatures(step);
  const there = meaning === 'done' ? done : inspection;
  if (there !== null)
    refuse({ code: 'ALREADY_SIGNED', by: there.personName, at: instantToWire(there.signedAt) });
  if (meaning === 'inspection' && step.definition.inspection === 'none')
    refuse({
      code: 'WRONG_STATE',
      what: `step ${step.definition.number}`,
      state: 'one that asks for no inspection',
      needed: 'one that does',
    });
  const blockers = blockersOf(step, all);
  if (blockers.length > 0) refuse({ code: 'STEP_BLOCKED', blockers });
  const missing = missingEntries(step);
  if (missing.length > 0) refuse({ code: 'CAPTURES_MISSING', missing });
  requireOrderOfTime(step, all, performedAt);
  if (meaning === 'done') return { coversId: null, reinspectionReason: null };
  if (done === null) return refuse({ code: 'STEP_BLOCKED', blockers: [unsigned(step)] });
  requireNotBefore(done.performedAt, performedAt, 'The work itself');
  return { coversId: done.id, reinspectionReason: reinspection(asked, done, now) };
}

/** What keeps an inspection from being signed while the work itself is not. Total. */
export function unsigned({ id, definition: { number, title } }: StepFacts): Blocker {
  return { code: 'STEP_UNSIGNED', stepId: id, number, title };
}

/** What a step waits for was done and looked at before it was. */
function requireOrderOfTime(step: StepFacts, all: readonly StepFacts[], performedAt: Instant): void {
  for (const key of step.definition.waitsFor) {
    const before = all.find((each) => each.definition.key === key);
    if (before === undefined) continue;
    const { done, inspection } = countingSignatures(before);
    for (const signature of [done, inspection])
      if (signature !== null)
        requireNotBefore(
          signature.performedAt,
          performedAt,
          `Step ${before.definition.number}, which comes first,`,
        );
  }
}

function requireNotBefore(earlier: Instant, at: Instant, what: string): void {
  if (at < earlier)
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'performedAt',
      reason: `${what} was performed at ${instantToWire(earlier)}.`,
      fix: 'Give that moment or a later one, or undo the other signature if its moment is wrong.',
    });
}

/** Why one person inspects their own work; null when another one does. */
function reinspection(
  { head, signer, reinspectionReason }: Asked,
  done: StepSignatureFacts,
  now: Instant,
): string | null {
  if (done.personId !== signer.personId) return null;
  const allowed = ruleSetOn(head.ruleSet, dateOf(now))?.onePersonReinspection ?? false;
  if (!allowed || reinspectionReason === null) refuse({ code: 'SAME_PERSON' });
  return reinspectionReason;
}
