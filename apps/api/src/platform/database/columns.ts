/** Rows that came column by column in one JSON text, by the names of their columns; all null when there is no row. */
export type Columns<Row> = { readonly [Name in keyof Row]: readonly Row[Name][] | null };

/**
 * The rows of columns, in their order. Hundreds of rows are sent so where making, sending and reading an object for
 * each would take longer than finding them. Total.
 */
export function rowsOf<Row extends object>(columns: Columns<Row>): Row[] {
  const names = Object.keys(columns) as (keyof Row)[];
  const [first] = names;
  const length = first === undefined ? 0 : (columns[first]?.length ?? 0);
  return Array.from({ length }, (_, index) => {
    const row: Partial<Row> = {};
    for (const name of names) {
      const value = columns[name]?.[index];
      if (value !== undefined) row[name] = value;
    }
    return row as Row;
  });
}
