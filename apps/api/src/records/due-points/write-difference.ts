import type { Tx } from '../../platform/database/database.js';
import type { DuePoint, Prisma } from '../../platform/database/generated/client.js';
import { newId } from '../../platform/database/uuid.js';
import type { DuePointRow } from './due-point-row.js';

/**
 * Makes the due points that `where` finds be these rows. One that stays as it is is not touched: after a correction that
 * is nearly all of them, as a flight moves the clock and what was used alike.
 */
export async function writeDifference(
  tx: Tx,
  operatorId: number,
  where: Prisma.DuePointWhereInput,
  rows: readonly DuePointRow[],
): Promise<void> {
  const wanted = new Map<string, DuePointRow[]>();
  for (const row of rows) {
    const text = textOf(row);
    const alike = wanted.get(text);
    if (alike === undefined) wanted.set(text, [row]);
    else alike.push(row);
  }
  const kept = await tx.duePoint.findMany({ where });
  const names = new Set(rows.flatMap((row) => Object.keys(row)));
  const gone = kept.filter((row) => wanted.get(textOf(row, names))?.pop() === undefined);
  const missing = [...wanted.values()].flat();
  if (gone.length > 0)
    await tx.duePoint.deleteMany({ where: { operatorId, id: { in: gone.map((row) => row.id) } } });
  if (missing.length > 0)
    await tx.duePoint.createMany({ data: missing.map((row) => ({ operatorId, id: newId(), ...row })) });
}

/** What a row says, as text that is the same for a kept one and a fresh one; of a kept one what `names` has alone. */
function textOf(row: DuePointRow | DuePoint, names?: ReadonlySet<string>): string {
  return JSON.stringify(
    Object.entries(row)
      .filter(([name, value]) => value !== null && (names?.has(name) ?? true))
      .map(([name, value]) => [name, typeof value === 'bigint' ? Number(value) : value])
      .sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)),
  );
}
