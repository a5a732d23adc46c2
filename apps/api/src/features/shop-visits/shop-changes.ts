import { Injectable } from '@nestjs/common';
import type { RefusalCode } from '@strutbook/domain/refusals.js';
import type { Objection } from '@strutbook/domain/release/objection.js';
import { type DispositionMethod, needsDisposition } from '@strutbook/domain/shop/disposition.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { momentOf, toInstant } from '../../platform/http/instants.js';
import { RefusalError, refuse } from '../../platform/problems/refusal.error.js';
import { locationOfRemoved } from '../../records/changes/named-rows.js';
import { SlotChanges } from '../../records/changes/slot-changes.js';
import { Structure } from '../../records/stays/structure.js';
import type { NewShopChangeDto } from './shop-visit.dto.js';

/** What a shop did to the places of one component. */
export interface ShopMoves {
  readonly componentId: string;
  readonly sentAt: Date;
  readonly returnedAt: Date;
  readonly changes: readonly NewShopChangeDto[];
  readonly number: bigint;
}

/** A change as it was made, ready to be kept with the return. */
export interface MadeShopChange {
  readonly id: string;
  readonly slotId: string;
  readonly outgoingId: string | null;
  readonly incomingId: string | null;
  readonly removedToId: string | null;
  readonly at: Date;
  readonly reason: string;
  readonly certificate: string | null;
  readonly disposition: DispositionMethod | null;
  readonly dispositionText: string | null;
  readonly objections: readonly Objection[];
}

interface Asked extends NewShopChangeDto {
  readonly index: number;
  readonly when: Date;
}

/** Modules and parts off and on in a shop: the same rules as everywhere, without a package. */
@Injectable()
export class ShopChanges {
  constructor(
    private readonly slotChanges: SlotChanges,
    private readonly structure: Structure,
  ) {}

  /**
   * Makes the changes in order of their instants. The caller holds the components' locks, and computes again what rests on
   * them. Refuses as planChange does, NOT_FOUND, INVALID_FIELDS and REFUSED_BY_FACTS, each about 'changes[n]…'.
   */
  async make(tx: Tx, operatorId: number, moves: ShopMoves): Promise<MadeShopChange[]> {
    const made: MadeShopChange[] = [];
    for (const asked of inOrder(moves)) {
      try {
        made.push(await this.one(tx, operatorId, asked, moves));
      } catch (error) {
        throw aboutChange(error, asked.index);
      }
    }
    return made.map((change) => withDisposition(change, made, moves.componentId));
  }

  private async one(tx: Tx, operatorId: number, asked: Asked, moves: ShopMoves): Promise<MadeShopChange> {
    const { componentId, number } = moves;
    await this.refuseElsewhere(tx, operatorId, { slotId: asked.slotId, componentId, at: asked.when });
    const outgoingSerial = asked.outgoingSerial ?? null;
    const removedToId =
      outgoingSerial === null
        ? null
        : await locationOfRemoved(tx, operatorId, asked.removedToLocation ?? null, 'removedToLocation');
    const planned = await this.slotChanges.plan(
      tx,
      operatorId,
      {
        slotId: asked.slotId,
        outgoing:
          outgoingSerial === null || removedToId === null
            ? null
            : { serial: outgoingSerial, toLocationId: removedToId },
        incomingId: asked.incomingId ?? null,
        boundary: { kind: 'instant', at: toInstant(asked.when) },
        ratingCode: null,
        reason: asked.reason,
        // In a shop nothing hangs at a position: no counter of its own is read.
        readings: { outgoing: null, incoming: null },
        readingFields: { outgoing: 'slotId', incoming: 'slotId' },
      },
      FIELDS,
    );
    await this.slotChanges.move(tx, operatorId, planned, number);
    return {
      id: newId(),
      slotId: asked.slotId,
      outgoingId: planned.outgoing?.id ?? null,
      incomingId: planned.incoming?.id ?? null,
      removedToId,
      at: asked.when,
      reason: asked.reason,
      certificate: asked.certificate ?? null,
      disposition: asked.disposition?.method ?? null,
      dispositionText: asked.disposition?.text ?? null,
      objections: [
        ...planned.plan.objections,
        ...(await this.uncontrolled(tx, operatorId, planned.outgoing?.id)),
      ],
    };
  }

