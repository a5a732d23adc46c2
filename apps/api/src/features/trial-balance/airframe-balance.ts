import {
  addCounts,
  type Counts,
  equalCounts,
  subtractCounts,
  zeroCounts,
} from '@strutbook/domain/usage/counts.js';
import type { Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import { type BalanceSpan, balanceSpans } from '../../records/balance/balance-spans.js';
import type { AirframeBalanceDto, BalanceSpanDto, PositionBalanceDto } from './airframe-balance.dto.js';

interface Asked {
  readonly operatorId: number;
  readonly airframe: { readonly id: string; readonly registration: string };
  /** Null: now. */
  readonly upTo: Date | null;
  readonly now: Date;
}

const differenceOf = ({ flown, runs, taken, notRunning }: BalanceSpan): Counts =>
  subtractCounts(addCounts(flown, runs), addCounts(taken, notRunning));

const total = (spans: readonly BalanceSpan[], pick: (span: BalanceSpan) => Counts): Counts =>
  spans.map(pick).reduce(addCounts, zeroCounts);

function spanToWire(span: BalanceSpan): BalanceSpanDto {
  const { from, to, engine, flown, lastFlightId, runs, taken, notRunning } = span;
  return {
    from: from === null ? null : toWire(from),
    to: to === null ? null : toWire(to),
    componentId: engine?.id ?? null,
    serialNumber: engine?.serialNumber ?? null,
    flown,
    lastFlightId,
    runs,
    taken,
    notRunning,
    difference: differenceOf(span),
  };
}

/** The trial balance of one airframe up to an instant, span by span. */
export async function drawUpOfAirframe(
  tx: Tx,
  { operatorId, airframe, upTo, now }: Asked,
): Promise<AirframeBalanceDto> {
  const { positions, spans } = await balanceSpans(tx, operatorId, airframe.id, upTo);
  const rows: PositionBalanceDto[] = positions.map(({ positionId, number }) => {
    const here = spans.filter((span) => span.positionId === positionId);
    return {
      positionId,
      positionNumber: number,
      flown: total(here, ({ flown }) => flown),
      runs: total(here, ({ runs }) => runs),
      onEngines: total(here, ({ engine, taken }) => (engine === null ? zeroCounts : taken)),
      empty: total(here, ({ engine, taken }) => (engine === null ? taken : zeroCounts)),
      notRunning: total(here, ({ notRunning }) => notRunning),
      difference: total(here, differenceOf),
      spans: here.map(spanToWire),
    };
  });
  return {
    airframeId: airframe.id,
    registration: airframe.registration,
    upTo: toWire(upTo ?? now),
    balanced: spans.every((span) => equalCounts(differenceOf(span), zeroCounts)),
    positions: rows,
  };
}
