/**
 * What a rule answers when it may say no: a value, or the refusal that says why.
 *
 * Refusals are ordinary answers. A bug throws, and is no `Result`.
 */
export type Result<T, R> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: R };

/** The answer yes, with its value. Total. */
export function accepted<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

/** The answer no, with its reason. Total. */
export function refused<R>(refusal: R): { readonly ok: false; readonly refusal: R } {
  return { ok: false, refusal };
}
