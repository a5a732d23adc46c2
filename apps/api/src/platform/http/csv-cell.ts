/**
 * A cell of comma-separated text. A value that a spreadsheet would take for a formula gets an apostrophe before it.
 *
 * Source: OWASP, CSV injection. Total.
 */
export function csvCell(text: string): string {
  const guarded = /^[=+\-@]/.test(text.trimStart()) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) || guarded !== guarded.trim()
    ? `"${guarded.replaceAll('"', '""')}"`
    : guarded;
}
