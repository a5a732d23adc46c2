import { checkProcedure } from '@strutbook/domain/work/check-procedure.js';
import type { ProcedureContent } from '@strutbook/domain/work/step.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { ADDED, addedGroup, ownDefinitions } from './own-steps.js';
import type { OwnStepDto } from './wire/own-step.dto.js';

/** Refuses INVALID_FIELDS for a content that cannot be worked by, at fields of 'content'. */
export function refuseUnsoundContent(content: ProcedureContent): void {
  refuseProblems(content, 'content.');
}

/** Refuses INVALID_FIELDS for own steps that cannot be worked by, at fields of 'steps'. */
export function refuseUnsoundSteps(own: readonly OwnStepDto[]): void {
  if (own.length === 0) return;
  refuseProblems(
    { groups: [addedGroup([])], items: [], steps: ownDefinitions(own, { number: 0, own: 0 }) },
    '',
  );
}

function refuseProblems(content: ProcedureContent, above: string): void {
  const problems = checkProcedure(content);
  if (problems.length === 0) return;
  refuse({
    code: 'INVALID_FIELDS',
    fields: problems.map(({ field, reason, fix }) => ({
      field: `${above}${field}`,
      reason: reason.replaceAll(ADDED, 'of added steps'),
      fix,
    })),
  });
}
