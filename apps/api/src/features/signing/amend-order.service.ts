import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { requireRole } from '../../platform/access/require-role.js';
import type { Role } from '../../platform/access/roles.js';
import { type Signer, Signers } from '../../platform/access/signers.js';
import type { Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { requireVersion } from '../../platform/http/if-match.js';
import { toInstant } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { sealSignature } from '../../records/signatures/seal-signature.js';
import { type Order, ordersOf, recordOrder } from '../../records/work/orders.js';
import { lockPackageAlone, type PackageHead, packageHead } from '../../records/work/package-head.js';
import { recordedMoves } from '../../records/work/recorded-moves.js';
import { type ResolvedOrder, resolveOrder } from '../../records/work/resolve-order.js';
import type { NewOrderDto } from '../../records/work/wire/order.dto.js';
import type { AmendedOrderDto, AmendOrderDto, EntryToRenewDto } from './amend-order.dto.js';
import { stepsToRenew, voidEntries } from './entries-of-order.js';

/** An amendment as it is sent. */
export interface AmendOrder extends AmendOrderDto {
  readonly packageId: string;
  /** The version of the package that was seen. */
  readonly seen: number;
}

interface Writing {
  readonly actor: Actor;
  readonly confirmer: Signer;
  readonly head: PackageHead;
  readonly before: Order | null;
  readonly after: ResolvedOrder;
  readonly reason: string;
  readonly number: bigint;
}

const CONFIRMERS: readonly Role[] = ['technician', 'inspector', 'certifying-staff', 'planner', 'records'];

/** An order amended by one person and confirmed by another: for work that stops because the order is wrong. */
@Injectable()
export class AmendOrderService {
  constructor(
    private readonly acts: Acts,
    private readonly signers: Signers,
    private readonly journal: Journal,
    private readonly clock: Clock,
  ) {}

  /**
   * Voids the order and adds another, confirmed by a second person. What moved already is not amended. Entries that
   * were judged by a side that changed are voided: plates and papers are read anew.
   * Refuses: as Signers.prove and resolveOrder do, REFUSED_BY_FACTS, NOT_ALLOWED, NOT_FOUND, WRONG_STATE, STALE.
   */
  async amend(actor: Actor, act: ActRequest, amending: AmendOrder): Promise<AmendedOrderDto> {
    const confirmer = await this.signers.prove(actor, amending.confirmation, 'confirmation.secret');
    if (confirmer.personId === actor.personId)
      refuse({
        code: 'REFUSED_BY_FACTS',
        field: 'confirmation.signInName',
        reason: 'An order is confirmed by a second person, and this is the first.',
        fix: 'Have a colleague look at it and confirm it.',
      });
    return this.acts.perform(actor, act, async (tx) => {
      const { packageId, seen, reason } = amending;
      const { operatorId } = actor;
      await lockPackageAlone(tx, operatorId, packageId);
      const head = await packageHead(tx, operatorId, packageId);
      requireVersion(head.version, seen, 'The package');
      await requireRole(tx, confirmer, CONFIRMERS);
      const [before = null] = await ordersOf(tx, operatorId, packageId);
      const after = await this.resolve(tx, operatorId, { head, before, order: amending.order });
      const slotChanged = before?.slot.id !== after.slotId;
      const steps = await stepsToRenew(tx, operatorId, packageId, {
        off: slotChanged || before?.outgoing?.id !== after.outgoing?.id,
        on: slotChanged || before?.incoming?.id !== after.incoming?.id,
      });
      await tx.$queryRaw`SELECT id FROM work_step WHERE operator_id = ${operatorId}::int
        AND id = ANY (${steps.map((step) => step.id)}::uuid[]) ORDER BY id FOR NO KEY UPDATE`;
      const number = await this.journal.number(tx);
      const writing = { actor, confirmer, head, before, after, reason, number };
      const orderId = await replaceOrder(tx, writing);
      const entriesToRenew = await voidEntries(tx, operatorId, steps, { number, reason });
      const { version } = await tx.workPackage.update({
        where: { operatorId_id: { operatorId, id: packageId } },
        data: { version: { increment: 1 } },
        select: { version: true },
      });
      await this.enter(tx, writing, { orderId, entriesToRenew, key: act.key });
      const body = { packageId, orderId, confirmedBy: confirmer.fullName, entriesToRenew, version };
      return { status: 201, body, resource: `/api/packages/${packageId}`, version, number };
    });
  }

  /** The order as it shall be; a side that moved stays as it was ordered. */
  private async resolve(
    tx: Tx,
    operatorId: number,
    { head, before, order }: { head: PackageHead; before: Order | null; order: NewOrderDto },
  ): Promise<ResolvedOrder> {
    const { removal, installation } =
      before === null
        ? { removal: null, installation: null }
        : await recordedMoves(tx, operatorId, { packageId: head.id, slotId: before.slot.id });
    if (installation !== null)
      refuseMoved('order.incomingSerial', `${installation.serialNumber} is installed`);
    const told = order.outgoingSerial ?? null;
    if (removal !== null && told !== null && told !== removal.serialNumber)
      refuseMoved('order.outgoingSerial', `${removal.serialNumber} is removed`);
    const resolved = await resolveOrder(
      tx,
      operatorId,
      removal === null ? order : { ...order, outgoingSerial: null },
      {
        kind: head.kind,
        airframeId: head.airframe?.id ?? null,
        componentId: head.component?.id ?? null,
        now: toInstant(this.clock.now()),
      },
    );
    if (removal === null || before === null) return resolved;
    if (resolved.slotId !== before.slot.id) refuseMoved('order.slotId', `${removal.serialNumber} is removed`);
    const { outgoing, removedTo } = before;
    return { ...resolved, outgoing, removedToId: removedTo?.id ?? null };
  }

  private async enter(
    tx: Tx,
    { actor, confirmer, head, before, after, reason, number }: Writing,
    { orderId, entriesToRenew, key }: { orderId: string; entriesToRenew: EntryToRenewDto[]; key: string },
  ): Promise<void> {
    const statement = [
      `Order of package ${head.number} amended.`,
      `Was: ${before === null ? 'no order' : orderWords(before.position?.number ?? before.slot.name, before)}`,
      `Now: ${orderWords(after.positionNumber ?? after.slotKind, after)}`,
      `Why: ${reason}`,
      `Amended by ${actor.fullName}, confirmed by ${confirmer.fullName}`,
    ].join('\n');
    const sealed = await sealSignature(tx, {
      purpose: 'change',
      signer: confirmer,
      statement,
      subject: { kind: 'order', id: orderId },
      contentHash: createHash('sha256').update(statement).digest('hex'),
      ruleSet: head.ruleSet,
      at: toInstant(this.clock.now()),
      number,
    });
    const named = [before?.outgoing, before?.incoming, after.outgoing, after.incoming, head.airframe];
    const steps = entriesToRenew.map((entry) => entry.stepId);
    await this.journal.append(tx, actor, {
      number,
      stream: head.id,
      kind: 'order-amended',
      body: plainJson({
        packageId: head.id,
        packageNumber: head.number,
        orderId,
        order: after,
        replaces: before?.id ?? null,
        reason,
        confirmedBy: { personId: confirmer.personId, fullName: confirmer.fullName, method: confirmer.method },
        signatureId: sealed.id,
        signed: sealed.signed,
        signatureHash: sealed.hash,
        entriesToRenew,
      }),
      about: [...new Set([...named.flatMap((row) => row?.id ?? []), ...steps])],
      key,
    });
  }
}

async function replaceOrder(
  tx: Tx,
  { actor: { operatorId }, confirmer, head, before, after, reason, number }: Writing,
): Promise<string> {
  if (before !== null)
    await tx.orderedChange.updateMany({
      where: { operatorId, id: before.id, voidedSeq: null },
      data: { voidedSeq: number, voidReason: reason },
    });
  return recordOrder(tx, operatorId, {
    packageId: head.id,
    order: after,
    number,
    confirmedById: confirmer.personId,
  });
}

function orderWords(
  place: number | string,
  { outgoing, incoming }: Pick<ResolvedOrder, 'outgoing' | 'incoming'>,
): string {
  const where = typeof place === 'number' ? `position ${place}` : place;
  return `${where}, ${outgoing?.serialNumber ?? 'nothing'} off, ${incoming?.serialNumber ?? 'nothing'} on`;
}

function refuseMoved(field: string, what: string): never {
  return refuse({
    code: 'REFUSED_BY_FACTS',
    field,
    reason: `${what} by this package already.`,
    fix: 'Leave that side as it is, or have the records office void its stay first.',
  });
}
