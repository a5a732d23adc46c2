import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { checkRelease } from '@strutbook/domain/release/check-release.js';
import type { Objection } from '@strutbook/domain/release/objection.js';
import { type RuleSet, ruleSetOn } from '@strutbook/domain/release/rule-sets.js';
import type { ReleaseSnapshot } from '@strutbook/domain/release/snapshot.js';
import { dateOf } from '@strutbook/domain/units/calendar.js';
import { canonical, type Json } from '@strutbook/journal/canonical.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { EngineSnapshots } from '../../records/lives/engine-snapshots.js';
import { Structure } from '../../records/stays/structure.js';
import { loadWork, type WorkToRelease } from './work.js';

/** A check as it was made: what it looked at, what it found, and the digest of the first. */
export interface MadeCheck {
  readonly work: WorkToRelease;
  readonly snapshot: ReleaseSnapshot;
  readonly ruleSet: RuleSet;
  readonly objections: readonly Objection[];
  readonly digest: string;
}

// The last flights of the log, in which a page or a station may be missing.
const FLIGHTS_LOOKED_AT = 100;

/** Reads what a release is judged on and judges it: the same for advice and, under its locks, for the signature. */
@Injectable()
export class ReleaseCheck {
  constructor(
    private readonly structure: Structure,
    private readonly engines: EngineSnapshots,
    private readonly clock: Clock,
  ) {}

  /** The check on the records as this transaction sees them. Refuses: NOT_FOUND. */
  async make(tx: Tx, operatorId: number, packageId: string): Promise<MadeCheck> {
    const work = await loadWork(tx, operatorId, packageId);
    const at = toInstant(this.clock.now());
    const ruleSet = orNotFound(
      ruleSetOn(work.airframe.ruleSet, dateOf(at)),
      `rule set ${work.airframe.ruleSet}`,
    );
    const snapshot: ReleaseSnapshot = {
      package: {
        id: work.id,
        kind: work.kind,
        airframeId: work.airframe.id,
        registration: work.airframe.registration,
        ruleSet: ruleSet.code,
      },
      at,
      positions: await this.positions(tx, operatorId, work.airframe.id),
      flights: await lastFlights(tx, operatorId, work.airframe.id),
      steps: [],
      plannedStayCycles: null,
    };
    return {
      work,
      snapshot,
      ruleSet,
      objections: checkRelease(snapshot),
      digest: digestOf(snapshot, work, ruleSet),
    };
  }

  private async positions(
    tx: Tx,
    operatorId: number,
    airframeId: string,
  ): Promise<ReleaseSnapshot['positions']> {
    const slots = (await this.structure.onAirframes(tx, operatorId, [airframeId], null)).filter(
      (slot) => slot.slotKind === 'engine',
    );
    const snapshots = await this.engines.of(
      tx,
      operatorId,
      slots.flatMap((slot) => slot.componentId ?? []),
      null,
    );
    return slots.map(({ positionId, number, componentId }) => ({
      positionId,
      number,
      engine: componentId === null ? null : (snapshots.get(componentId) ?? null),
    }));
  }
}

async function lastFlights(
  tx: Tx,
  operatorId: number,
  airframeId: string,
): Promise<ReleaseSnapshot['flights']> {
  const rows = await tx.flight.findMany({
    where: { operatorId, airframeId, voidedSeq: null },
    orderBy: { landingAt: 'desc' },
    take: FLIGHTS_LOOKED_AT,
    select: { id: true, logPage: true, fromStation: true, toStation: true, takeOffAt: true, landingAt: true },
  });
  return rows.reverse().map((row) => ({
    flightId: row.id,
    page: row.logPage,
    from: row.fromStation,
    to: row.toStation,
    takeOffAt: toInstant(row.takeOffAt),
    landingAt: toInstant(row.landingAt),
  }));
}

/** What was looked at as plain JSON: exact fractions as text, all else as it is. Total. */
export function plainContent(value: unknown): Json {
  return JSON.parse(
    JSON.stringify(value, (_, member: unknown) => (typeof member === 'bigint' ? member.toString() : member)),
  ) as Json;
}

/**
 * SHA-256 of what the check looked at and what would be signed. The minute of looking is left out: the same records
 * looked at a minute later are the same.
 */
function digestOf(snapshot: ReleaseSnapshot, work: WorkToRelease, ruleSet: RuleSet): string {
  const { at: _, ...looked } = snapshot;
  const content = plainContent({
    looked,
    work: { number: work.number, version: work.version, changes: work.changes },
    statement: ruleSet.releaseStatement,
  });
  return createHash('sha256').update(canonical(content)).digest('hex');
}
