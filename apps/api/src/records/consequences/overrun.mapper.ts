import type { Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import { namesOfPoints } from '../due-points/reached-limits.js';
import type { FlightAtEnd, PastOverrun } from '../overruns/past-overrun.js';
import type { FlightAtEndDto, OverrunDto } from './consequences.dto.js';

/** Overruns with the names of what they are about. */
export async function describeOverruns(
  tx: Tx,
  operatorId: number,
  overruns: readonly PastOverrun[],
): Promise<OverrunDto[]> {
  if (overruns.length === 0) return [];
  const names = await namesOfPoints(
    tx,
    operatorId,
    overruns.map((each) => ({ ...each, engineId: null, requirementId: null })),
  );
  return overruns.map(({ limit, first, last, ...overrun }) => ({
    ...overrun,
    ...names.subject(overrun),
    kind: limit.kind,
    requirement: limit.requirement,
    requirementId: limit.kind === 'requirement' ? limit.id : null,
    ...{ document: limit.document, revision: limit.revision, limit: limit.amount, dueOn: limit.dueOn },
    ...{ first: atEnd(first), last: atEnd(last) },
  }));
}

function atEnd({ takeOffAt, landingAt, ...flight }: FlightAtEnd): FlightAtEndDto {
  return { ...flight, takeOffAt: toWire(takeOffAt), landingAt: toWire(landingAt) };
}
