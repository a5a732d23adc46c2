import type { Boundary, BoundaryFacts } from '@strutbook/domain/stays/boundary.js';
import { addDays, dateOf, startOfDay } from '@strutbook/domain/units/calendar.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant, toInstant } from '../../platform/http/instants.js';
import { orNotFound } from '../../platform/problems/refusal.error.js';
import { offsetAtStartOf } from './day-zone.js';

/**
 * The flights of these airframes that a boundary may fall into or be told by, and the offset of the first one's days.
 * Refuses: NOT_FOUND when there is no such first one.
 */
export async function loadBoundaryFacts(
  tx: Tx,
  operatorId: number,
  airframeIds: readonly string[],
  boundary: Boundary,
): Promise<BoundaryFacts> {
  const [firstId] = airframeIds;
  if (firstId === undefined) return { flights: [], offsetMinutes: 0 };
  const where = { operatorId_id: { operatorId, id: firstId } };
  const airframe = orNotFound(
    await tx.airframe.findUnique({ where, select: { dayZone: true } }),
    'airframe',
    'boundary.airframeId',
  );
  const offset = offsetAtStartOf(airframe.dayZone, dayThatBegins(boundary));
  const counted = { operatorId, airframeId: { in: [...airframeIds] }, voidedSeq: null };
  const page =
    boundary.kind === 'after-page'
      ? await tx.flight.findMany({ where: { ...counted, airframeId: firstId, logPage: boundary.page } })
      : [];
  const around =
    page[0] === undefined
      ? spanOf(boundary, offset)
      : { from: toInstant(page[0].landingAt), to: toInstant(page[0].landingAt) };
  const near =
    around === null
      ? []
      : await tx.flight.findMany({
          where: {
            ...counted,
            landingAt: { gt: fromInstant(around.from) },
            takeOffAt: { lt: fromInstant(around.to) },
          },
        });
  const flights = new Map([...page, ...near].map((flight) => [flight.id, flight]));
  return {
    offsetMinutes: offset,
    flights: [...flights.values()].map(({ id, logPage, takeOffAt, landingAt, airframeId }) => ({
      id,
      page: airframeId === firstId ? logPage : null,
      takeOffAt: toInstant(takeOffAt),
      landingAt: toInstant(landingAt),
    })),
  };
}

/** The day whose beginning the boundary is told by; any day where it is told by none. */
function dayThatBegins(boundary: Boundary): string {
  if (boundary.kind === 'before-first') return boundary.on;
  if (boundary.kind === 'after-last') return addDays(boundary.on, 1);
  return boundary.kind === 'instant' ? dateOf(boundary.at) : '2000-01-01';
}

/** The span whose flights matter: an instant's own, or the whole day told and the edges of its neighbours. */
function spanOf(boundary: Boundary, offset: number): { from: Instant; to: Instant } | null {
  if (boundary.kind === 'instant') return { from: boundary.at, to: boundary.at };
  if (boundary.kind === 'after-page') return null;
  return {
    from: startOfDay(addDays(boundary.on, -1), offset),
    to: startOfDay(addDays(boundary.on, 2), offset),
  };
}
