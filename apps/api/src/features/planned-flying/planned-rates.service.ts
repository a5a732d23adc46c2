import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import type { PlannedRate } from '../../platform/database/generated/client.js';
import { newId } from '../../platform/database/uuid.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { dayOf, dayToWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { Journal } from '../../records/journal/journal.js';
import { dayIn } from '../../records/stays/day-zone.js';
import { lockAirframe } from './planned-flights.service.js';
import type { NewPlannedRateDto, PlannedRateDto } from './planned-rate.dto.js';

/** What airframes are planned to fly from a day on, each with its source. */
@Injectable()
export class PlannedRatesService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly clock: Clock,
  ) {}

  /** All rates of an airframe, the newest first, voided ones too. Refuses: NOT_FOUND. */
  list(actor: Actor, airframeId: string): Promise<PlannedRateDto[]> {
    return this.database.inOperator(actor, (tx) => this.ratesOf(tx, actor.operatorId, airframeId));
  }

  /** Records a rate from a day on. Refuses: NOT_FOUND, INVALID_FIELDS, ALREADY_EXISTS (one from that day on). */
  add(actor: Actor, act: ActRequest, airframeId: string, asked: NewPlannedRateDto): Promise<PlannedRateDto> {
    const { operatorId } = actor;
    const { fromOn, days, minutes, flights, source } = asked;
    refuseRate({ days, minutes, flights }, '');
    return this.acts.perform(actor, act, async (tx) => {
      await lockAirframe(tx, operatorId, airframeId);
      const from = dayOf(fromOn);
      const there = await tx.plannedRate.findFirst({
        where: { operatorId, airframeId, fromOn: from, voidedSeq: null },
      });
      if (there !== null)
        refuse({
          code: 'ALREADY_EXISTS',
          field: 'fromOn',
          what: `a planned rate from ${fromOn} on; void it first to plan otherwise from that day`,
        });
      const number = await this.journal.number(tx);
      const id = newId();
      await tx.plannedRate.create({
        data: {
          operatorId,
          id,
          airframeId,
          fromOn: from,
          days,
          minutes,
          flights,
          source,
          recordedSeq: number,
        },
      });
      const body = { id, airframeId, fromOn, days, minutes, flights, source };
      await this.journal.append(tx, actor, {
        ...{ number, stream: airframeId, kind: 'rate-planned', body, about: [airframeId], key: act.key },
      });
      return {
        status: 201,
        body: await this.one(tx, operatorId, { airframeId, id }),
        number,
        resource: resourceOf(airframeId),
      };
    });
  }

  /** Voids a rate with its reason. Refuses: NOT_FOUND, ALREADY_VOIDED. */
  void(
    actor: Actor,
    act: ActRequest,
    { id, reason }: { readonly id: string; readonly reason: string },
  ): Promise<PlannedRateDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const where = { operatorId_id: { operatorId, id } };
      const { airframeId } = orNotFound(await tx.plannedRate.findUnique({ where }), 'planned rate');
      await lockAirframe(tx, operatorId, airframeId);
      const number = await this.journal.number(tx);
      const { count } = await tx.plannedRate.updateMany({
        where: { operatorId, id, voidedSeq: null },
        data: { voidedSeq: number, voidReason: reason },
      });
      if (count === 0) refuse({ code: 'ALREADY_VOIDED', what: 'this planned rate' });
      await this.journal.append(tx, actor, {
        ...{ number, stream: airframeId, kind: 'planned-rate-voided', body: { id, reason } },
        ...{ about: [airframeId], key: act.key },
      });
      return {
        status: 200,
        body: await this.one(tx, operatorId, { airframeId, id }),
        number,
        resource: resourceOf(airframeId),
      };
    });
  }

  private async one(
    tx: Tx,
    operatorId: number,
    { airframeId, id }: { readonly airframeId: string; readonly id: string },
  ): Promise<PlannedRateDto> {
    const rates = await this.ratesOf(tx, operatorId, airframeId);
    return orNotFound(rates.find((rate) => rate.id === id) ?? null, 'planned rate');
  }

  private async ratesOf(tx: Tx, operatorId: number, airframeId: string): Promise<PlannedRateDto[]> {
    const { dayZone } = orNotFound(
      await tx.airframe.findUnique({ where: { operatorId_id: { operatorId, id: airframeId } } }),
      'airframe',
    );
    const rows = await tx.plannedRate.findMany({
      where: { operatorId, airframeId },
      orderBy: [{ fromOn: 'desc' }, { recordedSeq: 'desc' }],
    });
    const today = dayIn(dayZone, this.clock.now());
    const inForce = rows.find((row) => row.voidedSeq === null && dayToWire(row.fromOn) <= today);
    return rows.map((row) => rateToWire(row, row === inForce));
  }
}

/** A rate that flies more minutes than its days have, or flights without a minute. Refuses: INVALID_FIELDS. */
export function refuseRate(
  { days, minutes, flights }: { readonly days: number; readonly minutes: number; readonly flights: number },
  prefix: string,
): void {
  const refuseMinutes = (reason: string, fix: string) =>
    refuse({ code: 'INVALID_FIELDS', fields: [{ field: `${prefix}minutes`, reason, fix }] });
  if (minutes > days * 1440)
    refuseMinutes(`${days} days have ${days * 1440} minutes.`, 'Enter the minutes flown in those days.');
  if (minutes < flights) refuseMinutes('That is less than a minute a flight.', 'Enter minutes, not hours.');
}

const resourceOf = (airframeId: string) => `/api/airframes/${airframeId}/planned-rates`;

function rateToWire(row: PlannedRate, inForce: boolean): PlannedRateDto {
  const { id, airframeId, days, minutes, flights, source, voidReason } = row;
  const voided = row.voidedSeq !== null;
  return {
    id,
    airframeId,
    fromOn: dayToWire(row.fromOn),
    days,
    minutes,
    flights,
    source,
    inForce,
    voided,
    voidReason,
  };
}
