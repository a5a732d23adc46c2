import { fraction } from '@strutbook/domain/units/fraction.js';
import { instant } from '@strutbook/domain/units/minutes.js';
import { type Counts, subtractCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { emptySpans } from '@strutbook/domain/usage/empty-spans.js';
import { runningSums } from '@strutbook/domain/usage/pieces-of-use.js';
import type { Counters as Pair } from '@strutbook/domain/usage/since.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant, toInstant } from '../../platform/http/instants.js';
import { readClocks } from '../usage/clock-readings.js';

/** One line of what an airframe or a position has run. */
export interface ClockLine {
  readonly kind: 'opening' | 'flown';
  readonly from: Date | null;
  readonly to: Date | null;
  readonly engine: { readonly id: string; readonly serialNumber: string } | null;
  readonly minutes: number | null;
  readonly cycles: Pair['cycles'];
  readonly counts: Counts | null;
  readonly source: string | null;
  readonly trace: string | null;
  readonly note: string | null;
}

/** A clock's total and the lines that add up to it. */
export interface ClockSum {
  readonly total: Pair;
  readonly lines: readonly (ClockLine & { readonly running: Pair })[];
}

interface Span {
  readonly from: Date;
  readonly to: Date | null;
  readonly engine: ClockLine['engine'];
}

/** What an airframe has run by an instant (null: now): its balance and a line a calendar year; one cycle a flight. */
export async function airframeSum(
  tx: Tx,
  operatorId: number,
  airframeId: string,
  { at, now }: { readonly at: Date | null; readonly now: Date },
): Promise<ClockSum> {
  const opening = await openingLine(tx, operatorId, airframeId, at);
  const first = await tx.flight.findFirst({
    where: { operatorId, airframeId, voidedSeq: null },
    orderBy: { landingAt: 'asc' },
    select: { landingAt: true },
  });
  const end = at ?? now;
  const begins = first === null ? null : Math.min(first.landingAt.getUTCFullYear(), end.getUTCFullYear());
  const years =
    begins === null ? [] : Array.from({ length: end.getUTCFullYear() - begins + 1 }, (_, n) => begins + n);
  const spans = years.map((year): Span => {
    const lasts = year === end.getUTCFullYear();
    return { from: yearBegins(year), to: lasts ? at : yearBegins(year + 1), engine: null };
  });
  return summed(opening, await flownIn(tx, operatorId, airframeId, spans, at));
}

/** What a position has run by an instant: its airframe's balance, and its own clock engine by engine, empty spans too. */
export async function positionSum(
  tx: Tx,
  operatorId: number,
  { id, airframeId }: { readonly id: string; readonly airframeId: string },
  at: Date | null,
): Promise<ClockSum> {
  const stays = await tx.stay.findMany({
    where: {
      operatorId,
      voidedSeq: null,
      slot: { is: { operatorId, positionId: id, kind: { in: ['engine', 'apu'] } } },
      ...(at === null ? {} : { fromAt: { lt: at } }),
    },
    include: { component: { select: { id: true, serialNumber: true } } },
    orderBy: { fromAt: 'asc' },
  });
  const until = (to: Date | null) => (to === null || (at !== null && to > at) ? at : to);
  const filled = stays.map(
    ({ fromAt, toAt, component }): Span => ({
      from: fromAt,
      to: until(toAt),
      engine: component,
    }),
  );
  const gaps = emptySpans(
    stays.map((stay) => ({
      from: toInstant(stay.fromAt),
      to: stay.toAt === null ? null : toInstant(stay.toAt),
    })),
  );
  const empty = gaps
    .map(
      ({ from, to }): Span => ({
        from: fromInstant(from ?? instant(0)),
        to: until(to === null ? null : fromInstant(to)),
        engine: null,
      }),
    )
    .filter((span) => at === null || span.from < at);
  const spans = [...filled, ...empty].sort((a, b) => a.from.getTime() - b.from.getTime());
  const lines = await flownIn(tx, operatorId, id, spans, at);
  return summed(
    await openingLine(tx, operatorId, airframeId, at),
    // Nothing passed an empty position before its first engine: that is no line.
    lines.filter((line) => line.engine !== null || line.minutes !== 0 || line.counts?.flights !== 0),
  );
}

async function openingLine(
  tx: Tx,
  operatorId: number,
  airframeId: string,
  at: Date | null,
): Promise<ClockLine> {
  const row = await tx.opening.findFirst({
    where: {
      operatorId,
      airframeId,
      basis: 'new',
      voidedSeq: null,
      ...(at === null ? {} : { at: { lte: at } }),
    },
  });
  const base = { kind: 'opening', from: null, engine: null, counts: null } as const;
  if (row === null)
    return {
      ...base,
      ...{ to: null, minutes: null, cycles: null, source: null, trace: null },
      note: 'No opening balance tells what it had flown before.',
    };
  const isShown = row.trace !== 'not-shown';
  return {
    ...base,
    to: row.at,
    minutes: row.minutes === null ? null : Number(row.minutes),
    cycles: row.cycles === null ? null : fraction(row.cycles, BigInt(row.cycleDenominator)),
    ...{ source: row.source, trace: row.trace, note: isShown ? null : row.traceNote },
  };
}

async function flownIn(
  tx: Tx,
  operatorId: number,
  carrierId: string,
  spans: readonly Span[],
  at: Date | null,
): Promise<ClockLine[]> {
  const reading = await readClocks(
    tx,
    operatorId,
    spans.flatMap(({ from, to }) => [
      { carrierId, at: from },
      { carrierId, at: to ?? at },
    ]),
  );
  return spans.map(({ from, to, engine }) => {
    const before = from.getTime() === 0 ? zeroCounts : reading({ carrierId, at: from });
    const counts = subtractCounts(reading({ carrierId, at: to ?? at }), before);
    return {
      ...{ kind: 'flown', from: from.getTime() === 0 ? null : from, to, engine, counts },
      ...{ minutes: counts.minutes, cycles: fraction(counts.flights), source: null, trace: null, note: null },
    };
  });
}

function summed(opening: ClockLine, flown: readonly ClockLine[]): ClockSum {
  const lines = [opening, ...flown];
  const sums = runningSums(lines);
  return {
    total: sums.at(-1) ?? { minutes: null, cycles: null },
    lines: lines.map((line, index) => ({ ...line, running: sums[index] ?? { minutes: null, cycles: null } })),
  };
}

/** A moment before the year's first landing minute: what lands at midnight belongs to the new year. */
function yearBegins(year: number): Date {
  return new Date(Date.UTC(year, 0, 1) - 60_000);
}
