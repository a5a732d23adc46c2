import { instant } from '@strutbook/domain/units/minutes.js';
import { addCounts, type Counts, subtractCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { emptySpans } from '@strutbook/domain/usage/empty-spans.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant } from '../../platform/http/instants.js';
import { countsOf, readClocks } from '../usage/clock-readings.js';
import { flownInSpans, notRunningInSpans, runsInSpans } from './balance-sums.js';

/** One engine's stay at a position, or a time it was empty, with what was flown then and where it went. */
export interface BalanceSpan {
  readonly positionId: string;
  /** Null: since always. */
  readonly from: Date | null;
  /** Null: it goes on. */
  readonly to: Date | null;
  /** Null: no engine was there. */
  readonly engine: { readonly id: string; readonly serialNumber: string } | null;
  /** What the airframe flew then. */
  readonly flown: Counts;
  /** The last flight in it; null when none is. */
  readonly lastFlightId: string | null;
  /** What was run on the ground then and counts. */
  readonly runs: Counts;
  /** What the engine there took; with none, what passed the empty position by its clock. */
  readonly taken: Counts;
  readonly notRunning: Counts;
}

/** A position of the airframe and the slot its engine hangs in. */
export interface EnginePosition {
  readonly positionId: string;
  readonly number: number;
  readonly slotId: string;
}

type Bounds = Omit<BalanceSpan, 'flown' | 'lastFlightId' | 'runs' | 'taken' | 'notRunning'>;

interface ExposureRow {
  carrier_id: string;
  component_id: string;
  serial_number: string;
  from_at: Date;
  to_at: Date | null;
  minutes: bigint;
  flights: bigint;
  landings: bigint;
  touch_and_goes: bigint;
  starts: bigint;
  aborted_take_offs: bigint;
}

/**
 * The accounts of an airframe's engine positions span by span, up to an instant (null: now): engine by engine and, between
 * them, while nothing was there. Flights are added up from themselves, what engines took from their exposures, so a span
 * whose sums differ is where something was lost or made up. By position, then by time.
 */
export async function balanceSpans(
  tx: Tx,
  operatorId: number,
  airframeId: string,
  upTo: Date | null,
): Promise<{ readonly positions: readonly EnginePosition[]; readonly spans: readonly BalanceSpan[] }> {
  const positions = await enginePositions(tx, operatorId, airframeId);
  const exposures = await exposuresAt(tx, operatorId, { positions, upTo });
  const bounds = withMadeUp(await boundsOf(tx, operatorId, { positions, upTo }), exposures, upTo);
  const taken = await takenIn(tx, operatorId, { bounds, exposures, upTo });
  const flown = await flownInSpans(tx, operatorId, airframeId, bounds);
  const notRunning = await notRunningInSpans(tx, operatorId, bounds);
  const runs = await runsInSpans(tx, operatorId, bounds);
  const spans = bounds.map((span, index) => ({
    ...span,
    flown: flown.get(index)?.flown ?? zeroCounts,
    lastFlightId: flown.get(index)?.lastFlightId ?? null,
    runs: runs.get(index) ?? zeroCounts,
    taken: taken[index] ?? zeroCounts,
    notRunning: notRunning.get(index) ?? zeroCounts,
  }));
  return { positions, spans };
}

function enginePositions(tx: Tx, operatorId: number, airframeId: string): Promise<EnginePosition[]> {
  return tx.$queryRaw<EnginePosition[]>`
    SELECT p.id AS "positionId", p.number, s.id AS "slotId"
      FROM position p
      JOIN slot s ON s.operator_id = p.operator_id AND s.position_id = p.id AND s.kind = 'engine'
     WHERE p.operator_id = ${operatorId}::int AND p.airframe_id = ${airframeId}::uuid ORDER BY p.number`;
}

interface Asked {
  readonly positions: readonly EnginePosition[];
  readonly upTo: Date | null;
}

/** When each position held which engine, and when none, up to the instant. */
async function boundsOf(tx: Tx, operatorId: number, { positions, upTo }: Asked): Promise<Bounds[]> {
  const stays = await tx.stay.findMany({
    where: {
      operatorId,
      voidedSeq: null,
      slotId: { in: positions.map(({ slotId }) => slotId) },
      ...(upTo === null ? {} : { fromAt: { lt: upTo } }),
    },
    select: {
      slotId: true,
      fromAt: true,
      toAt: true,
      component: { select: { id: true, serialNumber: true } },
    },
    orderBy: { fromAt: 'asc' },
  });
  return positions.flatMap(({ positionId, slotId }) => {
    const here = stays.filter((stay) => stay.slotId === slotId);
    const held = here.map(({ fromAt, toAt, component }) => ({
      ...{ positionId, from: fromAt, to: earlier(toAt, upTo), engine: component },
    }));
    const empty = emptySpans(
      here.map(({ fromAt, toAt }) => ({ from: minuteOf(fromAt), to: toAt === null ? null : minuteOf(toAt) })),
    ).flatMap(({ from, to }) => {
      const begins = from === null ? null : fromInstant(from);
      if (begins !== null && upTo !== null && begins >= upTo) return [];
      const ends = earlier(to === null ? null : fromInstant(to), upTo);
      return [{ positionId, from: begins, to: ends, engine: null }];
    });
    return [...held, ...empty].sort((a, b) => timeOf(a.from) - timeOf(b.from));
  });
}

function exposuresAt(tx: Tx, operatorId: number, { positions, upTo }: Asked): Promise<ExposureRow[]> {
  return tx.$queryRaw<ExposureRow[]>`
    SELECT x.carrier_id, x.component_id, k.serial_number, x.from_at, x.to_at, x.minutes, x.flights, x.landings,
           x.touch_and_goes, x.starts, x.aborted_take_offs
      FROM exposure x
      JOIN component k ON k.operator_id = x.operator_id AND k.id = x.component_id AND k.kind = 'engine'
     WHERE x.operator_id = ${operatorId}::int AND x.carrier_id = ANY (${positions.map(({ positionId }) => positionId)}::uuid[])
       AND (${upTo}::timestamptz IS NULL OR x.from_at < ${upTo}::timestamptz)
     ORDER BY x.from_at`;
}

const isIn = (span: Bounds, { carrier_id, component_id, from_at }: ExposureRow): boolean =>
  span.positionId === carrier_id &&
  span.engine?.id === component_id &&
  span.from !== null &&
  span.from <= from_at &&
  (span.to === null || from_at < span.to);

/** The spans, and one more for each exposure of an engine that was not there then: what it took was made up. */
function withMadeUp(
  bounds: readonly Bounds[],
  exposures: readonly ExposureRow[],
  upTo: Date | null,
): readonly Bounds[] {
  const madeUp = exposures.filter((exposure) => !bounds.some((span) => isIn(span, exposure)));
  return [
    ...bounds,
    ...madeUp.map(({ carrier_id, component_id, serial_number, from_at, to_at }) => ({
      ...{ positionId: carrier_id, from: from_at, to: earlier(to_at, upTo) },
      engine: { id: component_id, serialNumber: serial_number },
    })),
  ];
}

/** What each span's engine took by its exposures, or what passed the empty position by its clock. */
async function takenIn(
  tx: Tx,
  operatorId: number,
  {
    bounds,
    exposures,
    upTo,
  }: {
    readonly bounds: readonly Bounds[];
    readonly exposures: readonly ExposureRow[];
    readonly upTo: Date | null;
  },
): Promise<readonly Counts[]> {
  const asks = [
    ...exposures.flatMap(({ carrier_id: carrierId, from_at }) => [
      { carrierId, at: upTo },
      { carrierId, at: from_at },
    ]),
    ...bounds.flatMap(({ positionId: carrierId, from, to }) => [
      { carrierId, at: to },
      ...(from === null ? [] : [{ carrierId, at: from }]),
    ]),
  ];
  const reading = await readClocks(tx, operatorId, asks);
  const ofExposure = (exposure: ExposureRow): Counts => {
    const { carrier_id: carrierId, from_at: at, to_at } = exposure;
    const kept = countsOf(exposure);
    // What has ended keeps the amount; what goes on keeps the reading it began at.
    if (to_at === null) return subtractCounts(reading({ carrierId, at: upTo }), kept);
    if (upTo === null || to_at <= upTo) return kept;
    return subtractCounts(reading({ carrierId, at: upTo }), reading({ carrierId, at }));
  };
  return bounds.map((span) => {
    const { positionId: carrierId, from, to } = span;
    if (span.engine !== null)
      return exposures
        .filter((exposure) => isIn(span, exposure))
        .map(ofExposure)
        .reduce(addCounts, zeroCounts);
    const start = from === null ? zeroCounts : reading({ carrierId, at: from });
    return subtractCounts(reading({ carrierId, at: to }), start);
  });
}

const minuteOf = (at: Date) => instant(at.getTime() / 60_000);

const timeOf = (at: Date | null): number => at?.getTime() ?? Number.NEGATIVE_INFINITY;

function earlier(at: Date | null, upTo: Date | null): Date | null {
  if (at === null) return upTo;
  return upTo !== null && upTo < at ? upTo : at;
}
