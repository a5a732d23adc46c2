import type { ReactNode } from 'react';
import { Loading } from '../messages/loading.js';
import { ProblemPanel } from '../messages/problem-panel.js';
import type { Column } from './column.js';
import { cellClass } from './sort-head.js';

export type TableState =
  | { readonly kind: 'loading'; readonly lines?: number }
  | { readonly kind: 'failed'; readonly error: unknown; readonly onRetry?: () => void };

interface TableBodyProps<Row> {
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  readonly state?: TableState | undefined;
  readonly empty?: ReactNode;
  readonly struck?: ((row: Row) => boolean) | undefined;
}

function WholeRow({ columns, children }: { readonly columns: number; readonly children: ReactNode }) {
  return (
    <tr className="table-whole">
      <td colSpan={columns}>{children}</td>
    </tr>
  );
}

/** The rows, or the one row that says why there are none. */
export function TableBody<Row>({ columns, rows, rowKey, state, empty, struck }: TableBodyProps<Row>) {
  if (state?.kind === 'failed') {
    return (
      <WholeRow columns={columns.length}>
        <ProblemPanel error={state.error} onRetry={state.onRetry} />
      </WholeRow>
    );
  }
  if (state?.kind === 'loading' && rows.length === 0) {
    return (
      <WholeRow columns={columns.length}>
        <Loading label="Reading the records" lines={state.lines ?? 5} />
      </WholeRow>
    );
  }
  if (rows.length === 0)
    return <WholeRow columns={columns.length}>{empty ?? 'Nothing is recorded here.'}</WholeRow>;
  return rows.map((row) => (
    <tr key={rowKey(row)} data-struck={struck?.(row) === true ? true : undefined}>
      {columns.map((column) =>
        column.namesRow === true ? (
          <th key={column.id} scope="row" className={cellClass(column.align)}>
            {column.cell(row)}
          </th>
        ) : (
          <td key={column.id} className={cellClass(column.align)}>
            {column.cell(row)}
          </td>
        ),
      )}
    </tr>
  ));
}
