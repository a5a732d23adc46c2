import { formatHours } from '@strutbook/domain/units/minutes.js';
import type { Tx } from '../../platform/database/database.js';
import { toWire } from '../../platform/http/instants.js';
import { placedInWords, precisionOf, type RecordedRow } from './tellable.js';

interface Subject {
  readonly kind: 'airframe' | 'component';
  readonly id: string;
}

const BASIS_WORDS: Readonly<Record<string, string>> = {
  overhaul: 'overhaul',
  'shop-visit': 'shop visit',
  repair: 'repair',
};

const RESET_TITLES: Readonly<Record<string, string>> = {
  overhaul: 'Overhaul',
  'shop-visit': 'Shop visit',
  repair: 'Repair',
};

const TRACE_WORDS: Readonly<Record<string, string>> = {
  stated: 'stated only',
  'not-shown': 'trace not shown',
};

/** The balances a subject came with: since new they begin its totals, since anything else they are told beside them. */
export async function openings(tx: Tx, operatorId: number, { kind, id }: Subject): Promise<RecordedRow[]> {
  const rows = await tx.opening.findMany({
    where: { operatorId, ...(kind === 'airframe' ? { airframeId: id } : { componentId: id }) },
    include: { rating: true },
  });
  const accepted =
    kind === 'airframe'
      ? []
      : await tx.gapAcceptance.findMany({ where: { operatorId, componentId: id, voidedSeq: null } });
  const told = rows.map((row) => (row.basis === 'new' ? sinceNew(row) : sinceReset(row)));
  return [...told, ...notShown(rows, accepted)];
}

/** A balance since new whose trace is not shown leaves what is counted from it unknown, until its worst case is accepted. */
function notShown(
  rows: readonly OpeningRow[],
  accepted: readonly (Acceptance & { readonly openingId: string | null })[],
): RecordedRow[] {
  const acts = new Set<bigint>();
  return rows.flatMap((row): RecordedRow[] => {
    if (row.basis !== 'new' || row.trace !== 'not-shown' || acts.has(row.recordedSeq)) return [];
    acts.add(row.recordedSeq);
    const ids = rows.filter((each) => each.recordedSeq === row.recordedSeq).map((each) => each.id);
    const standing =
      accepted.find((each) => each.openingId !== null && ids.includes(each.openingId)) ??
      accepted.find((each) => each.openingId === null && each.traceGapId === null);
    const note = row.traceNote ?? '';
    const told = (amount: bigint | null) => (amount === null ? null : Number(amount));
    return [
      {
        ...{ ...recorded(row), at: row.at, title: 'Trace not shown', detail: note },
        event: {
          kind: 'trace-gap',
          description: note,
          worstCase:
            standing === undefined
              ? null
              : { minutes: told(standing.minutes), cycles: told(standing.cycles) },
        },
      },
    ];
  });
}

interface OpeningRow {
  readonly id: string;
  readonly at: Date;
  readonly atKind: string;
  readonly atText: string | null;
  readonly basis: string;
  readonly minutes: bigint | null;
  readonly cycles: bigint | null;
  readonly cycleDenominator: number;
  readonly source: string;
  readonly trace: string;
  readonly traceNote: string | null;
  readonly rating: { readonly code: string } | null;
  readonly recordedSeq: bigint;
  readonly voidedSeq: bigint | null;
  readonly voidReason: string | null;
}

function sinceNew(row: OpeningRow): RecordedRow {
  const { source, minutes, cycles, cycleDenominator } = row;
  return {
    ...recorded(row),
    ...toldAt(row),
    title: 'Opening balance',
    detail: `Since new${atRating(row)}; source: ${source}${traceText(row)}`,
    event: {
      kind: 'opening',
      source,
      minutes: minutes === null ? null : Number(minutes),
      cycles: cycles === null ? null : Number(cycles),
      cycleDenominator,
    },
  };
}

function sinceReset(row: OpeningRow): RecordedRow {
  const { basis, source, minutes, cycles, cycleDenominator } = row;
  const over = cycleDenominator === 1 ? '' : `/${cycleDenominator}`;
  const hours = minutes === null ? 'hours not known' : `${formatHours(Number(minutes))} h`;
  const counted = cycles === null ? 'cycles not known' : `${cycles}${over} cyc`;
  return {
    ...recorded(row),
    ...toldAt(row),
    title: `Balance since ${BASIS_WORDS[basis] ?? basis}`,
    detail: `${hours}, ${counted}${atRating(row)}; source: ${source}${traceText(row)}`,
    event: { kind: 'reset', what: resetOf(basis), evidence: source },
  };
}

function resetOf(kind: string): 'overhaul' | 'shop-visit' | 'repair' {
  return kind === 'overhaul' || kind === 'repair' ? kind : 'shop-visit';
}

