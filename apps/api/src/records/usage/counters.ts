import { Injectable } from '@nestjs/common';
import { add, fraction } from '@strutbook/domain/units/fraction.js';
import type { Counters as Pair } from '@strutbook/domain/usage/since.js';
import { totals } from '@strutbook/domain/usage/totals.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant, toInstant } from '../../platform/http/instants.js';
import { Use, type Uses } from './use.js';
import type { RecordedGap } from './use-facts.js';

/** A component's counters at an instant; null where nothing reset them, unknown inside where something is missing. */
export interface ComponentCounters {
  readonly sinceNew: Pair;
  readonly sinceOverhaul: Pair | null;
  readonly sinceShopVisit: Pair | null;
  readonly sinceRepair: Pair | null;
  readonly sinceInstalled: Pair | null;
  readonly gaps: readonly RecordedGap[];
}

interface Marks {
  readonly installedAt: ReadonlyMap<string, Date>;
  readonly resets: readonly { readonly componentId: string; readonly kind: string; readonly at: Date }[];
  /** Auxiliary power units, and what was in them, that ran before the first reading of the counter: nobody counted that. */
  readonly ranUncounted: ReadonlySet<string>;
}

/** Since new, overhaul, shop visit, repair and installation: each what ran after its event. */
@Injectable()
export class Counters {
  constructor(private readonly use: Use) {}

  /** The counters of these components at an instant (null: now). An unaccepted gap leaves them unknown. */
  async of(
    tx: Tx,
    operatorId: number,
    componentIds: readonly string[],
    at: Date | null,
  ): Promise<ReadonlyMap<string, ComponentCounters>> {
    const marks = await this.marks(tx, operatorId, componentIds, at);
    const asks = componentIds.flatMap((componentId) => {
      const events = marks.resets
        .filter((reset) => reset.componentId === componentId)
        .map((reset) => reset.at);
      const installed = marks.installedAt.get(componentId);
      return [at, ...events, ...(installed === undefined ? [] : [installed])].map((when) => ({
        componentId,
        at: when,
      }));
    });
    const uses = await this.use.of(tx, operatorId, asks);
    return new Map(
      componentIds.map((componentId) => [componentId, countersOf(componentId, at, { uses, marks })]),
    );
  }

  private async marks(
    tx: Tx,
    operatorId: number,
    componentIds: readonly string[],
    at: Date | null,
  ): Promise<Marks> {
    const until = at ?? new Date(8.64e15);
    const where = { operatorId, componentId: { in: [...componentIds] }, voidedSeq: null };
    const stays = await tx.stay.findMany({
      where: { ...where, slotId: { not: null }, OR: [{ toAt: null }, { toAt: { gt: until } }] },
      select: { componentId: true, fromAt: true },
    });
    const resets = await tx.reset.findMany({ where, orderBy: { at: 'asc' } });
    return {
      ranUncounted: await ranUncounted(tx, operatorId, componentIds, at),
      installedAt: new Map(
        stays.filter((stay) => stay.fromAt <= until).map((stay) => [stay.componentId, stay.fromAt]),
      ),
      resets: resets.filter((reset) => reset.at <= until),
    };
  }
}

