import { Readable } from 'node:stream';
import { type CsvError, parse } from 'csv-parse';
import { FLIGHT_COLUMNS, type FileFlight } from './file-flight.js';
import { readRow } from './read-row.js';
import { RowErrors } from './row-error.js';

/** What a flights file holds. */
export interface FlightsFile {
  /** Lines with something on them, without the heading. */
  readonly rows: number;
  readonly flights: readonly FileFlight[];
  readonly errors: RowErrors;
}

const LINE_FEED = 0x0a;
const CARRIAGE_RETURN = 0x0d;
const CHUNK_BYTES = 65_536;
const LONGEST_ROW = 4000;

/**
 * Reads a flights file (CSV, UTF-8, with or without a byte order mark), line by line.
 *
 * Strict: the heading must be as it is told, each line has its columns, lines end in LF or CRLF. A line that can't
 * be read is told with its reason; where quotes run away the rest of the file is told as not read. `pulse` is
 * awaited now and then with the rows read so far, and may throw to stop.
 */
export async function readFlightsFile(content: Buffer, pulse: (rows: number) => Promise<void>): Promise<FlightsFile> {
  const errors = new RowErrors();
  const flights: FileFlight[] = [];
  if (refuseBytes(content, errors)) return { rows: 0, flights, errors };
  const found: { rows: number; line: number; headed: boolean } = { rows: 0, line: 0, headed: false };
  const parser = parse({
    bom: true,
    info: true,
    max_record_size: LONGEST_ROW,
    record_delimiter: ['\r\n', '\n'],
    relax_column_count: true,
    skip_empty_lines: true,
  });
  try {
    for await (const parsed of chunksOf(content).pipe(parser)) {
      const { record, info } = parsed as { readonly record: string[]; readonly info: { readonly lines: number } };
      found.line = info.lines;
      if (!found.headed) {
        if (refuseHeading(record, info.lines, errors)) break;
        found.headed = true;
        continue;
      }
      found.rows += 1;
      const breaks = record.reduce((sum, value) => sum + (value.split('\n').length - 1), 0);
      const flight = readRow(record, info.lines - breaks, errors);
      if (flight !== null) flights.push(flight);
      if (found.rows % 2000 === 0) await pulse(found.rows);
    }
  } catch (error) {
    if (!isCsvError(error)) throw error;
    found.rows += 1;
    errors.add(whereReadingStopped(error, found.line + 1));
  }
  if (!found.headed && errors.failed === 0) refuseHeading([], 1, errors);
  return { rows: found.rows, flights, errors };
}

function chunksOf(content: Buffer): Readable {
  return Readable.from(
    (function* () {
      for (let at = 0; at < content.length; at += CHUNK_BYTES) yield content.subarray(at, at + CHUNK_BYTES);
    })(),
  );
}

// Two things that a reader of lines would swallow: they are looked for before anything is read.
function refuseBytes(content: Buffer, errors: RowErrors): boolean {
  let line = 1;
  for (let index = 0; index < content.length; index += 1) {
    const byte = content[index];
    if (byte === LINE_FEED) line += 1;
    if (byte === 0) {
      const reason = 'There is a NUL character in the file: it is no plain text, or text in another encoding.';
      errors.add({ line, column: null, value: '', reason, fix: 'Save it as CSV in UTF-8.' });
      return true;
    }
    if (byte === CARRIAGE_RETURN && content[index + 1] !== LINE_FEED) {
      const reason = 'A line ends in a carriage return alone.';
      errors.add({ line, column: null, value: '', reason, fix: 'Save it with line ends LF or CRLF.' });
      return true;
    }
  }
  return false;
}

function refuseHeading(heading: readonly string[], line: number, errors: RowErrors): boolean {
  const wrong = FLIGHT_COLUMNS.findIndex((column, index) => heading[index] !== column);
  if (wrong === -1 && heading.length === FLIGHT_COLUMNS.length) return false;
  const expected = FLIGHT_COLUMNS[wrong];
  const there = heading[wrong === -1 ? FLIGHT_COLUMNS.length : wrong];
  const reason =
    expected === undefined
      ? `There is a column more than a flights file has: '${there ?? ''}'.`
      : there === undefined
        ? `The heading lacks the column '${expected}'.`
        : `The heading names '${there.slice(0, 80)}' where the column '${expected}' stands.`;
  const fix = `Let the first line be: ${FLIGHT_COLUMNS.join(',')}`;
  errors.add({ line, column: expected ?? null, value: heading.join(','), reason, fix });
  return true;
}

function isCsvError(error: unknown): error is CsvError {
  return error instanceof Error && 'code' in error && /^(CSV_|INVALID_)/.test(String(error.code));
}

function whereReadingStopped(error: CsvError, line: number) {
  const tooLong = error.code === 'CSV_MAX_RECORD_SIZE';
  return {
    line,
    column: null,
    value: '',
    reason: tooLong
      ? `This line, or a value between quotes that begins on it, is longer than ${LONGEST_ROW} characters. Nothing after it was read.`
      : 'A quotation mark stands where none belongs, or one that was opened is never closed. Nothing after it was read.',
    fix: tooLong ? 'Shorten it, and look for a quotation mark that is not closed.' : 'Correct the quotation marks on this line.',
  };
}
