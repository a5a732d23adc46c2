import { RouteLink } from '../../ui/actions/route-link.js';
import { SerialText } from '../../ui/status/serial-text.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { Account, Difference } from './fleet-table.js';
import type { Counts, FleetBalance } from './trial-balance-queries.js';

/** The accounts of what runs by itself: a test cell, or the counter of an auxiliary power unit. */
interface OwnRuns {
  readonly key: string;
  readonly name: string;
  readonly href: string | null;
  readonly ran: Counts;
  readonly taken: Counts;
  readonly notTaken: Counts;
  readonly difference: Counts;
}

const COLUMNS: readonly Column<OwnRuns>[] = [
  {
    id: 'name',
    header: 'Test cell or counter',
    namesRow: true,
    cell: ({ name, href }) =>
      href === null ? (
        name
      ) : (
        <RouteLink href={href}>
          <SerialText>{name}</SerialText>
        </RouteLink>
      ),
    sortBy: ({ name }) => name,
  },
  { id: 'ran', header: 'Run', align: 'figures', cell: ({ ran }) => <Account counts={ran} /> },
  { id: 'taken', header: 'Taken', align: 'figures', cell: ({ taken }) => <Account counts={taken} /> },
  {
    id: 'notTaken',
    header: 'Not taken',
    align: 'figures',
    cell: ({ notTaken }) => <Account counts={notTaken} />,
  },
  {
    id: 'difference',
    header: 'Difference',
    align: 'figures',
    cell: ({ difference }) => <Difference counts={difference} />,
  },
];

/** Test cells and counters, where any is on record: what ran, against what was taken of it. */
export function OwnRunsTable({ balance: { cells, counters } }: { readonly balance: FleetBalance }) {
  const rows: readonly OwnRuns[] = [
    ...cells.map(({ testCellId, ...rest }) => ({ ...rest, key: testCellId, href: null })),
    ...counters.map(({ componentId, serialNumber, ...rest }) => ({
      ...rest,
      ...{ key: componentId, name: serialNumber, href: `/components/${componentId}` },
    })),
  ];
  if (rows.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="own-runs">
      <h2 id="own-runs" className="section-heading">
        Test cells and auxiliary power units
      </h2>
      <p className="quiet">
        What ran by itself, against what was taken of it. Not taken: while nothing was there, or before the
        opening balance, which holds it already.
      </p>
      <DataTable
        caption="Test cells and auxiliary power units"
        captionHidden
        columns={COLUMNS}
        rows={rows}
        rowKey={({ key }) => key}
      />
    </section>
  );
}
