import type { ReactNode } from 'react';

export type SortValue = string | number | null;
export type Order = { readonly column: string; readonly descending: boolean } | null;

export interface Column<Row> {
  readonly id: string;
  readonly header: string;
  readonly cell: (row: Row) => ReactNode;
  /** What the column is sorted by; without it the column does not sort. Null stands last either way. */
  readonly sortBy?: (row: Row) => SortValue;
  /** 'figures': mono, to the right. */
  readonly align?: 'start' | 'end' | 'figures';
  /** The cell that names the row for screen readers. One column at most. */
  readonly namesRow?: boolean;
}
