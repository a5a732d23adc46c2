import { remainingCycles } from '../../format/remaining.js';
import { calendarDate } from '../../format/utc-date.js';
import type { BuiltComponent, ShopVisit } from '../../server/shops/shop-records.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { FactList } from '../../ui/page/fact-list.js';
import { SerialText } from '../../ui/status/serial-text.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { COUNTER_WORDS, lifeText, pairText } from './build-words.js';

type Difference = NonNullable<ShopVisit['difference']>;
type SlotDifference = Difference['slots'][number];
type RequirementDifference = Difference['requirements'][number];
type CounterDifference = Difference['counters'][number];

function Fitted({ part }: { readonly part: BuiltComponent | null }) {
  if (part === null) return <span className="quiet">Empty</span>;
  return (
    <>
      <RouteLink href={`/components/${part.componentId}`}>
        <SerialText>{part.serialNumber}</SerialText>
      </RouteLink>
      <span className="visit-line small">
        <SerialText>{part.partNumber}</SerialText>, {pairText(part.sinceNew)}
      </span>
      {part.lifeLimited && <span className="visit-line small">{lifeText(part.life)}</span>}
    </>
  );
}

const SLOTS: readonly Column<SlotDifference>[] = [
  {
    id: 'place',
    header: 'Place',
    namesRow: true,
    cell: ({ name, parentSerial }) => (
      <>
        {name} <span className="quiet small">in {parentSerial}</span>
      </>
    ),
  },
  { id: 'off', header: 'Off', cell: ({ before }) => <Fitted part={before} /> },
  { id: 'on', header: 'On', cell: ({ after }) => <Fitted part={after} /> },
];

const COUNTERS: readonly Column<CounterDifference>[] = [
  { id: 'counter', header: 'Counter', namesRow: true, cell: ({ counter }) => COUNTER_WORDS[counter] },
  { id: 'before', header: 'Before', cell: ({ before }) => pairText(before) },
  { id: 'after', header: 'After', cell: ({ after }) => pairText(after) },
];

const STATES: Readonly<Record<string, string>> = {
  over: 'Over limit',
  'in-tolerance': 'In tolerance',
  soon: 'Soon',
  planned: 'Plan',
  later: 'In limits',
  'not-verified': 'Not verified',
  'not-applicable': 'Not applicable',
  closed: 'Closed',
};

function stateText(row: RequirementDifference['before']): string {
  if (row === null) return 'Not held against it';
  const done = row.lastDoneOn === null ? '' : `, done ${calendarDate(row.lastDoneOn)}`;
  return `${STATES[row.status] ?? row.status}${done}`;
}

const REQUIREMENTS: readonly Column<RequirementDifference>[] = [
  {
    id: 'code',
    header: 'Requirement',
    namesRow: true,
    cell: ({ requirementId, code, subject, before, after }) => (
      <>
        <RouteLink href={`/requirements/${requirementId}`}>
          <SerialText>{code}</SerialText>
        </RouteLink>{' '}
        {(after ?? before)?.title}
        <span className="visit-line quiet small">{subject}</span>
      </>
    ),
  },
  { id: 'before', header: 'Before', cell: ({ before }) => stateText(before) },
  { id: 'after', header: 'After', cell: ({ after }) => stateText(after) },
];

/** What the visit changed: places, counters, requirements, rating and the tightest life. */
export function DifferenceTables({ difference }: { readonly difference: Difference }) {
  const { rating, slots, counters, requirements, tightestCycles: tightest } = difference;
  const left = (cycles: number | null) => (cycles === null ? 'none told in cycles' : remainingCycles(cycles));
  return (
    <section className="stack" aria-labelledby="changed">
      <h2 id="changed" className="section-heading">
        What changed
      </h2>
      <FactList
        facts={[
          [
            'Tightest life in cycles',
            tightest.before === null && tightest.after === null
              ? 'No verified life in cycles in it'
              : `Before: ${left(tightest.before)}; after: ${left(tightest.after)}`,
          ],
          [
            'Rating',
            rating === null ? 'As it was' : `Before: ${rating.before ?? 'none'}; after: ${rating.after}`,
          ],
        ]}
      />
      <DataTable
        caption="Modules and parts off and on"
        columns={SLOTS}
        rows={slots}
        rowKey={({ slotId }) => slotId}
        empty={<p>Nothing was taken off or put on.</p>}
      />
      <DataTable
        caption="Counters"
        columns={COUNTERS}
        rows={counters}
        rowKey={({ counter }) => counter}
        empty={<p>No counter of it changed.</p>}
      />
      <DataTable
        caption="Bulletins, directives and other requirements"
        columns={REQUIREMENTS}
        rows={requirements}
        rowKey={({ requirementId, subject }) => `${requirementId} ${subject}`}
        empty={<p>No requirement changed.</p>}
      />
    </section>
  );
}
