import type { Counts } from '@strutbook/domain/usage/counts.js';
import type { Tx } from '../../platform/database/database.js';

/** A run that is posted, or taken back. */
export interface PostedRun {
  readonly carrierId: string;
  readonly endedAt: Date;
  readonly counts: Counts;
  readonly sign: 1 | -1;
}

/** Posts a run to its position's or cell's month and head, and carries it into the exposures that saw it. */
export async function postRun(
  tx: Tx,
  operatorId: number,
  { carrierId, endedAt, counts, sign }: PostedRun,
): Promise<void> {
  const { minutes, starts, abortedTakeOffs } = counts;
  const at = endedAt.toISOString();
  await tx.$executeRaw`
    SELECT post_to_carrier(${operatorId}::int, ${carrierId}::uuid, ${at}::timestamptz, ${sign}::int, c),
           carry_into_exposures(${operatorId}::int, ARRAY[${carrierId}::uuid], ${at}::timestamptz, ${sign}::int, c)
      FROM (SELECT ROW(${minutes}::bigint, 0, 0, 0, ${starts}::bigint, ${abortedTakeOffs}::bigint)::counts AS c) AS run`;
}

/** Whether an exposure on this carrier ended, or began, at an instant or after it. */
export async function isBeforeExposures(
  tx: Tx,
  operatorId: number,
  carrierId: string,
  at: Date,
): Promise<boolean> {
  const found = await tx.exposure.findFirst({
    where: { operatorId, carrierId, OR: [{ toAt: { gte: at } }, { toAt: null, fromAt: { gte: at } }] },
    select: { id: true },
  });
  return found !== null;
}

/** The components that ever ran on this carrier. */
export async function componentsSeenBy(tx: Tx, operatorId: number, carrierId: string): Promise<string[]> {
  const rows = await tx.exposure.findMany({
    where: { operatorId, carrierId },
    distinct: ['componentId'],
    select: { componentId: true },
  });
  return rows.map((row) => row.componentId);
}
