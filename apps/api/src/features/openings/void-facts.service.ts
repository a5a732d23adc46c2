import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Consequences } from '../../records/consequences/consequences.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { lockComponent } from './moment.js';
import type { VoidedFactDto } from './voided-fact.dto.js';

/** Facts of a component that are voided one by one. */
export type VoidableFact = 'trace-gap' | 'gap-acceptance' | 'reset' | 'rating-change';

const WORDS: Readonly<Record<VoidableFact, string>> = {
  'trace-gap': 'gap',
  'gap-acceptance': 'acceptance',
  reset: 'overhaul, shop visit or repair',
  'rating-change': 'change of rating',
};

/** Voids facts: the row stays with its reason, and no longer counts. */
@Injectable()
export class VoidFactsService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly consequences: Consequences,
    private readonly clock: Clock,
  ) {}

  /** Voids one fact with its reason, and computes again what rested on it. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    fact: VoidableFact,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<VoidedFactDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const { componentId } = orNotFound(await find(tx, operatorId, fact, id), WORDS[fact]);
      await lockComponent(tx, operatorId, componentId, this.clock.now());
      const before = await this.consequences.beforeOfComponents(tx, operatorId, [componentId], {
        from: null,
      });
      const number = await this.journal.number(tx);
      const voided = await write(tx, fact, {
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (voided === 0) refuse({ code: 'ALREADY_VOIDED', what: `the ${WORDS[fact]}` });
      await this.projections.ofComponents(tx, operatorId, [componentId]);
      await this.journal.append(tx, actor, {
        number,
        stream: componentId,
        kind: `${fact}-voided`,
        body: { id, reason },
        about: [componentId],
        key: act.key,
      });
      const consequences = await this.consequences.since(tx, operatorId, before);
      const body: VoidedFactDto = { id, componentId, voided: true, voidReason: reason, consequences };
      return { status: 200, body, number, resource: `/api/components/${componentId}/facts` };
    });
  }
}

function find(
  tx: Tx,
  operatorId: number,
  fact: VoidableFact,
  id: string,
): Promise<{ componentId: string } | null> {
  const where = { where: { operatorId_id: { operatorId, id } }, select: { componentId: true } };
  switch (fact) {
    case 'trace-gap':
      return tx.traceGap.findUnique(where);
    case 'gap-acceptance':
      return tx.gapAcceptance.findUnique(where);
    case 'reset':
      return tx.reset.findUnique(where);
    case 'rating-change':
      return tx.ratingChange.findUnique(where);
  }
}

interface Voiding {
  readonly where: { readonly operatorId: number; readonly id: string; readonly voidedSeq: null };
  readonly data: { readonly voidedSeq: bigint; readonly voidReason: string };
}

async function write(tx: Tx, fact: VoidableFact, voiding: Voiding): Promise<number> {
  switch (fact) {
    case 'trace-gap':
      return (await tx.traceGap.updateMany(voiding)).count;
    case 'gap-acceptance':
      return (await tx.gapAcceptance.updateMany(voiding)).count;
    case 'reset':
      return (await tx.reset.updateMany(voiding)).count;
    case 'rating-change':
      return (await tx.ratingChange.updateMany(voiding)).count;
  }
}
