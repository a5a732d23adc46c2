import { Injectable } from '@nestjs/common';
import { floor } from '@strutbook/domain/units/fraction.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { toCounters } from '../../platform/http/counters.dto.js';
import { fromWire, toWire } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { EngineSnapshots } from '../../records/lives/engine-snapshots.js';
import { ratingsAt } from '../../records/lives/ratings.js';
import { dayIn } from '../../records/stays/day-zone.js';
import { type PositionSlot, Structure } from '../../records/stays/structure.js';
import { airframeCounters } from '../../records/usage/airframe-counters.js';
import { Counters } from '../../records/usage/counters.js';
import { latelyUsed } from '../../records/usage/lately-used.js';
import { Use } from '../../records/usage/use.js';
import { positionCards, type ShownComponent } from './cards.js';
import { limitingNow } from './limiting.js';
import { limitingThen } from './limiting-then.js';
import type { BoardRowDto, PositionCardDto, PositionsDto } from './positions.dto.js';
import type { EngineClock } from './soonest.js';
import type { Limiting } from './tightest.js';

/** What is at each position, with its counters and its tightest part. The number of statements doesn't grow with the fleet. */
@Injectable()
export class PositionsService {
  constructor(
    private readonly database: Database,
    private readonly structure: Structure,
    private readonly counters: Counters,
    private readonly engines: EngineSnapshots,
    private readonly use: Use,
    private readonly clock: Clock,
  ) {}

  /** Every airframe with its positions, now. */
  board(actor: Actor): Promise<BoardRowDto[]> {
    return this.database.inOperator(actor, async (tx) => {
      const { operatorId } = actor;
      const airframes = await tx.airframe.findMany({
        where: { operatorId },
        include: { airframeType: true },
        orderBy: { registration: 'asc' },
      });
      const ids = airframes.map((airframe) => airframe.id);
      const cards = await this.cards(tx, operatorId, null, null);
      const flown = await airframeCounters(tx, operatorId, ids, null);
      const heads = await tx.carrier.findMany({
        where: { operatorId, kind: 'airframe' },
        select: { id: true, lastLandingAt: true },
      });
      const landed = new Map(heads.map((head) => [head.id, head.lastLandingAt]));
      return airframes.map(({ id, registration, airframeType }) => {
        const counters = flown.get(id);
        const last = landed.get(id) ?? null;
        return {
          airframe: {
            id,
            registration,
            type: `${airframeType.maker} ${airframeType.designation}`,
            minutes: counters?.minutes ?? null,
            flights: counters?.cycles == null ? null : floor(counters.cycles),
            lastFlightAt: last === null ? null : toWire(last),
          },
          positions: cards.get(id) ?? [],
        };
      });
    });
  }

  /** The positions of one airframe, now or as of an instant. Refuses: NOT_FOUND. */
  ofAirframe(actor: Actor, id: string, wire: string | undefined): Promise<PositionsDto> {
    const at = wire === undefined ? null : fromWire(wire);
    return this.database.inOperator(actor, async (tx) => {
      const { operatorId } = actor;
      const found = await tx.airframe.findUnique({
        where: { operatorId_id: { operatorId, id } },
        include: { airframeType: true },
      });
      const airframe = orNotFound(found, 'airframe');
      const cards = await this.cards(tx, operatorId, id, at);
      const counters = (await airframeCounters(tx, operatorId, [id], at)).get(id);
      const last = await tx.flight.findFirst({
        where: {
          operatorId,
          airframeId: id,
          voidedSeq: null,
          ...(at === null ? {} : { landingAt: { lte: at } }),
        },
        orderBy: { landingAt: 'desc' },
        select: { landingAt: true, logPage: true },
      });
      return {
        airframe: {
          id,
          registration: airframe.registration,
          serialNumber: airframe.serialNumber,
          type: `${airframe.airframeType.maker} ${airframe.airframeType.designation}`,
          ruleSet: airframe.ruleSet,
          counters: toCounters(counters ?? { minutes: null, cycles: null }),
          lastLandingAt: last === null ? null : toWire(last.landingAt),
          lastLogPage: last?.logPage ?? null,
        },
        at: at === null ? null : toWire(at),
        positions: cards.get(id) ?? [],
      };
    });
  }

