import { Injectable } from '@nestjs/common';
import { type ChangePlan, planChange } from '@strutbook/domain/changes/plan-change.js';
import type { RefusalCode } from '@strutbook/domain/refusals.js';
import { checkRelease } from '@strutbook/domain/release/check-release.js';
import type { Objection } from '@strutbook/domain/release/objection.js';
import { NOTHING_ELSE } from '@strutbook/domain/release/snapshot.js';
import { type ResolvedBoundary, resolveBoundary } from '@strutbook/domain/stays/boundary.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { type CountersDto, toCounters } from '../../platform/http/counters.dto.js';
import { fromInstant, instantToWire } from '../../platform/http/instants.js';
import { orRefuse, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Projections } from '../due-points/projections.js';
import { EngineSnapshots } from '../lives/engine-snapshots.js';
import { ratingsAt } from '../lives/ratings.js';
import { refuseFutureBoundary } from '../stays/future-boundary.js';
import { boundaryText, Stays } from '../stays/stays.js';
import { Counters } from '../usage/counters.js';
import { countersWith, requireReadings, writeReadings } from './counter-of-change.js';
import {
  type LoadedSlotChange,
  loadSlotChange,
  type SlotChange,
  type ToldReading,
} from './load-slot-change.js';

/** A component of a change with its counters at that instant. */
export interface ChangedComponent {
  readonly id: string;
  readonly serialNumber: string;
  readonly partNumber: string;
  readonly description: string;
  readonly sinceNew: CountersDto;
  /** Since the installation that ends; null for what goes on. */
  readonly sinceInstalled: CountersDto | null;
}

/** A change planned and computed, with nothing written. */
export interface PlannedSlotChange {
  readonly loaded: LoadedSlotChange;
  readonly plan: ChangePlan;
  readonly resolved: ResolvedBoundary;
  readonly outgoing: ChangedComponent | null;
  readonly incoming: ChangedComponent | null;
  /** The rating the incoming engine will run at; null when none is recorded. */
  readonly ratingCode: string | null;
  /** The rating to record from then on; null when nothing changes. */
  readonly newRatingId: string | null;
}

/** The package a change is recorded for, and the number of its act. */
export interface ChangeOfPackage {
  readonly packageId: string;
  readonly packageNumber: string;
  readonly number: bigint;
}

/** Changes at slots: planned with the counters of what moves, and written with all that follows from them. */
@Injectable()
export class SlotChanges {
  constructor(
    private readonly counters: Counters,
    private readonly engines: EngineSnapshots,
    private readonly stays: Stays,
    private readonly projections: Projections,
    private readonly clock: Clock,
  ) {}

  /**
   * Plans a change; to record it, lock it by `lockSlotChange` first. `blame` names the fields of the request where
   * the rule itself speaks of a slot.
   * Refuses as planChange does, and NOT_FOUND, INSIDE_ITSELF, IN_THE_FUTURE; of an auxiliary power unit
   * READING_MISSING and as checkReading does.
   */
  async plan(
    tx: Tx,
    operatorId: number,
    change: SlotChange,
    blame: Readonly<Partial<Record<RefusalCode, string>>> = {},
  ): Promise<PlannedSlotChange> {
    const loaded = await loadSlotChange(tx, operatorId, change);
    const resolved = orRefuse(resolveBoundary(change.boundary, loaded.facts));
    refuseFutureBoundary(change.boundary, resolved.at, this.clock.now());
    // What is impossible is told before the lives in the incoming engine are read.
    const planned = planChange(loaded.request, loaded.facts);
    const possible = orRefuse(planned, planned.ok ? undefined : blame[planned.refusal.code]);
    await requireReadings(tx, operatorId, loaded, resolved.at);
    const rating = await this.rating(tx, operatorId, loaded, resolved.at);
    const lives = await this.objectionsToEngine(tx, operatorId, loaded, resolved.at, rating.now);
    const plan = { ...possible, objections: [...possible.objections, ...lives] };
    const ended = loaded.facts.slot.stays.find((stay) => plan.ends.some((end) => end.stayId === stay.id));
    const outgoingId = change.outgoing === null ? null : (ended?.componentId ?? null);
    const { readings } = change;
    const moved = (id: string | null, comesOff: boolean) =>
      id === null
        ? null
        : this.component(tx, operatorId, id, {
            at: resolved.at,
            comesOff,
            reading: comesOff ? readings.outgoing : readings.incoming,
          });
    return {
      loaded,
      plan,
      resolved,
      outgoing: await moved(outgoingId, true),
      incoming: await moved(change.incomingId, false),
      ratingCode: rating.code,
      newRatingId: rating.changesTo,
    };
  }

  /**
   * Writes a planned change: stays, rating, what the package keeps of it, exposures and due points. Answers the ids of
   * the components moved. PostgreSQL has the last word on overlaps and flights.
   */
  async write(
    tx: Tx,
    operatorId: number,
    planned: PlannedSlotChange,
    work: ChangeOfPackage,
  ): Promise<string[]> {
    const stays = await this.moveComponents(tx, operatorId, planned, work);
    await writeReadings(tx, operatorId, planned, { ...stays, number: work.number });
    if (planned.newRatingId !== null && planned.incoming !== null)
      await tx.ratingChange.create({
        data: {
          operatorId,
          id: newId(),
          componentId: planned.incoming.id,
          ratingId: planned.newRatingId,
          at: fromInstant(planned.resolved.at),
          source: `Change ${work.packageNumber}`,
          recordedSeq: work.number,
        },
      });
    await keepChange(tx, operatorId, planned, work);
    const moved = [planned.outgoing, planned.incoming].flatMap((component) => component?.id ?? []);
    await this.projections.ofComponents(tx, operatorId, moved);
    return moved;
  }

