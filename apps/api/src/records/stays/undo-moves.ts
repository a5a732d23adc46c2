import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { withAllAbove } from '../usage/kinship.js';
import { airframesOfSlots, lockForStays } from './stay-facts.js';

/** An act whose moves are undone, and why. */
export interface UndoneAct {
  /** The number of the act that moved. */
  readonly of: bigint;
  readonly number: bigint;
  readonly reason: string;
}

/**
 * Undoes the moves of one act: the stays it opened are voided, and those it ended go on from where they ended. Answers
 * the components it had moved. Refuses: REFUSED_BY_FACTS where something it moved was moved again since.
 */
export async function undoMoves(
  tx: Tx,
  operatorId: number,
  { of, number, reason }: UndoneAct,
): Promise<string[]> {
  const touched = { operatorId, voidedSeq: null, OR: [{ recordedSeq: of }, { endedSeq: of }] };
  const before = await tx.stay.findMany({ where: touched, select: { componentId: true, slotId: true } });
  if (before.length === 0) return [];
  const componentIds = [...new Set(before.map((stay) => stay.componentId))];
  const slotIds = before.flatMap((stay) => stay.slotId ?? []);
  const airframeIds = await airframesOfSlots(tx, operatorId, slotIds, new Date());
  await lockForStays(tx, operatorId, {
    airframeIds,
    componentIds: await withAllAbove(tx, operatorId, componentIds),
  });
  const stays = await tx.stay.findMany({
    where: touched,
    include: { component: { select: { serialNumber: true } } },
  });
  const opened = stays.filter((stay) => stay.recordedSeq === of);
  const struck: string[] = [];
  for (const stay of opened) {
    struck.push(stay.id);
    if (stay.toAt !== null && stay.endedSeq !== of) struck.push(...(await continued(tx, operatorId, stay)));
  }
  await tx.stay.updateMany({
    where: { operatorId, id: { in: struck }, voidedSeq: null },
    data: { voidedSeq: number, voidReason: reason },
  });
  for (const stay of stays) {
    const { toAt, toKind, toText } = stay;
    if (stay.recordedSeq === of || toAt === null) continue;
    const { componentId, slotId, locationId, packageId } = stay;
    await tx.stay.create({
      data: {
        ...{ operatorId, id: newId(), componentId, slotId, locationId, packageId },
        ...{ fromAt: toAt, fromKind: toKind ?? 'instant', fromText: toText },
        reason: stay.reason,
        recordedSeq: number,
      },
    });
  }
  return componentIds;
}

interface EndedStay {
  readonly componentId: string;
  readonly slotId: string | null;
  readonly locationId: string | null;
  readonly toAt: Date | null;
  readonly component: { readonly serialNumber: string };
}

/** The stays that go on at the same place where this one ended, the last of them open: what an undone act left. */
async function continued(tx: Tx, operatorId: number, stay: EndedStay): Promise<string[]> {
  const { componentId, slotId, locationId, component } = stay;
  const found: string[] = [];
  for (let fromAt = stay.toAt; fromAt !== null; ) {
    const next = await tx.stay.findFirst({
      where: { operatorId, componentId, slotId, locationId, fromAt, voidedSeq: null },
      select: { id: true, toAt: true },
    });
    if (next === null)
      return refuse({
        code: 'REFUSED_BY_FACTS',
        reason: `${component.serialNumber} was moved again since.`,
        fix: 'Void what moved it later first.',
      });
    found.push(next.id);
    fromAt = next.toAt;
  }
  return found;
}
