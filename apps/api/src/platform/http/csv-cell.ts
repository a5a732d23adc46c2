const FIGURE = /^-\d+(?:[.:]\d+)?$/;

/**
 * A cell of comma-separated text. A value that a spreadsheet would take for a formula gets an apostrophe before it;
 * a negative figure ('-4', '-244:24', '-0.5') is none and stays a figure.
 *
 * Source: OWASP, CSV injection. Total.
 */
export function csvCell(text: string): string {
  const guarded = /^[=+\-@]/.test(text.trimStart()) && !FIGURE.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) || guarded !== guarded.trim()
    ? `"${guarded.replaceAll('"', '""')}"`
    : guarded;
}
