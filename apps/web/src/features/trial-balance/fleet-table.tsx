import { counted } from '../../format/counts.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { amountOf, differenceText, isNothing } from './balance-words.js';
import type { BalanceRow, Counts } from './trial-balance-queries.js';

/** Hours and flights of an account; the other kinds stand on the page of the airframe. */
export function Account({ counts }: { readonly counts: Counts }) {
  if (isNothing(counts)) return <span className="quiet">0:00 h</span>;
  return (
    <>
      <span className="balance-line">{amountOf('minutes', counts)} h</span>
      <span className="balance-line quiet small">{counted(counts.flights, 'flight')}</span>
    </>
  );
}

/** A difference: nothing to say when it is zero, and all that is lost or made up when it is not. */
export function Difference({ counts }: { readonly counts: Counts }) {
  return isNothing(counts) ? (
    <span className="quiet">0:00</span>
  ) : (
    <StatusMark status="over-limit" word={differenceText(counts)} />
  );
}

const account = (
  id: 'flown' | 'runs' | 'onEngines' | 'empty' | 'notRunning',
  header: string,
): Column<BalanceRow> => ({
  id,
  header,
  align: 'figures',
  cell: (row) => <Account counts={row[id]} />,
  sortBy: (row) => row[id].minutes,
});

const COLUMNS: readonly Column<BalanceRow>[] = [
  {
    id: 'airframe',
    header: 'Airframe',
    namesRow: true,
    cell: ({ airframeId, registration, positionNumber }) => (
      <span className="balance-place">
        <RouteLink href={`/trial-balance?airframe=${airframeId}`}>
          <SerialText>{registration}</SerialText>
        </RouteLink>
        , position {positionNumber}
      </span>
    ),
    sortBy: ({ registration, positionNumber }) => `${registration} ${positionNumber}`,
  },
  account('flown', 'Flown'),
  account('runs', 'Run on ground'),
  account('onEngines', 'On engines'),
  account('empty', 'Position empty'),
  account('notRunning', 'Not running'),
  {
    id: 'difference',
    header: 'Difference',
    align: 'figures',
    cell: ({ difference }) => <Difference counts={difference} />,
    sortBy: ({ difference }) => Math.abs(difference.minutes),
  },
];

/** Every position of every airframe, the ones that do not add up first. */
export function FleetTable({ rows }: { readonly rows: readonly BalanceRow[] }) {
  const wrongFirst = [...rows].sort(
    (a, b) => Number(isNothing(a.difference)) - Number(isNothing(b.difference)),
  );
  return (
    <div className="print-landscape">
      <DataTable
        caption="Trial balance of every position"
        captionHidden
        columns={COLUMNS}
        rows={wrongFirst}
        rowKey={({ positionId }) => positionId}
        empty={<EmptyState>No airframe with an engine position is on record.</EmptyState>}
      />
    </div>
  );
}
