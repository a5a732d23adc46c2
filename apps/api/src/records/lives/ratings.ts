import type { Tx } from '../../platform/database/database.js';

/** The rating each of these engines runs at, now (null) or at an instant; one without a record is left out. */
export async function ratingsAt(
  tx: Tx,
  operatorId: number,
  engineIds: readonly string[],
  at: Date | null,
): Promise<ReadonlyMap<string, string>> {
  const rows = await tx.$queryRaw<{ engineId: string; ratingId: string }[]>`
    SELECT DISTINCT ON (component_id) component_id AS "engineId", rating_id AS "ratingId"
      FROM rating_change
     WHERE operator_id = ${operatorId}::int AND component_id = ANY (${[...engineIds]}::uuid[]) AND voided_seq IS NULL
       AND (${at}::timestamptz IS NULL OR at <= ${at}::timestamptz)
     ORDER BY component_id, at DESC, recorded_seq DESC`;
  return new Map(rows.map((row) => [row.engineId, row.ratingId]));
}
