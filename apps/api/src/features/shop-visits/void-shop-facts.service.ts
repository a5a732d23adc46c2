import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { lockForStays } from '../../records/stays/stay-facts.js';
import { undoMoves } from '../../records/stays/undo-moves.js';
import { withAllAbove } from '../../records/usage/kinship.js';
import { ShopVisitReader } from './shop-visit-reader.js';
import type { ShopVisitDto } from './shop-visit-view.dto.js';
import { findVisit } from './visit-rows.js';

/** Visits and returns that were recorded wrongly: struck with their reason, everything back where it was before. */
@Injectable()
export class VoidShopFactsService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly reader: ShopVisitReader,
  ) {}

  /** Voids a visit that has no return. Refuses: NOT_FOUND, ALREADY_VOIDED, REFUSED_BY_FACTS (returned, or moved since). */
  voidVisit(actor: Actor, act: ActRequest, id: string, reason: string): Promise<ShopVisitDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const { componentId } = await findVisit(tx, operatorId, id);
      await lock(tx, operatorId, componentId);
      const visit = await findVisit(tx, operatorId, id);
      if (visit.voidedSeq !== null) refuse({ code: 'ALREADY_VOIDED', what: 'the shop visit' });
      if (visit.shopReturnByVisit.length > 0)
        refuse({
          code: 'REFUSED_BY_FACTS',
          reason: 'It was returned from this visit.',
          fix: 'Void the return first.',
        });
      const number = await this.journal.number(tx);
      const struck = { voidedSeq: number, voidReason: reason };
      await tx.shopVisit.updateMany({ where: { operatorId, id, voidedSeq: null }, data: struck });
      const moved = await undoMoves(tx, operatorId, { of: visit.recordedSeq, number, reason });
      await this.projections.ofComponents(tx, operatorId, moved);
      await this.journal.append(tx, actor, {
        number,
        stream: componentId,
        kind: 'shop-visit-voided',
        body: { id, reason },
        about: [componentId, id],
        key: act.key,
      });
      const body = await this.reader.read(tx, operatorId, id);
      return { status: 200, body, number, resource: `/api/shop-visits/${id}` };
    });
  }

  /**
   * Voids the return of a visit, with all that its act recorded: the component is in the shop again. Refuses: NOT_FOUND,
   * REFUSED_BY_FACTS (something it moved was moved since, or is gone from the shop in another way).
   */
  voidReturn(actor: Actor, act: ActRequest, id: string, reason: string): Promise<ShopVisitDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const { componentId } = await findVisit(tx, operatorId, id);
      await lock(tx, operatorId, componentId);
      const { shopReturnByVisit } = await findVisit(tx, operatorId, id);
      const [returned] = shopReturnByVisit;
      if (returned === undefined)
        return refuse({
          code: 'REFUSED_BY_FACTS',
          reason: 'No return is recorded for this visit.',
          fix: 'Nothing to void.',
        });
      const number = await this.journal.number(tx);
      await strike(tx, operatorId, { of: returned.recordedSeq, number, reason });
      const moved = await undoMoves(tx, operatorId, { of: returned.recordedSeq, number, reason });
      await this.projections.ofComponents(tx, operatorId, [...new Set([componentId, ...moved])]);
      await this.journal.append(tx, actor, {
        number,
        stream: componentId,
        kind: 'shop-return-voided',
        body: { visitId: id, returnId: returned.id, reason },
        about: [...new Set([componentId, id, returned.id, ...moved])],
        key: act.key,
      });
      const body = await this.reader.read(tx, operatorId, id);
      return { status: 200, body, number, resource: `/api/shop-visits/${id}` };
    });
  }
}

async function lock(tx: Tx, operatorId: number, componentId: string): Promise<void> {
  const componentIds = await withAllAbove(tx, operatorId, [componentId]);
  await lockForStays(tx, operatorId, { airframeIds: [], componentIds });
}

/** Voids every fact that one act recorded beside its moves. */
async function strike(
  tx: Tx,
  operatorId: number,
  { of, number, reason }: { readonly of: bigint; readonly number: bigint; readonly reason: string },
): Promise<void> {
  const facts = {
    where: { operatorId, recordedSeq: of, voidedSeq: null },
    data: { voidedSeq: number, voidReason: reason },
  };
  await tx.shopReturn.updateMany(facts);
  await tx.shopChange.updateMany(facts);
  await tx.reset.updateMany(facts);
  await tx.ratingChange.updateMany(facts);
  await tx.accomplishment.updateMany(facts);
  await tx.preservation.updateMany(facts);
  await tx.serviceabilityTag.updateMany(facts);
}
