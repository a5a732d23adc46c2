import { Injectable } from '@nestjs/common';
import { limiterOf, type PartLife } from '@strutbook/domain/life/limiter.js';
import type { Tx } from '../../platform/database/database.js';
import { toCounters } from '../../platform/http/counters.dto.js';
import { dayToWire, toWire } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import type { RatingCodes } from '../../records/lives/life-words.js';
import { Lives, type PartInLife } from '../../records/lives/lives.js';
import { forecastsOf, type LifeForecast } from '../../records/lives/projected-ends.js';
import { ratingsAt } from '../../records/lives/ratings.js';
import { lifeToWire, limiterToWire } from '../../records/lives/wire/life.mapper.js';
import { Structure } from '../../records/stays/structure.js';
import type { FilledSlot } from '../../records/stays/structure.sql.js';
import { type ComponentCounters, Counters } from '../../records/usage/counters.js';
import type { ComponentDto, PartDto, SlotDto } from './component-view.dto.js';
import { placesOf } from './places.js';

interface Row {
  readonly id: string;
  readonly kind: string;
  readonly partNumber: string;
  readonly serialNumber: string;
  readonly description: string;
  readonly lifeLimited: boolean;
}

interface Tree {
  readonly slots: readonly FilledSlot[];
  readonly components: ReadonlyMap<string, Row>;
  readonly counters: ReadonlyMap<string, ComponentCounters>;
  readonly lives: ReadonlyMap<string, PartInLife>;
  readonly forecasts: ReadonlyMap<string, LifeForecast>;
  readonly ratings: RatingCodes;
}

const UNKNOWN = { minutes: null, cycles: null };

/** Puts one component together from the records: what it is, where, how much used, and what is in it. */
@Injectable()
export class ComponentReader {
  constructor(
    private readonly structure: Structure,
    private readonly counters: Counters,
    private readonly lives: Lives,
    private readonly clock: Clock,
  ) {}

  /** The component now (null) or as it was at an instant, in a constant number of statements. Refuses: NOT_FOUND. */
  async read(tx: Tx, operatorId: number, id: string, at: Date | null): Promise<ComponentDto> {
    const row = orNotFound(
      await tx.component.findUnique({
        where: { operatorId_id: { operatorId, id } },
        include: { engineModel: true },
      }),
      'component',
    );
    const slots = await this.structure.beneath(tx, operatorId, [id], at);
    const partIds = slots.flatMap((slot) => slot.componentId ?? []);
    const parts = await tx.component.findMany({ where: { operatorId, id: { in: partIds } } });
    const rating = (await ratingsAt(tx, operatorId, [id], at)).get(id);
    const lives = await this.lives.of(tx, operatorId, [id, ...partIds], at);
    const tree: Tree = {
      slots,
      components: new Map(parts.map((part) => [part.id, part])),
      counters: await this.counters.of(tx, operatorId, [id, ...partIds], at),
      lives,
      forecasts: await forecastsOf(tx, operatorId, [...lives.values()], { at, now: this.clock.now() }),
      ratings: new Map(
        (await tx.rating.findMany({ where: { operatorId } })).map(({ id: ratingId, code }) => [
          ratingId,
          code,
        ]),
      ),
    };
    const place = await placesOf(tx, operatorId, await this.structure.whereAre(tx, operatorId, [id], at));
    const own = tree.lives.get(id);
    return {
      id,
      kind: row.kind as ComponentDto['kind'],
      maker: row.maker,
      partNumber: row.partNumber,
      serialNumber: row.serialNumber,
      description: row.description,
      engineModelId: row.engineModelId,
      engineModel:
        row.engineModel === null ? null : `${row.engineModel.maker} ${row.engineModel.designation}`,
      lifeLimited: row.lifeLimited,
      podClock: row.podClock as ComponentDto['podClock'],
      owner: row.owner,
      lessor: row.lessor,
      manufacturedOn: row.manufacturedOn === null ? null : dayToWire(row.manufacturedOn),
      firstInstalledOn: row.firstInstalledOn === null ? null : dayToWire(row.firstInstalledOn),
      version: row.version,
      place: place(id),
      ratingCode: rating === undefined ? null : (tree.ratings.get(rating) ?? null),
      ...countersPart(tree.counters.get(id)),
      verified: isVerified(tree.counters.get(id), own),
      life: own === undefined ? null : lifeToWire(own, forecastIn(tree, id), tree.ratings),
      ...limitersIn(tree),
      slots: slotsIn(id, tree),
    };
  }
}

