import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { requireRole } from '../../platform/access/require-role.js';
import { SIGNING_ROLES } from '../../platform/access/roles.js';
import { type Proof, Signers } from '../../platform/access/signers.js';
import type { Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { toInstant } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { sealSignature } from '../../records/signatures/seal-signature.js';
import { packageHead } from '../../records/work/package-head.js';
import { loadStepForUpdate, touchStep } from '../../records/work/step-records.js';
import type { UndoneSignatureDto } from './signing.dto.js';

/** What is undone, why and by whom. */
export interface UndoSignature extends Proof {
  readonly signatureId: string;
  readonly reason: string;
}

/** Undoing a signature: it stays visible and no longer counts. */
@Injectable()
export class UndoSignatureService {
  constructor(
    private readonly acts: Acts,
    private readonly signers: Signers,
    private readonly journal: Journal,
    private readonly clock: Clock,
  ) {}

  /**
   * Voids a signature with its reason, signed again by its signer or by certifying staff. An inspection that covered
   * it no longer counts; a component that its step moved stays where it was put.
   * Refuses: as Signers.prove does, NOT_FOUND, WRONG_STATE, ALREADY_VOIDED, NOT_ALLOWED.
   */
  async undo(actor: Actor, act: ActRequest, undoing: UndoSignature): Promise<UndoneSignatureDto> {
    const signer = await this.signers.prove(actor, undoing);
    const { operatorId } = signer;
    return this.acts.perform(signer, act, async (tx) => {
      const row = await findSignature(tx, operatorId, undoing.signatureId);
      const { packageId, step } = await loadStepForUpdate(tx, operatorId, row.stepId);
      const kept = step.signatures.find((each) => each.id === row.id);
      if (kept === undefined || kept.undone) refuse({ code: 'ALREADY_VOIDED', what: 'the signature' });
      await requireRole(
        tx,
        signer,
        kept.personId === signer.personId ? SIGNING_ROLES.done : ['certifying-staff'],
      );
      const head = await packageHead(tx, operatorId, packageId);
      const number = await this.journal.number(tx);
      const { reason } = undoing;
      const { number: stepNumber, title } = step.definition;
      const what = kept.meaning === 'done' ? 'signature' : 'inspection';
      const sealed = await sealSignature(tx, {
        purpose: 'correction',
        signer,
        statement: `The ${what} of step ${stepNumber}, ${title}, by ${kept.personName} does not hold. Why: ${reason}\nSigned by ${signer.fullName}`,
        subject: { kind: 'step-signature', id: row.id },
        contentHash: kept.contentHash,
        ruleSet: head.ruleSet,
        at: toInstant(this.clock.now()),
        number,
      });
      await tx.stepSignature.updateMany({
        where: { operatorId, id: row.id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      const version = await touchStep(tx, operatorId, step.id);
      await this.journal.append(tx, signer, {
        number,
        stream: packageId,
        kind: 'step-signature-undone',
        body: plainJson({
          stepSignatureId: row.id,
          signatureId: sealed.id,
          packageId,
          packageNumber: head.number,
          step: { id: step.id, number: stepNumber, title },
          meaning: kept.meaning,
          signedBy: kept.personName,
          reason,
          method: signer.method,
          signed: sealed.signed,
          signatureHash: sealed.hash,
        }),
        about: [step.id, ...(head.airframe === null ? [] : [head.airframe.id])],
        key: act.key,
      });
      const body = {
        ...{ id: row.id, stepId: step.id, packageId },
        undoneBy: signer.fullName,
        reason,
        version,
      };
      return { status: 200, body, resource: `/api/steps/${step.id}`, version, number };
    });
  }
}

async function findSignature(
  tx: Tx,
  operatorId: number,
  id: string,
): Promise<{ id: string; stepId: string }> {
  const where = { operatorId_id: { operatorId, id } };
  return orNotFound(
    await tx.stepSignature.findUnique({ where, select: { id: true, stepId: true } }),
    'signature',
  );
}
