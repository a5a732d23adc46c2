/** What is wrong with one line of a file, and what to do about it. */
export interface RowError {
  /** The file's own line, counted from 1; a value with a line break inside is told by its first line. */
  readonly line: number;
  /** The column's heading; null where the whole line, or the file, is meant. */
  readonly column: string | null;
  readonly value: string;
  readonly reason: string;
  readonly fix: string;
}

/** Values are shown, not kept whole: a file can hold a megabyte in one cell. */
const LONGEST_VALUE = 80;
const MOST_KEPT = 5000;

/** The errors of one file: each line that errs is counted, as many as anyone can read are kept. */
export class RowErrors {
  private readonly kept: RowError[] = [];
  private readonly lines = new Set<number>();

  /** Notes an error. */
  add(error: RowError): void {
    this.lines.add(error.line);
    if (this.kept.length < MOST_KEPT) this.kept.push({ ...error, value: shorten(error.value) });
  }

  /** Whether something was found on this line. */
  has(line: number): boolean {
    return this.lines.has(line);
  }

  /** How many lines err. */
  get failed(): number {
    return this.lines.size;
  }

  /** The errors kept, by line. */
  list(): readonly RowError[] {
    return this.kept.toSorted((a, b) => a.line - b.line);
  }
}

function shorten(value: string): string {
  // Control characters would spoil a report's line, and PostgreSQL keeps no NUL in JSON.
  const shown = value.replace(/[\u0000-\u001f\u007f]/g, '\u00b7').replace(/[\ud800-\udfff]/gu, '\ufffd');
  return shown.length <= LONGEST_VALUE
    ? shown
    : `${shown.slice(0, LONGEST_VALUE).replace(/[\ud800-\udbff]$/, '')}…`;
}
