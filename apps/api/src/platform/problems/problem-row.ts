import type { FieldRefusal } from './api-refusals.js';

/** How a refusal is told: HTTP status, title, sentence, and the fields it rests on. */
export interface ProblemRow {
  readonly status: number;
  readonly title: string;
  readonly detail: string;
  readonly fields?: readonly FieldRefusal[];
  readonly retryAfterSeconds?: number;
  /** Members of this code alone, beside the common ones. */
  readonly extra?: Readonly<Record<string, unknown>>;
}

/** A table with a row for each code of a union of refusals; a code without its row does not compile. */
export type ProblemTable<R extends { readonly code: string }> = {
  readonly [Code in R['code']]: (refusal: Extract<R, { readonly code: Code }>) => ProblemRow;
};

/** A row about one field, whose reason and fix are also the sentence. Total. */
export function aboutField(
  status: number,
  title: string,
  {
    field,
    reason,
    fix,
  }: { readonly field: string | undefined; readonly reason: string; readonly fix: string },
): ProblemRow {
  return { status, title, detail: `${reason} ${fix}`, fields: [{ field: field ?? '', reason, fix }] };
}
