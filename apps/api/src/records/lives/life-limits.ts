import type { LifeLimit } from '@strutbook/domain/life/limits-in-force.js';
import { instant } from '@strutbook/domain/units/minutes.js';
import type { Tx } from '../../platform/database/database.js';

/** A recorded limit with the document it comes from. */
export type RecordedLimit = LifeLimit & {
  readonly document: string;
  readonly revision: string;
};

interface LimitRow {
  readonly id: string;
  readonly partNumber: string;
  readonly modelId: string;
  readonly ratingId: string | null;
  readonly authorisation: string;
  readonly cycles: number | null;
  readonly minutes: number | null;
  readonly document: string;
  readonly revision: string;
  /** Minutes since 1970 of the day's first minute in UTC. */
  readonly effectiveOn: number;
}

/** All limits recorded for these part numbers, as the core reads them; the minute of effect is the day's first in UTC. */
export async function loadLifeLimits(
  tx: Tx,
  operatorId: number,
  partNumbers: readonly string[],
): Promise<RecordedLimit[]> {
  const [found] = await tx.$queryRaw<{ limits: string }[]>`/* planned once */
    SELECT coalesce(json_agg(json_build_object('id', id, 'partNumber', part_number, 'modelId', engine_model_id,
             'ratingId', rating_id, 'authorisation', authorisation, 'cycles', cycles, 'minutes', minutes,
             'document', document, 'revision', revision, 'effectiveOn', extract(epoch FROM effective_on)::bigint / 60)), '[]')::text AS limits
      FROM life_limit
     WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL
       AND part_number = ANY (${[...new Set(partNumbers)]}::text[])`;
  return (JSON.parse(found?.limits ?? '[]') as LimitRow[]).map((row): RecordedLimit => {
    const base = {
      id: row.id,
      partNumber: row.partNumber,
      modelId: row.modelId,
      revisionId: `${row.document} ${row.revision}`,
      effectiveAt: instant(row.effectiveOn),
      ratingId: row.ratingId,
      document: row.document,
      revision: row.revision,
    };
    if (row.authorisation === 'not-authorised') return { ...base, kind: 'not-authorised' as const };
    if (row.authorisation === 'not-limited') return { ...base, kind: 'not-limited' as const };
    return {
      ...base,
      kind: 'limited' as const,
      cycles: row.cycles,
      minutes: row.minutes,
    };
  });
}
