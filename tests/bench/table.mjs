const verdictOf = ({ ratio, target, least }) =>
  ratio <= target && (least === undefined || ratio >= least) ? 'met' : 'missed';

const ms = (figure) => (figure === undefined ? '' : figure.toFixed(3));

/** The results as lines of a table. */
export function table(results) {
  const head = ['operation', 'scale', 'median ms', "twin's ms", 'ratio', 'pairs', 'target', 'verdict'];
  const rows = results.map((row) => [
    row.operation,
    row.scale,
    ms(row.product),
    ms(row.twin),
    row.ratio.toFixed(row.slope ? 3 : 2),
    row.slope ? row.slope : `${row.lowest.toFixed(2)}–${row.highest.toFixed(2)}`,
    row.least === undefined ? String(row.target) : `${row.least} to ${row.target}`,
    verdictOf(row),
  ]);
  const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => row[column].length)));
  const right = new Set([2, 3, 4, 6]);
  return [head, ...rows].map((row) =>
    row
      .map((cell, column) =>
        right.has(column) ? cell.padStart(widths[column]) : cell.padEnd(widths[column]),
      )
      .join('  '),
  );
}

/** What `--json` writes of each: names and numbers alone. */
export function asJson(results) {
  return {
    rows: results.map(({ operation, scale, ratio, target }) => ({
      operation,
      scale,
      ratio: Number(ratio.toFixed(4)),
      target,
    })),
  };
}
