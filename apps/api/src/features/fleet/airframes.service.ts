import { Injectable } from '@nestjs/common';
import { RULE_SETS } from '@strutbook/domain/release/rule-sets.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayFromWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { DuePoints } from '../../records/due-points/due-points.js';
import { Journal } from '../../records/journal/journal.js';
import { airframeCounters } from '../../records/usage/airframe-counters.js';
import type { AirframeDto, NewAirframeDto } from './airframe.dto.js';
import { airframeToWire } from './fleet.mapper.js';

const WITH_PLACES = {
  airframeType: true,
  positionByAirframe: {
    orderBy: { number: 'asc' },
    include: { slotByPosition: { select: { id: true, kind: true }, orderBy: { sort: 'asc' } } },
  },
} as const;

/** Airframes of the fleet, with their positions and clocks. */
@Injectable()
export class AirframesService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly duePoints: DuePoints,
  ) {}

  /** All airframes, by registration. */
  list(actor: Actor): Promise<AirframeDto[]> {
    return this.database.inOperator(actor, (tx) => this.read(tx, actor.operatorId, null));
  }

  /** One airframe. Refuses: NOT_FOUND. */
  get(actor: Actor, id: string): Promise<AirframeDto> {
    return this.database.inOperator(actor, async (tx) =>
      orNotFound((await this.read(tx, actor.operatorId, id))[0], 'airframe'),
    );
  }

  /**
   * Adds an airframe with its positions, their slots and their clocks, as one act.
   * Refuses: NOT_FOUND (type), ALREADY_EXISTS (registration, serial number), INVALID_FIELDS (rule set, zone).
   */
  add(actor: Actor, act: ActRequest, asked: NewAirframeDto): Promise<AirframeDto> {
    const { operatorId } = actor;
    refuseWords(asked);
    return this.acts.perform(actor, act, async (tx) => {
      await refuseSame(tx, operatorId, asked);
      const { airframeTypeId, registration, serialNumber, ruleSet, owner } = asked;
      const places = await tx.typePosition.findMany({
        where: { operatorId, airframeTypeId },
        orderBy: { number: 'asc' },
      });
      if (places.length === 0)
        refuse({ code: 'NOT_FOUND', what: 'type of airframe', field: 'airframeTypeId' });
      const number = await this.journal.number(tx);
      const id = newId();
      const described = {
        registration,
        serialNumber,
        airframeTypeId,
        ruleSet,
        dayZone: asked.dayZone ?? 'UTC',
        owner,
        lessor: asked.lessor ?? null,
      };
      const manufacturedOn = asked.manufacturedOn == null ? null : dayFromWire(asked.manufacturedOn);
      await tx.airframe.create({ data: { operatorId, id, ...described, manufacturedOn } });
      const positions = places.map(({ number: place, kind, mount, label }) => ({
        id: newId(),
        number: place,
        kind,
        mount,
        label,
      }));
      await tx.position.createMany({
        data: positions.map((position) => ({ operatorId, airframeId: id, ...position })),
      });
      await tx.carrier.createMany({
        data: [
          { operatorId, id, kind: 'airframe', airframeId: id, positionId: null },
          ...positions.map((position) => ({
            operatorId,
            id: position.id,
            kind: 'position',
            airframeId: id,
            positionId: position.id,
          })),
        ],
      });
      await tx.slot.createMany({
        data: positions.flatMap(({ id: positionId, kind }) => slotsOf(operatorId, positionId, kind)),
      });
      await this.duePoints.rebuild(tx, operatorId, [], [id]);
      await this.journal.append(tx, actor, {
        number,
        stream: id,
        kind: 'airframe-added',
        body: { ...described, manufacturedOn: asked.manufacturedOn ?? null, positions },
        about: [id, airframeTypeId],
        key: act.key,
      });
      const body = orNotFound((await this.read(tx, operatorId, id))[0], 'airframe');
      return { status: 201, body, version: 1, number, resource: `/api/airframes/${id}` };
    });
  }

  private async read(tx: Tx, operatorId: number, id: string | null): Promise<AirframeDto[]> {
    const rows = await tx.airframe.findMany({
      where: { operatorId, ...(id === null ? {} : { id }) },
      include: WITH_PLACES,
      orderBy: { registration: 'asc' },
    });
    const ids = rows.map((row) => row.id);
    const counters = await airframeCounters(tx, operatorId, ids, null);
    const heads = await tx.carrier.findMany({
      where: { operatorId, id: { in: ids } },
      select: { id: true, lastLandingAt: true },
    });
    const landed = new Map(heads.map((head) => [head.id, head.lastLandingAt]));
    return rows.map((row) =>
      airframeToWire(row, { counters: counters.get(row.id), lastLandingAt: landed.get(row.id) ?? null }),
    );
  }
}

function slotsOf(operatorId: number, positionId: string, kind: string) {
  const kinds = kind === 'apu' ? ['apu'] : ['engine', 'pod'];
  return kinds.map((slot, sort) => ({
    operatorId,
    id: newId(),
    positionId,
    componentId: null,
    kind: slot,
    name: slot,
    sort,
  }));
}

function refuseWords({ ruleSet, dayZone }: NewAirframeDto): void {
  const fields = [
    ...(RULE_SETS.some((known) => known.code === ruleSet)
      ? []
      : [
          {
            field: 'ruleSet',
            reason: `There is no rule set '${ruleSet}'.`,
            fix: `Choose one of ${RULE_SETS.map(({ code }) => code).join(', ')}.`,
          },
        ]),
    ...(dayZone === undefined || isZone(dayZone)
      ? []
      : [
          {
            field: 'dayZone',
            reason: `There is no time zone '${dayZone}'.`,
            fix: "Enter a zone such as 'UTC' or 'Europe/Vienna'.",
          },
        ]),
  ];
  if (fields.length > 0) refuse({ code: 'INVALID_FIELDS', fields });
}

function isZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en-GB', { timeZone: name }).resolvedOptions().timeZone !== '';
  } catch {
    return false;
  }
}

async function refuseSame(
  tx: Tx,
  operatorId: number,
  { registration, airframeTypeId, serialNumber }: NewAirframeDto,
): Promise<void> {
  const same = await tx.airframe.findFirst({
    where: { operatorId, OR: [{ registration }, { airframeTypeId, serialNumber }] },
    select: { registration: true },
  });
  if (same === null) return;
  if (same.registration === registration)
    refuse({
      code: 'ALREADY_EXISTS',
      what: 'an airframe with the registration',
      field: 'registration',
      value: registration,
    });
  refuse({
    code: 'ALREADY_EXISTS',
    what: `an airframe (${same.registration}) of this type with the serial number`,
    field: 'serialNumber',
    value: serialNumber,
  });
}
