import { instant } from '@strutbook/domain/units/minutes.js';
import { addCounts, type Counts, subtractCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { emptySpans } from '@strutbook/domain/usage/empty-spans.js';
import type { BalanceAccounts } from '@strutbook/domain/usage/trial-balance.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant } from '../../platform/http/instants.js';
import { countsOf, readClocks } from '../usage/clock-readings.js';

/** A position whose accounts are drawn up. */
export interface BalancedPosition {
  readonly positionId: string;
  readonly airframeId: string;
  readonly registration: string;
  readonly number: number;
}

interface PositionRow extends BalancedPosition {
  readonly slotId: string;
}

interface SumRow {
  id: string;
  minutes: bigint;
  flights: bigint;
  landings: bigint;
  touch_and_goes: bigint;
  starts: bigint;
  aborted_take_offs: bigint;
}

/**
 * The accounts of every engine position. What was flown, and what did not run, is added up from the flights
 * themselves; what engines took from their exposures; what passed an empty position from its clock: three ways that
 * meet only when nothing is lost.
 */
export async function balanceAccounts(
  tx: Tx,
  operatorId: number,
): Promise<(BalancedPosition & { readonly accounts: BalanceAccounts })[]> {
  const positions = await tx.$queryRaw<PositionRow[]>`
    SELECT p.id AS "positionId", p.airframe_id AS "airframeId", a.registration, p.number, s.id AS "slotId"
      FROM position p
      JOIN airframe a ON a.operator_id = p.operator_id AND a.id = p.airframe_id
      JOIN slot s ON s.operator_id = p.operator_id AND s.position_id = p.id AND s.kind = 'engine'
     WHERE p.operator_id = ${operatorId}::int ORDER BY a.registration, p.number`;
  const flown = sums(
    await tx.$queryRaw<SumRow[]>`
    SELECT airframe_id AS id, sum(minutes) AS minutes, count(*) AS flights, sum(1 + touch_and_goes) AS landings,
           sum(touch_and_goes) AS touch_and_goes, sum(starts) AS starts, sum(aborted_take_offs) AS aborted_take_offs
      FROM flight WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL GROUP BY airframe_id`,
  );
  const notRunning = sums(
    await tx.$queryRaw<SumRow[]>`
    SELECT position_id AS id, sum(minutes) AS minutes, sum(flights) AS flights, sum(landings) AS landings,
           sum(touch_and_goes) AS touch_and_goes, sum(starts) AS starts, sum(aborted_take_offs) AS aborted_take_offs
      FROM flight_exception WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL GROUP BY position_id`,
  );
  const runs = await runsByCarrier(tx, operatorId);
  const onEngines = await takenByCarrier(tx, operatorId, 'engine');
  const empty = await passedEmpty(
    tx,
    operatorId,
    positions.map(({ positionId, slotId }) => ({ carrierId: positionId, slotId })),
  );
  return positions.map(({ positionId, airframeId, registration, number }) => ({
    positionId,
    airframeId,
    registration,
    number,
    accounts: {
      airframeId,
      positionCarrierId: positionId,
      flown: flown.get(airframeId) ?? zeroCounts,
      runs: runs.get(positionId) ?? zeroCounts,
      onEngines: onEngines.get(positionId) ?? zeroCounts,
      empty: empty.get(positionId) ?? zeroCounts,
      notRunning: notRunning.get(positionId) ?? zeroCounts,
    },
  }));
}

/** What was run on the ground at each position, and in each test cell, by the runs themselves. */
export async function runsByCarrier(tx: Tx, operatorId: number): Promise<ReadonlyMap<string, Counts>> {
  return sums(
    await tx.$queryRaw<SumRow[]>`
    SELECT carrier_id AS id, sum(counted_minutes) AS minutes, 0 AS flights, 0 AS landings, 0 AS touch_and_goes,
           sum(starts) AS starts, sum(aborted_take_offs) AS aborted_take_offs
      FROM ground_run WHERE operator_id = ${operatorId}::int AND voided_seq IS NULL GROUP BY carrier_id`,
  );
}

/** What components of a kind took of each clock, by their exposures. */
export async function takenByCarrier(
  tx: Tx,
  operatorId: number,
  kind: 'engine' | 'apu',
): Promise<ReadonlyMap<string, Counts>> {
  return sums(
    await tx.$queryRaw<SumRow[]>`
    SELECT x.carrier_id AS id,
           sum(CASE WHEN x.to_at IS NULL THEN n.minutes - x.minutes ELSE x.minutes END) AS minutes,
           sum(CASE WHEN x.to_at IS NULL THEN n.flights - x.flights ELSE x.flights END) AS flights,
           sum(CASE WHEN x.to_at IS NULL THEN n.landings - x.landings ELSE x.landings END) AS landings,
           sum(CASE WHEN x.to_at IS NULL THEN n.touch_and_goes - x.touch_and_goes ELSE x.touch_and_goes END) AS touch_and_goes,
           sum(CASE WHEN x.to_at IS NULL THEN n.starts - x.starts ELSE x.starts END) AS starts,
           sum(CASE WHEN x.to_at IS NULL THEN n.aborted_take_offs - x.aborted_take_offs ELSE x.aborted_take_offs END) AS aborted_take_offs
      FROM exposure x
      JOIN component k ON k.operator_id = x.operator_id AND k.id = x.component_id AND k.kind = ${kind}
      JOIN clock_now n ON n.operator_id = x.operator_id AND n.carrier_id = x.carrier_id
     WHERE x.operator_id = ${operatorId}::int GROUP BY x.carrier_id`,
  );
}

/** What passed each place while its engine slot was empty, by the place's clock. */
export async function passedEmpty(
  tx: Tx,
  operatorId: number,
  places: readonly { readonly carrierId: string; readonly slotId: string }[],
): Promise<ReadonlyMap<string, Counts>> {
  const stays = await tx.stay.findMany({
    where: { operatorId, voidedSeq: null, slotId: { in: places.map((place) => place.slotId) } },
    select: { slotId: true, fromAt: true, toAt: true },
  });
  const spans = places.flatMap(({ carrierId, slotId }) =>
    emptySpans(
      stays
        .filter((stay) => stay.slotId === slotId)
        .map((stay) => ({
          from: minuteOf(stay.fromAt),
          to: stay.toAt === null ? null : minuteOf(stay.toAt),
        })),
    ).map(({ from, to }) => ({
      carrierId,
      from: from === null ? null : fromInstant(from),
      to: to === null ? null : fromInstant(to),
    })),
  );
  const asks = spans.flatMap(({ carrierId, from, to }) => [
    { carrierId, at: to },
    ...(from === null ? [] : [{ carrierId, at: from }]),
  ]);
  const reading = await readClocks(tx, operatorId, asks);
  const passed = new Map<string, Counts>();
  for (const { carrierId, from, to } of spans) {
    const start = from === null ? zeroCounts : reading({ carrierId, at: from });
    passed.set(
      carrierId,
      addCounts(passed.get(carrierId) ?? zeroCounts, subtractCounts(reading({ carrierId, at: to }), start)),
    );
  }
  return passed;
}

const minuteOf = (at: Date) => instant(at.getTime() / 60_000);

function sums(rows: readonly SumRow[]): ReadonlyMap<string, Counts> {
  return new Map(rows.map((row) => [row.id, countsOf(row)]));
}
