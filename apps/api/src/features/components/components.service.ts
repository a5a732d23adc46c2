import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayFromWire, fromWire, toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { DuePoints } from '../../records/due-points/due-points.js';
import { Journal } from '../../records/journal/journal.js';
import { wordsOfPlaces } from '../../records/stays/place-words.js';
import { precisionOf } from '../../records/stays/precision.js';
import { Structure } from '../../records/stays/structure.js';
import type { AsOfQueryDto, ComponentsQueryDto, NewComponentDto } from './component.dto.js';
import { ComponentReader } from './component-reader.js';
import type { ComponentDto, ComponentsPageDto, StayDto } from './component-view.dto.js';
import { cursorAfter, readCursor } from './cursor.js';
import { placesOf } from './places.js';

const PAGE = 50;

/** The register of components. */
@Injectable()
export class ComponentsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly duePoints: DuePoints,
    private readonly structure: Structure,
    private readonly reader: ComponentReader,
  ) {}

  /** Components by serial number, a page at a time. Refuses: INVALID_FIELDS (a cursor that is none). */
  page(actor: Actor, { kind, search, after, limit = PAGE }: ComponentsQueryDto): Promise<ComponentsPageDto> {
    const { operatorId } = actor;
    const cursor = after === undefined ? null : readCursor(after);
    return this.database.inOperator(actor, async (tx) => {
      const found =
        search === undefined ? [] : [{ OR: [{ serialNumber: like(search) }, { partNumber: like(search) }] }];
      const later =
        cursor === null
          ? []
          : [
              {
                OR: [
                  { serialNumber: { gt: cursor.serialNumber } },
                  { serialNumber: cursor.serialNumber, id: { gt: cursor.id } },
                ],
              },
            ];
      const rows = await tx.component.findMany({
        where: { operatorId, ...(kind === undefined ? {} : { kind }), AND: [...found, ...later] },
        orderBy: [{ serialNumber: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      });
      const page = rows.slice(0, limit);
      const place = await placesOf(
        tx,
        operatorId,
        await this.structure.whereAre(
          tx,
          operatorId,
          page.map((row) => row.id),
          null,
        ),
      );
      const last = page.at(-1);
      return {
        rows: page.map(
          ({ id, kind: word, maker, partNumber, serialNumber, description, lifeLimited, engineModelId }) => ({
            id,
            kind: word as ComponentDto['kind'],
            maker,
            partNumber,
            serialNumber,
            description,
            lifeLimited,
            engineModelId,
            place: place(id),
          }),
        ),
        next: rows.length > limit && last !== undefined ? cursorAfter(last) : null,
      };
    });
  }

  /** One component now or as it was. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string, { at }: AsOfQueryDto): Promise<ComponentDto> {
    return this.database.inOperator(actor, (tx) =>
      this.reader.read(tx, actor.operatorId, id, at === undefined ? null : fromWire(at)),
    );
  }

  /** Every stay of a component, the latest first, voided ones marked. Refuses: NOT_FOUND. */
  places(actor: Actor, id: string): Promise<StayDto[]> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      orNotFound(
        await tx.component.findUnique({ where: { operatorId_id: { operatorId, id } }, select: { id: true } }),
        'component',
      );
      const stays = await tx.stay.findMany({
        where: { operatorId, componentId: id },
        orderBy: [{ fromAt: 'desc' }, { recordedSeq: 'desc' }],
      });
      const words = await wordsOfPlaces(tx, operatorId, {
        slotIds: stays.flatMap((stay) => stay.slotId ?? []),
        locationIds: stays.flatMap((stay) => stay.locationId ?? []),
      });
      return stays.map((stay) => ({
        id: stay.id,
        kind: stay.slotId === null ? 'location' : 'slot',
        label: words.get(stay.slotId ?? stay.locationId ?? '')?.label ?? '',
        slotId: stay.slotId,
        locationId: stay.locationId,
        from: toWire(stay.fromAt),
        fromPrecision: precisionOf(stay.fromKind),
        fromText: stay.fromText,
        to: stay.toAt === null ? null : toWire(stay.toAt),
        toPrecision: stay.toKind === null ? null : precisionOf(stay.toKind),
        toText: stay.toText,
        reason: stay.reason,
        endReason: stay.endReason,
        voided: stay.voidedSeq !== null,
        voidReason: stay.voidReason,
      }));
    });
  }

  /** Adds a component with its places, as one act. Refuses: ALREADY_EXISTS, NOT_FOUND (model), INVALID_FIELDS. */
  add(actor: Actor, act: ActRequest, asked: NewComponentDto): Promise<ComponentDto> {
    const { operatorId } = actor;
    refuseFields(asked);
    return this.acts.perform(actor, act, async (tx) => {
      await refuseAround(tx, operatorId, asked);
      const number = await this.journal.number(tx);
      const id = newId();
      const { kind, maker, partNumber, serialNumber, description, owner } = asked;
      const described = {
        ...{ kind, maker, partNumber, serialNumber, description, owner },
        engineModelId: asked.engineModelId ?? null,
        lifeLimited: asked.lifeLimited ?? false,
        podClock: kind === 'pod' ? (asked.podClock ?? 'position') : null,
        lessor: asked.lessor ?? null,
      };
      const slots = (asked.slots ?? []).map((slot, sort) => ({
        id: newId(),
        kind: slot.kind,
        name: slot.name,
        lifeLimited: slot.lifeLimited,
        sort,
      }));
      const manufacturedOn = asked.manufacturedOn == null ? null : dayFromWire(asked.manufacturedOn);
      const firstInstalledOn = asked.firstInstalledOn == null ? null : dayFromWire(asked.firstInstalledOn);
      await tx.component.create({ data: { operatorId, id, ...described, manufacturedOn, firstInstalledOn } });
      await tx.slot.createMany({
        data: slots.map((slot) => ({ operatorId, componentId: id, positionId: null, ...slot })),
      });
      await this.duePoints.rebuild(tx, operatorId, [id]);
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'component-added',
        body: {
          ...described,
          manufacturedOn: asked.manufacturedOn ?? null,
          firstInstalledOn: asked.firstInstalledOn ?? null,
          slots,
        },
        about: [id],
        key: act.key,
      });
      const body = await this.reader.read(tx, operatorId, id, null);
      return { status: 201, body, version: 1, number, resource: `/api/components/${id}` };
    });
  }
}