function countersPart(known: ComponentCounters | undefined): Pick<ComponentDto, 'counters' | 'gaps'> {
  const pair = (counters: ComponentCounters['sinceOverhaul'] | undefined) =>
    counters == null ? null : toCounters(counters);
  return {
    counters: {
      sinceNew: toCounters(known?.sinceNew ?? UNKNOWN),
      sinceOverhaul: pair(known?.sinceOverhaul),
      sinceShopVisit: pair(known?.sinceShopVisit),
      sinceRepair: pair(known?.sinceRepair),
      sinceInstalled: pair(known?.sinceInstalled),
    },
    gaps: (known?.gaps ?? []).map(({ id, fromAt, toAt, note, accepted }) => ({
      id,
      from: toWire(fromAt),
      to: toWire(toAt),
      note,
      accepted,
    })),
  };
}

function isVerified(counters: ComponentCounters | undefined, life: PartInLife | undefined): boolean {
  if (counters === undefined || counters.sinceNew.minutes === null || counters.sinceNew.cycles === null)
    return false;
  return counters.gaps.every((gap) => gap.accepted) && life?.life.kind !== 'unsubstantiated';
}

const NO_FORECAST: LifeForecast = { end: null, basis: 'Nothing can be projected from what is not known' };

function forecastIn({ forecasts }: Tree, id: string): LifeForecast {
  return forecasts.get(id) ?? NO_FORECAST;
}

function limitersIn(tree: Tree): Pick<ComponentDto, 'limiter' | 'limiterByDate'> {
  const { slots, components, lives, ratings } = tree;
  const parts = slots.flatMap(({ componentId }) => {
    const part = componentId === null ? undefined : lives.get(componentId);
    return part === undefined
      ? []
      : [{ componentId: part.componentId, life: part.life, end: forecastIn(tree, part.componentId).end }];
  });
  const { byCycles, byMinutes, byDate } = limiterOf(parts);
  const told = (limiter: PartLife | null) => {
    const row = limiter === null ? undefined : components.get(limiter.componentId);
    const part = row === undefined ? undefined : lives.get(row.id);
    return row === undefined || part === undefined
      ? null
      : limiterToWire(row, part, forecastIn(tree, row.id), ratings);
  };
  return { limiter: told(byCycles ?? byMinutes ?? byDate), limiterByDate: told(byDate) };
}

function slotsIn(parentId: string, tree: Tree): SlotDto[] {
  return tree.slots
    .filter((slot) => slot.parentId === parentId)
    .map((slot) => ({
      id: slot.slotId,
      name: slot.name,
      kind: slot.kind as SlotDto['kind'],
      lifeLimited: slot.lifeLimited,
      component: slot.componentId === null ? null : partIn(slot.componentId, tree),
    }));
}

function partIn(id: string, tree: Tree): PartDto | null {
  const row = tree.components.get(id);
  if (row === undefined) return null;
  const life = tree.lives.get(id);
  return {
    id,
    kind: row.kind as PartDto['kind'],
    partNumber: row.partNumber,
    serialNumber: row.serialNumber,
    description: row.description,
    lifeLimited: row.lifeLimited,
    counters: { sinceNew: toCounters(tree.counters.get(id)?.sinceNew ?? UNKNOWN) },
    life: life === undefined ? null : lifeToWire(life, forecastIn(tree, id), tree.ratings),
    slots: slotsIn(id, tree),
  };
}
