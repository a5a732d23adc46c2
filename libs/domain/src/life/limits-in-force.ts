import type { Instant } from '../units/minutes.js';
import type { RatingLimit } from './life.js';

/** One row of a dated document revision: a life limit of a part number in an engine model at a rating. */
export type LifeLimit = RatingLimit & {
  readonly id: string;
  readonly partNumber: string;
  readonly modelId: string;
  readonly revisionId: string;
  /** From this instant on the revision is effective. */
  readonly effectiveAt: Instant;
};

/**
 * The limits in force for a part number in a model at an instant: the rows of the newest revision that is
 * effective by then and names that part number in that model. Empty when there is none. Total.
 */
export function limitsInForce<Limit extends LifeLimit>(
  limits: readonly Limit[],
  {
    partNumber,
    modelId,
    at,
  }: { readonly partNumber: string; readonly modelId: string; readonly at: Instant },
): readonly Limit[] {
  const effective = limits.filter(
    (limit) => limit.partNumber === partNumber && limit.modelId === modelId && limit.effectiveAt <= at,
  );
  const newest = effective.reduce<Limit | null>(
    (found, limit) => (found === null || limit.effectiveAt > found.effectiveAt ? limit : found),
    null,
  );
  return effective.filter((limit) => limit.revisionId === newest?.revisionId);
}
