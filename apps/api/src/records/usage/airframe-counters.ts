import { add, type Fraction, fraction } from '@strutbook/domain/units/fraction.js';
import type { Counters } from '@strutbook/domain/usage/since.js';
import type { Tx } from '../../platform/database/database.js';
import { readClocks } from './clock-readings.js';

/** An airframe's counters since new: its opening and what it flew since; one cycle a flight. Without an opening, and before it, unknown. */
export async function airframeCounters(
  tx: Tx,
  operatorId: number,
  airframeIds: readonly string[],
  at: Date | null,
): Promise<ReadonlyMap<string, Counters>> {
  const openings = await tx.opening.findMany({
    where: { operatorId, airframeId: { in: [...airframeIds] }, basis: 'new', voidedSeq: null },
  });
  const reading = await readClocks(
    tx,
    operatorId,
    airframeIds.map((carrierId) => ({ carrierId, at })),
  );
  return new Map(
    airframeIds.map((airframeId) => {
      const opening = openings.find(
        (row) => row.airframeId === airframeId && (at === null || row.at.getTime() <= at.getTime()),
      );
      const flown = reading({ carrierId: airframeId, at });
      const cycles: Fraction | null =
        opening?.cycles == null
          ? null
          : add(fraction(opening.cycles, BigInt(opening.cycleDenominator)), fraction(flown.flights));
      return [
        airframeId,
        { minutes: opening?.minutes == null ? null : Number(opening.minutes) + flown.minutes, cycles },
      ];
    }),
  );
}
