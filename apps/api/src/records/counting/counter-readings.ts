import type { Refusal } from '@strutbook/domain/refusals.js';
import {
  type CounterFigures,
  type CounterReading,
  checkReading,
  figuresAfter,
} from '@strutbook/domain/runs/apu-counter.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { Tx } from '../../platform/database/database.js';
import { newId } from '../../platform/database/uuid.js';
import { fromInstant, toInstant } from '../../platform/http/instants.js';
import { orRefuse } from '../../platform/problems/refusal.error.js';
import { groupRows } from '../usage/group-rows.js';

export type ReadingKind = 'installed' | 'removed' | 'read' | 'replaced';

/** A reading to record. */
export interface NewReading {
  readonly componentId: string;
  readonly kind: ReadingKind;
  readonly at: Instant;
  readonly figures: CounterFigures;
  readonly fresh: CounterFigures | null;
  readonly stayId: string | null;
  readonly source: string | null;
  readonly number: bigint;
}

/** The readings that count of these components' own counters, in order of time. */
export async function loadReadings(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
): Promise<ReadonlyMap<string, readonly CounterReading[]>> {
  const rows = await tx.counterReading.findMany({
    where: { operatorId, componentId: { in: [...componentIds] }, voidedSeq: null },
    orderBy: [{ at: 'asc' }, { recordedSeq: 'asc' }, { id: 'asc' }],
  });
  return groupRows(
    rows.map((row) => ({
      componentId: row.componentId,
      id: row.id,
      at: toInstant(row.at),
      minutes: Number(row.minutes),
      starts: Number(row.starts),
      fresh:
        row.freshMinutes === null || row.freshStarts === null
          ? null
          : { minutes: Number(row.freshMinutes), starts: Number(row.freshStarts) },
    })),
    (row) => row.componentId,
  );
}

/** Refuses what a counter cannot show, as checkReading does; `path` leads to the figures in the request. */
export async function requireReading(
  tx: Tx,
  operatorId: number,
  { componentId, at, figures, fresh }: Pick<NewReading, 'componentId' | 'at' | 'figures' | 'fresh'>,
  path: string,
): Promise<void> {
  const readings = (await loadReadings(tx, operatorId, [componentId])).get(componentId) ?? [];
  const checked = checkReading({ id: 'new', at, ...figures, fresh }, readings);
  orRefuse(checked, checked.ok ? undefined : fieldOf(checked.refusal, path));
}

/**
 * Records a reading and sets the counter's clock by it; the caller holds the component and writes its projections.
 * Refuses as checkReading does. Answers its id.
 */
export async function recordReading(
  tx: Tx,
  operatorId: number,
  reading: NewReading,
  path: string,
): Promise<string> {
  const { componentId, kind, at, figures, fresh, stayId, source, number } = reading;
  await requireReading(tx, operatorId, reading, path);
  const id = newId();
  await tx.counterReading.create({
    data: {
      ...{ operatorId, id, componentId, kind, stayId, source },
      at: fromInstant(at),
      minutes: figures.minutes,
      starts: figures.starts,
      freshMinutes: fresh?.minutes ?? null,
      freshStarts: fresh?.starts ?? null,
      recordedSeq: number,
    },
  });
  await setCounterClock(tx, operatorId, componentId);
  return id;
}

/** Voids the readings that a voided stay had demanded. Answers whether there were any. */
export async function voidReadingsOfStay(
  tx: Tx,
  operatorId: number,
  { stayId, number, reason }: { readonly stayId: string; readonly number: bigint; readonly reason: string },
): Promise<void> {
  const where = { operatorId, stayId, voidedSeq: null };
  const [reading] = await tx.counterReading.findMany({ where, select: { componentId: true } });
  if (reading === undefined) return;
  await tx.counterReading.updateMany({ where, data: { voidedSeq: number, voidReason: reason } });
  await setCounterClock(tx, operatorId, reading.componentId);
}

/** Sets months and head of a counter's clock from its readings. */
export async function setCounterClock(tx: Tx, operatorId: number, componentId: string): Promise<void> {
  await tx.$executeRaw`SELECT set_counter_clock(${operatorId}::int, ${componentId}::uuid)`;
}

/** What a reading adds to those before it; nothing where it is the first. Total. */
export function addedBy(
  readings: readonly CounterReading[],
  at: Instant,
  figures: CounterFigures,
): CounterFigures {
  const before = readings.findLast((reading) => reading.at <= at);
  if (before === undefined) return { minutes: 0, starts: 0 };
  const from = figuresAfter(before);
  return { minutes: figures.minutes - from.minutes, starts: figures.starts - from.starts };
}

function fieldOf(refusal: Refusal, path: string): string {
  const within = path === '' ? '' : `${path}.`;
  return 'field' in refusal ? `${within}${refusal.field}` : `${within}minutes`;
}
