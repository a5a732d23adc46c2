import { firstToEnd } from '@strutbook/domain/life/calendar-life.js';
import type { LifeMethod } from '@strutbook/domain/life/life.js';
import { type LifeHistory, type LifePiece, lifeOverruns } from '@strutbook/domain/life/overruns.js';
import { calendarOf } from '@strutbook/domain/life/substantiation.js';
import { addDays } from '@strutbook/domain/units/calendar.js';
import { ceil, compare, type Fraction, fraction } from '@strutbook/domain/units/fraction.js';
import { carriedBy } from '@strutbook/domain/usage/carried-by.js';
import { subtractCounts } from '@strutbook/domain/usage/counts.js';
import { piecesOfUse } from '@strutbook/domain/usage/pieces-of-use.js';
import type { Tx } from '../../platform/database/database.js';
import { dayOf, fromInstant, toInstant } from '../../platform/http/instants.js';
import { type DayFacts, lifeDays, loadDayFacts } from '../lives/life-days.js';
import { loadLifeLimits, type RecordedLimit } from '../lives/life-limits.js';
import { dayBegins } from '../requirements/marks.js';
import { readClocks } from '../usage/clock-readings.js';
import { loadExposureFacts } from '../usage/exposure-facts.js';
import { groupRows } from '../usage/group-rows.js';
import { withAllAbove } from '../usage/kinship.js';
import type { Use, Uses } from '../usage/use.js';
import type { FoundOverrun } from './past-overrun.js';

interface Part {
  readonly id: string;
  readonly partNumber: string;
  readonly engineModelId: string | null;
}

interface Overhaul {
  readonly componentId: string;
  readonly at: Date;
}

interface HistoryFacts {
  readonly uses: Uses;
  readonly methods: ReadonlyMap<string, LifeMethod>;
  readonly days: ReadonlyMap<string, DayFacts>;
  readonly overhauls: readonly Overhaul[];
  readonly now: Date;
}

const NOW = { at: null, withDays: false } as const;

/**
 * The times over which limited parts among these components were flown beyond their lives. What never used as much as the
 * lowest limit it ever had cannot have been: only the others are looked at more closely.
 */
export async function overrunsOfLives(
  tx: Tx,
  operatorId: number,
  componentIds: readonly string[],
  { use, now }: { readonly use: Use; readonly now: Date },
): Promise<FoundOverrun[]> {
  const parts = await tx.component.findMany({
    where: { operatorId, id: { in: [...componentIds] }, lifeLimited: true },
    select: { id: true, partNumber: true, engineModelId: true },
  });
  if (parts.length === 0) return [];
  const limits = await loadLifeLimits(
    tx,
    operatorId,
    parts.map((part) => part.partNumber),
  );
  const uses = await use.of(
    tx,
    operatorId,
    parts.map((part) => ({ componentId: part.id, at: null })),
  );
  const limitsOf = groupRows(limits, (limit) => limit.partNumber);
  const days = new Map(
    (await loadDayFacts(tx, operatorId, { componentIds: parts.map((part) => part.id), ...NOW })).map(
      (facts) => [facts.componentId, facts],
    ),
  );
  const near = parts.filter((part) => {
    const own = limitsOf.get(part.partNumber) ?? [];
    return mayBeOver(part, own, uses) || mayBePastDay(own, days.get(part.id), now);
  });
  if (near.length === 0) return [];
  const overhauls = await overhaulsOf(
    tx,
    operatorId,
    near.map((part) => part.id),
  );
  const pieces = await piecesOfLives(tx, operatorId, near, { uses, limits });
  const methods = await methodsOf(tx, operatorId);
  return near.flatMap((part) => {
    const history = historyOf(part, limitsOf.get(part.partNumber) ?? [], {
      uses,
      methods,
      days,
      overhauls,
      now,
    });
    return lifeOverruns({ ...history, pieces: pieces.get(part.id) ?? [] }).map(
      ({ dimension, row, parts: over, by, isOpen, goodThrough }): FoundOverrun => ({
        ...{ componentId: part.id, airframeId: null, positionId: null },
        limit: {
          ...{ kind: 'life-limit', id: row?.id ?? null, requirement: null, dueOn: goodThrough },
          ...{ document: row?.document ?? '', revision: row?.revision ?? '' },
          amount: row?.kind === 'limited' && dimension !== 'days' ? row[dimension] : null,
        },
        ...{ dimension, parts: over, by: by === null ? null : ceil(by), isOpen },
      }),
    );
  });
}

/** Whether it used more than the lowest limit it ever had; with an unknown amount nothing can be told. */
function mayBeOver({ id }: Part, limits: readonly RecordedLimit[], uses: Uses): boolean {
  const { minutes, cycles } = uses.totalsAt({ componentId: id, at: null });
  const worst = uses.facts.acceptances.filter((row) => row.componentId === id);
  const beyond = (used: Fraction | null, limit: number | null, hidden: number) =>
    used !== null && limit !== null && compare(used, fraction(limit - hidden)) > 0;
  return limits.some((limit) => {
    if (limit.kind !== 'limited') return false;
    const [hiddenCycles, hiddenMinutes] = [sumOf(worst, 'cycles'), sumOf(worst, 'minutes')];
    return (
      beyond(cycles, limit.cycles, hiddenCycles) ||
      beyond(minutes === null ? null : fraction(minutes), limit.minutes, hiddenMinutes)
    );
  });
}

