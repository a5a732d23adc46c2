import { limitsInForce } from '@strutbook/domain/life/limits-in-force.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { loadLifeLimits } from '../../records/lives/life-limits.js';
import { groupRows } from '../../records/usage/group-rows.js';
import type { LifeLimitDto } from './life-limit.dto.js';

/** How each of the limits of these part numbers stands at an instant, by its id; null of one that is voided. */
export async function standingsOf(
  tx: Tx,
  operatorId: number,
  partNumbers: readonly string[],
  now: Date,
): Promise<(id: string) => LifeLimitDto['standing']> {
  const limits = await loadLifeLimits(tx, operatorId, partNumbers);
  const at = toInstant(now);
  const found = new Map<string, LifeLimitDto['standing']>(
    limits.map(({ id, effectiveAt }) => [id, effectiveAt > at ? 'later' : 'not-governing']),
  );
  for (const rows of groupRows(limits, ({ partNumber, modelId }) => `${modelId} ${partNumber}`).values()) {
    const [first] = rows;
    if (first === undefined) continue;
    const { partNumber, modelId } = first;
    for (const { manual, directives, governs } of limitsInForce(rows, { partNumber, modelId, at }))
      for (const row of [manual, ...directives, governs.authorisation])
        if (row !== null) found.set(row.id, 'in-force');
  }
  return (id) => found.get(id) ?? null;
}
