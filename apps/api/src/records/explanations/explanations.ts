import { Injectable } from '@nestjs/common';
import { fraction, ZERO } from '@strutbook/domain/units/fraction.js';
import { carriedBy } from '@strutbook/domain/usage/carried-by.js';
import { type Counts, equalCounts, subtractCounts, zeroCounts } from '@strutbook/domain/usage/counts.js';
import { cycles } from '@strutbook/domain/usage/cycle-rule.js';
import { type PieceOfUse, piecesOfUse, runningSums } from '@strutbook/domain/usage/pieces-of-use.js';
import type { Counters as Pair } from '@strutbook/domain/usage/since.js';
import type { Tx } from '../../platform/database/database.js';
import { fromInstant, toInstant } from '../../platform/http/instants.js';
import { type ClockReadings, readClocks } from '../usage/clock-readings.js';
import { type ComponentCounters, Counters } from '../usage/counters.js';
import { loadExposureFacts } from '../usage/exposure-facts.js';
import { withAllAbove } from '../usage/kinship.js';
import { Use, type Uses } from '../usage/use.js';
import type { RecordedGap } from '../usage/use-facts.js';
import type { Addend, CounterBasis, ExplainedCounter, ResetBehind } from './explained.js';
import { type NamesBehind, namesBehind } from './names-behind.js';
import { type OpeningRow, resetsBehind } from './resets-behind.js';

type Line = Addend extends infer Each ? (Each extends Addend ? Omit<Each, 'running'> : never) : never;

interface Explaining {
  readonly at: Date | null;
  readonly uses: Uses;
  readonly openings: readonly OpeningRow[];
  readonly gaps: readonly RecordedGap[];
  readonly reading: ClockReadings;
  readonly names: NamesBehind;
  readonly piecesSince: (since: Date | null) => readonly PieceOfUse[];
}

/** Every counter of a component with the sum it comes from, line by line. */
@Injectable()
export class Explanations {
  constructor(
    private readonly use: Use,
    private readonly counters: Counters,
  ) {}

  /** The counters of a component at an instant (null: now), each with its addends, which add up to it. */
  async of(
    tx: Tx,
    operatorId: number,
    componentId: string,
    at: Date | null,
  ): Promise<readonly ExplainedCounter[]> {
    const known = (await this.counters.of(tx, operatorId, [componentId], at)).get(componentId);
    if (known === undefined) return [];
    const uses = await this.use.of(tx, operatorId, [{ componentId, at }]);
    const openings = await tx.opening.findMany({
      where: { operatorId, componentId, voidedSeq: null, ...(at === null ? {} : { at: { lte: at } }) },
      orderBy: [{ rating: { code: 'asc' } }, { id: 'asc' }],
    });
    const resets = await resetsBehind(tx, operatorId, { componentId, at, openings });
    const piecesSince = await this.cutPieces(tx, operatorId, { componentId, at, uses });
    const all = [null, ...[...resets.values()].map((reset) => reset.at)].flatMap(piecesSince);
    const names = await namesBehind(tx, operatorId, all);
    const reading = await readClocks(
      tx,
      operatorId,
      all.flatMap(({ carrierId, from, to }) => [
        { carrierId, at: fromInstant(from) },
        { carrierId, at: to === null ? at : fromInstant(to) },
      ]),
    );
    const facts = { at, uses, openings, gaps: known.gaps, reading, names, piecesSince };
    return explained(known, resets, facts);
  }

  private async cutPieces(
    tx: Tx,
    operatorId: number,
    { componentId, at, uses }: { componentId: string; at: Date | null; uses: Uses },
  ): Promise<Explaining['piecesSince']> {
    const hung = await loadExposureFacts(tx, operatorId, await withAllAbove(tx, operatorId, [componentId]));
    const carried = carriedBy({ componentId, stays: hung.stays, slots: hung.slotsFor(componentId) });
    const exposures = uses.exposuresOf(componentId).map(({ fromAt, toAt, ...row }) => ({
      carrierId: row.carrierId,
      ratingId: row.ratingId,
      cycleRuleId: row.cycleRuleId,
      from: toInstant(fromAt),
      to: toAt === null ? null : toInstant(toAt),
    }));
    const until = at === null ? null : toInstant(at);
    return (since) =>
      piecesOfUse({ exposures, carried, since: since === null ? null : toInstant(since), until });
  }
}

function explained(
  known: ComponentCounters,
  resets: ReadonlyMap<CounterBasis, ResetBehind>,
  facts: Explaining,
): readonly ExplainedCounter[] {
  const totals: readonly [CounterBasis, Pair | null][] = [
    ['new', known.sinceNew],
    ['overhaul', known.sinceOverhaul],
    ['shop-visit', known.sinceShopVisit],
    ['repair', known.sinceRepair],
    ['installation', known.sinceInstalled],
  ];
  return totals.flatMap(([basis, total]) => {
    if (total === null) return [];
    const reset = resets.get(basis) ?? null;
    return [{ basis, total, reset, addends: withRunning(linesOf(basis, reset, facts), total) }];
  });
}