function traceText({ trace, traceNote }: OpeningRow): string {
  const word = TRACE_WORDS[trace];
  return word === undefined ? '' : `; ${word}: ${traceNote ?? ''}`;
}

function atRating({ rating }: OpeningRow): string {
  return rating === null ? '' : ` at rating ${rating.code}`;
}

/** Overhauls, shop visits, rating changes, gaps and their acceptances of a component. */
export async function keepingFacts(tx: Tx, operatorId: number, componentId: string): Promise<RecordedRow[]> {
  const where = { operatorId, componentId };
  const resets = await tx.reset.findMany({ where });
  const ratings = await tx.ratingChange.findMany({
    where,
    include: { rating: true },
    orderBy: [{ at: 'asc' }, { recordedSeq: 'asc' }],
  });
  const gaps = await tx.traceGap.findMany({ where, orderBy: { fromAt: 'asc' } });
  const accepted = await tx.gapAcceptance.findMany({ where: { ...where, voidedSeq: null } });
  const ofGaps = accepted.filter((row) => row.openingId === null);
  return [
    ...resets.map(
      (row): RecordedRow => ({
        ...recorded(row),
        ...toldAt(row),
        title: RESET_TITLES[row.kind] ?? row.kind,
        detail: `Evidence: ${row.evidence}`,
        event: {
          kind: 'reset',
          what: resetOf(row.kind),
          evidence: row.evidence,
        },
      }),
    ),
    ...ratings.map((row, index): RecordedRow => {
      const before =
        ratings.slice(0, index).findLast((earlier) => earlier.voidedSeq === null)?.rating.code ?? null;
      return {
        ...recorded(row),
        ...toldAt(row),
        title: 'Rating',
        detail: `${row.rating.code}${before === null ? '' : ` after ${before}`}; source: ${row.source}`,
        event: { kind: 'rating-change', from: before, to: row.rating.code },
      };
    }),
    ...gaps.map(
      (row): RecordedRow => ({
        ...recorded(row),
        ...toldAt({ at: row.fromAt, atKind: row.fromKind, atText: row.fromText }),
        title: 'Gap in the trace',
        detail: `From ${printed(row.fromAt)} to ${printed(row.toAt)}: ${row.note}`,
        event: { kind: 'trace-gap', description: row.note, worstCase: worstCaseOf(row.id, gaps, ofGaps) },
      }),
    ),
  ];
}

interface Acceptance {
  readonly traceGapId: string | null;
  readonly cycles: bigint | null;
  readonly minutes: bigint | null;
}

/**
 * The most that may have been used in a gap: its own acceptance, else the one that names no gap, which is one figure
 * for all without their own and is told with the first of them. What it doesn't say stays unknown.
 */
function worstCaseOf(
  gapId: string,
  gaps: readonly { readonly id: string; readonly voidedSeq: bigint | null }[],
  accepted: readonly Acceptance[],
) {
  const ownOf = (id: string) => accepted.find((row) => row.traceGapId === id);
  const standing = ownOf(gapId) ?? accepted.find((row) => row.traceGapId === null);
  if (standing === undefined) return null;
  const first = gaps.find((gap) => gap.voidedSeq === null && ownOf(gap.id) === undefined);
  if (standing.traceGapId === null && first?.id !== gapId) return { minutes: 0, cycles: 0 };
  const told = (amount: bigint | null) => (amount === null ? null : Number(amount));
  return { minutes: told(standing.minutes), cycles: told(standing.cycles) };
}

/** Acceptances of a worst case; each happened when it was recorded. `recordedAt` tells when that was. */
export async function acceptances(
  tx: Tx,
  operatorId: number,
  componentId: string,
): Promise<readonly (Omit<RecordedRow, 'at'> & { readonly at: null })[]> {
  const rows = await tx.gapAcceptance.findMany({ where: { operatorId, componentId } });
  return rows.map((row) => ({
    ...recorded(row),
    at: null,
    title: 'Worst case accepted',
    detail: `By ${row.acceptedBy}, ${row.reference}: ${row.minutes === null ? 'hours not told' : `${formatHours(Number(row.minutes))} h`}, ${row.cycles === null ? 'cycles not told' : `${row.cycles} cyc`}`,
    event: { kind: 'trace-acceptance', reference: row.reference },
  }));
}

/** When it was, and how that was told. */
function toldAt({ at, atKind, atText }: { at: Date; atKind: string; atText: string | null }) {
  return { at, precision: precisionOf(atKind), placed: placedInWords(atKind, atText) };
}

function recorded(row: {
  id: string;
  recordedSeq: bigint;
  voidedSeq: bigint | null;
  voidReason: string | null;
}) {
  const { id, recordedSeq, voidedSeq, voidReason } = row;
  return { id, recordedSeq, voidedSeq, voidReason };
}

function printed(at: Date): string {
  return toWire(at).replace('T', ' ');
}
