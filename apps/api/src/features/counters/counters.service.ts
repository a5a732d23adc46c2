import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import { toCounters, toCycles } from '../../platform/http/counters.dto.js';
import { momentOf, toWire } from '../../platform/http/instants.js';
import { cursorAfter, readCursor } from '../../platform/http/landing-cursor.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { refuseFuture } from '../../platform/time/refuse-future.js';
import { airframeSum, type ClockSum, positionSum } from '../../records/explanations/clock-sums.js';
import { Explanations } from '../../records/explanations/explanations.js';
import { lineFlights } from '../../records/explanations/line-flights.js';
import { resolveMoment, type ToldMoment } from '../../records/stays/told-moment.js';
import { askedMoment } from './asked-moment.js';
import type { CounterMomentDto, FlightsOfLineDto } from './counter-moment.dto.js';
import { explainedToWire, momentToWire } from './counters.mapper.js';
import type {
  AirframeCountersDto,
  ClockAddendDto,
  ExplainedCountersDto,
  FlightsOfLinePageDto,
} from './counters-view.dto.js';

const PAGE = 50;

/** Counters at any moment, with how each comes about. */
@Injectable()
export class CountersService {
  constructor(
    private readonly database: Database,
    private readonly explanations: Explanations,
    private readonly clock: Clock,
  ) {}

  /** Every counter of a component at a moment, line by line. Refuses: NOT_FOUND, INVALID_FIELDS, NO_SUCH_LOG_PAGE. */
  ofComponent(actor: Actor, id: string, asked: CounterMomentDto): Promise<ExplainedCountersDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const row = orNotFound(
        await tx.component.findUnique({ where: { operatorId_id: { operatorId, id } } }),
        'component',
      );
      const moment = await this.moment(tx, operatorId, asked, id);
      const counters = await this.explanations.of(tx, operatorId, id, moment?.at ?? null);
      return {
        id,
        kind: row.kind as ExplainedCountersDto['kind'],
        partNumber: row.partNumber,
        serialNumber: row.serialNumber,
        description: row.description,
        moment: moment === null ? null : momentToWire(moment),
        counters: counters.map(explainedToWire),
      };
    });
  }

  /** What an airframe and each of its positions has run, line by line. Refuses as ofComponent does. */
  ofAirframe(actor: Actor, id: string, asked: CounterMomentDto): Promise<AirframeCountersDto> {
    const { operatorId } = actor;
    return this.database.inOperator(actor, async (tx) => {
      const { registration } = orNotFound(
        await tx.airframe.findUnique({ where: { operatorId_id: { operatorId, id } } }),
        'airframe',
      );
      const moment = await this.moment(tx, operatorId, { ...asked, airframeId: id }, null);
      const at = moment?.at ?? null;
      const own = await airframeSum(tx, operatorId, id, { at, now: this.clock.now() });
      const positions = await tx.position.findMany({
        where: { operatorId, airframeId: id, number: { gt: 0 } },
        orderBy: { number: 'asc' },
      });
      const sums: AirframeCountersDto['positions'] = [];
      for (const { id: positionId, number, label } of positions) {
        const sum = await positionSum(tx, operatorId, { id: positionId, airframeId: id }, at);
        sums.push({ id: positionId, number, label, ...sumToWire(sum) });
      }
      return {
        id,
        registration,
        moment: moment === null ? null : momentToWire(moment),
        ...sumToWire(own),
        positions: sums,
      };
    });
  }

  /** The flights of one line, the earliest first, a page at a time. Refuses: NOT_FOUND, INVALID_FIELDS. */
  flights(
    actor: Actor,
    { carrierId, from, to, after, limit = PAGE }: FlightsOfLineDto,
  ): Promise<FlightsOfLinePageDto> {
    const { operatorId } = actor;
    const cursor = after === undefined ? null : readCursor(after);
    return this.database.inOperator(actor, async (tx) => {
      orNotFound(
        await tx.carrier.findUnique({
          where: { operatorId_id: { operatorId, id: carrierId } },
          select: { id: true },
        }),
        'clock',
        'carrierId',
      );
      const found = await lineFlights(tx, operatorId, carrierId, {
        from: momentOf(from),
        to: to === undefined ? null : momentOf(to),
        after: cursor,
        limit: limit + 1,
      });
      const page = found.slice(0, limit);
      const last = page.at(-1);
      return {
        rows: page.map((row) => ({
          ...row,
          takeOffAt: toWire(row.takeOffAt),
          landingAt: toWire(row.landingAt),
        })),
        next: found.length > limit && last !== undefined ? cursorAfter(last) : null,
      };
    });
  }

  private async moment(
    tx: Tx,
    operatorId: number,
    asked: CounterMomentDto,
    componentId: string | null,
  ): Promise<ToldMoment | null> {
    const boundary = askedMoment(asked);
    if (boundary === null) return null;
    const now = this.clock.now();
    const of = { componentId, airframeId: asked.airframeId ?? null, now };
    const moment = await resolveMoment(tx, operatorId, boundary, of, 'moment');
    refuseFuture(moment.kind === 'after-last' ? now : moment.at, 'at', now);
    return moment;
  }
}

function sumToWire({ total, lines }: ClockSum): Pick<AirframeCountersDto, 'total' | 'addends'> {
  return {
    total: toCounters(total),
    addends: lines.map(
      ({ kind, from, to, engine, minutes, cycles, running, counts, source, trace, note }) => ({
        ...{ kind, engine, minutes, counts, source, note },
        from: from === null ? null : toWire(from),
        to: to === null ? null : toWire(to),
        cycles: cycles === null ? null : toCycles(cycles),
        running: toCounters(running),
        trace: trace as ClockAddendDto['trace'],
      }),
    ),
  };
}
