import type { RowError } from './row-error.js';

/**
 * The errors of a file as CSV, to be opened beside it.
 *
 * A value that a spreadsheet would take for a formula gets an apostrophe before it.
 * Source: OWASP, CSV injection. Total.
 */
export function errorsCsv(errors: readonly RowError[]): string {
  const rows = errors.map((error) => [
    String(error.line),
    error.column ?? '',
    error.value,
    error.reason,
    error.fix,
  ]);
  return [['line', 'column', 'value', 'reason', 'fix'], ...rows]
    .map((row) => `${row.map(cell).join(',')}\r\n`)
    .join('');
}

function cell(text: string): string {
  const guarded = /^[=+\-@]/.test(text.trimStart()) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) || guarded !== guarded.trim()
    ? `"${guarded.replaceAll('"', '""')}"`
    : guarded;
}
