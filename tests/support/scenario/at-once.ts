import type { Answer } from '../http-client.js';
import { inShort, type Problem, problemOf } from './problem.js';

export const AT_ONCE = 50;

/** Fifty of them, begun together. */
export function fifty<T>(work: (index: number) => Promise<T>): Promise<T[]> {
  return Promise.all(Array.from({ length: AT_ONCE }, (_, index) => work(index)));
}

/** How many answers there were of each status. */
export function statuses(answers: readonly Answer[]): Readonly<Record<number, number>> {
  const counts: Record<number, number> = {};
  for (const { status } of answers) counts[status] = (counts[status] ?? 0) + 1;
  return counts;
}

/**
 * Refusals that don't tell the loser of a race what to do: neither the field, the reason and the fix, nor to look
 * again, nor when to try again.
 */
export function unhelpful(answers: readonly Answer[]): readonly string[] {
  return answers
    .filter(({ status }) => status >= 300)
    .flatMap((answer) => (helps(answer) ? [] : [inShort(answer)]));
}

function helps(answer: Answer): boolean {
  const { code, fields = [] }: Problem = problemOf(answer);
  if (code === 'BUSY') return Number(answer.headers.get('retry-after')) > 0;
  if (code === 'CHECK_CHANGED' || code === 'ALREADY_VOIDED') return true;
  return (
    fields.length > 0 && fields.every(({ field, reason, fix }) => field !== '' && reason !== '' && fix !== '')
  );
}
