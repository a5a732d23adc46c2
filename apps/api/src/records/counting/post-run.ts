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

/** Where a run is counted: the clock of a position of an airframe, or of a test cell. */
interface RunClock {
  readonly carrierId: string;
  readonly airframeId: string | null;
}

/**
 * Whether something that was recorded on this carrier counts from the clock at an instant or after it: an exposure that
 * ended or began, or, on an airframe, a duty that was met and what else its head keeps.
 */
export async function isBeforeMarks(
  tx: Tx,
  operatorId: number,
  { carrierId, airframeId }: RunClock,
  at: Date,
): Promise<boolean> {
  const found = await tx.exposure.findFirst({
    where: { operatorId, carrierId, OR: [{ toAt: { gte: at } }, { toAt: null, fromAt: { gte: at } }] },
    select: { id: true },
  });
  if (found !== null || airframeId === null) return found !== null;
  const head = await tx.carrier.findUniqueOrThrow({
    where: { operatorId_id: { operatorId, id: airframeId } },
    select: { lastBoundaryAt: true },
  });
  return head.lastBoundaryAt !== null && at <= head.lastBoundaryAt;
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
