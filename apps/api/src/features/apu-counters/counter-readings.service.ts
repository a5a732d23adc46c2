import { Injectable } from '@nestjs/common';
import type { CounterFigures } from '@strutbook/domain/runs/apu-counter.js';
import type { Actor } from '../../platform/access/actor.js';
import { Database, type Tx } from '../../platform/database/database.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { momentOf, toInstant, toWire } from '../../platform/http/instants.js';
import { orNotFound, refuse } from '../../platform/problems/refusal.error.js';
import { Clock } from '../../platform/time/clock.js';
import { refuseFuture } from '../../platform/time/refuse-future.js';
import { type Before, Consequences } from '../../records/consequences/consequences.js';
import { type ReadingKind, recordReading } from '../../records/counting/counter-readings.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { withAllBeneath } from '../../records/usage/kinship.js';
import { lockRunning } from '../../records/usage/lock-running.js';
import type {
  CounterAnswerDto,
  CounterReadingsDto,
  NewReadingDto,
  NewReplacementDto,
} from './counter-reading.dto.js';
import { readingsToWire } from './counter-reading.mapper.js';

interface Told {
  readonly kind: Extract<ReadingKind, 'read' | 'replaced'>;
  readonly at: Date;
  readonly figures: CounterFigures;
  readonly fresh: CounterFigures | null;
  readonly source: string;
  /** Leads to the figures in the request. */
  readonly path: string;
}

/** The counters of auxiliary power units: what they showed, and when one was replaced. */
@Injectable()
export class CounterReadingsService {
  constructor(
    private readonly database: Database,
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly consequences: Consequences,
    private readonly clock: Clock,
  ) {}

  /** All readings of one counter, voided ones too. Refuses: NOT_FOUND, REFUSED_BY_FACTS (it has no counter). */
  list(actor: Actor, componentId: string): Promise<CounterReadingsDto> {
    return this.database.inOperator(actor, (tx) => this.answer(tx, actor.operatorId, componentId));
  }

  /** Records a reading. Refuses: NOT_FOUND, IN_THE_FUTURE, ALREADY_EXISTS, BEFORE_OPENING, and as checkReading does. */
  read(
    actor: Actor,
    act: ActRequest,
    componentId: string,
    { at, minutes, starts, source }: NewReadingDto,
  ): Promise<CounterAnswerDto> {
    const figures = { minutes, starts };
    return this.record(actor, act, componentId, {
      ...{ kind: 'read', figures, fresh: null, source, path: '' },
      at: momentOf(at),
    });
  }

  /** Records that the counter was replaced. Refuses as `read` does. */
  replace(
    actor: Actor,
    act: ActRequest,
    componentId: string,
    { at, last, first, source }: NewReplacementDto,
  ): Promise<CounterAnswerDto> {
    return this.record(actor, act, componentId, {
      ...{ kind: 'replaced', figures: { ...last }, fresh: { ...first }, source, path: 'last' },
      at: momentOf(at),
    });
  }

  private record(
    actor: Actor,
    act: ActRequest,
    componentId: string,
    { kind, at, figures, fresh, source, path }: Told,
  ): Promise<CounterAnswerDto> {
    const { operatorId } = actor;
    refuseFuture(at, 'at', this.clock.now());
    return this.acts.perform(actor, act, async (tx) => {
      await requireCounter(tx, operatorId, componentId);
      const touched = await withAllBeneath(tx, operatorId, [componentId]);
      await lockRunning(tx, operatorId, touched);
      const before = await this.consequences.beforeOfComponents(tx, operatorId, [componentId], { from: at });
      const number = await this.journal.number(tx);
      const reading = { componentId, kind, figures, fresh, source, stayId: null, number };
      const id = await recordReading(tx, operatorId, { ...reading, at: toInstant(at) }, path);
      await this.projections.ofComponents(tx, operatorId, [componentId]);
      await this.journal.append(tx, actor, {
        number,
        stream: componentId,
        kind: kind === 'read' ? 'counter-read' : 'counter-replaced',
        body: {
          readingId: id,
          at: toWire(at),
          ...figures,
          first: fresh === null ? null : { ...fresh },
          source,
        },
        about: [componentId],
        key: act.key,
      });
      const body = await this.answerAfter(tx, operatorId, componentId, before);
      return { status: 201, body, number, resource: `/api/components/${componentId}/counter-readings` };
    });
  }

  /** The readings, and what came of what was changed since `before`. */
  async answerAfter(
    tx: Tx,
    operatorId: number,
    componentId: string,
    before: Before,
  ): Promise<CounterAnswerDto> {
    const consequences = await this.consequences.since(tx, operatorId, before);
    return { ...(await this.answer(tx, operatorId, componentId)), consequences };
  }

  /** The readings as they stand in a transaction. Refuses: NOT_FOUND, REFUSED_BY_FACTS. */
  async answer(tx: Tx, operatorId: number, componentId: string): Promise<CounterReadingsDto> {
    const { serialNumber } = await requireCounter(tx, operatorId, componentId);
    const rows = await tx.counterReading.findMany({
      where: { operatorId, componentId },
      orderBy: [{ at: 'asc' }, { recordedSeq: 'asc' }, { id: 'asc' }],
    });
    return readingsToWire({ id: componentId, serialNumber }, rows);
  }
}

async function requireCounter(tx: Tx, operatorId: number, id: string): Promise<{ serialNumber: string }> {
  const component = orNotFound(
    await tx.component.findUnique({
      where: { operatorId_id: { operatorId, id } },
      select: { kind: true, serialNumber: true },
    }),
    'component',
  );
  if (component.kind !== 'apu')
    refuse({
      code: 'REFUSED_BY_FACTS',
      reason: `${component.serialNumber} is no auxiliary power unit and has no counter of its own.`,
      fix: 'Enter readings with an auxiliary power unit; others count by flights and runs.',
    });
  return component;
}
