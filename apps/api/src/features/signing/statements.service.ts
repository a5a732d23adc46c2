import { Injectable } from '@nestjs/common';
import { blockersOf, countingSignatures, missingEntries } from '@strutbook/domain/work/step-standing.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { ordersOf } from '../../records/work/orders.js';
import { packageHead } from '../../records/work/package-head.js';
import { loadSteps, outlineOfStep, stepIn } from '../../records/work/step-records.js';
import type { MissingDto } from '../../records/work/wire/step.dto.js';
import { unsigned } from './may-be-signed.js';
import { type Asked, type Meaning, wordsOf } from './signed-words.js';
import type { StatementDto } from './signing.dto.js';

/** For which signature the words are asked. */
export interface StatementQuery {
  readonly stepId: string;
  readonly meaning: Meaning;
  readonly performedAt: Date;
  readonly signInName: string | null;
  readonly reinspectionReason: string | null;
}

/** The words a signature would be given on, as things stand. */
@Injectable()
export class StatementsService {
  constructor(private readonly database: Database) {}

  /** The words, their digest, and what keeps the step from being signed. Refuses: NOT_FOUND. */
  statement(actor: Actor, query: StatementQuery): Promise<StatementDto> {
    return this.database.inOperator(actor, async (tx) => {
      const { operatorId } = actor;
      const { stepId, meaning } = query;
      const { packageId } = await outlineOfStep(tx, operatorId, stepId);
      const all = await loadSteps(tx, operatorId, packageId);
      const step = stepIn(all, stepId);
      const asked: Asked = {
        head: await packageHead(tx, operatorId, packageId),
        orders: await ordersOf(tx, operatorId, packageId),
        step,
        meaning,
        performedAt: toInstant(query.performedAt),
        signer: await signerOf(tx, actor, query.signInName),
        reinspectionReason: query.reinspectionReason,
      };
      const undone = meaning === 'inspection' && countingSignatures(step).done === null;
      return {
        ...wordsOf(asked),
        contentHash: step.contentHash,
        missing: missingEntries(step) as unknown as MissingDto[],
        blockers: [...blockersOf(step, all), ...(undone ? [unsigned(step)] : [])],
      };
    });
  }
}

async function signerOf(tx: Tx, actor: Actor, signInName: string | null): Promise<Asked['signer']> {
  if (signInName === null) return actor;
  const person = await tx.person.findFirst({
    where: { operatorId: actor.operatorId, signInName: signInName.trim().toLowerCase(), disabledAt: null },
    select: { id: true, fullName: true, licence: true },
  });
  const { id: personId, ...rest } = orNotFound(person, 'person', 'signInName');
  return { personId, ...rest };
}
