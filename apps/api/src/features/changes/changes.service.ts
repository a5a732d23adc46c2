import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { fromInstant } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { SlotChanges } from '../../records/changes/slot-changes.js';
import { Consequences } from '../../records/consequences/consequences.js';
import { Journal } from '../../records/journal/journal.js';
import { plainJson } from '../../records/journal/plain-json.js';
import type { ChangePreviewDto, RecordedChangeDto } from './change.dto.js';
import type { ChangeCommand } from './change-command.js';
import { type PlannedChange, PreviewChange } from './preview-change.js';

/** Engine changes and pod swaps, each recorded as one act and as a package without steps. */
@Injectable()
export class ChangesService {
  constructor(
    private readonly db: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly slotChanges: SlotChanges,
    private readonly consequences: Consequences,
    private readonly previewChange: PreviewChange,
  ) {}

  /** What the change would record, with nothing written. */
  preview(actor: Actor, command: ChangeCommand): Promise<ChangePreviewDto> {
    return this.db.inOperator(
      actor,
      async (tx) => (await this.previewChange.of(tx, actor.operatorId, command, { lock: false })).preview,
    );
  }

  /**
   * Records removal and installation as one act, with its package and its journal entry, or nothing.
   * Refuses as planChange does; CHECK_CHANGED when what was confirmed is no longer so.
   */
  record(
    actor: Actor,
    act: ActRequest,
    command: ChangeCommand,
    confirmDigest: string,
  ): Promise<RecordedChangeDto> {
    return this.acts.perform(actor, act, async (tx) => {
      const planned = await this.previewChange.of(tx, actor.operatorId, command, { lock: true });
      if (planned.preview.digest !== confirmDigest) refuse({ code: 'CHECK_CHANGED', what: 'change' });
      const { preview, airframe } = planned;
      const before = await this.consequences.beforeOfComponents(
        tx,
        actor.operatorId,
        [preview.outgoing, preview.incoming].flatMap((each) => each?.id ?? []),
        { airframeIds: [airframe.id], from: fromInstant(planned.planned.resolved.at) },
      );
      const number = await this.journal.number(tx);
      const written = await this.write(tx, actor, { command, planned, number, key: act.key });
      const consequences = await this.consequences.since(tx, actor.operatorId, before);
      const body = { ...written, consequences };
      return { status: 201, body, version: 1, resource: `/api/packages/${body.id}` };
    });
  }

  private async write(
    tx: Tx,
    actor: Actor,
    change: ChangeToWrite,
  ): Promise<Omit<RecordedChangeDto, 'consequences'>> {
    const { command, planned, number, key } = change;
    const { preview, airframe, positionId } = planned;
    const kind = command.slotKind === 'pod' ? 'pod-swap' : 'engine-change';
    const packageNumber = `${kind === 'pod-swap' ? 'PS' : 'EC'}-${String(number).padStart(4, '0')}`;
    const packageId = await openPackage(tx, actor, { ...change, kind, packageNumber });
    const moved = await this.slotChanges.write(tx, actor.operatorId, planned.planned, {
      packageId,
      packageNumber,
      number,
    });
    await this.journal.append(tx, actor, {
      number,
      stream: airframe.id,
      kind: kind === 'pod-swap' ? 'pod-swapped' : 'engine-changed',
      body: plainJson({ packageId, packageNumber, ...command, ...preview }),
      about: [packageId, positionId, ...moved],
      key,
    });
    const { at, objections } = preview;
    return { id: packageId, number: packageNumber, kind, version: 1, at, objections };
  }
}

interface ChangeToWrite {
  readonly command: ChangeCommand;
  readonly planned: PlannedChange;
  readonly number: bigint;
  readonly key: string;
}

async function openPackage(
  tx: Tx,
  { operatorId }: Actor,
  { command, planned, number, kind, packageNumber }: ChangeToWrite & { kind: string; packageNumber: string },
): Promise<string> {
  const { airframe } = planned;
  const id = newId();
  await tx.workPackage.create({
    data: {
      operatorId,
      id,
      number: packageNumber,
      kind,
      title: titleOf(command, airframe.registration),
      airframeId: airframe.id,
      openedAt: fromInstant(planned.planned.resolved.at),
      recordedSeq: number,
    },
  });
  return id;
}

function titleOf(
  { slotKind, positionNumber, outgoingSerial, incomingSerial }: ChangeCommand,
  registration: string,
): string {
  const what = slotKind === 'apu' ? 'Auxiliary power unit' : slotKind === 'pod' ? 'Pod' : 'Engine';
  const where = slotKind === 'apu' ? registration : `position ${positionNumber} of ${registration}`;
  const change = [
    outgoingSerial === null ? null : `${outgoingSerial} off`,
    incomingSerial === null ? null : `${incomingSerial} on`,
  ];
  return `${what}, ${where}: ${change.filter((part) => part !== null).join(', ')}`;
}