  private async cards(
    tx: Tx,
    operatorId: number,
    airframeId: string | null,
    at: Date | null,
  ): Promise<ReadonlyMap<string, PositionCardDto[]>> {
    const slots = await this.structure.onAirframes(
      tx,
      operatorId,
      airframeId === null ? null : [airframeId],
      at,
    );
    const ids = slots.flatMap((slot) => slot.componentId ?? []);
    const rows = await tx.component.findMany({
      where: { operatorId, id: { in: ids } },
      include: { engineModel: true },
    });
    const engineIds = rows.filter((row) => row.kind !== 'pod').map((row) => row.id);
    const ratingOf = await ratingsAt(tx, operatorId, engineIds, at);
    const ratings = await tx.rating.findMany({ where: { operatorId, id: { in: [...ratingOf.values()] } } });
    const codes = new Map(ratings.map((rating) => [rating.id, rating.code]));
    return positionCards({
      slots,
      components: new Map(
        rows.map(({ id, serialNumber, partNumber, engineModel }): [string, ShownComponent] => [
          id,
          {
            id,
            serialNumber,
            partNumber,
            model: engineModel === null ? null : `${engineModel.maker} ${engineModel.designation}`,
          },
        ]),
      ),
      counters: await this.counters.of(tx, operatorId, engineIds, at),
      ratingCodes: new Map(
        [...ratingOf].flatMap(([engineId, ratingId]) => {
          const code = codes.get(ratingId);
          return code === undefined ? [] : [[engineId, code] as const];
        }),
      ),
      limiting:
        at === null
          ? await limitingNow(tx, operatorId, engineIds)
          : await this.limitingThen(tx, operatorId, engineIds, at),
      clockOf: await this.clocks(tx, operatorId, slots, at),
    });
  }

  /** What days are projected from at each position: its use of the 90 days before, by any rule. */
  private async clocks(
    tx: Tx,
    operatorId: number,
    slots: readonly PositionSlot[],
    at: Date | null,
  ): Promise<(positionId: string) => EngineClock> {
    const now = this.clock.now();
    const positionIds = slots.map((slot) => slot.positionId);
    const clocks = await latelyUsed(tx, operatorId, positionIds, { at, now });
    const rules = new Map(
      (await tx.cycleRule.findMany({ where: { operatorId } })).map((rule) => [rule.id, rule]),
    );
    return (positionId) => {
      const clock = clocks.get(positionId);
      return {
        clock,
        ruleOf: (ruleId) => rules.get(ruleId),
        today: dayIn(clock?.dayZone ?? 'UTC', at ?? now),
      };
    };
  }

  private async limitingThen(
    tx: Tx,
    operatorId: number,
    engineIds: readonly string[],
    at: Date,
  ): Promise<Limiting[]> {
    const snapshots = [...(await this.engines.of(tx, operatorId, engineIds, at)).values()];
    const partIds = snapshots.flatMap((engine) =>
      engine.limitedParts.flatMap((slot) => slot.part?.componentId ?? []),
    );
    const parts = await tx.component.findMany({
      where: { operatorId, id: { in: partIds } },
      select: { id: true, description: true },
    });
    const uses = await this.use.of(
      tx,
      operatorId,
      engineIds.map((componentId) => ({ componentId, at })),
    );
    const ruleOf = (engineId: string) =>
      uses.exposuresOf(engineId).find(({ fromAt, toAt }) => fromAt <= at && (toAt === null || toAt > at))
        ?.cycleRuleId ?? null;
    return limitingThen(snapshots, new Map(parts.map((part) => [part.id, part.description])), ruleOf);
  }
}
