import {
  type ColumnDef,
  createSortedRowModel,
  type RowData,
  rowSortingFeature,
  tableFeatures,
  useTable,
} from '@tanstack/react-table';
import { type ReactNode, useMemo, useState } from 'react';
import type { Column, Order, SortValue } from './column.js';
import { moveBetweenRows } from './row-keys.js';
import { SortHead } from './sort-head.js';
import { TableBody, type TableState } from './table-body.js';
import './data-table.css';

export interface DataTableProps<Row extends RowData> {
  readonly caption: string;
  readonly captionHidden?: boolean;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  readonly state?: TableState | undefined;
  /** Shown in place of rows when there are none. */
  readonly empty?: ReactNode;
  readonly order?: Order;
  /** Given when the server sorts: rows then come in order, and this asks for another. */
  readonly onOrder?: ((order: Order) => void) | undefined;
  /** A row that was corrected or voided: it stays, struck through. */
  readonly struck?: ((row: Row) => boolean) | undefined;
  /** Keeps its height and scrolls inside. */
  readonly tall?: boolean;
}

const features = tableFeatures({ rowSortingFeature, sortedRowModel: createSortedRowModel() });

const compare = (a: SortValue, b: SortValue): number => {
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  return String(a).localeCompare(String(b), 'en', { numeric: true });
};

function definition<Row extends RowData>(column: Column<Row>): ColumnDef<typeof features, Row> {
  return {
    id: column.id,
    header: column.header,
    // Undefined is the library's word for "stands last"; null is ours for "not known".
    accessorFn: (row: Row) => column.sortBy?.(row) ?? undefined,
    enableSorting: column.sortBy !== undefined,
    sortUndefined: 'last',
    sortFn: (a, b, id) => compare(a.getValue<SortValue>(id), b.getValue<SortValue>(id)),
  };
}

/** Records in rows: a real table, sorted by its heads, walked with the arrow keys. */
export function DataTable<Row extends RowData>(props: DataTableProps<Row>) {
  const { caption, captionHidden, columns, rows, rowKey, state, empty, order, onOrder, struck, tall } = props;
  const [ownOrder, setOwnOrder] = useState<Order>(order ?? null);
  const shown = onOrder === undefined ? ownOrder : (order ?? null);
  const definitions = useMemo(() => columns.map((column) => definition(column)), [columns]);
  const sorting = useMemo(
    () => (shown === null ? [] : [{ id: shown.column, desc: shown.descending }]),
    [shown],
  );
  const table = useTable({
    features,
    columns: definitions,
    data: rows,
    getRowId: rowKey,
    manualSorting: onOrder !== undefined,
    state: { sorting },
  });
  const pick = onOrder ?? setOwnOrder;
  return (
    <section
      className={tall === true ? 'table-scroll table-tall' : 'table-scroll'}
      aria-label={caption}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
      tabIndex={0}
    >
      <table className="data-table">
        <caption className={captionHidden === true ? 'visually-hidden' : ''}>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <SortHead key={column.id} column={column} order={shown} onOrder={pick} />
            ))}
          </tr>
        </thead>
        <tbody onKeyDown={moveBetweenRows}>
          <TableBody
            columns={columns}
            rows={table.getRowModel().rows.map((row) => row.original)}
            {...{ rowKey, state, empty, struck }}
          />
        </tbody>
      </table>
    </section>
  );
}