  /**
   * Writes the moves of a planned change that no package made: a shop's. The caller keeps what it is for, and computes
   * again what rests on it.
   */
  async move(tx: Tx, operatorId: number, planned: PlannedSlotChange, number: bigint): Promise<void> {
    await this.moveComponents(tx, operatorId, planned, { packageId: null, number });
  }

  /** Closes what ends, then opens what begins: so nothing needs to be deferrable. */
  private async moveComponents(
    tx: Tx,
    operatorId: number,
    { loaded: { change }, plan }: PlannedSlotChange,
    { packageId, number }: { readonly packageId: string | null; readonly number: bigint },
  ): Promise<{ readonly ended: readonly string[]; readonly installed: string | null }> {
    const { boundary, reason } = change;
    for (const end of plan.ends)
      await this.stays.end(tx, operatorId, { ...end, boundary, number, packageId, reason });
    let installed: string | null = null;
    for (const open of plan.opens) {
      const id = await this.stays.open(tx, operatorId, number, {
        ...open,
        fromBoundary: boundary,
        toBoundary: open.to === null ? null : boundary,
        reason,
        packageId,
      });
      if (open.slotId !== null) installed = id;
    }
    return { ended: plan.ends.map((end) => end.stayId), installed };
  }

  private async component(
    tx: Tx,
    operatorId: number,
    id: string,
    {
      at,
      comesOff,
      reading,
    }: { readonly at: Instant; readonly comesOff: boolean; readonly reading: ToldReading | null },
  ): Promise<ChangedComponent> {
    const { serialNumber, partNumber, description, engineModelId } = await tx.component.findUniqueOrThrow({
      where: { operatorId_id: { operatorId, id } },
    });
    // What comes off was installed until this instant: its counters are read just where they end.
    const counters = (await this.counters.of(tx, operatorId, [id], fromInstant(at))).get(id);
    const sinceNew = counters?.sinceNew ?? { minutes: null, cycles: null };
    const sinceInstalled = comesOff ? (counters?.sinceInstalled ?? null) : null;
    const told = await countersWith(tx, operatorId, { id, engineModelId, at, reading });
    return {
      id,
      serialNumber,
      partNumber,
      description,
      sinceNew: toCounters(told(sinceNew)),
      sinceInstalled: sinceInstalled === null ? null : toCounters(told(sinceInstalled)),
    };
  }

  private async rating(
    tx: Tx,
    operatorId: number,
    { change: { incomingId, ratingCode }, slot, modelId }: LoadedSlotChange,
    at: Instant,
  ) {
    if (incomingId === null || slot.kind !== 'engine') return { now: null, code: null, changesTo: null };
    // The rating then, not the one of today: a change entered late may lie before a later change of rating.
    const current = (await ratingsAt(tx, operatorId, [incomingId], fromInstant(at))).get(incomingId) ?? null;
    const ratings =
      modelId === null ? [] : await tx.rating.findMany({ where: { operatorId, engineModelId: modelId } });
    const code = ratingCode ?? ratings.find((rating) => rating.id === current)?.code ?? null;
    const chosen = code === null ? null : (ratings.find((rating) => rating.code === code) ?? null);
    if (code !== null && chosen === null)
      refuse({ code: 'NOT_FOUND', what: `rating ${code} of this engine's model`, field: 'ratingCode' });
    return {
      now: chosen?.id ?? null,
      code,
      changesTo: chosen !== null && chosen.id !== current ? chosen.id : null,
    };
  }

  /** What is held against the lives in an incoming engine, at that instant and at the rating it will run at. */
  private async objectionsToEngine(
    tx: Tx,
    operatorId: number,
    { change: { incomingId }, slot: { kind, position, airframe } }: LoadedSlotChange,
    at: Instant,
    ratingId: string | null,
  ): Promise<readonly Objection[]> {
    if (incomingId === null || kind !== 'engine' || position === null || airframe === null) return [];
    const willRunAt = new Map(ratingId === null ? [] : [[incomingId, ratingId]]);
    const snapshots = await this.engines.of(tx, operatorId, [incomingId], fromInstant(at), willRunAt);
    const engine = snapshots.get(incomingId);
    if (engine === undefined) return [];
    const held = checkRelease({
      package: {
        id: '',
        kind: 'engine-change',
        airframeId: airframe.id,
        registration: airframe.registration,
        ruleSet: '',
      },
      at,
      positions: [{ positionId: position.id, number: position.number, engine }],
      ...NOTHING_ELSE,
    });
    // What is held against the engine itself is told by the plan already.
    return held.filter(({ code, record }) => code !== 'PART_UNSERVICEABLE' || record.id !== incomingId);
  }
}

/** What came off and what went on, with the counters of that instant. */
async function keepChange(
  tx: Tx,
  operatorId: number,
  { loaded: { change, slot }, resolved, outgoing, incoming }: PlannedSlotChange,
  { packageId, number }: ChangeOfPackage,
): Promise<void> {
  await tx.packageChange.create({
    data: {
      operatorId,
      id: newId(),
      packageId,
      slotId: slot.id,
      positionId: slot.position?.id ?? null,
      outgoingId: outgoing?.id ?? null,
      incomingId: incoming?.id ?? null,
      at: fromInstant(resolved.at),
      boundaryKind: change.boundary.kind,
      boundaryText: boundaryText(change.boundary) ?? instantToWire(resolved.at),
      reason: change.reason,
      counters: JSON.stringify({ outgoing, incoming }),
      recordedSeq: number,
    },
  });
}
