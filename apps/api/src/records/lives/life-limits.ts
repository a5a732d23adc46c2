import type { LifeLimit } from '@strutbook/domain/life/limits-in-force.js';
import { instant } from '@strutbook/domain/units/minutes.js';
import type { Tx } from '../../platform/database/database.js';

/** A recorded limit with the document it comes from. */
export type RecordedLimit = LifeLimit & {
  readonly document: string;
  readonly revision: string;
};

/** All limits recorded for these part numbers, as the core reads them; the minute of effect is the day's first in UTC. */
export async function loadLifeLimits(
  tx: Tx,
  operatorId: number,
  partNumbers: readonly string[],
): Promise<RecordedLimit[]> {
  const rows = await tx.lifeLimit.findMany({
    where: { operatorId, partNumber: { in: [...new Set(partNumbers)] }, voidedSeq: null },
  });
  return rows.map((row) => {
    const base = {
      id: row.id,
      partNumber: row.partNumber,
      modelId: row.engineModelId,
      revisionId: `${row.document} ${row.revision}`,
      effectiveAt: instant(row.effectiveOn.getTime() / 60_000),
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
      minutes: row.minutes === null ? null : Number(row.minutes),
    };
  });
}
