import type { Refusal } from '@strutbook/domain/refusals.js';
import type { Result } from '@strutbook/domain/result.js';
import type { ApiRefusal } from './api-refusals.js';

export interface RefusalPlace {
  /** The path of the field in the request, when the refusal's own table does not know it: 'flights[3].landingAt'. */
  readonly field?: string | undefined;
  readonly cause?: unknown;
}

/** A refusal on its way out: nothing was changed, and the answer will say why and what to do. */
export class RefusalError extends Error {
  readonly field: string | undefined;

  constructor(
    readonly refusal: Refusal | ApiRefusal,
    { field, cause }: RefusalPlace = {},
  ) {
    super(refusal.code, { cause });
    this.name = 'RefusalError';
    this.field = field;
  }
}

/** Stops with a refusal. Never returns. */
export function refuse(refusal: Refusal | ApiRefusal, field?: string): never {
  throw new RefusalError(refusal, { field });
}

/** The value of a rule's answer. Throws: RefusalError when the rule says no, about `field` when given. */
export function orRefuse<T>(result: Result<T, Refusal | ApiRefusal>, field?: string): T {
  if (result.ok) return result.value;
  throw new RefusalError(result.refusal, { field });
}

/** The row that was asked for. Throws: RefusalError NOT_FOUND, about `field` when given, when there is none. */
export function orNotFound<T>(row: T | null | undefined, what: string, field?: string): T {
  if (row !== null && row !== undefined) return row;
  throw new RefusalError(
    field === undefined ? { code: 'NOT_FOUND', what } : { code: 'NOT_FOUND', what, field },
  );
}
