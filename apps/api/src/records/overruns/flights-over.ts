import { daysBetween } from '@strutbook/domain/units/calendar.js';
import { floor, fraction, multiply } from '@strutbook/domain/units/fraction.js';
import type { Tx } from '../../platform/database/database.js';
import { dayToWire, fromInstant } from '../../platform/http/instants.js';
import { groupRows } from '../usage/group-rows.js';
import { POD_RULE } from '../usage/use-facts.js';
import { type Beyond, type BeyondAsk, flightsBeyond, type Line } from './flights-beyond.js';
import type { FlightAtEnd, FoundOverrun, PastOverrun } from './past-overrun.js';

interface Rule {
  readonly perFlight: number;
  readonly perLanding: number;
  readonly perTouchAndGo: number;
  readonly perStart: number;
  readonly perAbortedTakeOff: number;
  readonly denominator: number;
}

/** The overruns with their first and last flights; one in which no flight was beyond the limit is none. */
export async function withFlights(
  tx: Tx,
  operatorId: number,
  found: readonly FoundOverrun[],
): Promise<PastOverrun[]> {
  if (found.length === 0) return [];
  const rules = new Map<string, Rule>(
    [POD_RULE, ...(await tx.cycleRule.findMany({ where: { operatorId } }))].map((rule) => [rule.id, rule]),
  );
  const asks = found.flatMap((overrun, of) =>
    overrun.parts.map((part) => ({ of, ask: askOf(overrun.dimension, part, rules) })),
  );
  const answers = await flightsBeyond(
    tx,
    operatorId,
    asks.map(({ ask }) => ask),
  );
  const beyond = groupRows(
    asks.flatMap(({ of }, index) => {
      const answer = answers[index];
      return answer === undefined ? [] : [{ of, ...answer }];
    }),
    (row) => String(row.of),
  );
  const flights = await flightsAtEnds(tx, operatorId, [...beyond.values()].flat());
  const told = found.flatMap((overrun, index) => {
    const rows = beyond.get(String(index)) ?? [];
    const first = flights.get(rows[0]?.firstId ?? '');
    const last = flights.get(rows.at(-1)?.lastId ?? '');
    if (first === undefined || last === undefined) return [];
    const { parts: _, by, ...rest } = overrun;
    const flown = rows.reduce((sum, row) => sum + row.flights, 0);
    return [{ ...rest, by: by ?? daysBeyond(overrun.limit.dueOn, last), first, last, flights: flown }];
  });
  return passedLast(found, told);
}

/** Of several of which all must be passed the one that was passed last, once all are; others as they are. */
function passedLast(
  found: readonly FoundOverrun[],
  told: readonly (PastOverrun & { readonly lastOf?: string })[],
): PastOverrun[] {
  const together = groupRows(found, (each) => each.lastOf ?? '');
  const passed = groupRows(told, (each) => each.lastOf ?? '');
  return told.flatMap(({ lastOf, ...overrun }) => {
    if (lastOf === undefined) return [overrun];
    const others = passed.get(lastOf) ?? [];
    const isLast = others.every((each) => each.first.landingAt <= overrun.first.landingAt);
    return others.length === together.get(lastOf)?.length && isLast ? [overrun] : [];
  });
}

function daysBeyond(dueOn: string | null, last: FlightAtEnd): number {
  return dueOn === null ? 0 : daysBetween(dueOn, dayToWire(last.landingAt));
}

/** By days every flight that took off after the day is beyond; by a counter, those once more than what was left is flown. */
function askOf(
  dimension: FoundOverrun['dimension'],
  part: FoundOverrun['parts'][number],
  rules: ReadonlyMap<string, Rule>,
): BeyondAsk {
  const rule = (part.cycleRuleId === null ? undefined : rules.get(part.cycleRuleId)) ?? POD_RULE;
  const isInCycles = dimension === 'cycles';
  const { perFlight, perLanding, perTouchAndGo, perStart, perAbortedTakeOff } = isInCycles ? rule : NOTHING;
  const line: Line = {
    clock: part.clock,
    since: fromInstant(part.from),
    until: part.to === null ? null : fromInstant(part.to),
    fromTakeOff: dimension === 'days',
    ofMinutes: dimension === 'minutes' ? 1 : 0,
    perFlight: dimension === 'days' ? 1 : perFlight,
    ...{ perLanding, perTouchAndGo, perStart, perAbortedTakeOff },
  };
  const allowance = multiply(part.allowance, fraction(isInCycles ? rule.denominator : 1));
  return { line, allowance: Number(floor(allowance)) };
}

const NOTHING = { perFlight: 0, perLanding: 0, perTouchAndGo: 0, perStart: 0, perAbortedTakeOff: 0 };

async function flightsAtEnds(
  tx: Tx,
  operatorId: number,
  ends: readonly Beyond[],
): Promise<ReadonlyMap<string, FlightAtEnd>> {
  const ids = [...new Set(ends.flatMap(({ firstId, lastId }) => [firstId, lastId]))];
  if (ids.length === 0) return new Map();
  const rows = await tx.flight.findMany({
    where: { operatorId, id: { in: ids } },
    select: {
      ...{ id: true, airframeId: true, logPage: true, takeOffAt: true, landingAt: true },
      airframe: { select: { registration: true } },
    },
  });
  return new Map(
    rows.map(({ airframe: { registration }, ...flight }) => [flight.id, { ...flight, registration }]),
  );
}
