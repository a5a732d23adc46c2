import { Injectable } from '@nestjs/common';
import { limiterOf } from '@strutbook/domain/life/limiter.js';
import { RULE_SETS } from '@strutbook/domain/release/rule-sets.js';
import type { Tx } from '../../../platform/database/database.js';
import { toCounters } from '../../../platform/http/counters.dto.js';
import { toWire } from '../../../platform/http/instants.js';
import { orNotFound } from '../../../platform/problems/refusal.error.js';
import { Clock } from '../../../platform/time/clock.js';
import { wordsOfPlaces } from '../../stays/place-words.js';
import { Structure } from '../../stays/structure.js';
import type { FilledSlot } from '../../stays/structure.sql.js';
import { type ComponentCounters, Counters } from '../../usage/counters.js';
import type { RatingCodes } from '../life-words.js';
import { Lives, type PartInLife } from '../lives.js';
import { forecastsOf, type LifeForecast } from '../projected-ends.js';
import { ratingsAt } from '../ratings.js';
import type { LifeSheetDto, SheetPartDto, SheetSubjectDto } from '../wire/life-sheet.dto.js';
import { missingPart, sheetPart } from './sheet-part.js';

const CAUTIONS = [
  'This sheet is an aid to record-keeping. It does not determine airworthiness: the current approved data, the authority and the authorised person govern.',
  'A part that is not verified shows no remaining figure, and none may be used for a release. What is not known is said to be so; it is not zero.',
  'Where the worst case stands under a recorded acceptance, the part is flagged; the figures hold only while the acceptance does.',
  'A day projected from use is a forecast, never a limit. A calendar life is good through its last day.',
  'Compare document and revision of every limit with the register of current documents before use.',
];

const TO_SIGN = ['Stated by', 'Authorisation', 'Signature', 'Date'];

interface Named {
  readonly id: string;
  readonly description: string;
  readonly partNumber: string;
  readonly serialNumber: string;
}

interface Read {
  readonly slots: readonly FilledSlot[];
  readonly parts: ReadonlyMap<string, Named>;
  readonly counters: ReadonlyMap<string, ComponentCounters>;
  readonly lives: ReadonlyMap<string, PartInLife>;
  readonly forecasts: ReadonlyMap<string, LifeForecast>;
  readonly ratings: RatingCodes;
}

/** The status of life-limited parts, as it is stated on paper. */
@Injectable()
export class LifeSheets {
  constructor(
    private readonly structure: Structure,
    private readonly counters: Counters,
    private readonly lives: Lives,
    private readonly clock: Clock,
  ) {}

  /** The sheet of a component now (null) or as at an instant, in a constant number of statements. Refuses: NOT_FOUND. */
  async of(tx: Tx, operatorId: number, id: string, at: Date | null): Promise<LifeSheetDto> {
    const now = this.clock.now();
    const row = orNotFound(
      await tx.component.findUnique({
        where: { operatorId_id: { operatorId, id } },
        include: { engineModel: true },
      }),
      'component',
    );
    const slots = await this.structure.beneath(tx, operatorId, [id], at);
    const ids = [id, ...slots.flatMap((slot) => slot.componentId ?? [])];
    const lives = await this.lives.of(tx, operatorId, ids, at);
    const inside = await tx.component.findMany({
      where: { operatorId, id: { in: ids } },
      select: { id: true, description: true, partNumber: true, serialNumber: true },
    });
    const read: Read = {
      slots,
      parts: new Map(inside.map((part) => [part.id, part])),
      lives,
      counters: await this.counters.of(tx, operatorId, ids, at),
      forecasts: await forecastsOf(tx, operatorId, [...lives.values()], { at, now }),
      ratings: new Map(
        (await tx.rating.findMany({ where: { operatorId } })).map((rating) => [rating.id, rating.code]),
      ),
    };
    const rating = (await ratingsAt(tx, operatorId, [id], at)).get(id);
    const { engineModel: model } = row;
    const { place, ruleSet } = await this.placeOf(tx, operatorId, id, at);
    const subject: SheetSubjectDto = {
      id,
      kind: row.kind as SheetSubjectDto['kind'],
      description: row.description,
      partNumber: row.partNumber,
      serialNumber: row.serialNumber,
      model: model === null ? null : `${model.maker} ${model.designation}`,
      ratingCode: rating === undefined ? null : (read.ratings.get(rating) ?? null),
      place,
      sinceNew: toCounters(read.counters.get(id)?.sinceNew ?? UNKNOWN),
    };
    const parts = partsOf(row, read);
    return {
      title: 'Status of life-limited parts',
      operator: (await tx.operator.findUniqueOrThrow({ where: { id: operatorId } })).name,
      at: toWire(at ?? now),
      subject,
      ruleSet,
      parts,
      ...limitersOf(parts, read),
      cautions: CAUTIONS,
      toSign: TO_SIGN,
    };
  }