/** Which of these ran by a counter nobody had read yet: in an auxiliary power unit (or being one) then at a position. */
async function ranUncounted(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
  at: Date | null,
): Promise<ReadonlySet<string>> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    WITH RECURSIVE held (id, holder, span) AS (
      SELECT listed.id, listed.id, tstzrange(NULL, ${at === null ? null : at.toISOString()}::timestamptz, '[]')
        FROM unnest(${[...componentIds]}::uuid[]) AS listed (id)
      UNION ALL
      SELECT h.id, s.component_id, h.span * tstzrange(st.from_at, st.to_at) FROM held h
        JOIN stay st ON st.operator_id = ${operatorId}::int AND st.component_id = h.holder AND st.voided_seq IS NULL
         AND tstzrange(st.from_at, st.to_at) && h.span
        JOIN slot s ON s.operator_id = st.operator_id AND s.id = st.slot_id AND s.component_id IS NOT NULL
    )
    SELECT DISTINCT h.id FROM held h
      JOIN component c ON c.operator_id = ${operatorId}::int AND c.id = h.holder AND c.kind = 'apu'
      JOIN stay st ON st.operator_id = c.operator_id AND st.component_id = c.id AND st.voided_seq IS NULL
       AND st.slot_id IS NOT NULL AND tstzrange(st.from_at, st.to_at) && h.span
      LEFT JOIN LATERAL (SELECT min(at) AS first FROM counter_reading r
        WHERE r.operator_id = c.operator_id AND r.component_id = c.id AND r.voided_seq IS NULL) read ON true
     WHERE read.first IS NULL OR greatest(st.from_at, lower(h.span)) < read.first`;
  return new Set(rows.map((row) => row.id));
}

function countersOf(
  componentId: string,
  at: Date | null,
  { uses, marks }: { uses: Uses; marks: Marks },
): ComponentCounters {
  const gaps = uses.facts.gaps.filter(
    (gap) => gap.componentId === componentId && (at === null || gap.fromAt < at),
  );
  const ranUncounted = marks.ranUncounted.has(componentId);
  const now = ranUncounted ? UNKNOWN : uses.totalsAt({ componentId, at });
  const opening = uses.facts.openings.find((row) => row.componentId === componentId && row.basis === 'new');
  const since = (from: Date): Pair =>
    // What ran between the event and a later opening is in that balance, and is not told apart there.
    ranUncounted || (opening !== undefined && fromInstant(opening.at) > from)
      ? UNKNOWN
      : withGaps(uses.ranBetween(componentId, from, at), gapsAfter(gaps, from), uses);
  const sinceEvent = (kinds: readonly string[]): Pair | null => {
    const reset = marks.resets
      .filter((row) => row.componentId === componentId && kinds.includes(row.kind))
      .at(-1);
    return reset === undefined
      ? sinceOpening(componentId, kinds[0] ?? '', { gaps, at, ranUncounted }, uses)
      : since(reset.at);
  };
  const installed = marks.installedAt.get(componentId);
  return {
    sinceNew: withGaps(now, gaps, uses),
    sinceOverhaul: sinceEvent(['overhaul']),
    sinceShopVisit: sinceEvent(['shop-visit', 'overhaul']),
    sinceRepair: sinceEvent(['repair']),
    sinceInstalled: installed === undefined ? null : since(installed),
    gaps,
  };
}

/**
 * Counters since new at an instant (null: now), with what the gaps before it may hide, of a component whose use was asked
 * for then. Total.
 */
export function sinceNewAt(componentId: string, at: Date | null, uses: Uses): Pair {
  const before = uses.facts.gaps.filter(
    (gap) => gap.componentId === componentId && (at === null || gap.fromAt < at),
  );
  return withGaps(uses.totalsAt({ componentId, at }), before, uses);
}

const UNKNOWN: Pair = { minutes: null, cycles: null };

/** Counters since an event before the opening: what the opening says of it, and all that ran since. */
function sinceOpening(
  componentId: string,
  basis: string,
  { gaps, at, ranUncounted }: { gaps: readonly RecordedGap[]; at: Date | null; ranUncounted: boolean },
  uses: Uses,
): Pair | null {
  const { facts } = uses;
  const own = facts.openings.filter(
    (row) =>
      row.componentId === componentId && row.basis === basis && (at === null || row.at <= toInstant(at)),
  );
  const [first] = own;
  if (first === undefined) return null;
  if (ranUncounted) return UNKNOWN;
  const opened = totals({ openings: own, exposures: [], cycleRules: facts.cycleRules });
  const openedAt = fromInstant(first.at);
  const unshown = facts.unshownSince.filter((gap) => gap.componentId === componentId && gap.basis === basis);
  return withGaps(
    plus(opened, uses.ranBetween(componentId, openedAt, at)),
    [...unshown, ...gapsAfter(gaps, openedAt)],
    uses,
  );
}

/** The gaps that reach beyond an instant: what passed in them is not in the counters read there. */
function gapsAfter(gaps: readonly RecordedGap[], from: Date): readonly RecordedGap[] {
  return gaps.filter((gap) => gap.toAt > from);
}

/**
 * Counters with what the gaps may hide: unknown while one is not accepted, else the most that may have been used in
 * each. An acceptance that names no gap is one figure for all that have none of their own.
 */
function withGaps(counted: Pair, gaps: readonly RecordedGap[], { facts }: Uses): Pair {
  if (gaps.some((gap) => !gap.accepted)) return UNKNOWN;
  const standing = new Set(
    gaps.map(
      (gap) =>
        facts.acceptances.findLast((row) => row.traceGapId === gap.id) ??
        facts.acceptances.findLast((row) => row.traceGapId === null && row.componentId === gap.componentId),
    ),
  );
  return [...standing].reduce<Pair>(
    (sum, row) =>
      plus(sum, {
        minutes: row?.minutes ?? null,
        cycles: row?.cycles == null ? null : fraction(row.cycles),
      }),
    { minutes: counted.minutes, cycles: counted.cycles },
  );
}

function plus(a: Pair, b: Pair): Pair {
  return {
    minutes: a.minutes === null || b.minutes === null ? null : a.minutes + b.minutes,
    cycles: a.cycles === null || b.cycles === null ? null : add(a.cycles, b.cycles),
  };
}
