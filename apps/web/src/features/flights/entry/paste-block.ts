import {
  BLANK_FLIGHT,
  FIELD_WORDS,
  FLIGHT_FIELDS,
  type FlightField,
  type TypedFlight,
  timeBeside,
} from './typed-flight.js';

/** What came from the clipboard, or why it cannot be taken. */
export type Pasted =
  | {
      readonly ok: true;
      readonly cells: readonly Partial<Record<FlightField, string>>[];
      readonly by: 'heading' | 'place';
    }
  | { readonly ok: false; readonly reason: string };

type PasteColumn = FlightField | 'registration' | 'ignored';

const plain = (heading: string): string => heading.toLowerCase().replaceAll(/[^a-z]/g, '');

const HEADINGS: ReadonlyMap<string, PasteColumn> = new Map<string, PasteColumn>([
  ...FLIGHT_FIELDS.map((field): [string, PasteColumn] => [plain(FIELD_WORDS[field]), field]),
  ['page', 'logPage'],
  ['takeoffutc', 'takeOffAt'],
  ['landingutc', 'landingAt'],
  ['tg', 'touchAndGoes'],
  ['registration', 'registration'],
  ['airframe', 'registration'],
  ['time', 'ignored'],
]);

const linesOf = (text: string): string[][] =>
  text
    .replace(/\r?\n$/, '')
    .split(/\r?\n/)
    .map((line) => line.split('\t').map((cell) => cell.trim()));

/** Whether a text is a block of cells, which the grid takes, and not a word for one cell. */
export const isBlock = (text: string): boolean => /[\t\n]/.test(text.replace(/\r?\n$/, ''));

/** Date and time in one cell are parted, so that the row reads as one typed by hand. */
function parted(cells: Partial<Record<FlightField, string>>): Partial<Record<FlightField, string>> {
  const date = cells.date ?? /^(\d{4}-\d{2}-\d{2})[ T]/.exec(cells.takeOffAt ?? '')?.[1];
  if (date === undefined) return cells;
  const beside = (field: 'takeOffAt' | 'landingAt') =>
    cells[field] === undefined ? {} : { [field]: timeBeside(date, cells[field]) };
  return { ...cells, date, ...beside('takeOffAt'), ...beside('landingAt') };
}

function byHeading(head: readonly string[], lines: readonly string[][], registration: string): Pasted {
  const columns = head.map((heading) => HEADINGS.get(plain(heading)));
  const strange = head.filter((heading, place) => heading !== '' && columns[place] === undefined);
  if (strange.length > 0)
    return {
      ok: false,
      reason: `There is no column “${strange.join('”, “')}” here. Rename or leave it out.`,
    };
  const at = columns.indexOf('registration');
  const other = at < 0 ? undefined : lines.find((cells) => (cells[at] ?? '') !== registration);
  if (other !== undefined)
    return {
      ok: false,
      reason: `A row is of ${other[at] ?? 'no airframe'}, but flights of ${registration} are entered here. Paste each airframe's own rows.`,
    };
  const cells = lines.map((line) => {
    const pairs = columns.flatMap((column, place) =>
      column === undefined || column === 'registration' || column === 'ignored'
        ? []
        : [[column, line[place] ?? '']],
    );
    return parted(Object.fromEntries(pairs));
  });
  return { ok: true, cells, by: 'heading' };
}

/**
 * Reads a tab-separated block. With headings, columns go where their headings say; without, from the
 * field in hand to the right, in the grid's own order. Nothing is guessed: each cell stays as it came.
 */
export function readBlock(text: string, from: FlightField, registration: string): Pasted {
  const lines = linesOf(text);
  const [head = [], ...rest] = lines;
  const known = head.filter((cell) => HEADINGS.has(plain(cell))).length;
  if (known >= 2) return byHeading(head, rest, registration);
  const fields = FLIGHT_FIELDS.slice(FLIGHT_FIELDS.indexOf(from));
  const widest = Math.max(...lines.map((cells) => cells.length));
  if (widest > fields.length)
    return {
      ok: false,
      reason: `The block has ${widest} columns, but only ${fields.length} stand from ${FIELD_WORDS[from]} on. Paste it with its headings, or begin further left.`,
    };
  const cells = lines.map((line) =>
    parted(Object.fromEntries(line.map((cell, place) => [fields[place], cell]))),
  );
  return { ok: true, cells, by: 'place' };
}

/** The rows with the block laid over them from one row on; rows are added as needed. */
export function layOver(
  rows: readonly TypedFlight[],
  at: number,
  cells: readonly Partial<Record<FlightField, string>>[],
): readonly TypedFlight[] {
  const length = Math.max(rows.length, at + cells.length);
  return Array.from({ length }, (_, place) => {
    const row = rows[place] ?? BLANK_FLIGHT;
    return place < at ? row : { ...row, ...cells[place - at] };
  });
}