function like(search: string) {
  // Prisma hands the text on as a pattern: what would stand for any character must stand for itself.
  return { contains: search.replace(/[\\%_]/g, '\\$&'), mode: 'insensitive' as const };
}

function refuseFields({ kind, slots, podClock, engineModelId }: NewComponentDto): void {
  const fields = [
    ...(podClock == null || kind === 'pod'
      ? []
      : [{ field: 'podClock', reason: 'Only a pod has this.', fix: 'Leave it out.' }]),
    ...(kind === 'engine' && engineModelId == null
      ? [
          {
            field: 'engineModelId',
            reason: 'An engine has a model: its cycles and lives are counted by it.',
            fix: 'Choose its model.',
          },
        ]
      : []),
    ...(slots ?? []).flatMap(({ name }, index, all) =>
      all.findIndex((slot) => slot.name === name) === index
        ? []
        : [
            {
              field: `slots[${index}].name`,
              reason: `Two places are called '${name}'.`,
              fix: 'Give each place a name of its own.',
            },
          ],
    ),
  ];
  if (fields.length > 0) refuse({ code: 'INVALID_FIELDS', fields });
}

async function refuseAround(tx: Tx, operatorId: number, asked: NewComponentDto): Promise<void> {
  const { maker, partNumber, serialNumber, kind } = asked;
  const same = await tx.component.findFirst({
    where: { operatorId, maker, partNumber, serialNumber },
    select: { id: true },
  });
  if (same !== null)
    refuse({
      code: 'ALREADY_EXISTS',
      what: `a ${partNumber} of this maker with the serial number`,
      field: 'serialNumber',
      value: serialNumber,
    });
  if (
    asked.manufacturedOn != null &&
    asked.firstInstalledOn != null &&
    asked.firstInstalledOn < asked.manufacturedOn
  ) {
    const reason = `It was made on ${asked.manufacturedOn}, so it cannot have been installed before.`;
    refuse({
      code: 'INVALID_FIELDS',
      fields: [{ field: 'firstInstalledOn', reason, fix: 'Enter that day or a later one.' }],
    });
  }
  if (asked.engineModelId == null) return;
  const model = await tx.engineModel.findUnique({
    where: { operatorId_id: { operatorId, id: asked.engineModelId } },
    select: { kind: true },
  });
  if (model === null) refuse({ code: 'NOT_FOUND', what: 'engine model', field: 'engineModelId' });
  if ((kind === 'engine' && model.kind !== 'engine') || (kind === 'apu' && model.kind !== 'apu')) {
    const reason = `This model is of kind '${model.kind}', the component of kind '${kind}'.`;
    refuse({
      code: 'INVALID_FIELDS',
      fields: [{ field: 'engineModelId', reason, fix: 'Choose a model of the same kind.' }],
    });
  }
}
