import type { PieceOfUse } from '@strutbook/domain/usage/pieces-of-use.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant } from '../../platform/http/instants.js';
import { nameOfPosition } from '../requirements/package-requirements.js';
import { POD_RULE } from '../usage/use-facts.js';
import type { CarrierBehind, ExceptionWithin, RuleBehind } from './explained.js';

/** The names of what addends rest on. */
export interface NamesBehind {
  readonly carriers: ReadonlyMap<string, CarrierBehind>;
  readonly serials: ReadonlyMap<string, string>;
  readonly ratings: ReadonlyMap<string, string>;
  readonly rules: ReadonlyMap<string, RuleBehind>;
  readonly exceptions: readonly (ExceptionWithin & { readonly positionId: string })[];
}

/** Loads what these pieces are told by, in a constant number of statements. */
export async function namesBehind(
  tx: Tx,
  operatorId: number,
  pieces: readonly PieceOfUse[],
): Promise<NamesBehind> {
  const carriers = await tx.carrier.findMany({
    where: { operatorId, id: { in: [...new Set(pieces.map((piece) => piece.carrierId))] } },
    include: {
      airframe: { select: { registration: true } },
      position: { select: { id: true, number: true } },
      component: { select: { serialNumber: true } },
    },
  });
  const tops = await tx.component.findMany({
    where: { operatorId, id: { in: pieces.flatMap((piece) => piece.carriedBy ?? []) } },
    select: { id: true, serialNumber: true },
  });
  const ratings = await tx.rating.findMany({ where: { operatorId }, select: { id: true, code: true } });
  const rules = await tx.cycleRule.findMany({
    where: { operatorId, id: { in: pieces.flatMap((piece) => piece.cycleRuleId ?? []).filter(isStored) } },
  });
  return {
    carriers: new Map(carriers.map((row) => [row.id, carrierOf(row)])),
    serials: new Map(tops.map((row) => [row.id, row.serialNumber])),
    ratings: new Map(ratings.map((row) => [row.id, row.code])),
    rules: new Map(
      [{ ...POD_RULE, source: null, revision: null }, ...rules].map((rule): [string, RuleBehind] => [
        rule.id,
        {
          id: rule.id,
          perFlight: rule.perFlight,
          perLanding: rule.perLanding,
          perTouchAndGo: rule.perTouchAndGo,
          perStart: rule.perStart,
          perAbortedTakeOff: rule.perAbortedTakeOff,
          denominator: rule.denominator,
          source: rule.source,
          revision: rule.revision,
        },
      ]),
    ),
    exceptions: await exceptionsWithin(tx, operatorId, pieces),
  };
}

/** The rule of pods is in no table. */
function isStored(id: string): boolean {
  return id !== POD_RULE.id;
}

function carrierOf(row: {
  id: string;
  kind: string;
  airframeId: string | null;
  airframe: { registration: string } | null;
  position: { id: string; number: number } | null;
  component: { serialNumber: string } | null;
}): CarrierBehind {
  const { id, kind, airframeId, airframe, position, component } = row;
  const whole = airframe?.registration ?? component?.serialNumber ?? '';
  return {
    id,
    kind,
    label: position === null ? whole : nameOfPosition(whole, position.number),
    airframeId,
    positionId: position?.id ?? null,
    positionNumber: position?.number ?? null,
  };
}

async function exceptionsWithin(
  tx: Tx,
  operatorId: number,
  pieces: readonly PieceOfUse[],
): Promise<(ExceptionWithin & { positionId: string })[]> {
  const [first] = pieces;
  if (first === undefined) return [];
  const from = fromInstant(
    pieces.reduce((least, piece) => (piece.from < least ? piece.from : least), first.from),
  );
  const rows = await tx.flightException.findMany({
    where: {
      operatorId,
      positionId: { in: [...new Set(pieces.map((piece) => piece.carrierId))] },
      landingAt: { gt: from },
      voidedSeq: null,
    },
    include: { flight: { select: { logPage: true } } },
    orderBy: { landingAt: 'asc' },
  });
  return rows.map(({ flightId, positionId, landingAt, kind, flight, ...row }) => ({
    flightId,
    positionId,
    logPage: flight.logPage,
    landingAt,
    kind,
    missed: {
      minutes: row.minutes,
      flights: row.flights,
      landings: row.landings,
      touchAndGoes: row.touchAndGoes,
      starts: row.starts,
      abortedTakeOffs: row.abortedTakeOffs,
    },
  }));
}
