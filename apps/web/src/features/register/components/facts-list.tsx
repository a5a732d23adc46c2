import { useQuery } from '@tanstack/react-query';
import { exactCycles } from '../../../format/cycles.js';
import { hoursMinutes } from '../../../format/hours.js';
import { momentText } from '../../../format/when.js';
import { type ComponentFacts, factsQuery } from '../../../server/components.js';
import { Answered } from '../../../ui/messages/answered.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { Voided } from '../../../ui/status/voided.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';

interface Fact {
  readonly id: string;
  readonly at: string;
  readonly what: string;
  readonly detail: string;
  readonly source: string;
  readonly voided: boolean;
  readonly voidReason: string | null;
}

type Opening = ComponentFacts['openings'][number];

const BASIS_WORDS = {
  new: 'new',
  overhaul: 'overhaul',
  'shop-visit': 'shop visit',
  repair: 'repair',
} as const;

const RESET_WORDS = { overhaul: 'Overhaul', 'shop-visit': 'Shop visit', repair: 'Repair' } as const;

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

/** All facts of a component in one list, the oldest first. */
function factsOf({
  openings,
  ratingChanges,
  resets,
  traceGaps,
  gapAcceptances,
}: ComponentFacts): readonly Fact[] {
  const listed: Fact[] = [
    ...openings.map(({ rows, basis, ...rest }) => ({
      ...rest,
      what: `Balance since ${BASIS_WORDS[basis]}`,
      detail: balanceText(rows, 'cycles'),
    })),
    ...ratingChanges.map(({ ratingCode, ...rest }) => ({ ...rest, what: 'Rating', detail: ratingCode })),
    ...resets.map(({ kind, evidence, ...rest }) => ({
      ...rest,
      what: RESET_WORDS[kind],
      detail: 'Counters begin again',
      source: evidence,
    })),
    ...traceGaps.map(({ from, to, note, ...rest }) => ({
      ...rest,
      at: from,
      what: 'Gap in the trace',
      detail: `until ${momentText(to)}`,
      source: note,
    })),
    ...gapAcceptances.map(({ acceptedBy, reference, ...rest }) => ({
      ...rest,
      at: '',
      what: 'Worst case accepted',
      detail: `by ${acceptedBy}`,
      source: reference,
    })),
  ];
  return listed.sort((a, b) => a.at.localeCompare(b.at));
}

const COLUMNS: readonly Column<Fact>[] = [
  { id: 'at', header: 'When, UTC', cell: ({ at }) => (at === '' ? 'No date' : momentText(at)) },
  {
    id: 'what',
    header: 'What',
    cell: ({ what, voided, voidReason }) => (
      <>
        {what}
        {voided && <Voided reason={voidReason} />}
      </>
    ),
    namesRow: true,
  },
  { id: 'detail', header: 'Amount', cell: ({ detail }) => detail },
  { id: 'source', header: 'Source', cell: ({ source }) => source },
];

/** What a component came with: opening balances, ratings, overhauls, gaps. */
export function FactsList({ componentId }: { readonly componentId: string }) {
  const facts = useQuery(factsQuery(componentId));
  return (
    <Answered query={facts} doing="Reading what it came with">
      {(data) => (
        <DataTable
          caption="What it came with"
          captionHidden
          columns={COLUMNS}
          rows={factsOf(data)}
          rowKey={({ id }) => id}
          struck={({ voided }) => voided}
          empty={
            <EmptyState>
              No opening balance is recorded. Until there is one, its counters begin at zero on the day it was
              made, or are not verified.
            </EmptyState>
          }
        />
      )}
    </Answered>
  );
}
