/** Rows by a key, each group in the order of the rows. Total. */
export function groupRows<Row>(
  rows: readonly Row[],
  keyOf: (row: Row) => string,
): ReadonlyMap<string, readonly Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return groups;
}
