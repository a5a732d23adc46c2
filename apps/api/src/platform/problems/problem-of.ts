import type { Refusal } from '@strutbook/domain/refusals.js';
import type { ApiRefusal } from './api-refusals.js';
import { DOMAIN_PROBLEMS } from './domain-problems.js';
import type { ProblemDto } from './problem.dto.js';
import type { ProblemRow, ProblemTable } from './problem-row.js';
import { RECORD_PROBLEMS } from './record-problems.js';
import type { RefusalError } from './refusal.error.js';
import { REQUEST_PROBLEMS } from './request-problems.js';
import { SIGNING_PROBLEMS } from './signing-problems.js';

/** Every code with its row, so that a refusal of either kind that nobody can tell does not compile. */
const PROBLEMS = {
  ...DOMAIN_PROBLEMS,
  ...REQUEST_PROBLEMS,
  ...SIGNING_PROBLEMS,
  ...RECORD_PROBLEMS,
} satisfies ProblemTable<Refusal | ApiRefusal>;

/** Every code a problem can have. */
export const PROBLEM_CODES: readonly string[] = Object.keys(PROBLEMS).sort();

/** How a refusal is told, before it is tied to a request. Total. */
export function rowOf(refusal: Refusal | ApiRefusal): ProblemRow {
  // The table's own type says that each row takes the refusal of its code.
  const tell = PROBLEMS[refusal.code] as (refusal: Refusal | ApiRefusal) => ProblemRow;
  return tell(refusal);
}

/** The answer's body for a refusal. Total. */
export function problemOf(
  { refusal, field }: Pick<RefusalError, 'refusal' | 'field'>,
  requestId: string,
): ProblemDto {
  const { status, title, detail, fields = [], extra = {} } = rowOf(refusal);
  const told = field === undefined ? fields : placedAt(field, fields, detail);
  return {
    ...extra,
    type: `urn:strutbook:problem:${refusal.code.toLowerCase().replaceAll('_', '-')}`,
    title,
    status,
    detail,
    code: refusal.code,
    fields: [...told],
    requestId,
  };
}

function placedAt(
  field: string,
  [first]: readonly ProblemDto['fields'][number][],
  detail: string,
): ProblemDto['fields'] {
  return [{ field, reason: first?.reason ?? detail, fix: first?.fix ?? 'Correct this, then repeat.' }];
}
