import type { StepFacts } from '../../work/step-standing.js';
import type { Objection, WorkObjectionCode } from '../objection.js';

/** An objection about a step, its number and title told; blocking unless told otherwise. Total. */
export function heldAgainstStep(
  { id, definition: { number, title } }: StepFacts,
  code: WorkObjectionCode,
  {
    detail = {},
    severity = 'blocking',
    record = { kind: 'step', id },
  }: Partial<Pick<Objection, 'detail' | 'severity' | 'record'>> = {},
): Objection {
  return { code, severity, positionNumber: null, record, detail: { number, title, ...detail } };
}
