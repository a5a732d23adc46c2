import type { Column, Order } from './column.js';

interface SortHeadProps<Row> {
  readonly column: Column<Row>;
  readonly order: Order;
  readonly onOrder: (order: Order) => void;
}

/** Up, down, then as it came. */
function nextOrder(column: string, order: Order): Order {
  if (order?.column !== column) return { column, descending: false };
  return order.descending ? null : { column, descending: true };
}

const ARROWS = { ascending: 'M5 1l4 6H1z', descending: 'M5 9L1 3h8z' } as const;

/** The class of a column's cells. */
export function cellClass(align: Column<never>['align']): string {
  return align === undefined || align === 'start' ? '' : `cell-${align}`;
}

/** A column's head; a button when the column sorts. */
export function SortHead<Row>({ column, order, onOrder }: SortHeadProps<Row>) {
  const end = column.align === undefined || column.align === 'start' ? '' : 'cell-end';
  if (column.sortBy === undefined) {
    return (
      <th scope="col" className={end}>
        {column.header}
      </th>
    );
  }
  const sorted = order?.column === column.id ? (order.descending ? 'descending' : 'ascending') : 'none';
  return (
    <th scope="col" className={end} aria-sort={sorted}>
      <button type="button" className="table-sort" onClick={() => onOrder(nextOrder(column.id, order))}>
        {column.header}
        <svg width="10" height="10" viewBox="0 0 10 10" aria-hidden="true">
          {sorted === 'none' ? (
            <path d="M5 0l3 4H2zM5 10L2 6h6z" fill="none" stroke="currentColor" />
          ) : (
            <path d={ARROWS[sorted]} fill="currentColor" />
          )}
        </svg>
      </button>
    </th>
  );
}