  private async placeOf(
    tx: Tx,
    operatorId: number,
    id: string,
    at: Date | null,
  ): Promise<{ readonly place: string; readonly ruleSet: string | null }> {
    const engineId = (await this.structure.engineOf(tx, operatorId, [id], at)).get(id) ?? id;
    const where = await this.structure.whereAre(tx, operatorId, [id, engineId], at);
    const stay = where.get(id);
    const words = await wordsOfPlaces(tx, operatorId, {
      slotIds: stay?.slotId == null ? [] : [stay.slotId],
      locationIds: stay?.locationId == null ? [] : [stay.locationId],
    });
    const airframeId = stay?.airframeId ?? where.get(engineId)?.airframeId ?? null;
    const airframe =
      airframeId === null
        ? null
        : await tx.airframe.findUnique({ where: { operatorId_id: { operatorId, id: airframeId } } });
    const ruleSet = RULE_SETS.find((known) => known.code === airframe?.ruleSet);
    return {
      place: words.get(stay?.slotId ?? stay?.locationId ?? '')?.label ?? 'No place on record',
      ruleSet: airframe === null ? null : `${ruleSet?.name ?? airframe.ruleSet}, days in ${airframe.dayZone}`,
    };
  }
}

const UNKNOWN = { minutes: null, cycles: null };

/** What it is itself, where it is limited, and every limited part or place for one beneath it, in their order. */
function partsOf(own: Named, read: Read): SheetPartDto[] {
  const { slots, parts, lives, counters, forecasts, ratings } = read;
  const told = (part: Named, module: string, place: string): SheetPartDto[] => {
    const [life, forecast] = [lives.get(part.id), forecasts.get(part.id)];
    if (life === undefined || forecast === undefined) return [];
    const sinceNew = toCounters(counters.get(part.id)?.sinceNew ?? UNKNOWN);
    return [sheetPart(part, { life, forecast, sinceNew, ratings, module, place })];
  };
  return [
    ...told(own, '', ''),
    ...asBuilt(own.id, slots).flatMap(({ parentId, name: place, componentId, lifeLimited }) => {
      const parent = parts.get(parentId);
      const module = parent === undefined ? '' : nameOf(parent);
      const part = componentId === null ? undefined : parts.get(componentId);
      if (part !== undefined) return told(part, module, place);
      return lifeLimited ? [missingPart(module, place)] : [];
    }),
  ];
}

/** The slots as a thing is built: each followed by what is in it. Total. */
function asBuilt(parentId: string, slots: readonly FilledSlot[]): FilledSlot[] {
  return slots
    .filter((slot) => slot.parentId === parentId)
    .flatMap((slot) => [slot, ...(slot.componentId === null ? [] : asBuilt(slot.componentId, slots))]);
}

function limitersOf(
  parts: readonly SheetPartDto[],
  { lives, forecasts }: Read,
): Pick<LifeSheetDto, 'limiterByCycles' | 'limiterByDate'> {
  const inside = parts.flatMap(({ componentId }) => {
    const life = componentId === null ? undefined : lives.get(componentId);
    return componentId === null || life === undefined
      ? []
      : [{ componentId, life: life.life, end: forecasts.get(componentId)?.end ?? null }];
  });
  const { byCycles, byDate } = limiterOf(inside);
  const named = (id: string | undefined) => parts.find(({ componentId }) => componentId === id);
  const [cycles, date] = [named(byCycles?.componentId), named(byDate?.componentId)];
  return {
    limiterByCycles: cycles === undefined ? null : `${nameOf(cycles)}: ${cyclesLeft(cycles)}`,
    limiterByDate: date === undefined ? null : `${nameOf(date)}: ${dayLeft(date)}`,
  };
}

function nameOf({ description, serialNumber }: Pick<Named, 'description' | 'serialNumber'>): string {
  return `${description} ${serialNumber}`;
}

function cyclesLeft({ life }: SheetPartDto): string {
  return life?.remainingCycles == null ? 'not verified' : `${life.remainingCycles} cycles`;
}

function dayLeft({ life }: SheetPartDto): string {
  if (life?.kind !== 'limited') return 'not verified';
  return life.projectedOn === null ? life.basis : `${life.projectedOn} (${life.basis})`;
}
