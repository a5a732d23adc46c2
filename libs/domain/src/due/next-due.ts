/** A dimension of a requirement with the point at which it falls due, projected to whole days from now. */
export interface ProjectedDue {
  readonly dimension: 'minutes' | 'cycles' | 'days';
  readonly dueAt: number;
  /** Days from now at the planned rate, rounded down; null when no rate is known or nothing is flown. */
  readonly inDays: number | null;
}

/**
 * Whole days until a limit is reached at a daily use: remaining ÷ use, rounded down; null when nothing is used.
 *
 * A forecast, never a limit. Total.
 */
export function daysUntil(remaining: number, perDay: number): number | null {
  return perDay > 0 ? Math.floor(remaining / perDay) : null;
}

/**
 * The dimension that falls due first (or last), of those projected to days; one without a projection is left
 * out of 'first', and makes 'last' unknown. Null when none can be told. Total.
 */
export function nextDue(dues: readonly ProjectedDue[], which: 'first' | 'last'): ProjectedDue | null {
  const known = dues.filter((due): due is ProjectedDue & { readonly inDays: number } => due.inDays !== null);
  if (which === 'last' && known.length < dues.length) return null;
  const sign = which === 'first' ? 1 : -1;
  return known.reduce<(ProjectedDue & { readonly inDays: number }) | null>(
    (found, due) => (found === null || sign * (due.inDays - found.inDays) < 0 ? due : found),
    null,
  );
}
