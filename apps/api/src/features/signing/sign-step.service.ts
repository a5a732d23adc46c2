import { Injectable } from '@nestjs/common';
import type { CounterFigures } from '@strutbook/domain/runs/apu-counter.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { StepFacts } from '@strutbook/domain/work/step-standing.js';
import type { Actor } from '../../platform/access/actor.js';
import { type Proof, type Signer, Signers } from '../../platform/access/signers.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts, type Done } from '../../platform/http/acts.js';
import { fromInstant, instantToWire, toInstant } from '../../platform/http/instants.js';
import { toObjection } from '../../platform/http/objection.dto.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { refuseFuture } from '../../platform/time/refuse-future.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { type SealedSignature, sealSignature } from '../../records/signatures/seal-signature.js';
import { stepFacts } from '../../records/work/kept-step.js';
import { type Order, ordersOf } from '../../records/work/orders.js';
import { type PackageHead, packageHead } from '../../records/work/package-head.js';
import { loadStepForUpdate, outlineOfStep, stepIn, touchStep } from '../../records/work/step-records.js';
import { type Covered, requireSignable } from './may-be-signed.js';
import { type Asked, type Meaning, wordsOf } from './signed-words.js';
import { SignerAuthority } from './signer-authority.js';
import type { GivenSignatureDto } from './signing.dto.js';
import { type MadeMove, StepMoves } from './step-moves.js';

/** What a signer sends. */
export interface SignStep extends Proof {
  readonly stepId: string;
  readonly meaning: Meaning;
  readonly performedAt: Date;
  /** The digest of the words that were seen. */
  readonly digest: string;
  readonly reinspectionReason: string | null;
  /** What the counter of an auxiliary power unit showed that the step moves. */
  readonly counterReading: CounterFigures | null;
}

/** A step under its lock, with all that its signature rests on. */
interface Ready {
  readonly head: PackageHead;
  readonly orders: readonly Order[];
  readonly step: StepFacts;
  readonly all: readonly StepFacts[];
  readonly performedAt: Instant;
}

interface Writing extends Ready {
  readonly signer: Signer;
  readonly tablet: Actor;
  readonly statement: string;
  readonly covered: Covered;
  readonly meaning: Meaning;
  readonly now: Instant;
  readonly number: bigint;
  readonly key: string;
  readonly counterReading: CounterFigures | null;
}

const NOTHING_MOVED: MadeMove = { moved: [], objections: [] };

/** Signatures on steps: that one was done, or that another person looked at it. */
@Injectable()
export class SignStepService {
  constructor(
    private readonly acts: Acts,
    private readonly signers: Signers,
    private readonly authority: SignerAuthority,
    private readonly moves: StepMoves,
    private readonly journal: Journal,
    private readonly clock: Clock,
  ) {}

  /**
   * Signs a step's exact content. The signer is the person of the session or another one at the same tablet, proven
   * by password or PIN, judged by their own roles and authorisations; the act and its entry are theirs. A step that
   * moves a component moves it in the same act, at the moment it was performed.
   *
   * A step may be signed some time after it was done, also after its package was opened later than the work began:
   * only what it waits for must have been performed before it.
   * Refuses: as Signers.prove, SignerAuthority.check, requireSignable and StepMoves.make do, and NOT_FOUND,
   * WRONG_STATE, IN_THE_FUTURE, CHECK_CHANGED.
   */
  async sign(actor: Actor, act: ActRequest, signing: SignStep): Promise<GivenSignatureDto> {
    const signer = await this.signers.prove(actor, signing);
    refuseFuture(signing.performedAt, 'performedAt', this.clock.now());
    return this.acts.perform(signer, act, async (tx) => {
      const { meaning } = signing;
      const ready = await this.lock(tx, signer, signing);
      const { head, step, all } = ready;
      await this.authority.check(tx, signer, meaning, head);
      const asked: Asked = { ...ready, meaning, signer, reinspectionReason: signing.reinspectionReason };
      const now = toInstant(this.clock.now());
      const covered = requireSignable(asked, all, now);
      const { statement, digest } = wordsOf(asked);
      if (digest !== signing.digest)
        refuse({
          code: 'CHECK_CHANGED',
          what: `step ${step.definition.number}`,
          seen: signing.digest,
          now: digest,
        });
      const number = await this.journal.number(tx);
      const given = {
        signer,
        tablet: actor,
        statement,
        covered,
        meaning,
        now,
        number,
        key: act.key,
        counterReading: signing.counterReading,
      };
      return this.write(tx, { ...ready, ...given });
    });
  }

