import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { RefusalCode } from '@strutbook/domain/refusals.js';
import { canonical } from '@strutbook/journal/canonical.js';
import type { Tx } from '../../platform/database/database.js';
import { instantToWire } from '../../platform/http/instants.js';
import { toObjection } from '../../platform/http/objection.dto.js';
import { lockSlotChange } from '../../records/changes/load-slot-change.js';
import { type PlannedSlotChange, SlotChanges } from '../../records/changes/slot-changes.js';
import { plainJson } from '../../records/journal/plain-json.js';
import type { ChangePreviewDto } from './change.dto.js';
import type { ChangeCommand } from './change-command.js';
import { type NamedChange, nameChange } from './slot-of-change.js';

/** A change planned and computed, with nothing written. */
export interface PlannedChange extends NamedChange {
  readonly planned: PlannedSlotChange;
  readonly preview: ChangePreviewDto;
}

/** The fields of a change where the rule itself speaks of a slot. */
const FIELD_TO_BLAME: Readonly<Partial<Record<RefusalCode, string>>> = {
  SLOT_OCCUPIED: 'outgoingSerial',
  SAME_PLACE: 'incomingSerial',
  WRONG_KIND: 'incomingSerial',
};

/** Plans a change and computes what is shown for confirmation: the same for the preview and for the record. */
@Injectable()
export class PreviewChange {
  constructor(private readonly slotChanges: SlotChanges) {}

  /** Refuses as planChange does, and NOT_FOUND, INVALID_FIELDS, IN_THE_FUTURE. */
  async of(
    tx: Tx,
    operatorId: number,
    command: ChangeCommand,
    { lock }: { readonly lock: boolean },
  ): Promise<PlannedChange> {
    const named = await nameChange(tx, operatorId, command);
    if (lock) await lockSlotChange(tx, operatorId, named.change);
    const planned = await this.slotChanges.plan(tx, operatorId, named.change, FIELD_TO_BLAME);
    const { resolved, outgoing, incoming, ratingCode, plan } = planned;
    const shown = {
      at: instantToWire(resolved.at),
      precision: resolved.precision,
      outgoing,
      incoming,
      ratingCode,
      objections: plan.objections.map(toObjection),
    };
    const digest = createHash('sha256')
      .update(canonical(plainJson({ ...command, ...shown })))
      .digest('hex');
    return { ...named, planned, preview: { ...shown, digest } };
  }
}
