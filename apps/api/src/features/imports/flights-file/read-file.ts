import { isUtf8 } from 'node:buffer';
import { Readable } from 'node:stream';
import { type CsvError, parse } from 'csv-parse';
import { type FileFlight, FLIGHT_COLUMNS } from './file-flight.js';
import { readRow } from './read-row.js';
import { type RowError, RowErrors } from './row-error.js';

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
const ROWS_A_PULSE = 2000;

const NUL: Fault = {
  reason: 'There is a NUL character in the file: it is no plain text, or text in another encoding.',
  fix: 'Save it as CSV in UTF-8.',
};
const CARRIAGE_RETURN_ALONE: Fault = {
  reason: 'A line ends in a carriage return alone.',
  fix: 'Save it with line ends LF or CRLF.',
};
const NO_UTF_8: Fault = {
  reason: 'There are bytes on this line that are no UTF-8.',
  fix: 'Save the file as CSV in UTF-8.',
};

/**
 * Reads a flights file (CSV, UTF-8, with or without a byte order mark), line by line.
 *
 * Strict: the heading must be as it is told, each line has its columns, lines end in LF or CRLF. A line that can't
 * be read is told with its reason; where quotes run away the rest of the file is told as not read. `pulse` is
 * awaited now and then with the rows read so far, and may throw to stop.
 */
export async function readFlightsFile(
  content: Buffer,
  pulse: (rows: number) => Promise<void>,
): Promise<FlightsFile> {
  const errors = new RowErrors();
  const flights: FileFlight[] = [];
  if (refuseBytes(content, errors)) return { rows: 0, flights, errors };
  const records = recordsOf(content, errors);
  const heading = await records.next();
  if (refuseHeading(heading.done === true ? [] : heading.value.record, errors))
    return { rows: 0, flights, errors };
  let rows = 0;
  for await (const { record, line } of records) {
    rows += 1;
    const flight = readRow(record, line, errors);
    if (flight !== null) flights.push(flight);
    if (rows % ROWS_A_PULSE === 0) await pulse(rows);
  }
  return { rows, flights, errors };
}

interface FileRecord {
  readonly record: readonly string[];
  /** The line on which it begins. */
  readonly line: number;
}

/** The records of a file up to the first that can't be read, which is told. */
async function* recordsOf(content: Buffer, errors: RowErrors): AsyncGenerator<FileRecord> {
  // The parser runs ahead of who takes its records, so the two say where they are in its own order.
  let last = 0;
  let stopped = false;
  const parser = parse({
    bom: true,
    info: true,
    max_record_size: LONGEST_ROW,
    record_delimiter: ['\r\n', '\n'],
    relax_column_count: true,
    skip_empty_lines: true,
    skip_records_with_error: true,
    on_record: (record: string[], { lines }) => {
      last = lines;
      return stopped ? null : record;
    },
    on_skip: (error) => {
      if (!stopped) errors.add(whereReadingStopped(error, last + 1));
      stopped = true;
      return undefined;
    },
  });
  for await (const parsed of chunksOf(content).pipe(parser)) {
    const { record, info } = parsed as {
      readonly record: string[];
      readonly info: { readonly lines: number };
    };
    const breaks = record.reduce((sum, value) => sum + (value.split('\n').length - 1), 0);
    yield { record, line: info.lines - breaks };
  }
}

function chunksOf(content: Buffer): Readable {
  return Readable.from(
    (function* () {
      for (let at = 0; at < content.length; at += CHUNK_BYTES) yield content.subarray(at, at + CHUNK_BYTES);
    })(),
  );
}

interface Fault {
  readonly reason: string;
  readonly fix: string;
}

// What a reader of lines would swallow or stumble over: it is looked for before anything is read.
function refuseBytes(content: Buffer, errors: RowErrors): boolean {
  let line = 1;
  for (let start = 0; start < content.length; line += 1) {
    const found = content.indexOf(LINE_FEED, start);
    const end = found === -1 ? content.length : found;
    const fault = faultOfBytes(content.subarray(start, end));
    if (fault !== null) {
      errors.add({ line, column: null, value: '', ...fault });
      return true;
    }
    start = end + 1;
  }
  return false;
}

function faultOfBytes(line: Buffer): Fault | null {
  if (line.includes(0)) return NUL;
  if (!isUtf8(line)) return NO_UTF_8;
  const at = line.indexOf(CARRIAGE_RETURN);
  return at === -1 || at === line.length - 1 ? null : CARRIAGE_RETURN_ALONE;
}

function refuseHeading(heading: readonly string[], errors: RowErrors): boolean {
  const wrong = FLIGHT_COLUMNS.findIndex((column, index) => heading[index] !== column);
  if (wrong === -1 && heading.length === FLIGHT_COLUMNS.length) return false;
  // Where quotes run away in the first line, that is the reason; the heading is only what came of it.
  if (errors.failed > 0) return true;
  const expected = FLIGHT_COLUMNS[wrong];
  const there = heading[wrong === -1 ? FLIGHT_COLUMNS.length : wrong];
  const fix = `Let the first line be: ${FLIGHT_COLUMNS.join(',')}`;
  errors.add({
    line: 1,
    column: expected ?? null,
    value: heading.join(','),
    reason: reasonOfHeading(expected, there),
    fix,
  });
  return true;
}

function reasonOfHeading(expected: string | undefined, there: string | undefined): string {
  if (expected === undefined) return `There is a column more than a flights file has: '${there ?? ''}'.`;
  if (there === undefined) return `The heading lacks the column '${expected}'.`;
  return `The heading names '${there.slice(0, 80)}' where the column '${expected}' stands.`;
}

function whereReadingStopped(error: CsvError | undefined, line: number): RowError {
  const tooLong = error?.code === 'CSV_MAX_RECORD_SIZE';
  return {
    line,
    column: null,
    value: '',
    reason: tooLong
      ? `This line, or a value between quotes that begins on it, is longer than ${LONGEST_ROW} characters. Nothing after it was read.`
      : 'A quotation mark stands where none belongs, or one that was opened is never closed. Nothing after it was read.',
    fix: tooLong
      ? 'Shorten it, and look for a quotation mark that is not closed.'
      : 'Correct the quotation marks on this line.',
  };
}
