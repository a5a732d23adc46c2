import { csvCell } from '../../../platform/http/csv-cell.js';
import type { RowError } from './row-error.js';

/** The errors of a file as CSV, to be opened beside it. Total. */
export function errorsCsv(errors: readonly RowError[]): string {
  const rows = errors.map((error) => [
    String(error.line),
    error.column ?? '',
    error.value,
    error.reason,
    error.fix,
  ]);
  return [['line', 'column', 'value', 'reason', 'fix'], ...rows]
    .map((row) => `${row.map(csvCell).join(',')}\r\n`)
    .join('');
}