/** Whether its last day has passed. What an overhaul begins anew may have passed before, too. */
function mayBePastDay(limits: readonly RecordedLimit[], facts: DayFacts | undefined, now: Date): boolean {
  const calendar = limits.flatMap(calendarOf);
  if (facts === undefined || calendar.length === 0) return false;
  const ends = firstToEnd(calendar, lifeDays(facts, now));
  return ends === null || ends.remaining < 0 || calendar.some((each) => each.countedFrom === 'overhaul');
}

async function overhaulsOf(tx: Tx, operatorId: number, componentIds: readonly string[]): Promise<Overhaul[]> {
  return tx.reset.findMany({
    where: { operatorId, componentId: { in: [...componentIds] }, kind: 'overhaul', voidedSeq: null },
    select: { componentId: true, at: true },
    orderBy: { at: 'asc' },
  });
}

function sumOf(rows: Uses['facts']['acceptances'], dimension: 'cycles' | 'minutes'): number {
  return rows.reduce((sum, row) => sum + (row[dimension] ?? 0), 0);
}

async function methodsOf(tx: Tx, operatorId: number): Promise<ReadonlyMap<string, LifeMethod>> {
  const models = await tx.engineModel.findMany({
    where: { operatorId },
    select: { id: true, lifeMethod: true },
  });
  return new Map(
    models.map((row) => [row.id, row.lifeMethod === 'lowest-limit' ? 'lowest-limit' : 'pro-rata']),
  );
}

function historyOf(
  part: Part,
  limits: readonly RecordedLimit[],
  { uses, methods, days, overhauls, now }: HistoryFacts,
): Omit<LifeHistory<RecordedLimit>, 'pieces'> {
  const { openings, gaps, acceptances, cycleRules } = uses.facts;
  const accepted = acceptances.filter((row) => row.componentId === part.id);
  const asAcceptance = (row: (typeof accepted)[number] | undefined) =>
    row === undefined
      ? null
      : {
          by: row.by,
          reference: row.reference,
          worstCaseCycles: row.cycles,
          worstCaseMinutes: row.minutes,
        };
  return {
    partNumber: part.partNumber,
    openings: openings.filter((row) => row.componentId === part.id && row.basis === 'new'),
    limits,
    cycleRules,
    methodOf: (modelId) => methods.get(modelId) ?? 'pro-rata',
    gaps: gaps
      .filter((gap) => gap.componentId === part.id)
      .map((gap) => ({
        id: gap.id,
        description: gap.note,
        from: toInstant(gap.fromAt),
        acceptance: asAcceptance(accepted.findLast((row) => row.traceGapId === gap.id)),
      })),
    acceptance: asAcceptance(accepted.findLast((row) => row.traceGapId === null)),
    daysAt: (at) => {
      const facts = days.get(part.id);
      const then = at === null ? now : fromInstant(at);
      const last = overhauls.findLast((row) => row.componentId === part.id && row.at <= then);
      return facts && lifeDays({ ...facts, overhauledAt: last?.at.getTime() ?? null }, then);
    },
    dayEnds: (on) => toInstant(dayBegins(dayOf(addDays(on, 1)), days.get(part.id)?.dayZone ?? 'UTC')),
  };
}

/** What each part ran, cut where another engine carried it and where its limits changed. */
async function piecesOfLives(
  tx: Tx,
  operatorId: number,
  parts: readonly Part[],
  { uses, limits }: { readonly uses: Uses; readonly limits: readonly RecordedLimit[] },
): Promise<ReadonlyMap<string, readonly LifePiece[]>> {
  const ids = parts.map((part) => part.id);
  const hung = await loadExposureFacts(tx, operatorId, await withAllAbove(tx, operatorId, ids));
  const cut = parts.map((part) => {
    const carried = carriedBy({ componentId: part.id, stays: hung.stays, slots: hung.slotsFor(part.id) });
    const effective = limits
      .filter((limit) => limit.partNumber === part.partNumber)
      .map((limit) => limit.effectiveAt);
    const exposures = uses.exposuresOf(part.id).flatMap(({ fromAt, toAt, ...row }) => {
      const span = { from: toInstant(fromAt), to: toAt === null ? null : toInstant(toAt) };
      const cuts = effective.filter((at) => at > span.from && (span.to === null || at < span.to));
      const starts = [...new Set([span.from, ...cuts.sort((a, b) => a - b)])];
      const { carrierId, ratingId, cycleRuleId } = row;
      return starts.map((from, index) => ({
        ...{ carrierId, ratingId, cycleRuleId, from },
        to: starts[index + 1] ?? span.to,
      }));
    });
    return { part, pieces: piecesOfUse({ exposures, carried, since: null, until: null }) };
  });
  const reading = await readClocks(
    tx,
    operatorId,
    cut.flatMap(({ pieces }) =>
      pieces.flatMap(({ carrierId, from, to }) => [
        { carrierId, at: fromInstant(from) },
        { carrierId, at: to === null ? null : fromInstant(to) },
      ]),
    ),
  );
  return new Map(
    cut.map(({ part, pieces }) => [
      part.id,
      pieces.map(({ carriedBy: topId, ...piece }): LifePiece => {
        const { carrierId, from, to } = piece;
        const end = reading({ carrierId, at: to === null ? null : fromInstant(to) });
        const modelId = (topId === null ? undefined : hung.modelOf.get(topId)) ?? part.engineModelId;
        return {
          ...piece,
          modelId,
          counts: subtractCounts(end, reading({ carrierId, at: fromInstant(from) })),
        };
      }),
    ]),
  );
}
