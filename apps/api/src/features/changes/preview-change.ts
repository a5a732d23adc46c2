import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { type ChangePlan, planChange } from '@strutbook/domain/changes/plan-change.js';
import type { RefusalCode } from '@strutbook/domain/refusals.js';
import { checkRelease } from '@strutbook/domain/release/check-release.js';
import type { Objection } from '@strutbook/domain/release/objection.js';
import { type ResolvedBoundary, resolveBoundary } from '@strutbook/domain/stays/boundary.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import { canonical } from '@strutbook/journal/canonical.js';
import type { Tx } from '../../platform/database/database.js';
import { toCounters } from '../../platform/http/counters.dto.js';
import { fromInstant, instantToWire } from '../../platform/http/instants.js';
import { toObjection } from '../../platform/http/objection.dto.js';
import { orRefuse, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { plainJson } from '../../records/journal/plain-json.js';
import { EngineSnapshots } from '../../records/lives/engine-snapshots.js';
import { ratingsAt } from '../../records/lives/ratings.js';
import { refuseFutureBoundary } from '../../records/stays/future-boundary.js';
import { Counters } from '../../records/usage/counters.js';
import type { ChangedComponentDto, ChangePreviewDto } from './change.dto.js';
import type { ChangeCommand } from './change-command.js';
import { type LoadedChange, loadChange } from './change-facts.js';

/** A change planned and computed, with nothing written. */
export interface PlannedChange {
  readonly loaded: LoadedChange;
  readonly plan: ChangePlan;
  readonly resolved: ResolvedBoundary;
  readonly outgoingId: string | null;
  /** The rating to record from then on; null when nothing changes. */
  readonly newRatingId: string | null;
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
  constructor(
    private readonly counters: Counters,
    private readonly engines: EngineSnapshots,
    private readonly clock: Clock,
  ) {}

  /** Refuses as planChange does, and NOT_FOUND, INVALID_FIELDS, IN_THE_FUTURE. */
  async of(
    tx: Tx,
    operatorId: number,
    command: ChangeCommand,
    locking: { readonly lock: boolean },
  ): Promise<PlannedChange> {
    const loaded = await loadChange(tx, operatorId, command, locking);
    const resolved = orRefuse(resolveBoundary(command.boundary, loaded.facts));
    refuseFutureBoundary(command.boundary, resolved.at, this.clock.now());
    // What is impossible is told before the lives in the incoming engine are read.
    const planned = planChange(loaded.request, loaded.facts);
    const possible = orRefuse(planned, planned.ok ? undefined : FIELD_TO_BLAME[planned.refusal.code]);
    const rating = await this.rating(tx, operatorId, { command, loaded, at: resolved.at });
    const lifeObjections = await this.objectionsToIncoming(tx, operatorId, {
      command,
      loaded,
      at: resolved.at,
      ratingId: rating.now,
    });
    const plan = { ...possible, objections: [...possible.objections, ...lifeObjections] };
    const ended = loaded.facts.slot.stays.find((stay) => plan.ends.some((end) => end.stayId === stay.id));
    const outgoingId = command.outgoingSerial === null ? null : (ended?.componentId ?? null);
    const shown = {
      at: instantToWire(resolved.at),
      precision: resolved.precision,
      outgoing:
        outgoingId === null ? null : await this.component(tx, operatorId, outgoingId, resolved.at, true),
      incoming:
        loaded.incomingId === null
          ? null
          : await this.component(tx, operatorId, loaded.incomingId, resolved.at, false),
      ratingCode: rating.code,
      objections: plan.objections.map(toObjection),
    };
    const digest = createHash('sha256')
      .update(canonical(plainJson({ ...command, ...shown })))
      .digest('hex');
    return {
      loaded,
      plan,
      resolved,
      outgoingId,
      newRatingId: rating.changesTo,
      preview: { ...shown, digest },
    };
  }

  private async component(
    tx: Tx,
    operatorId: number,
    id: string,
    at: Instant,
    comesOff: boolean,
  ): Promise<ChangedComponentDto> {
    const { serialNumber, partNumber, description } = await tx.component.findUniqueOrThrow({
      where: { operatorId_id: { operatorId, id } },
    });
    // What comes off was installed until this instant: its counters are read just where they end.
    const counters = (await this.counters.of(tx, operatorId, [id], fromInstant(at))).get(id);
    const sinceNew = counters?.sinceNew ?? { minutes: null, cycles: null };
    const sinceInstalled = comesOff ? (counters?.sinceInstalled ?? null) : null;
    return {
      id,
      serialNumber,
      partNumber,
      description,
      sinceNew: toCounters(sinceNew),
      sinceInstalled: sinceInstalled === null ? null : toCounters(sinceInstalled),
    };
  }

  private async rating(
    tx: Tx,
    operatorId: number,
    {
      command,
      loaded: { incomingId, modelId },
      at,
    }: { command: ChangeCommand; loaded: LoadedChange; at: Instant },
  ) {
    if (incomingId === null || command.slotKind !== 'engine')
      return { now: null, code: null, changesTo: null };
    // The rating then, not the one of today: a change entered late may lie before a later change of rating.
    const current = (await ratingsAt(tx, operatorId, [incomingId], fromInstant(at))).get(incomingId) ?? null;
    const ratings =
      modelId === null ? [] : await tx.rating.findMany({ where: { operatorId, engineModelId: modelId } });
    const code = command.ratingCode ?? ratings.find((rating) => rating.id === current)?.code ?? null;
    const chosen = code === null ? null : (ratings.find((rating) => rating.code === code) ?? null);
    if (code !== null && chosen === null)
      refuse({ code: 'NOT_FOUND', what: `rating ${code} of this engine's model`, field: 'ratingCode' });
    return {
      now: chosen?.id ?? null,
      code,
      changesTo: chosen !== null && chosen.id !== current ? chosen.id : null,
    };
  }

  /** What is held against the lives in the incoming engine, at that instant and at the rating it will run at. */
  private async objectionsToIncoming(
    tx: Tx,
    operatorId: number,
    {
      command,
      loaded,
      at,
      ratingId,
    }: { command: ChangeCommand; loaded: LoadedChange; at: Instant; ratingId: string | null },
  ): Promise<readonly Objection[]> {
    const { incomingId, airframe, positionId } = loaded;
    if (incomingId === null || command.slotKind !== 'engine') return [];
    const willRunAt = new Map(ratingId === null ? [] : [[incomingId, ratingId]]);
    const snapshots = await this.engines.of(tx, operatorId, [incomingId], fromInstant(at), willRunAt);
    const snapshot = snapshots.get(incomingId);
    if (snapshot === undefined) return [];
    return checkRelease({
      package: {
        id: '',
        kind: 'engine-change',
        airframeId: airframe.id,
        registration: airframe.registration,
        ruleSet: '',
      },
      at,
      positions: [{ positionId, number: command.positionNumber, engine: snapshot }],
      flights: [],
      steps: [],
      plannedStayCycles: null,
    });
  }
}
