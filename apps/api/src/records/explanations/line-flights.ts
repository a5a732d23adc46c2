import { addCounts, type Counts, negateCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { flightCounts } from '@strutbook/domain/usage/flight.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';

/** A flight, and what one clock counted of it. */
export interface CountedFlight {
  readonly id: string;
  readonly logPage: string;
  readonly fromStation: string;
  readonly toStation: string;
  readonly takeOffAt: Date;
  readonly landingAt: Date;
  readonly counts: Counts;
}

/** The flights that landed after `from` up to `to` on the airframe of a clock, the earliest first, some at a time. */
export async function lineFlights(
  tx: Tx,
  operatorId: number,
  carrierId: string,
  {
    from,
    to,
    after,
    limit,
  }: {
    readonly from: Date;
    readonly to: Date | null;
    readonly after: { readonly landingAt: Date; readonly id: string } | null;
    readonly limit: number;
  },
): Promise<readonly CountedFlight[]> {
  const carrier = await tx.carrier.findUnique({
    where: { operatorId_id: { operatorId, id: carrierId } },
    select: { airframeId: true, positionId: true },
  });
  if (carrier?.airframeId == null) return [];
  const { airframeId, positionId } = carrier;
  const rows = await tx.flight.findMany({
    where: {
      ...{ operatorId, airframeId, voidedSeq: null },
      landingAt: { gt: from, ...(to === null ? {} : { lte: to }) },
      ...(after === null
        ? {}
        : {
            OR: [
              { landingAt: { gt: after.landingAt } },
              { landingAt: after.landingAt, id: { gt: after.id } },
            ],
          }),
    },
    include: { flightExceptionByFlight: { where: { voidedSeq: null } } },
    orderBy: [{ landingAt: 'asc' }, { id: 'asc' }],
    take: limit,
  });
  return rows.map((row) => {
    const { id, logPage, fromStation, toStation, takeOffAt, landingAt } = row;
    const flown = flightCounts({
      ...row,
      takeOffAt: toInstant(takeOffAt),
      landingAt: toInstant(landingAt),
    });
    const missed: Counts =
      row.flightExceptionByFlight.find((exception) => exception.positionId === positionId) ?? zeroCounts;
    const counts = addCounts(flown, negateCounts(missed));
    return { id, logPage, fromStation, toStation, takeOffAt, landingAt, counts };
  });
}
