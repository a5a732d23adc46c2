import { Injectable } from '@nestjs/common';
import { add, fraction } from '@strutbook/domain/units/fraction.js';
import { countersSince, type Counters as Pair } from '@strutbook/domain/usage/since.js';
import { totals } from '@strutbook/domain/usage/totals.js';
import type { Tx } from '../../platform/database/database.js';
import { Use, type Uses } from './use.js';
import type { RecordedGap } from './use-facts.js';

/** A component's counters at an instant; null where nothing reset them, unknown inside where something is missing. */
export interface ComponentCounters {
  readonly sinceNew: Pair;
  readonly sinceOverhaul: Pair | null;
  readonly sinceShopVisit: Pair | null;
  readonly sinceInstalled: Pair | null;
  readonly gaps: readonly RecordedGap[];
}

interface Marks {
  readonly installedAt: ReadonlyMap<string, Date>;
  readonly resets: readonly { readonly componentId: string; readonly kind: string; readonly at: Date }[];
  /** Auxiliary power units that ran: they count by their own counter, of which nothing is read here. */
  readonly ranUncounted: ReadonlySet<string>;
}

/** Since new, overhaul, shop visit and installation: each the counters now less those at the event. */
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
    const ran = await tx.stay.findMany({
      where: { ...where, slotId: { not: null }, fromAt: { lte: until }, component: { kind: 'apu' } },
      select: { componentId: true },
    });
    return {
      ranUncounted: new Set(ran.map((stay) => stay.componentId)),
      installedAt: new Map(
        stays.filter((stay) => stay.fromAt <= until).map((stay) => [stay.componentId, stay.fromAt]),
      ),
      resets: resets.filter((reset) => reset.at <= until),
    };
  }
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
  const since = (from: Date): Pair =>
    gaps.some((gap) => !gap.accepted && gap.toAt > from)
      ? UNKNOWN
      : countersSince(uses.totalsAt({ componentId, at: from }), now);
  const sinceEvent = (kinds: readonly string[]): Pair | null => {
    const reset = marks.resets
      .filter((row) => row.componentId === componentId && kinds.includes(row.kind))
      .at(-1);
    return reset === undefined ? sinceOpening(componentId, kinds[0] ?? '', now, uses) : since(reset.at);
  };
  const installed = marks.installedAt.get(componentId);
  return {
    sinceNew: gaps.some((gap) => !gap.accepted) ? UNKNOWN : withWorstCase(componentId, now, uses),
    sinceOverhaul: sinceEvent(['overhaul']),
    sinceShopVisit: sinceEvent(['shop-visit', 'overhaul']),
    sinceInstalled: installed === undefined ? null : since(installed),
    gaps,
  };
}

const UNKNOWN: Pair = { minutes: null, cycles: null };

/** Counters since an event before the opening: what the opening says of it, and all since. */
function sinceOpening(componentId: string, basis: string, now: Pair, { facts }: Uses): Pair | null {
  const rows = facts.openings.filter((row) => row.componentId === componentId);
  const [of, atNew] = [rows.filter((row) => row.basis === basis), rows.filter((row) => row.basis === 'new')];
  const [first] = of;
  if (first === undefined) return null;
  const opened = totals({ openings: of, exposures: [], cycleRules: facts.cycleRules });
  const accrued = countersSince(
    totals({ openings: atNew, exposures: [], cycleRules: facts.cycleRules }),
    now,
  );
  return {
    minutes: opened.minutes === null || accrued.minutes === null ? null : opened.minutes + accrued.minutes,
    cycles: opened.cycles === null || accrued.cycles === null ? null : add(opened.cycles, accrued.cycles),
  };
}

/** An accepted gap adds the most that may have been used in it. */
function withWorstCase(componentId: string, now: Pair, { facts }: Uses): Pair {
  const accepted = facts.gaps.some((gap) => gap.componentId === componentId && gap.accepted);
  const worst = facts.acceptances.filter((row) => row.componentId === componentId);
  if (!accepted) return { minutes: now.minutes, cycles: now.cycles };
  return worst.reduce<Pair>(
    (sum, row) => ({
      minutes: sum.minutes === null || row.minutes === null ? null : sum.minutes + row.minutes,
      cycles: sum.cycles === null || row.cycles === null ? null : add(sum.cycles, fraction(row.cycles)),
    }),
    { minutes: now.minutes, cycles: now.cycles },
  );
}
