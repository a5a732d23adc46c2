import { exactCycles } from '../../../format/cycles.js';
import { hoursMinutes, thousands } from '../../../format/hours.js';
import { boundaryText, momentText, type Precision } from '../../../format/when.js';
import type { ComponentFacts } from '../../../server/components.js';
import type { FactKind } from '../openings/fact-acts.js';

/** One fact of a component, as it stands in the list. */
export interface ListedFact {
  readonly id: string;
  readonly kind: FactKind;
  /** By what the list is in order; '' where the fact has no date. */
  readonly at: string;
  readonly when: string;
  readonly what: string;
  readonly detail: string;
  readonly source: string;
  readonly voided: boolean;
  readonly voidReason: string | null;
}

type Opening = ComponentFacts['openings'][number];
type Acceptance = ComponentFacts['gapAcceptances'][number];

const BASIS_WORDS = {
  new: 'new',
  overhaul: 'overhaul',
  'shop-visit': 'shop visit',
  repair: 'repair',
} as const;

const RESET_WORDS = { overhaul: 'Overhaul', 'shop-visit': 'Shop visit', repair: 'Repair' } as const;

const TRACE_WORDS = {
  shown: '',
  stated: '; stated alone',
  'not-shown': '; trace not shown',
} as const;

/** '84A: 14,845:00 h, 8,226 cycles; rating not known: hours not known, 12 cycles' */
export function balanceText(rows: Opening['rows'], unit: 'cycles' | 'flights'): string {
  return rows
    .map(({ ratingCode, minutes, cycles, cycleDenominator }) => {
      const time = minutes === null ? 'hours not known' : `${hoursMinutes(minutes)} h`;
      const count =
        cycles === null
          ? `${unit} not known`
          : `${exactCycles({ units: cycles, denominator: cycleDenominator })} ${unit}`;
      return `${ratingCode === null ? '' : `${ratingCode}: `}${time}, ${count}`;
    })
    .join('; ');
}

/** A moment as it was typed where it is no instant, with the instant it stands for. */
function when(at: string, precision: Precision, text: string | null): string {
  const { main, exactly } = boundaryText(at, precision, text);
  return exactly === null ? main : `${main} (${exactly})`;
}

function acceptedText({ acceptedBy, minutes, cycles }: Acceptance): string {
  const most = [
    ...(minutes === null ? [] : [`${hoursMinutes(minutes)} h`]),
    ...(cycles === null ? [] : [`${thousands(cycles)} cycles`]),
  ];
  return `by ${acceptedBy}, ${most.length === 0 ? 'no amount told' : `${most.join(' and ')} at most`}`;
}

/** What an acceptance is for, in words. */
function acceptedFor(acceptance: Acceptance, { traceGaps, openings }: ComponentFacts): string {
  const gap = traceGaps.find(({ id }) => id === acceptance.traceGapId);
  if (gap !== undefined) return `For the gap from ${momentText(gap.from)}`;
  const opening = openings.find(({ id }) => id === acceptance.openingId);
  return opening === undefined ? 'For all without their own' : `For the balance of ${momentText(opening.at)}`;
}

/** All facts of a component in one list, the oldest first; what has no date stands before. */
export function listedFacts(facts: ComponentFacts): readonly ListedFact[] {
  const { openings, ratingChanges, resets, traceGaps, gapAcceptances } = facts;
  const listed: ListedFact[] = [
    ...openings.map(({ id, at, rows, basis, trace, traceNote, source, voided, voidReason }) => ({
      ...{ id, at, voided, voidReason, kind: 'opening' as const, when: momentText(at) },
      what: `Balance since ${BASIS_WORDS[basis]}`,
      detail: `${balanceText(rows, 'cycles')}${TRACE_WORDS[trace]}`,
      source: traceNote === null ? source : `${source}. ${traceNote}`,
    })),
    ...ratingChanges.map(({ id, at, precision, text, ratingCode, source, voided, voidReason }) => ({
      ...{ id, at, voided, voidReason, kind: 'rating-change' as const, when: when(at, precision, text) },
      ...{ what: 'Rating', detail: ratingCode, source },
    })),
    ...resets.map(({ id, at, precision, text, kind, evidence, voided, voidReason }) => ({
      ...{ id, at, voided, voidReason, kind: 'reset' as const, when: when(at, precision, text) },
      ...{ what: RESET_WORDS[kind], detail: 'Counters begin again', source: evidence },
    })),
    ...traceGaps.map(
      ({ id, from, fromPrecision, fromText, to, toPrecision, toText, note, voided, voidReason }) => ({
        ...{ id, at: from, voided, voidReason, kind: 'trace-gap' as const },
        ...{ when: when(from, fromPrecision, fromText), what: 'Gap in the trace' },
        ...{ detail: `until ${when(to, toPrecision, toText)}`, source: note },
      }),
    ),
    ...gapAcceptances.map((acceptance) => {
      const { id, reference, voided, voidReason } = acceptance;
      return {
        ...{ id, at: '', voided, voidReason, kind: 'gap-acceptance' as const, what: 'Worst case accepted' },
        when: acceptedFor(acceptance, facts),
        ...{ detail: acceptedText(acceptance), source: reference },
      };
    }),
  ];
  return listed.sort((a, b) => a.at.localeCompare(b.at));
}
