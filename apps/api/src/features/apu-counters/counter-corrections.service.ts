import { Injectable } from '@nestjs/common';
import { checkReading } from '@strutbook/domain/runs/apu-counter.js';
import type { Actor } from '../../platform/access/actor.js';
import type { Tx } from '../../platform/database/database.js';
import type { CounterReading as Row } from '../../platform/database/generated/client.js';
import type { ActRequest } from '../../platform/http/act-key.js';
import { Acts } from '../../platform/http/acts.js';
import { toInstant, toWire } from '../../platform/http/instants.js';
import { orNotFound, orRefuse, refuse } from '../../platform/problems/refusal.error.js';
import { type Before, Consequences } from '../../records/consequences/consequences.js';
import {
  loadReadings,
  type ReadingKind,
  recordReading,
  setCounterClock,
} from '../../records/counting/counter-readings.js';
import { Projections } from '../../records/due-points/projections.js';
import { Journal } from '../../records/journal/journal.js';
import { withAllBeneath } from '../../records/usage/kinship.js';
import { lockRunning } from '../../records/usage/lock-running.js';
import type { CorrectReadingDto, CounterAnswerDto } from './counter-reading.dto.js';
import { CounterReadingsService } from './counter-readings.service.js';

/** Readings that were recorded wrongly: voided, or voided and entered again, each with its reason. */
@Injectable()
export class CounterCorrectionsService {
  constructor(
    private readonly acts: Acts,
    private readonly journal: Journal,
    private readonly projections: Projections,
    private readonly consequences: Consequences,
    private readonly readings: CounterReadingsService,
  ) {}

  /**
   * Voids a reading. Refuses: NOT_FOUND, ALREADY_VOIDED, REFUSED_BY_FACTS (an installation or removal demanded it),
   * and as checkReading does where the readings around it do not fit together without it.
   */
  void(actor: Actor, act: ActRequest, id: string, reason: string): Promise<CounterAnswerDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const row = await lockReading(tx, operatorId, id);
      const before = await this.consequences.beforeOfComponents(tx, operatorId, [row.componentId], {
        from: row.at,
      });
      if (row.stayId !== null)
        refuse({
          code: 'REFUSED_BY_FACTS',
          reason: `This reading tells what the counter showed as the unit ${row.kind === 'removed' ? 'came off' : 'went on'}; without it nobody could tell what it ran there.`,
          fix: 'Correct its figures instead, or void the installation if that is wrong.',
        });
      const number = await this.journal.number(tx);
      await voidRow(tx, operatorId, { id, number, reason });
      await requireConsistent(tx, operatorId, row.componentId);
      await setCounterClock(tx, operatorId, row.componentId);
      await this.projections.ofComponents(tx, operatorId, [row.componentId]);
      return this.done(tx, actor, act, {
        ...{ row, before, number, kind: 'counter-reading-voided' },
        body: { reason },
      });
    });
  }

  /** Voids a reading and enters it again at the same moment. Refuses: NOT_FOUND, ALREADY_VOIDED, and as checkReading does. */
  correct(
    actor: Actor,
    act: ActRequest,
    id: string,
    { minutes, starts, reason }: CorrectReadingDto,
  ): Promise<CounterAnswerDto> {
    const { operatorId } = actor;
    return this.acts.perform(actor, act, async (tx) => {
      const row = await lockReading(tx, operatorId, id);
      const before = await this.consequences.beforeOfComponents(tx, operatorId, [row.componentId], {
        from: row.at,
      });
      const number = await this.journal.number(tx);
      await voidRow(tx, operatorId, { id, number, reason });
      const { componentId, stayId, source, freshMinutes, freshStarts } = row;
      const replacedBy = await recordReading(
        tx,
        operatorId,
        {
          ...{ componentId, stayId, source, number, figures: { minutes, starts } },
          kind: row.kind as ReadingKind,
          at: toInstant(row.at),
          fresh:
            freshMinutes === null || freshStarts === null
              ? null
              : { minutes: Number(freshMinutes), starts: Number(freshStarts) },
        },
        '',
      );
      await this.projections.ofComponents(tx, operatorId, [componentId]);
      const body = { replacedBy, minutes, starts, reason };
      return this.done(tx, actor, act, { row, before, number, kind: 'counter-reading-corrected', body });
    });
  }

  private async done(
    tx: Tx,
    actor: Actor,
    act: ActRequest,
    {
      row,
      before,
      number,
      kind,
      body,
    }: {
      readonly row: Row;
      readonly before: Before;
      readonly number: bigint;
      readonly kind: string;
      readonly body: Readonly<Record<string, string | number>>;
    },
  ) {
    const { componentId, id } = row;
    await this.journal.append(tx, actor, {
      number,
      stream: componentId,
      kind,
      body: {
        ...{ readingId: id, at: toWire(row.at) },
        before: { minutes: Number(row.minutes), starts: Number(row.starts) },
        ...body,
      },
      about: [componentId],
      key: act.key,
    });
    const answer = await this.readings.answerAfter(tx, actor.operatorId, componentId, before);
    const resource = `/api/components/${componentId}/counter-readings`;
    return { status: kind === 'counter-reading-voided' ? 200 : 201, body: answer, number, resource };
  }
}

/** The reading under the lock of its unit. Refuses: NOT_FOUND, ALREADY_VOIDED. */
async function lockReading(tx: Tx, operatorId: number, id: string): Promise<Row> {
  const where = { operatorId_id: { operatorId, id } };
  const { componentId } = orNotFound(
    await tx.counterReading.findUnique({ where, select: { componentId: true } }),
    'reading',
  );
  const touched = await withAllBeneath(tx, operatorId, [componentId]);
  await lockRunning(tx, operatorId, touched);
  // Read again: whoever held the lock may have voided it.
  const row = orNotFound(await tx.counterReading.findUnique({ where }), 'reading');
  if (row.voidedSeq !== null) refuse({ code: 'ALREADY_VOIDED', what: 'the reading' });
  return row;
}

async function voidRow(
  tx: Tx,
  operatorId: number,
  { id, number, reason }: { readonly id: string; readonly number: bigint; readonly reason: string },
): Promise<void> {
  await tx.counterReading.updateMany({
    where: { operatorId, id, voidedSeq: null },
    data: { voidedSeq: number, voidReason: reason },
  });
}

/** Each reading against those before it: without a replacement, the ones around it may no longer fit. */
async function requireConsistent(tx: Tx, operatorId: number, componentId: string): Promise<void> {
  const readings = (await loadReadings(tx, operatorId, [componentId])).get(componentId) ?? [];
  for (const [index, reading] of readings.entries())
    orRefuse(checkReading(reading, readings.slice(0, index)), 'reason');
}
