import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { toInstant } from '../../platform/http/instants.js';
import { recordReading, voidReadingsOfStay } from '../counting/counter-readings.js';

/** A log page whose flight was voided and entered again: its landing moved. */
export interface MovedPage {
  readonly airframeId: string;
  readonly page: string;
  readonly before: Date;
  readonly after: Date;
  /** The page's name now. */
  readonly pageNow: string;
  readonly number: bigint;
  readonly reason: string;
}

/** How many stays begin or end by this page of this airframe's log. */
export async function staysByPage(
  tx: Tx,
  operatorId: number,
  { airframeId, page, before }: Pick<MovedPage, 'airframeId' | 'page' | 'before'>,
): Promise<string[]> {
  const rows = await tx.$queryRaw<{ componentId: string }[]>`
    SELECT DISTINCT component_id AS "componentId" FROM stay
     WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL AND slot_id IS NOT NULL
       AND ((from_kind = 'after-page' AND from_text = ${page} AND from_at = ${before.toISOString()}::timestamptz
             AND airframe_of_slot(operator_id, slot_id, from_at, false) = ${airframeId}::uuid)
         OR (to_kind = 'after-page' AND to_text = ${page} AND to_at = ${before.toISOString()}::timestamptz
             AND airframe_of_slot(operator_id, slot_id, to_at, true) = ${airframeId}::uuid))`;
  return rows.map((row) => row.componentId);
}

/**
 * Moves every stay whose boundary follows a page along with the page's new landing: each is voided and entered
 * again, in the same act. Answers the components whose stays moved; PostgreSQL refuses what doesn't fit.
 */
export async function followPage(tx: Tx, operatorId: number, moved: MovedPage): Promise<string[]> {
  const componentIds = await staysByPage(tx, operatorId, moved);
  if (componentIds.length === 0) return [];
  const { page, before, after, pageNow, number } = moved;
  const stays = await tx.stay.findMany({
    where: { operatorId, componentId: { in: componentIds }, voidedSeq: null },
  });
  const follows = (kind: string | null, text: string | null, at: Date | null) =>
    kind === 'after-page' && text === page && at?.getTime() === before.getTime();
  const affected = stays.filter(
    (stay) =>
      follows(stay.fromKind, stay.fromText, stay.fromAt) || follows(stay.toKind, stay.toText, stay.toAt),
  );
  await tx.stay.updateMany({
    where: { operatorId, id: { in: affected.map((stay) => stay.id) }, voidedSeq: null },
    data: { voidedSeq: number, voidReason: moved.reason },
  });
  for (const stay of affected) {
    const from = follows(stay.fromKind, stay.fromText, stay.fromAt)
      ? { fromAt: after, fromText: pageNow }
      : {};
    const to = follows(stay.toKind, stay.toText, stay.toAt) ? { toAt: after, toText: pageNow } : {};
    const endedSeq = stay.toAt === null ? null : number;
    const id = newId();
    await tx.stay.create({ data: { ...stay, id, ...from, ...to, recordedSeq: number, endedSeq } });
    await followReadings(tx, operatorId, moved, { before: stay.id, now: id });
  }
  await followRatings(tx, operatorId, moved, affected);
  return componentIds;
}

/** What a counter showed as a stay began or ended was read then, also when that moves. */
async function followReadings(
  tx: Tx,
  operatorId: number,
  { before, after, number, reason }: MovedPage,
  stay: { readonly before: string; readonly now: string },
): Promise<void> {
  const readings = await tx.counterReading.findMany({
    where: { operatorId, stayId: stay.before, voidedSeq: null },
  });
  await voidReadingsOfStay(tx, operatorId, { stayId: stay.before, number, reason });
  for (const { componentId, kind, at, minutes, starts, source } of readings)
    await recordReading(
      tx,
      operatorId,
      {
        ...{ componentId, source, number, stayId: stay.now, fresh: null },
        kind: kind === 'removed' ? 'removed' : 'installed',
        at: toInstant(at.getTime() === before.getTime() ? after : at),
        figures: { minutes: Number(minutes), starts: Number(starts) },
      },
      'counterReading',
    );
}

/** A rating that was recorded with an installation begins with it, also when that moves. */
async function followRatings(
  tx: Tx,
  operatorId: number,
  { before, after, number, reason }: MovedPage,
  stays: readonly { readonly componentId: string; readonly fromAt: Date; readonly recordedSeq: bigint }[],
): Promise<void> {
  const begun = stays.filter((stay) => stay.fromAt.getTime() === before.getTime());
  const ratings = await tx.ratingChange.findMany({
    where: {
      operatorId,
      at: before,
      voidedSeq: null,
      OR: begun.map(({ componentId, recordedSeq }) => ({ componentId, recordedSeq })),
    },
  });
  await tx.ratingChange.updateMany({
    where: { operatorId, id: { in: ratings.map((rating) => rating.id) }, voidedSeq: null },
    data: { voidedSeq: number, voidReason: reason },
  });
  await tx.ratingChange.createMany({
    data: ratings.map((rating) => ({ ...rating, id: newId(), at: after, recordedSeq: number })),
  });
}
