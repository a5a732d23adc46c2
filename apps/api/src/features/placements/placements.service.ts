import { Injectable } from '@nestjs/common';
import type { Place } from '@strutbook/domain/stays/plan-stay.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { toBoundary } from '../../platform/http/boundary.dto.js';
import { fromInstant, instantToWire } from '../../platform/http/instants.js';
import { refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Consequences } from '../../records/consequences/consequences.js';
import { recordReading } from '../../records/counting/counter-readings.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { airframesOfSlots } from '../../records/stays/stay-facts.js';
import { type PlacedStay, Stays } from '../../records/stays/stays.js';
import type { PlacedStayDto, PlacementDto, VoidedStayDto } from './placement.dto.js';

/** Components put to places one by one: building up an engine, moving a spare, entering what was in the past. */
@Injectable()
export class PlacementsService {
  constructor(
    private readonly acts: Acts,
    private readonly stays: Stays,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly consequences: Consequences,
    private readonly clock: Clock,
  ) {}

  /** Records a stay, ending the open one at a location. Refuses as planPlacement does; NOT_FOUND. */
  place(actor: Actor, act: ActRequest, dto: PlacementDto): Promise<PlacedStayDto> {
    return this.acts.perform(actor, act, async (tx) => {
      const { operatorId } = actor;
      const place = await placeOf(tx, operatorId, dto);
      const boundary = toBoundary(dto.boundary);
      const until = dto.until === undefined ? null : toBoundary(dto.until, 'until');
      const before = await this.consequences.beforeOfComponents(tx, operatorId, [dto.componentId], {
        airframeIds: await airframesOf(tx, operatorId, place, this.clock.now()),
        from: boundary.kind === 'instant' ? fromInstant(boundary.at) : null,
      });
      const number = await this.journal.number(tx);
      const placed = await this.stays.place(
        tx,
        operatorId,
        {
          componentId: dto.componentId,
          place,
          boundary,
          until,
          airframeId: dto.boundary.airframeId ?? null,
          reason: dto.reason ?? null,
        },
        number,
      );
      await readingsOfPlacement(tx, operatorId, { dto, place, placed, number });
      await this.projections.ofComponents(tx, operatorId, [dto.componentId]);
      const at = instantToWire(placed.at);
      await this.journal.append(tx, actor, {
        number,
        stream: dto.componentId,
        kind: 'component-placed',
        body: {
          stayId: placed.stayId,
          componentId: dto.componentId,
          ...place,
          boundary,
          until,
          at,
          reason: dto.reason ?? null,
          ...(dto.counterReading === undefined ? {} : { counterReading: { ...dto.counterReading } }),
          ...(dto.untilCounterReading === undefined
            ? {}
            : { untilCounterReading: { ...dto.untilCounterReading } }),
        },
        about: await subjectsOf(tx, operatorId, dto.componentId, place),
        key: act.key,
      });
      const body = {
        id: placed.stayId,
        componentId: dto.componentId,
        at,
        precision: placed.precision,
        endedStayId: placed.endedStayId,
        consequences: await this.consequences.since(tx, operatorId, before),
      };
      return { status: 201, body, resource: `/api/components/${dto.componentId}` };
    });
  }

  /** Voids a stay that was recorded wrongly; it stays to be seen, with the reason. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(actor: Actor, act: ActRequest, stayId: string, reason: string): Promise<VoidedStayDto> {
    return this.acts.perform(actor, act, async (tx) => {
      const stay = await tx.stay.findUnique({
        where: { operatorId_id: { operatorId: actor.operatorId, id: stayId } },
        select: { componentId: true, fromAt: true },
      });
      const before = await this.consequences.beforeOfComponents(
        tx,
        actor.operatorId,
        stay === null ? [] : [stay.componentId],
        { from: stay?.fromAt ?? null },
      );
      const number = await this.journal.number(tx);
      const componentId = await this.stays.void(tx, actor.operatorId, { stayId, reason, number });
      await this.projections.ofComponents(tx, actor.operatorId, [componentId]);
      await this.journal.append(tx, actor, {
        number,
        stream: componentId,
        kind: 'stay-voided',
        body: { stayId, componentId, reason },
        about: [stayId],
        key: act.key,
      });
      const consequences = await this.consequences.since(tx, actor.operatorId, before);
      const body = { id: stayId, componentId, consequences };
      return { status: 200, body, resource: `/api/components/${componentId}` };
    });
  }
}

/**
 * Records what the counter of an auxiliary power unit showed as it came to a position and left it again. Refuses:
 * READING_MISSING, READING_NOT_ASKED, and as checkReading does.
 */
async function readingsOfPlacement(
  tx: Tx,
  operatorId: number,
  {
    dto,
    place,
    placed,
    number,
  }: {
    readonly dto: PlacementDto;
    readonly place: Place;
    readonly placed: PlacedStay;
    readonly number: bigint;
  },
): Promise<void> {
  const { componentId, counterReading, untilCounterReading } = dto;
  const { kind, serialNumber: serial } = await tx.component.findUniqueOrThrow({
    where: { operatorId_id: { operatorId, id: componentId } },
  });
  const isCounted = kind === 'apu' && place.kind === 'slot';
  const base = { componentId, fresh: null, source: null, stayId: placed.stayId, number };
  const sides = [
    [counterReading, 'counterReading', placed.at, 'installed'],
    [untilCounterReading, 'untilCounterReading', placed.until, 'removed'],
  ] as const;
  for (const [figures, field, at, side] of sides) {
    if (figures !== undefined && (!isCounted || at === null))
      refuse({ code: 'READING_NOT_ASKED', serial }, field);
    if (!isCounted || at === null) continue;
    const direction = side === 'installed' ? 'on' : 'off';
    if (figures === undefined) refuse({ code: 'READING_MISSING', serial, direction }, field);
    await recordReading(tx, operatorId, { ...base, kind: side, at, figures }, field);
  }
}

async function placeOf(tx: Tx, operatorId: number, { slotId, locationName }: PlacementDto): Promise<Place> {
  if ((slotId === undefined) === (locationName === undefined))
    refuse({
      code: 'INVALID_FIELDS',
      fields: [
        {
          field: 'slotId',
          reason: 'A component goes to one place.',
          fix: 'Name either a slot or a location.',
        },
      ],
    });
  if (slotId !== undefined) {
    const slot = await tx.slot.findUnique({ where: { operatorId_id: { operatorId, id: slotId } } });
    if (slot === null) refuse({ code: 'NOT_FOUND', what: 'slot', field: 'slotId' });
    return { kind: 'slot', slotId };
  }
  const location = await tx.location.findFirst({ where: { operatorId, name: locationName ?? '' } });
  if (location === null)
    refuse({ code: 'NOT_FOUND', what: `location ${locationName}`, field: 'locationName' });
  return { kind: 'location', locationId: location.id };
}

/** The component, what it went into, and the airframe when it went straight to a position. */
async function subjectsOf(tx: Tx, operatorId: number, componentId: string, place: Place): Promise<string[]> {
  if (place.kind === 'location') return [componentId];
  const slot = await tx.slot.findUniqueOrThrow({
    where: { operatorId_id: { operatorId, id: place.slotId } },
    include: { position: true },
  });
  return [componentId, slot.componentId, slot.positionId, slot.position?.airframeId].filter(
    (id) => id !== null && id !== undefined,
  );
}

/** The airframes that a slot hangs on now. */
async function airframesOf(tx: Tx, operatorId: number, place: Place, now: Date): Promise<string[]> {
  return place.kind === 'slot' ? airframesOfSlots(tx, operatorId, [place.slotId], now) : [];
}