  /** What would be held against a part that came off without a word on how it is controlled; only a limited one needs it. */
  private async uncontrolled(
    tx: Tx,
    operatorId: number,
    id: string | undefined,
  ): Promise<readonly Objection[]> {
    if (id === undefined) return [];
    const { lifeLimited, serialNumber, partNumber } = await tx.component.findUniqueOrThrow({
      where: { operatorId_id: { operatorId, id } },
      select: { lifeLimited: true, serialNumber: true, partNumber: true },
    });
    if (!lifeLimited) return [];
    return [
      {
        code: 'DISPOSITION_MISSING',
        severity: 'advisory',
        positionNumber: null,
        record: { kind: 'component', id },
        detail: { serial: serialNumber, partNumber },
      },
    ];
  }

  private async refuseElsewhere(
    tx: Tx,
    operatorId: number,
    { slotId, componentId, at }: { readonly slotId: string; readonly componentId: string; readonly at: Date },
  ): Promise<void> {
    const slots = await this.structure.beneath(tx, operatorId, [componentId], at);
    if (slots.some((slot) => slot.slotId === slotId)) return;
    refuse({
      code: 'REFUSED_BY_FACTS',
      field: 'slotId',
      reason: 'This place is not in the component that was in the shop, at that moment.',
      fix: 'Choose a place of it, or of a module that was in it then.',
    });
  }
}

/** Where the rules themselves speak of a boundary, a slot or a serial. */
const FIELDS: Readonly<Partial<Record<RefusalCode, string>>> = {
  NOT_INSTALLED_THERE: 'outgoingSerial',
  SLOT_OCCUPIED: 'outgoingSerial',
  NOTHING_TO_CHANGE: 'slotId',
  ALREADY_INSTALLED: 'incomingId',
  WRONG_KIND: 'incomingId',
  INSIDE_ITSELF: 'incomingId',
  AFTER_SCRAP: 'incomingId',
  SAME_PLACE: 'incomingId',
  STAY_OVERLAP: 'at',
  ENDS_BEFORE_START: 'at',
  NOT_OPEN: 'at',
  BEFORE_OPENING: 'at',
  BEFORE_MANUFACTURE: 'at',
  INSIDE_A_FLIGHT: 'at',
};

function inOrder({ changes, sentAt, returnedAt }: ShopMoves): Asked[] {
  const asked = changes.map((change, index) => ({
    ...change,
    index,
    when: change.at == null ? returnedAt : momentOf(change.at),
  }));
  for (const { index, when } of asked)
    if (when < sentAt || when > returnedAt)
      refuse({
        code: 'INVALID_FIELDS',
        fields: [
          {
            field: `changes[${index}].at`,
            reason: 'It was not in the shop at that moment.',
            fix: 'Give a moment between dispatch and return, or leave it out.',
          },
        ],
      });
  return asked.sort((a, b) => a.when.getTime() - b.when.getTime() || a.index - b.index);
}

/** The same refusal, about its field within the change it came from. */
function aboutChange(error: unknown, index: number): unknown {
  if (!(error instanceof RefusalError)) return error;
  const { refusal, field } = error;
  const own = field ?? ('field' in refusal && typeof refusal.field === 'string' ? refusal.field : undefined);
  if (refusal.code === 'INVALID_FIELDS') {
    const fields = refusal.fields.map((each) => ({ ...each, field: `changes[${index}].${each.field}` }));
    return new RefusalError({ ...refusal, fields }, { cause: error });
  }
  return new RefusalError(refusal, { field: `changes[${index}].${own ?? 'slotId'}`, cause: error });
}

/** Drops the objection where a disposition is told, or none is needed: it went back to the same product within the visit. */
function withDisposition(
  change: MadeShopChange,
  all: readonly MadeShopChange[],
  componentId: string,
): MadeShopChange {
  const back = all.some(({ incomingId, at }) => incomingId === change.outgoingId && at >= change.at);
  // In a shop nothing runs that its counters would show.
  const isNeeded = needsDisposition({
    removedFromId: componentId,
    refittedToId: back ? componentId : null,
    timeAccrued: false,
  });
  if (isNeeded && change.disposition === null) return change;
  return { ...change, objections: change.objections.filter(({ code }) => code !== 'DISPOSITION_MISSING') };
}