function linesOf(basis: CounterBasis, reset: ResetBehind | null, facts: Explaining): Line[] {
  const { openings, uses, gaps } = facts;
  if (basis === 'new' || reset?.kindOfReset === 'opening') {
    const own = openings.filter((row) => row.basis === basis);
    const unshown = basis === 'new' ? [] : uses.facts.unshownSince.filter((gap) => gap.basis === basis);
    return [
      ...own.map((row) => openingLine(row, facts.names)),
      ...facts.piecesSince(reset?.at ?? null).map((piece) => pieceLine(piece, facts)),
      ...gapLines([...unshown, ...gaps.filter((gap) => reset === null || gap.toAt > reset.at)], facts),
    ];
  }
  const from = reset?.at ?? null;
  const later = openings.find((row) => row.basis === 'new' && from !== null && row.at > from);
  if (later !== undefined)
    return [unknownLine(`The balance from ${later.source} was drawn up after it, and does not part it.`)];
  return [
    ...facts.piecesSince(from).map((piece) => pieceLine(piece, facts)),
    ...gapLines(
      gaps.filter((gap) => from === null || gap.toAt > from),
      facts,
    ),
  ];
}

function openingLine(row: OpeningRow, names: NamesBehind): Line {
  const { id, source, trace, traceNote, minutes, cycles: units } = row;
  return {
    kind: 'opening',
    ...{ id, source, trace, traceNote },
    told: { at: row.at, kind: row.atKind, text: row.atText },
    ratingCode: row.ratingId === null ? null : (names.ratings.get(row.ratingId) ?? null),
    minutes: minutes === null ? null : Number(minutes),
    cycles: units === null ? null : fraction(units, BigInt(row.cycleDenominator)),
  };
}

function pieceLine(piece: PieceOfUse, { names, reading, at, uses }: Explaining): Line {
  const { carrierId, from, to, carriedBy: topId, cycleRuleId, ratingId } = piece;
  const end = to === null ? at : fromInstant(to);
  const counts: Counts = subtractCounts(
    reading({ carrierId, at: end }),
    reading({ carrierId, at: fromInstant(from) }),
  );
  const rule = cycleRuleId === null ? undefined : uses.facts.cycleRules.get(cycleRuleId);
  const nothing = equalCounts(counts, zeroCounts) ? ZERO : null;
  return {
    kind: 'exposure',
    from: fromInstant(from),
    to: end,
    carrier: names.carriers.get(carrierId) ?? {
      ...{ id: carrierId, kind: 'unknown', label: '' },
      ...{ airframeId: null, positionId: null, positionNumber: null },
    },
    engine: topId === null ? null : { id: topId, serialNumber: names.serials.get(topId) ?? '' },
    ratingCode: ratingId === null ? null : (names.ratings.get(ratingId) ?? null),
    rule: cycleRuleId === null ? null : (names.rules.get(cycleRuleId) ?? null),
    counts,
    exceptions: names.exceptions.filter(
      ({ positionId, landingAt }) =>
        positionId === carrierId && landingAt > fromInstant(from) && (end === null || landingAt <= end),
    ),
    minutes: counts.minutes,
    cycles: rule === undefined ? nothing : cycles(counts, rule),
  };
}

/** Gaps in their order; an acceptance that stands for several is added with the first of them. */
function gapLines(gaps: readonly RecordedGap[], { uses }: Explaining): Line[] {
  const { acceptances } = uses.facts;
  const counted = new Set<unknown>();
  return gaps.map((gap): Line => {
    const standing =
      acceptances.findLast((row) => row.traceGapId === gap.id) ??
      acceptances.findLast((row) => row.traceGapId === null && row.componentId === gap.componentId);
    const isCounted = standing !== undefined && counted.has(standing);
    counted.add(standing);
    const { id, fromAt: from, toAt: to, note } = gap;
    const base = { kind: 'gap', id, from, to, note } as const;
    if (!gap.accepted || standing === undefined)
      return { ...base, accepted: null, minutes: null, cycles: null };
    const accepted = { by: standing.by, reference: standing.reference };
    if (isCounted) return { ...base, accepted, minutes: 0, cycles: ZERO };
    const worst = standing.cycles === null ? null : fraction(standing.cycles);
    return { ...base, accepted, minutes: standing.minutes, cycles: worst };
  });
}

function unknownLine(reason: string): Line {
  return { kind: 'unknown', reason, minutes: null, cycles: null };
}

/** The lines with the sum after each; a total that is not known and no line explains says so itself. */
function withRunning(lines: readonly Line[], total: Pair): Addend[] {
  const isUnknown = (line: Line) => line.minutes === null || line.cycles === null;
  const missing = (total.minutes === null || total.cycles === null) && !lines.some(isUnknown);
  const all = missing ? [unknownLine('No opening balance tells what it had used before.'), ...lines] : lines;
  const sums = runningSums(all);
  return all.map((line, index) => ({
    ...line,
    running: sums[index] ?? { minutes: null, cycles: null },
  })) as Addend[];
}
