import { Injectable } from '@nestjs/common';
import { ZERO } from '@strutbook/domain/units/fraction.js';
import type { Instant } from '@strutbook/domain/units/minutes.js';
import { subtractCounts } from '@strutbook/domain/usage/counts.js';
import type { Counters } from '@strutbook/domain/usage/since.js';
import { type Opening, type Totals, totals } from '@strutbook/domain/usage/totals.js';
import type { Tx } from '../../platform/database/database.js';
import { toInstant } from '../../platform/http/instants.js';
import { type ClockAsk, type ClockReadings, readClocks } from './clock-readings.js';
import { groupRows } from './group-rows.js';
import { loadUseFacts } from './load-use-facts.js';
import { type StoredExposure, seenBy, type UseFacts } from './use-facts.js';

/** Asks for the use of a component at an instant; null asks for now. */
export interface UseAsk {
  readonly componentId: string;
  readonly at: Date | null;
}

/** The use of components, as asked. */
export interface Uses {
  /** Use since new at the instant asked: openings and what its exposures saw, gaps left aside. */
  readonly totalsAt: (ask: UseAsk) => Totals;
  /** What it ran from an instant to another (null: now), whatever it had used before; both must have been asked for. */
  readonly ranBetween: (componentId: string, from: Date, at: Date | null) => Counters;
  /** What it was exposed to, in order. */
  readonly exposuresOf: (componentId: string) => readonly StoredExposure[];
  /** The exposure that runs now, if any. */
  readonly running: (componentId: string) => StoredExposure | null;
  readonly facts: UseFacts;
}

/** How much components were used: one place where openings and exposures are added up. */
@Injectable()
export class Use {
  /** Answers any number of asks in a constant number of statements. */
  async of(tx: Tx, operatorId: number, asks: readonly UseAsk[]): Promise<Uses> {
    const facts = await loadUseFacts(tx, operatorId, [...new Set(asks.map((ask) => ask.componentId))]);
    const byComponent = groupRows(facts.exposures, (row) => row.componentId);
    const clockAsks = asks.flatMap((ask) =>
      (byComponent.get(ask.componentId) ?? []).flatMap((row) => clockAsksOf(row, ask.at)),
    );
    return usesOf(facts, await readClocks(tx, operatorId, clockAsks));
  }
}

/** The use that facts and the readings of the clocks they ask for add up to. Total. */
export function usesOf(facts: UseFacts, reading: ClockReadings): Uses {
  const byComponent = groupRows(facts.exposures, (row) => row.componentId);
  const openings = groupRows(facts.openings, (row) => row.componentId);
  return {
    facts,
    exposuresOf: (componentId) => byComponent.get(componentId) ?? [],
    running: (componentId) => (byComponent.get(componentId) ?? []).find((row) => row.toAt === null) ?? null,
    totalsAt: ({ componentId, at }) =>
      totals({
        // Before its instant an opening says nothing, and nothing is known.
        openings: (openings.get(componentId) ?? []).filter(
          (row) => row.basis === 'new' && (at === null || row.at <= toInstant(at)),
        ),
        exposures: (byComponent.get(componentId) ?? []).map((row) => ({
          ratingId: row.ratingId,
          cycleRuleId: row.cycleRuleId,
          counts: seenBy(row, at, reading),
        })),
        cycleRules: facts.cycleRules,
      }),
    ranBetween: (componentId, from, at) =>
      totals({
        openings: [NOTHING_BEFORE],
        exposures: (byComponent.get(componentId) ?? []).map((row) => ({
          ratingId: row.ratingId,
          cycleRuleId: row.cycleRuleId,
          counts: subtractCounts(seenBy(row, at, reading), seenBy(row, from, reading)),
        })),
        cycleRules: facts.cycleRules,
      }),
  };
}

const NOTHING_BEFORE: Opening = { at: 0 as Instant, ratingId: null, minutes: 0, cycles: ZERO };

function clockAsksOf({ carrierId, fromAt, toAt }: StoredExposure, at: Date | null): ClockAsk[] {
  if (at !== null && at <= fromAt) return [];
  if (toAt !== null && (at === null || toAt <= at)) return [];
  return [{ carrierId, at }, ...(toAt === null ? [] : [{ carrierId, at: fromAt }])];
}
