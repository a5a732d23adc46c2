import { add, fraction } from '@strutbook/domain/units/fraction.js';
import type { Counts } from '@strutbook/domain/usage/counts.js';
import type { CycleRule } from '@strutbook/domain/usage/cycle-rule.js';
import type { Counters as Pair } from '@strutbook/domain/usage/since.js';
import type { Tx } from '../../platform/database/database.js';
import { readClocks } from '../usage/clock-readings.js';
import { type Counters, sinceNewAt } from '../usage/counters.js';
import { type RunningClock, runningClocks } from '../usage/running-clocks.js';
import type { Use } from '../usage/use.js';
import { POD_RULE } from '../usage/use-facts.js';
import type { Subject } from './subjects.js';

/** The counters of one subject, now and at the instants that were asked for. */
export interface SubjectCounters {
  readonly now: Pair;
  readonly at: (when: Date) => Pair;
  readonly sinceInstalled: Pair | null;
  readonly sinceOverhaul: Pair | null;
  /** When it was last overhauled; null where nothing or an opening balance alone says so. */
  readonly overhauledAt: Date | null;
  readonly sinceShopVisit: Pair | null;
  /** When it last was in a shop, to be overhauled too; null as above. */
  readonly shopVisitedAt: Date | null;
  /** The clock it runs by; undefined while it hangs on none. */
  readonly clock: RunningClock | undefined;
  /** What its cycles are there; undefined where no rule says so. */
  readonly rule: CycleRule | undefined;
}

/** A subject with the instants at which its counters will be asked for. */
export interface CounterAsk {
  readonly subject: Subject;
  readonly instants: readonly Date[];
}

/** What the counters are read from, and when. */
export interface CounterSources {
  readonly use: Use;
  readonly counters: Counters;
  readonly at: Date | null;
  readonly now: Date;
}

/** The counters of these subjects by their ids, in a constant number of statements. */
export async function countersOfSubjects(
  tx: Tx,
  operatorId: number,
  asks: readonly CounterAsk[],
  sources: CounterSources,
): Promise<ReadonlyMap<string, SubjectCounters>> {
  const components = asks.filter(({ subject }) => subject.kind === 'component');
  const others = asks.filter(({ subject }) => subject.kind !== 'component');
  return new Map([
    ...(components.length === 0 ? [] : await ofComponents(tx, operatorId, components, sources)),
    ...(others.length === 0 ? [] : await ofClocks(tx, operatorId, others, sources)),
  ]);
}

async function ofComponents(
  tx: Tx,
  operatorId: number,
  asks: readonly CounterAsk[],
  { use, counters, at, now }: CounterSources,
): Promise<[string, SubjectCounters][]> {
  const ids = asks.map(({ subject }) => subject.id);
  const known = await counters.of(tx, operatorId, ids, at);
  const uses = await use.of(
    tx,
    operatorId,
    asks.flatMap(({ subject, instants }) =>
      [at, ...instants].map((when) => ({ componentId: subject.id, at: when })),
    ),
  );
  const running = new Map(
    uses.facts.exposures
      .filter(({ fromAt, toAt }) =>
        at === null ? toAt === null : fromAt <= at && (toAt === null || toAt > at),
      )
      .map((exposure) => [exposure.componentId, exposure]),
  );
  const resets = await tx.reset.findMany({
    where: {
      operatorId,
      componentId: { in: ids },
      voidedSeq: null,
      ...(at === null ? {} : { at: { lte: at } }),
    },
    orderBy: { at: 'asc' },
  });
  const clocks = await runningClocks(
    tx,
    operatorId,
    [...running.values()].map((exposure) => exposure.carrierId),
    { at, now },
  );
  return ids.map((id) => {
    const found = known.get(id);
    const exposure = running.get(id);
    const ruleId = exposure?.cycleRuleId ?? null;
    return [
      id,
      {
        now: found?.sinceNew ?? NOT_KNOWN,
        at: (when) => sinceNewAt(id, when, uses),
        sinceInstalled: found?.sinceInstalled ?? null,
        sinceOverhaul: found?.sinceOverhaul ?? null,
        overhauledAt:
          resets.findLast(({ componentId, kind }) => componentId === id && kind === 'overhaul')?.at ?? null,
        sinceShopVisit: found?.sinceShopVisit ?? null,
        shopVisitedAt: resets.findLast(({ componentId }) => componentId === id)?.at ?? null,
        clock: exposure === undefined ? undefined : clocks.get(exposure.carrierId),
        rule: ruleId === null ? undefined : uses.facts.cycleRules.get(ruleId),
      },
    ];
  });
}

const NOT_KNOWN: Pair = { minutes: null, cycles: null };

/** Airframes and positions: the airframe's opening and what the clock counted since, one cycle a flight. */
async function ofClocks(
  tx: Tx,
  operatorId: number,
  asks: readonly CounterAsk[],
  { at, now }: CounterSources,
): Promise<[string, SubjectCounters][]> {
  const airframeOf = (subject: Subject) => (subject.kind === 'position' ? subject.ofAirframeId : subject.id);
  const openings = await tx.opening.findMany({
    where: {
      operatorId,
      airframeId: { in: asks.map(({ subject }) => airframeOf(subject)) },
      basis: 'new',
      voidedSeq: null,
    },
  });
  const reading = await readClocks(
    tx,
    operatorId,
    asks.flatMap(({ subject, instants }) =>
      [at, ...instants].map((when) => ({ carrierId: subject.id, at: when })),
    ),
  );
  const clocks = await runningClocks(
    tx,
    operatorId,
    asks.map(({ subject }) => subject.id),
    { at, now },
  );
  return asks.map(({ subject: { id, ...subject } }) => {
    const airframeId = subject.kind === 'position' ? subject.ofAirframeId : id;
    const opening = openings.find((row) => row.airframeId === airframeId);
    const known = (when: Date | null): Pair =>
      opening === undefined || (when !== null && opening.at > when)
        ? NOT_KNOWN
        : flownSince(opening, reading({ carrierId: id, at: when }));
    return [
      id,
      {
        now: known(at),
        at: known,
        sinceInstalled: null,
        sinceOverhaul: null,
        overhauledAt: null,
        sinceShopVisit: null,
        shopVisitedAt: null,
        clock: clocks.get(id),
        rule: POD_RULE,
      },
    ];
  });
}

function flownSince(
  opening: {
    readonly minutes: bigint | null;
    readonly cycles: bigint | null;
    readonly cycleDenominator: number;
  },
  flown: Counts,
): Pair {
  return {
    minutes: opening.minutes === null ? null : Number(opening.minutes) + flown.minutes,
    cycles:
      opening.cycles === null
        ? null
        : add(fraction(opening.cycles, BigInt(opening.cycleDenominator)), fraction(flown.flights)),
  };
}
