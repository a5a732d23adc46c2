import type { UnfitComponent } from '@strutbook/domain/serviceability/unfit.js';
import type { Tx } from '../../platform/database/database.js';
import { dayToWire } from '../../platform/http/instants.js';
import { namedComponents } from '../stays/structure.sql.js';
import { type UnfitRow, unfitOf, unfitRows } from './unfit.sql.js';

/** What is held against fitting each of these components, now (null) or at an instant; one nothing is held against is left out. */
export async function unfitAmong(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
  at: Date | null,
): Promise<ReadonlyMap<string, UnfitComponent>> {
  if (componentIds.length === 0) return new Map();
  const ask = { operatorId, at, componentIds: namedComponents(componentIds) };
  const [row] = await tx.$queryRaw<{ rows: UnfitRow[] }[]>`SELECT ${unfitRows(ask)} AS rows`;
  return unfitOf(row?.rows ?? []);
}

/** The last day the newest preservation of each of these components holds, 'YYYY-MM-DD'; one that was never preserved is left out. */
export async function preservedUntil(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
  at: Date | null,
): Promise<ReadonlyMap<string, string>> {
  const rows = await tx.preservation.findMany({
    where: {
      operatorId,
      componentId: { in: [...componentIds] },
      voidedSeq: null,
      ...(at === null ? {} : { at: { lte: at } }),
    },
    orderBy: [{ at: 'asc' }, { recordedSeq: 'asc' }],
    select: { componentId: true, goodUntil: true },
  });
  return new Map(rows.map((row) => [row.componentId, dayToWire(row.goodUntil)]));
}