  /**
   * Locks heads and components where the step moves them, the package against its release, then the step, and reads
   * again: what is locked first is known from a look before any lock, which an amended order outdates.
   */
  private async lock(tx: Tx, { operatorId }: Signer, signing: SignStep): Promise<Ready> {
    const { stepId, meaning } = signing;
    const performedAt = toInstant(signing.performedAt);
    const { packageId, moves } = await outlineOfStep(tx, operatorId, stepId);
    const direction = meaning === 'done' ? moves : null;
    const [orderSeen = null] = direction === null ? [] : await ordersOf(tx, operatorId, packageId);
    if (direction !== null && orderSeen !== null)
      await this.moves.lock(tx, operatorId, { order: orderSeen, direction, at: performedAt });
    const locked = await loadStepForUpdate(tx, operatorId, stepId);
    const orders = await ordersOf(tx, operatorId, packageId);
    if (direction !== null && orders[0]?.id !== orderSeen?.id)
      refuse({ code: 'CHECK_CHANGED', what: 'the order' });
    const all = locked.all.map(stepFacts);
    const head = await packageHead(tx, operatorId, packageId);
    return { head, orders, step: stepIn(all, stepId), all, performedAt };
  }

  private async write(tx: Tx, writing: Writing): Promise<Done<GivenSignatureDto>> {
    const { signer, head, step, statement, covered, meaning, performedAt, now, number } = writing;
    const made = await this.move(tx, writing);
    const sealed = await sealSignature(tx, {
      purpose: meaning === 'done' ? 'step' : 'inspection',
      signer,
      statement,
      subject: { kind: 'work-step', id: step.id },
      contentHash: step.contentHash,
      ruleSet: head.ruleSet,
      at: now,
      number,
    });
    const id = newId();
    await tx.stepSignature.create({
      data: {
        operatorId: signer.operatorId,
        id,
        packageId: head.id,
        stepId: step.id,
        signatureId: sealed.id,
        meaning,
        coversId: covered.coversId,
        contentHash: new Uint8Array(Buffer.from(step.contentHash, 'hex')),
        performedAt: fromInstant(performedAt),
        reinspectionReason: covered.reinspectionReason,
        recordedSeq: number,
      },
    });
    const version = await touchStep(tx, signer.operatorId, step.id);
    await this.enter(tx, writing, { id, sealed, made });
    const body: GivenSignatureDto = {
      id,
      stepId: step.id,
      packageId: head.id,
      meaning,
      ...covered,
      personId: signer.personId,
      person: signer.fullName,
      licence: signer.licence,
      method: signer.method,
      performedAt: instantToWire(performedAt),
      signedAt: instantToWire(now),
      statement,
      contentHash: step.contentHash,
      signatureHash: sealed.hash,
      moved: [...made.moved],
      objections: made.objections.map(toObjection),
      version,
    };
    return { status: 201, body, resource: `/api/steps/${step.id}`, version, number };
  }

  private move(
    tx: Tx,
    {
      signer,
      head,
      orders: [order],
      step,
      all,
      meaning,
      performedAt,
      number,
      counterReading: reading,
    }: Writing,
  ): Promise<MadeMove> {
    const direction = step.definition.moves;
    if (meaning !== 'done' || direction === null) {
      if (reading !== null)
        refuse({ code: 'READING_NOT_ASKED', serial: 'What this step is about' }, 'counterReading');
      return Promise.resolve(NOTHING_MOVED);
    }
    if (order === undefined)
      refuse({
        code: 'REFUSED_BY_FACTS',
        field: 'order',
        reason: 'This step moves a component, and the package has no order that says which.',
        fix: 'Give the package its order first.',
      });
    const move = { head, order, direction, at: performedAt, steps: all, number, reading };
    return this.moves.make(tx, signer.operatorId, move);
  }

  private async enter(
    tx: Tx,
    { signer, tablet, head, orders: [order], step, meaning, performedAt, number, key }: Writing,
    { id, sealed, made }: { readonly id: string; readonly sealed: SealedSignature; readonly made: MadeMove },
  ): Promise<void> {
    const { number: stepNumber, title } = step.definition;
    const moved = made.moved.map((each) => each.id);
    const place = moved.length === 0 ? undefined : order?.position?.id;
    await this.journal.append(tx, signer, {
      number,
      stream: head.id,
      kind: meaning === 'done' ? 'step-signed' : 'step-inspected',
      body: plainJson({
        stepSignatureId: id,
        signatureId: sealed.id,
        packageId: head.id,
        packageNumber: head.number,
        step: { id: step.id, number: stepNumber, title },
        performedAt: instantToWire(performedAt),
        method: signer.method,
        // Another person's session, at whose tablet it was signed.
        session: tablet.personId === signer.personId ? null : tablet.fullName,
        signed: sealed.signed,
        signatureHash: sealed.hash,
        moved: made.moved,
      }),
      about: [step.id, head.airframe?.id, place, ...moved].filter((each) => each !== undefined),
      key,
    });
  }
}
