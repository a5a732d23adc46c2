import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { MovedPage } from './follow-page.js';

type Page = Pick<MovedPage, 'airframeId' | 'page' | 'before'>;

/** The facts of components that are told by a page: resets and ratings, and gaps and balances with their acceptances. */
async function factsByPage(tx: Tx, operatorId: number, { airframeId, page, before }: Page) {
  const told = { operatorId, voidedSeq: null, atAirframeId: airframeId, atKind: 'after-page' };
  const at = { ...told, atText: page, at: before };
  const gaps = await tx.traceGap.findMany({
    where: {
      ...{ operatorId, voidedSeq: null, airframeId },
      OR: [
        { fromKind: 'after-page', fromText: page, fromAt: before },
        { toKind: 'after-page', toText: page, toAt: before },
      ],
    },
  });
  const openings = await tx.opening.findMany({ where: at });
  return {
    resets: await tx.reset.findMany({ where: at }),
    ratings: await tx.ratingChange.findMany({ where: at }),
    gaps,
    openings,
    acceptances: await tx.gapAcceptance.findMany({
      where: {
        ...{ operatorId, voidedSeq: null },
        OR: [
          { traceGapId: { in: gaps.map((row) => row.id) } },
          { openingId: { in: openings.map((row) => row.id) } },
        ],
      },
    }),
  };
}

/** The components of which something is told by this page of this airframe's log. */
export async function componentsByPage(tx: Tx, operatorId: number, page: Page): Promise<string[]> {
  const { resets, ratings, gaps, openings } = await factsByPage(tx, operatorId, page);
  const ids = [...resets, ...ratings, ...gaps, ...openings].flatMap((row) => row.componentId ?? []);
  return [...new Set(ids)];
}

/**
 * Moves every fact of a component that follows a page along with the page's new landing: each is voided and entered
 * again, in the same act, and an acceptance with what it is for. Answers the components they are of.
 */
export async function followFacts(tx: Tx, operatorId: number, moved: MovedPage): Promise<string[]> {
  const { after, pageNow, number: recordedSeq, reason: voidReason } = moved;
  const { resets, ratings, gaps, openings, acceptances } = await factsByPage(tx, operatorId, moved);
  const voided = (rows: readonly { readonly id: string }[]) => ({
    where: { operatorId, id: { in: rows.map((row) => row.id) }, voidedSeq: null },
    data: { voidedSeq: recordedSeq, voidReason },
  });
  await tx.gapAcceptance.updateMany(voided(acceptances));
  await tx.reset.updateMany(voided(resets));
  await tx.ratingChange.updateMany(voided(ratings));
  await tx.traceGap.updateMany(voided(gaps));
  await tx.opening.updateMany(voided(openings));
  const now = { at: after, atText: pageNow, recordedSeq };
  await tx.reset.createMany({ data: resets.map((row) => ({ ...row, id: newId(), ...now })) });
  await tx.ratingChange.createMany({ data: ratings.map((row) => ({ ...row, id: newId(), ...now })) });
  const renamed = new Map([...gaps, ...openings].map((row) => [row.id, newId()]));
  const newIdOf = (id: string) => renamed.get(id) ?? id;
  await tx.opening.createMany({ data: openings.map((row) => ({ ...row, id: newIdOf(row.id), ...now })) });
  const follows = (kind: string, text: string | null, at: Date) =>
    kind === 'after-page' && text === moved.page && at.getTime() === moved.before.getTime();
  await tx.traceGap.createMany({
    data: gaps.map((row) => ({
      ...{ ...row, id: newIdOf(row.id), recordedSeq },
      ...(follows(row.fromKind, row.fromText, row.fromAt) ? { fromAt: after, fromText: pageNow } : {}),
      ...(follows(row.toKind, row.toText, row.toAt) ? { toAt: after, toText: pageNow } : {}),
    })),
  });
  await tx.gapAcceptance.createMany({
    data: acceptances.map((row) => ({
      ...{ ...row, id: newId(), recordedSeq },
      traceGapId: row.traceGapId === null ? null : newIdOf(row.traceGapId),
      openingId: row.openingId === null ? null : newIdOf(row.openingId),
    })),
  });
  const ids = [...resets, ...ratings, ...gaps, ...openings].flatMap((row) => row.componentId ?? []);
  return [...new Set(ids)];
}
